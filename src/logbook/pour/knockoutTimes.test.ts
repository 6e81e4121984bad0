import { expect, test } from "vitest";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { makeMemo } from "../log/memo.ts";
import { knockoutOf } from "./knockoutTimes.ts";
import type { ShellCourse } from "./pourCourse.ts";
import type { PourShell } from "./pourShells.ts";

const bronze = alloyOf("c90300")!;
const shell: PourShell = {
  id: "vase",
  name: "vase",
  wallMm: 8,
  isWallKnown: true,
  thinnestMm: 3,
  thinnestFrom: "told",
  modulusMm: 1.5,
  modulusFrom: "mesh",
  metalKg: 2,
};
const course = (came: ShellCourse["came"]): ShellCourse => ({
  pieceId: "vase",
  name: "vase",
  stage: "poured",
  out: null,
  begun: null,
  poured: { id: "e", at: 0, metalC: 1150, shellC: 600, massKg: null, outOfKilnMin: 1 },
  came,
  knockedOut: false,
});
const outAt = (of: Partial<PourShell>, came: ShellCourse["came"] = "full") => {
  const times = knockoutOf(
    {
      course: course(came),
      shell: { ...shell, ...of },
      parts: { alloy: bronze, figures: bronze },
      plan: { shellC: 600, metalC: 1150 },
      place: { bed: "air", airC: 20, family: "fused-silica" },
    },
    makeMemo(),
  );
  return { min: (times?.outAt ?? 0) / 60_000, from: times?.from };
};

test("by the thickest place it may be sooner than the usual hour; by the mean or the thinnest section never", () => {
  const measured = outAt({});
  expect(measured.from).toBe("reckoned");
  expect(measured.min).toBeLessThan(60);
  expect(outAt({ modulusFrom: "volume" })).toEqual({ min: 60, from: "mean" });
  expect(outAt({ modulusFrom: "thinnest" })).toEqual({ min: 60, from: "at-least" });
  expect(outAt({ modulusMm: null, modulusFrom: null })).toEqual({ min: 60, from: "usual" });
});

test("where the sum is longer than the hour the sum counts, by the mean section too", () => {
  const thick = outAt({ modulusMm: 25 });
  expect(thick.min).toBeGreaterThan(60);
  expect(outAt({ modulusMm: 25, modulusFrom: "volume" })).toEqual({ min: thick.min, from: "mean" });
});

test("a shell that was not filled waits as long as a full one", () => {
  for (const came of ["short", "leaked", "frozen", "stopped"] as const)
    expect(outAt({}, came)).toEqual(outAt({}, "full"));
});
