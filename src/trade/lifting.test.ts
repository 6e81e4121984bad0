import { expect, test } from "vitest";
import { crucibleLift, crucibleWithMetalKg, needsTwo } from "./lifting.ts";

// Common practice, no source: 12 kg two and a shank, 45 kg a hoist, 20 kg of shell two people.
test("tongs to 12 kg, a shank to 45, a hoist above", () => {
  expect([12, 12.01, 45, 45.01].map(crucibleLift)).toEqual(["tongs", "shank", "shank", "hoist"]);
});

test("a shell is for two above 20 kg", () => {
  expect([needsTwo(20), needsTwo(20.01)]).toEqual([false, true]);
});

test("a litre of crucible counts 1.6 kg", () => {
  expect(crucibleWithMetalKg({ metalKg: 8, brimL: 1 })).toBeCloseTo(9.6, 9);
});
