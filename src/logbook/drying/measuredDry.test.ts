import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import type { EntryBodies } from "../entries/entry.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import type { CoatDrying, DryPlace } from "../piece/standing.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const readings = steadyAir({ from: at(-2), hours: 60 });
type Seen = EntryBodies["dryness-seen"];
type SeenOf<T = Seen> = T extends Seen ? Omit<T, "coatId"> : never;

/** One backup coat dipped at hour 0, in air of 22 °C, 50 % under a rack fan. */
function shell(plan: Partial<PiecePlan> = {}): TestLog {
  const log = testLog({ areaM2: 0.12, ...plan });
  log.coat(at(0), { step: 0 });
  return log;
}
const see = (log: TestLog, hours: number, seen: SeenOf): string =>
  log.tell("dryness-seen", { ...seen, coatId: log.piece().coats.at(-1)?.id ?? "" }, at(hours));
const weigh = (log: TestLog, hours: number, massG: number, scaleG?: number): string =>
  see(log, hours, { method: "weight", massG, ...(scaleG === undefined ? {} : { scaleG }) });
function outerOf(log: TestLog, hours: number, air = readings): CoatDrying {
  const { outer } = standingOf(log.piece(), testShop(air), at(hours));
  if (outer === null) throw new Error("no coat");
  return outer;
}
/** The places of a shell that has all its coats. */
function placesOf(log: TestLog, hours: number): readonly DryPlace[] {
  const recipe = { id: "one", name: "One coat", coats: [{ kind: "backup", stuccoId: "16-30" }] };
  const shop = testShop(readings);
  const recipes = new Map([["one", recipe as never]]);
  return standingOf(log.piece(), { ...shop, recipes }, at(hours)).finalDry?.places ?? [];
}

describe("a pair of weighings", () => {
  test("of 2,410.0 and 2,409.9 g, 35 min apart, clears an open coat; of whole grams it clears nothing", () => {
    const fine = shell();
    weigh(fine, 2, 2410, 0.1);
    weigh(fine, 2.6, 2409.9, 0.1);
    expect(outerOf(fine, 2.6)).toMatchObject({
      verdict: "dry",
      evidence: { says: "dry", by: "steady", whole: true },
      toTell: null,
    });
    const coarse = shell();
    weigh(coarse, 2, 2410, 1);
    weigh(coarse, 2.5, 2409, 1);
    expect(outerOf(coarse, 2.5)).toMatchObject({ evidence: null, toTell: { missing: null, scaleG: 1 } });
  });

  test("that can't tell names the time at which it can, and then does", () => {
    const log = shell({ areaM2: 0.06 });
    weigh(log, 2, 2410);
    weigh(log, 2.5, 2410);
    const { toTell } = outerOf(log, 2.5);
    if (toTell === null || toTell.missing !== null) throw new Error("a time was wanted");
    // The least it loses while wet is some 2 g/h: 3 g take over an hour, 0.3 g the least half hour.
    const hours = (toTell.nextAt - at(2.5)) / hourMs;
    expect(hours).toBeGreaterThan(0.5);
    expect(hours).toBeLessThan(2.5);
    expect(toTell).toMatchObject({ firstAt: at(2.5), scaleG: 1, finerScaleG: 0.1, finerAt: at(3) });
    const early = shell({ areaM2: 0.06 });
    weigh(early, 2.5, 2410);
    weigh(early, 2.5 + 0.95 * hours, 2409);
    expect(outerOf(early, 5).evidence).toBeNull();
    weigh(log, 2.5 + 1.02 * hours, 2409);
    expect(outerOf(log, 5).evidence).toMatchObject({ says: "dry", by: "steady" });
  });

  test("half an hour apart says nothing of a blind core, two days apart on a fine scale it does", () => {
    const log = shell({ geometry: "blind" });
    weigh(log, 2, 2410, 0.1);
    weigh(log, 2.5, 2410, 0.1);
    expect(outerOf(log, 2.5).evidence).toBeNull();
    weigh(log, 50, 2410, 0.1);
    expect(outerOf(log, 50).evidence).toMatchObject({ says: "dry", by: "steady", whole: true });
  });

  test("that tells of the face and not of the core clears the face alone", () => {
    const log = shell({ pockets: ["blind"] });
    weigh(log, 2, 2410, 0.1);
    weigh(log, 3, 2410, 0.1);
    expect(outerOf(log, 3)).toMatchObject({ verdict: "dry", evidence: { by: "steady", whole: false } });
    expect(outerOf(log, 3).toTell).toMatchObject({ firstAt: at(3) });
    weigh(log, 50, 2410, 0.1);
    expect(outerOf(log, 50).evidence).toMatchObject({ by: "steady", whole: true });
  });

  test("in air over 70 % says nothing, and names no time", () => {
    for (const [rh, says] of [
      [0.7, "dry"],
      [0.71, undefined],
    ] as const) {
      const log = shell();
      weigh(log, 2, 2410, 0.1);
      weigh(log, 5, 2410, 0.1);
      const outer = outerOf(log, 5, steadyAir({ from: at(-2), hours: 60 }, { rh }));
      expect(outer.evidence?.says).toBe(says);
      if (says === undefined) expect(outer.toTell).toEqual({ missing: "damp-air" });
    }
  });

  test("without an area or a weighing, or without a reading, says what is missing", () => {
    const log = testLog();
    log.coat(at(0), { step: null });
    expect(outerOf(log, 2).toTell).toEqual({ missing: "area" });
    expect(outerOf(shell(), 2, []).toTell).toEqual({ missing: "air" });
  });
});

describe("a wrong weight", () => {
  function weighed(massesG: readonly (readonly [number, number])[]): CoatDrying {
    const log = testLog({ areaM2: 0.06 });
    log.tell("piece-weighed", { massG: 1240.3 }, at(0));
    log.coat(at(0.01), { step: null });
    see(log, 0.05, { method: "weight", massG: 1290.1, moment: "drained" });
    see(log, 0.1, { method: "weight", massG: 1302.9, moment: "stuccoed" });
    for (const [minutes, massG] of massesG) see(log, minutes / 60, { method: "weight", massG });
    return outerOf(log, 0.6);
  }

  test("of 1289.8 for 1298.8 does not stay dry after the right one six minutes later", () => {
    const right = weighed([[26, 1298.8]]);
    const both = weighed([
      [20, 1289.8],
      [26, 1298.8],
    ]);
    expect(both.verdict).toBe(right.verdict);
    expect(both.evidence?.says).not.toBe("dry");
    expect(both.readyAt.likely).toBeCloseTo(right.readyAt.likely ?? NaN, -3);
    expect(both.belief?.unheard).toMatchObject([{ why: { code: "lighter-than-later" } }]);
    const { low = NaN, high = NaN } = both.belief ?? {};
    expect(high - low).toBeGreaterThan(0.005);
  });

  test("light enough to close it is reopened by the right one", () => {
    expect(weighed([[20, 1287.9]])).toMatchObject({ verdict: "dry", evidence: { by: "target" } });
    expect(
      weighed([
        [20, 1287.9],
        [26, 1298.8],
      ]),
    ).toMatchObject({ verdict: "wet", evidence: { says: "wet" } });
  });
});

describe("read at a place", () => {
  const dryFace = { method: "surface", surfaceC: 22, dryShellC: 22 } as const;

  test("as warm as the dry shell beside it counts as measured dry there", () => {
    const log = shell();
    see(log, 1, dryFace);
    expect(outerOf(log, 1)).toMatchObject({
      verdict: "dry",
      evidence: { says: "dry", by: "surface", whole: true },
      readyAt: { likely: expect.any(Number) },
    });
    const cooler = shell();
    see(cooler, 1, { ...dryFace, surfaceC: 21.6 });
    expect(outerOf(cooler, 1).evidence).toBeNull();
  });

  test("a thermometer alone does not", () => {
    const log = shell();
    see(log, 1, { method: "surface", surfaceC: 22 });
    expect(outerOf(log, 1).evidence).toBeNull();
  });

  test("the face says nothing of a recess, and the recess all of the shell", () => {
    const face = shell({ geometry: "recess" });
    const before = outerOf(face, 1).readyAt;
    see(face, 1, dryFace);
    expect(outerOf(face, 1)).toMatchObject({ evidence: null, readyAt: before });
    const deep = shell({ geometry: "recess" });
    see(deep, 1, { ...dryFace, place: "recess" });
    expect(outerOf(deep, 1).evidence).toMatchObject({ by: "surface", whole: true });
    const bothPlaces = shell({ geometry: "recess", pockets: ["blind"] });
    see(bothPlaces, 1, { ...dryFace, place: "recess" });
    expect(outerOf(bothPlaces, 1).evidence).toMatchObject({ by: "surface", whole: false });
  });

  test("a cold wall in a recess makes no open face wet", () => {
    const log = shell({ pockets: ["recess"] });
    const before = outerOf(log, 1).readyAt;
    see(log, 1, { method: "surface", surfaceC: 15.6, dryShellC: 22, place: "recess" });
    const { readyAt } = outerOf(log, 1);
    for (const guess of ["early", "likely", "late"] as const)
      expect(readyAt[guess]).toBeCloseTo(before[guess] ?? NaN, -3);
    const wetFace = shell({ pockets: ["recess"] });
    see(wetFace, 1, { method: "surface", surfaceC: 16, dryShellC: 22 });
    expect(outerOf(wetFace, 1).readyAt.likely).toBeGreaterThan(before.likely ?? NaN);
  });

  test("measured dry in the pocket, the pocket is dry and the piece's own place with it", () => {
    const log = shell({ recipeId: "one", pockets: ["recess"] });
    see(log, 1, dryFace);
    expect(placesOf(log, 1).map(({ geometry, drying }) => [geometry, drying.verdict])).toEqual([
      ["recess", "wet"],
      ["open", "dry"],
    ]);
    see(log, 1.1, { ...dryFace, place: "recess" });
    expect(placesOf(log, 1.1).map(({ drying }) => drying.verdict)).toEqual(["dry", "dry"]);
    expect(outerOf(log, 1.1).evidence).toMatchObject({ whole: true });
  });

  test("a resistance is held against the same contacts, and a hundredfold is dry there", () => {
    const log = shell({ pockets: ["blind"] });
    see(log, 0.1, { method: "resistance", ohm: 1000, reference: true });
    see(log, 1, { method: "resistance", ohm: 150_000, place: "blind" });
    expect(outerOf(log, 1)).toMatchObject({ evidence: null });
    see(log, 1.1, { method: "resistance", ohm: 150_000 });
    expect(outerOf(log, 1.1).evidence).toMatchObject({ by: "resistance", whole: false });
    see(log, 1.2, { method: "resistance", ohm: 1200, reference: true, place: "blind" });
    see(log, 1.3, { method: "resistance", ohm: 140_000, place: "blind" });
    expect(outerOf(log, 1.3).evidence).toMatchObject({ by: "resistance", whole: true });
  });

  test("a hand after it takes nothing back of what was measured, unless it finds it wet", () => {
    const log = shell();
    see(log, 1, dryFace);
    see(log, 1.2, { method: "touch", verdict: "dry" });
    expect(outerOf(log, 1.2).evidence).toMatchObject({ by: "surface" });
    see(log, 1.3, { method: "touch", verdict: "wet" });
    expect(outerOf(log, 1.3)).toMatchObject({ verdict: "wet", evidence: { says: "wet" } });
  });
});

describe("still wet", () => {
  test("eight hours after a prime that should take one and a half leaves hours to go, not minutes", () => {
    const log = testLog();
    log.coat(at(0), { kind: "prime", stuccoId: "80-120", step: null });
    const air = steadyAir({ from: at(-1), hours: 10 }, { airC: 20, rh: 0.55, air: "still" });
    const before = outerOf(log, 1, air).readyAt;
    expect(((before.likely ?? NaN) - at(0)) / hourMs).toBeGreaterThan(1);
    expect(((before.likely ?? NaN) - at(0)) / hourMs).toBeLessThan(2);
    see(log, 8, { method: "touch", verdict: "wet" });
    const { readyAt } = outerOf(log, 8, air);
    // Half of a prime's water is critical: the film takes about as long as what is below it.
    const toGo = ((readyAt.likely ?? NaN) - at(8)) / hourMs;
    expect(toGo).toBeGreaterThan(4);
    expect(toGo).toBeLessThan(16);
    expect(readyAt.early).toBeGreaterThan(at(11));
  });
});
