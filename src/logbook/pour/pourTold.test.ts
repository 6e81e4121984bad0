import { expect, test } from "vitest";
import { bodyFault } from "../entries/checkBody.ts";
import type { PourBodies, PourTold } from "../entries/fireBodies.ts";
import { readTold, startingTold } from "./pourTold.ts";

const told: PourTold = { family: "zircon", people: 3, carryMin: 2, metalKg: 4.2, thinnestMm: [3, null] };
const plan = (changes: Partial<PourTold> | null): PourBodies["pour-planned"] => ({
  pourAt: 1,
  pieceIds: ["a", "b"],
  bed: "air",
  shellC: 600,
  metalC: 1150,
  steps: [],
  ...(changes === null ? {} : { told: { ...told, ...changes } }),
});

test("what was told is read as it was told, and a plan that was told nothing has the starting values", () => {
  expect(readTold(plan({}))).toEqual(told);
  expect(readTold(plan(null))).toEqual(startingTold);
  expect(readTold({ ...plan(null), told: undefined })).toEqual(startingTold);
});

test("figures that cannot be are not reckoned with, though a log from elsewhere has them", () => {
  expect(readTold(plan({ people: 900, carryMin: 0, metalKg: 0, thinnestMm: [0, 5] }))).toEqual({
    ...told,
    people: 2,
    carryMin: 1.5,
    metalKg: null,
    thinnestMm: [null, 5],
  });
});

test("nobody pours with no hands, in no time, or a section thinner than nothing", () => {
  const fault = (changes: Partial<PourTold>) => bodyFault("pour-planned", plan(changes));
  expect(fault({})).toBeNull();
  expect(fault({ people: 0 })).toMatchObject({ code: "out-of-range", field: "people" });
  expect(fault({ carryMin: 0 })).toMatchObject({ field: "carryMin" });
  expect(fault({ metalKg: -1 })).toMatchObject({ field: "chargeKg" });
  expect(fault({ thinnestMm: [3, -1] })).toMatchObject({ field: "thinnestMm" });
});
