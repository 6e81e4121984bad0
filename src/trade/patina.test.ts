import { expect, test } from "vitest";
import { mixesAcidAndSulphide } from "./patina.ts";

test.each([
  "Liver of sulphur warm, then ferric nitrate sprayed hot",
  "potassium polysulfide with a splash of vinegar",
  "acid bath; ammonium sulphide",
  "cupric nitrate and liver of sulfur",
])("%s: warned of", (text) => {
  expect(mixesAcidAndSulphide(text)).toBe(true);
});

test.each([
  "Liver of sulphur, rinsed, waxed",
  "ferric nitrate sprayed at 120 °C, waxed",
  "sulphuric acid pickle",
  "placid brown from polysulphide",
  "cut off, chased, waxed",
])("%s: nothing to warn of", (text) => {
  expect(mixesAcidAndSulphide(text)).toBe(false);
});
