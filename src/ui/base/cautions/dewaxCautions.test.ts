import { expect, test } from "vitest";
import type { BurnoutMaterial } from "../../../trade/patternBurnout.ts";
import { makeFormat } from "../format/units.ts";
import { cautionLines, type CautionStep } from "./cautionWords.ts";

const format = makeFormat("metric", "en-GB");
const lines = (step: CautionStep, material: BurnoutMaterial | null = null): string =>
  cautionLines({ step, contents: null, material }, format).join("\n");

test("burning wax is spoken of for wax alone, and where nobody said what is inside", () => {
  expect(lines("burnout", "wax")).toContain("Never put water on burning wax");
  expect(lines("burnout")).toContain("Never put water on burning wax");
  for (const material of ["pla", "pvb", "resin", "foam", "pu-foam"] as const)
    expect(lines("burnout", material)).not.toMatch(/wax/i);
});

test("foam's and resin's fumes are spoken of for those, and smoke for all", () => {
  for (const material of ["foam", "pu-foam", "resin", null] as const)
    expect(lines("burnout", material)).toContain("styrene");
  for (const material of ["wax", "pla"] as const) expect(lines("burnout", material)).not.toContain("styrene");
  for (const material of ["wax", "pla", "foam"] as const)
    expect(lines("burnout", material)).toContain("smoke is poisonous");
});

test.each([
  [
    "dewax-flash",
    ["Flames come out of the door", "Face shield", "stand aside", "pan outside the kiln", "No water, ever"],
  ],
  ["dewax-steam", ["pressure vessel", "licensed", "burn"]],
  ["dewax-hot-water", ["Scalds", "Wax floats"]],
  ["dewax-staged", ["Wax fumes", "tray", "No water, ever"]],
] as const)("%s says what can hurt", (step, words) => {
  for (const word of words) expect(lines(step)).toContain(word);
});
