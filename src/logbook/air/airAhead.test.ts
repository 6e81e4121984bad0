import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { airAhead } from "./airAhead.ts";
import type { AirReading } from "../piece/piece.ts";
import { monday, steadyAir } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const now = at(36);
const ask = (readings: readonly AirReading[]) => airAhead(readings, { altitudeM: 0, from: now, to: at(84) });

/** A shed: 22 °C and dry at three in the afternoon, 12 °C and damp at three at night; readings hour by hour. */
const shed: readonly AirReading[] = Array.from({ length: 37 }, (_, i) => {
  const wave = Math.cos((2 * Math.PI * (i + 8 - 15)) / 24);
  return { id: `r${i}`, at: at(i), airC: 17 + 5 * wave, rh: 0.66 - 0.2 * wave, air: "draught" };
});

describe("the damp nights ahead", () => {
  test("a shed that was damp last night is taken to be damp the next two", () => {
    const ahead = ask(shed);
    expect(ahead?.basis).toBe("repeat-yesterday");
    const tooDamp = ahead?.damp.filter(({ isTooDamp }) => isTooDamp) ?? [];
    expect(tooDamp).toHaveLength(2);
    for (const { from, to, mostRh } of tooDamp) {
      expect(mostRh).toBeGreaterThan(0.8);
      expect(mostRh).toBeLessThan(0.9);
      // Monday of the tests begins at eight: three at night is hour 43, and again hour 67.
      expect([43, 67].some((night) => from < at(night) && to > at(night))).toBe(true);
    }
    const [first] = ahead?.damp ?? [];
    expect(first?.isTooDamp).toBe(false);
    // The afternoon between the nights is dry.
    expect(ahead?.damp.some(({ from, to }) => from < at(55) && to > at(55))).toBe(false);
  });

  test("the stretches follow one on another from first to last", () => {
    const { spells = [] } = ask(shed) ?? {};
    expect(spells[0]?.from).toBe(now);
    expect(spells.at(-1)?.to).toBe(at(84));
    for (const [i, spell] of spells.slice(1).entries()) expect(spell.from).toBe(spells[i]?.to);
  });

  test("steady dry air has no damp stretch, steady air at 75 % one without an end", () => {
    expect(ask(steadyAir({ from: monday, hours: 36 }))?.damp).toEqual([]);
    const damp = ask(steadyAir({ from: monday, hours: 36 }, { rh: 0.75 }))?.damp ?? [];
    expect(damp).toHaveLength(1);
    expect(damp[0]).toMatchObject({ from: now, to: at(84), isTooDamp: false });
    expect(damp[0]?.mostRh).toBeCloseTo(0.75, 6);
  });

  test("a room that was never read tells nothing", () => {
    expect(ask([])).toBeNull();
  });
});
