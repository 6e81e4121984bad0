import type { AdviceLack } from "../../../logbook/bucket/bucketAdvice.ts";
import type { CorrectionStep } from "../../../physics/slurry/correctionAdvice.ts";
import type { Predicted } from "../../../physics/slurry/correctionPredicted.ts";
import type { Format } from "./units.ts";

/** One thing to do at the bucket, and why. */
export type AdviceText = { readonly title: string; readonly says: string };

const halves = "Add half, stir a quarter of an hour, read again, then the rest.";

export function adviceWords(advice: CorrectionStep, format: Format): AdviceText {
  switch (advice.code) {
    case "bring-to-temperature":
      return {
        title: `Bring it to ${format.show("temp", advice.referenceC)}`,
        says: `It is at ${format.show("temp", advice.slurryC)}. At its target it would read about ${format.show("s", advice.secondsThere)}.`,
      };
    case "weigh-density":
      return {
        title: "Weigh its density",
        says: "Seconds alone don't tell lost water from gelling. Tap out the air, weigh a known volume, then decide.",
      };
    case "leave-alone":
      return { title: "In range", says: "No change needed." };
    case "add-water":
      return {
        title: `Add ${format.show("litre", advice.waterL)} of distilled water`,
        says: `Thick and dense: water has dried off. ${halves}${expectedWords(advice.predicted, format)}`,
      };
    case "do-not-thin":
      return {
        title: "Do not thin it",
        says: "It runs too slowly at the right density: that is no lack of water. Cold, a dirty cup or gelling does that.",
      };
    case "gel-test":
      return {
        title: "Do a gel test",
        says: `Settle some, keep 20 mL of the clear liquor in a closed vial at ${format.show("temp", 60)}, fresh sol beside it. Gelled within a day: give the bucket up.`,
      };
    case "clean-and-check-cup":
      return {
        title: "Clean the cup and read again",
        says: "Silica dried in the hole reads thick, a scoured hole reads thin. Check it against the shop's own cup.",
      };
    case "stir-and-read-again":
      return {
        title: "Stir it up and read again",
        says: "Flour settles out. Stir from the bottom for a quarter of an hour before anything is added.",
      };
    case "let-air-out-and-weigh-again":
      return {
        title: "Let the air out and weigh again",
        says: "Light but not thin: bubbles read as water. Let the foam settle, tap the cup, weigh again.",
      };
    case "weigh-liquor":
      return {
        title: "Weigh the settled liquor",
        says: "Its silica tells how much binder and how much water are missing.",
      };
    case "let-water-dry-off":
      return {
        title: `Let ${format.show("kg", advice.surplusWaterKg)} of water dry off`,
        says: "There is more water in it than it was made with, and no stronger sol at hand. Stir with the lid off, or blend it with fresh slurry.",
      };
    case "add-flour-and-binder":
      return {
        title: `Add ${partsWords(advice, format)}`,
        says: `Thin and light: it was watered. Liquids first, then the flour. ${halves}${expectedWords(advice.predicted, format)}`,
      };
  }
}

function partsWords(
  { flourKg, solKg, waterKg }: Extract<CorrectionStep, { readonly code: "add-flour-and-binder" }>,
  format: Format,
): string {
  const part = (kg: number | null, name: string): readonly string[] =>
    kg === null || kg < 0.0005 ? [] : [`${format.show("kg", kg)} of ${name}`];
  const parts = [...part(waterKg, "water"), ...part(solKg, "binder"), ...part(flourKg, "flour")];
  const last = parts.at(-1);
  if (last === undefined) return "nothing";
  return parts.length === 1 ? last : `${parts.slice(0, -1).join(", ")} and ${last}`;
}

function expectedWords(predicted: Predicted | null, format: Format): string {
  return predicted === null ? "" : ` ${expectedText(predicted, format)}`;
}

/** What the next reading should say. */
export function expectedText(predicted: Predicted, format: Format): string {
  const density = format.show("density", predicted.densityGCm3);
  const { secondsBand: band } = predicted;
  if (band === null) return `It should then weigh ${density}.`;
  return `It should then weigh ${density} and read about ${format.show("s", band.likelyS)} (${format.number(band.lowS, 1)} to ${format.number(band.highS, 1)}).`;
}

/** What is missing before anything can be advised. */
export const lackWords: Readonly<Record<AdviceLack, string>> = {
  reading: "a cup reading since it was last changed",
  "slurry-temperature": "the slurry's temperature",
  "own-temperature": "the temperature it is kept at",
  cup: "the kind of cup, the same as its target's",
  band: "the band its seconds are kept in",
  "density-target": "the density aimed at",
  flour: "its flour",
  volume: "how many litres are in it",
};
