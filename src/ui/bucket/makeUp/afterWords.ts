import type { AfterAddition } from "../../../logbook/bucket/bucketAdvice.ts";
import type { Format } from "../../base/format/units.ts";

export type AfterText = {
  readonly verdict: string;
  readonly says: string;
  readonly tone: "clear" | "watch" | "note";
};

/** How the reading after an addition agrees with what was foretold, and what to think where it does not. */
export function afterWords({ read, met, expected }: AfterAddition, format: Format): AfterText {
  if (read === null || met === null)
    return {
      verdict: "Not checked since",
      says: "Stir for 15 min, then check the slurry to confirm the amount.",
      tone: "note",
    };
  const { density, seconds, densityOffGCm3 } = met;
  if (density === null && seconds === null)
    return {
      verdict: "Not comparable",
      says: "This check has nothing to compare with the expected values.",
      tone: "note",
    };
  if (density === null && seconds === "as-expected" && expected.densityGCm3 !== null)
    return {
      verdict: "Viscosity as expected",
      says: "The density was not weighed. Weigh it: it is the better proof.",
      tone: "note",
    };
  if ((density ?? "as-expected") === "as-expected" && (seconds ?? "as-expected") === "as-expected")
    return {
      verdict: "As expected",
      says: "The amount was right, and so was the volume.",
      tone: "clear",
    };
  const off = densityOffGCm3 === null ? "" : ` by ${format.show("density", Math.abs(densityOffGCm3))}`;
  if (density === "lighter")
    return {
      verdict: `Lighter than expected${off}`,
      says: "More went in than logged, or less slurry was in the bucket, or it holds air. Tap the air out, weigh again, measure the volume.",
      tone: "watch",
    };
  if (density === "denser")
    return {
      verdict: `Denser than expected${off}`,
      says: "More slurry was in the bucket than logged, or it is not stirred in yet. Stir, weigh again, measure the volume.",
      tone: "watch",
    };
  return seconds === "thicker"
    ? {
        verdict: "Thicker than expected",
        says: "The density is right and the viscosity is not, so it does not lack water. Rinse the cup, check the temperature, then do a gel test. Don’t thin it.",
        tone: "watch",
      }
    : {
        verdict: "Thinner than expected",
        says: "The viscosity is a rough estimate. Density counts more. Check the cup’s hole if it stays thin.",
        tone: "watch",
      };
}
