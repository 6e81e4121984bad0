import * as fc from "fast-check";
import { expect, test } from "vitest";
import { alloyOf } from "../../trade/metals/alloys.ts";
import type { PourCame } from "../entries/shellFireBodies.ts";
import { metalLeft } from "./metalLeft.ts";
import type { ShellCourse } from "./pourCourse.ts";
import type { PourShell } from "./pourShells.ts";

const figures = alloyOf("c90300")!;
const shell = (id: string, metalKg: number | null) => ({ id, metalKg }) as PourShell;
const course = (pieceId: string, came: PourCame | null, massKg: number | null = null) =>
  ({
    pieceId,
    stage: came === null ? "waiting" : "poured",
    came,
    poured: came === null ? null : { massKg },
  }) as ShellCourse;
const shells = [shell("a", 2), shell("b", 1.5)];
const left = (courses: readonly ShellCourse[], metalKg: number | null = 5) =>
  metalLeft({ metalKg, shells, figures }, courses);

test("a full shell took what its plan asks for, or what was weighed; 5 kg less 2 and 1.5", () => {
  const all = left([course("a", "full"), course("b", "full")])!;
  expect([all.leastKg, all.mostKg]).toEqual([1.5, 1.5]);
  // 1.5 kg of melt at 7900 kg/m³ or what the row says.
  expect(all.mouldL).toBeCloseTo(1500 / figures.crucibleKgM3.value, 9);
  expect(left([course("a", "full", 2.4), course("b", null)])).toMatchObject({ leastKg: 2.6, mostKg: 2.6 });
});

test("one that was not filled took anything from nothing to all of it: the mould must take the most", () => {
  for (const came of ["short", "leaked", "frozen", "stopped"] as const)
    expect(left([course("a", "full"), course("b", came)])).toMatchObject({ leastKg: 1.5, mostKg: 3 });
  expect(left([course("a", "short", 0.7)])).toMatchObject({ leastKg: 4.3, mostKg: 4.3 });
});

test("nothing is said before a pour, without a charge, and while one runs", () => {
  expect(left([course("a", null)])).toBeNull();
  expect(left([course("a", "full")], null)).toBeNull();
  expect(left([course("a", "full"), { ...course("b", null), stage: "pouring" }])).toBeNull();
});

test("never below nothing, never more than there was, and the least never above the most", () => {
  const came = fc.constantFrom<PourCame>("full", "short", "leaked", "frozen", "stopped");
  const kg = fc.oneof(fc.constant(null), fc.double({ min: 0.01, max: 20, noNaN: true }));
  fc.assert(
    fc.property(
      fc.array(fc.tuple(came, kg, kg), { minLength: 1, maxLength: 5 }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (all, metalKg) => {
        const found = metalLeft(
          { metalKg, figures: null, shells: all.map(([, planKg], i) => shell(`${i}`, planKg)) },
          all.map(([one, , massKg], i) => course(`${i}`, one, massKg)),
        )!;
        expect(found.leastKg).toBeGreaterThanOrEqual(0);
        expect(found.mostKg).toBeLessThanOrEqual(metalKg);
        expect(found.leastKg).toBeLessThanOrEqual(found.mostKg);
      },
    ),
  );
});
