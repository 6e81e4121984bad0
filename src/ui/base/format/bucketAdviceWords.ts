import type { AdviceLack } from "../../../logbook/bucket/bucketAdvice.ts";
import type { CorrectionStep } from "../../../physics/slurry/correctionAdvice.ts";
import type { Predicted } from "../../../physics/slurry/correctionPredicted.ts";
import type { Format } from "./units.ts";

/** One thing to do at the bucket, and why. */
export type AdviceText = { readonly title: string; readonly says: string };

const halves = "Add half, stir 15 minutes, check again, then add the rest.";

export function adviceWords(advice: CorrectionStep, format: Format): AdviceText {
  switch (advice.code) {
    case "bring-to-temperature":
      return {
        title: `Bring it to ${format.show("temp", advice.referenceC)}`,
        says: `It is at ${format.show("temp", advice.slurryC)}. At its target temperature it would read about ${format.show("s", advice.secondsThere)}.`,
      };
    case "weigh-density":
      return {
        title: "Weigh its density",
        says: "Viscosity alone can't show whether it lost water or is gelling. Tap out the air and weigh a known volume.",
      };
    case "leave-alone":
      return { title: "In range", says: "No change needed." };
    case "add-water":
      return {
        title: `Add ${format.show("litre", advice.waterL)} of distilled water`,
        says: `Thick and dense: water has evaporated. ${halves}${expectedWords(advice.predicted, format)}`,
      };
    case "do-not-thin":
      return {
        title: "Do not thin it",
        says: "Too thick at the right density: it does not lack water. Look for cold, a dirty cup or gelling.",
      };
    case "gel-test":
      return {
        title: "Do a gel test",
        says: `Let some settle. Keep 20 mL of the clear binder in a closed vial at ${format.show("temp", 60)}, with fresh sol beside it. If it gels within a day, discard the slurry.`,
      };
    case "clean-and-check-cup":
      return {
        title: "Clean the cup and check again",
        says: "Dried silica in the hole reads thick; a worn hole reads thin. Check it against a second cup.",
      };
    case "stir-and-read-again":
      return {
        title: "Stir it and check again",
        says: "Flour settles. Stir from the bottom for 15 minutes before you add anything.",
      };
    case "let-air-out-and-weigh-again":
      return {
        title: "Let the air out and weigh again",
        says: "Light but not thin: it holds air. Let the foam settle, tap the cup, weigh again.",
      };
    case "weigh-liquor":
      return {
        title: "Check the binder density",
        says: "It shows how much binder and how much water are missing.",
      };
    case "let-water-dry-off":
      return {
        title: `Let ${format.show("kg", advice.surplusWaterKg)} of water evaporate`,
        says: "It holds more water than its mix, and there is no stronger sol to add. Stir with the lid off, or blend in fresh slurry.",
      };
    case "add-flour-and-binder":
      return {
        title: `Add ${partsWords(advice, format)}`,
        says: `Thin and light: too much water. Add liquids first, then the flour. ${halves}${expectedWords(advice.predicted, format)}`,
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
  reading: "a viscosity reading since it was last changed",
  "slurry-temperature": "the slurry's temperature",
  "own-temperature": "its usual temperature",
  cup: "the kind of cup its target is for",
  band: "its viscosity range",
  "density-target": "its target density",
  flour: "its flour",
  volume: "its volume",
};
