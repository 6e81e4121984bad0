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
      verdict: "Not read since",
      says: "Stir a quarter of an hour, then read it: only then is the sum known to be right.",
      tone: "note",
    };
  const { density, seconds, densityOffGCm3 } = met;
  if (density === null && seconds === null)
    return {
      verdict: "Not comparable",
      says: "This reading has nothing to compare with what was expected.",
      tone: "note",
    };
  if (density === null && seconds === "as-expected" && expected.densityGCm3 !== null)
    return {
      verdict: "Viscosity as expected",
      says: "The density was not weighed: it is the better half of the proof.",
      tone: "note",
    };
  if ((density ?? "as-expected") === "as-expected" && (seconds ?? "as-expected") === "as-expected")
    return {
      verdict: "As expected",
      says: "The sum was right; so was the volume it went by.",
      tone: "clear",
    };
  const off = densityOffGCm3 === null ? "" : ` by ${format.show("density", Math.abs(densityOffGCm3))}`;
  if (density === "lighter")
    return {
      verdict: `Lighter than expected${off}`,
      says: "More went in than was written, less slurry was in the bucket than thought, or air: tap it out, weigh again, measure the volume.",
      tone: "watch",
    };
  if (density === "denser")
    return {
      verdict: `Denser than expected${off}`,
      says: "More slurry was in the bucket than thought, or it is not stirred in yet. Stir, weigh again, measure the volume.",
      tone: "watch",
    };
  return seconds === "thicker"
    ? {
        verdict: "Slower than expected",
        says: "The density came right and the seconds did not: that is no lack of water. Rinse the cup, look at the temperature, then do a gel test. Don’t thin it.",
        tone: "watch",
      }
    : {
        verdict: "Quicker than expected",
        says: "The seconds are a guess, the density is what counts. Check the cup’s hole if it stays so.",
        tone: "watch",
      };
}
