import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { WaitingShell } from "./pourOrder.ts";
import { meltCoolKPerMin, pourOrder } from "./pourOrder.ts";

const thick: WaitingShell = {
  id: "block",
  metalKg: 2,
  thinnestMm: 8,
  pourMin: 1,
  leastMetalC: 1050,
  latestMin: 8,
};
const thin: WaitingShell = {
  id: "leaf",
  metalKg: 1,
  thinnestMm: 3,
  pourMin: 1,
  leastMetalC: 1110,
  latestMin: 4,
};
const crucible = { metalKg: 4, metalC: 1150, meltCoolKPerMin: 20, outTogether: false } as const;

describe("two shells from one crucible", () => {
  test("the thin one goes first, and metal and heat last", () => {
    const { turns, isEnough, metalLeftKg } = pourOrder({ ...crucible, shells: [thick, thin] });
    expect(turns.map(({ id, endMin, metalC }) => [id, endMin, metalC])).toEqual([
      ["leaf", 1, 1130],
      ["block", 2, 1110],
    ]);
    expect(isEnough).toBe(true);
    expect(metalLeftKg).toBe(1);
    expect(turns[0]?.spareMin).toBeCloseTo(1, 9);
  });

  test("of two with the same limits the thinner one goes first", () => {
    const same = { ...thick, id: "a", thinnestMm: 9 };
    expect(pourOrder({ ...crucible, shells: [same, thick] }).turns.map(({ id }) => id)).toEqual([
      "block",
      "a",
    ]);
  });

  test("metal that cools too fast is too cold for the second", () => {
    const { turns, isEnough } = pourOrder({
      ...crucible,
      meltCoolKPerMin: 60,
      shells: [thick, { ...thin, leastMetalC: 1080 }],
    });
    expect(turns.map(({ problems }) => problems)).toEqual([[], ["metal-cold"]]);
    expect(isEnough).toBe(false);
  });

  test("three kilos do not fill a third shell, and the first two are poured all the same", () => {
    const { turns } = pourOrder({
      ...crucible,
      metalKg: 3.5,
      shells: [thick, thin, { ...thick, id: "third" }],
    });
    expect(turns.map(({ id, problems }) => [id, problems])).toEqual([
      ["leaf", []],
      ["block", []],
      ["third", ["metal-short"]],
    ]);
  });

  test("shells taken out together cool together: the second has waited", () => {
    const slow = { ...thick, pourMin: 3, latestMin: 5 };
    const alone = pourOrder({ ...crucible, shells: [slow, { ...slow, id: "other" }] });
    expect(alone.turns.map(({ problems }) => problems)).toEqual([[], ["metal-cold"]]);
    const together = pourOrder({
      ...crucible,
      meltCoolKPerMin: 5,
      outTogether: true,
      shells: [slow, { ...slow, id: "other" }],
    });
    expect(together.turns.map(({ problems }) => problems)).toEqual([[], ["shell-cold"]]);
  });
});

const shell = fc.record({
  id: fc.uuid(),
  metalKg: fc.double({ min: 0.1, max: 3, noNaN: true }),
  thinnestMm: fc.double({ min: 1, max: 20, noNaN: true }),
  pourMin: fc.constant(1),
  leastMetalC: fc.double({ min: 1000, max: 1150, noNaN: true }),
  latestMin: fc.option(fc.double({ min: 0.5, max: 12, noNaN: true })),
});

function orders<T>(all: readonly T[]): readonly (readonly T[])[] {
  return all.length < 2
    ? [all]
    : all.flatMap((one, i) => orders(all.filter((_, j) => j !== i)).map((rest) => [one, ...rest]));
}

test("no other order keeps the worst shell's lateness smaller", () =>
  fc.assert(
    fc.property(
      fc.uniqueArray(shell, { selector: ({ id }) => id, maxLength: 5 }),
      fc.boolean(),
      (shells, outTogether) => {
        const lateness = (ids: readonly string[]): number =>
          Math.max(
            ...ids.map((id, i) => {
              const one = shells.find((s) => s.id === id);
              const metal = i + 1 - (1150 - (one?.leastMetalC ?? 0)) / 20;
              return outTogether ? Math.max(metal, i + 1 - (one?.latestMin ?? Infinity)) : metal;
            }),
          );
        const chosen = pourOrder({ ...crucible, metalKg: 100, outTogether, shells }).turns.map(
          ({ id }) => id,
        );
        return orders(shells.map(({ id }) => id)).every(
          (other) => lateness(chosen) <= lateness(other) + 1e-9,
        );
      },
    ),
    { numRuns: 100 },
  ));

test("metal is neither made nor lost", () =>
  fc.assert(
    fc.property(fc.array(shell, { maxLength: 6 }), (shells) => {
      const { turns, metalLeftKg } = pourOrder({ ...crucible, shells });
      const poured = turns
        .filter(({ problems }) => !problems.includes("metal-short"))
        .reduce((sum, { id }) => sum + (shells.find((one) => one.id === id)?.metalKg ?? 0), 0);
      return metalLeftKg >= -1e-9 && Math.abs(poured + metalLeftKg - 4) < 1e-9;
    }),
    { numRuns: 100 },
  ));

test("4 kg of bronze behind an open surface of 80 cm² lose some tens of kelvins a minute", () => {
  const rate = meltCoolKPerMin({
    metalKg: 4,
    heatJKgK: 490,
    metalC: 1150,
    airC: 20,
    bareM2: 0.008,
    emissivity: 0.8,
  });
  expect(rate).toBeGreaterThan(30);
  expect(rate).toBeLessThan(60);
});
