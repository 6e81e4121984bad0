import type { Restoring } from "../../../physics/slurry/bucketMix.ts";
import type { Correction, FirstMix } from "../../../physics/slurry/slurry.ts";
import type { Format } from "../../base/format/units.ts";
import type { Hold } from "../../../logbook/bucket/makeUpSums.ts";

/** Said beside a sum that is not to be acted on. */
export const holdWords: Readonly<Record<Hold, string>> = {
  "do-not-thin":
    "Put none of it in: it is slow for its density, and that is no lack of water. A gel test first.",
  "leave-alone":
    "It reads as it should: leave it alone. What is left of the sum is the scatter of scale and cup.",
  "read-again": "Stir it up and read it again before anything goes in.",
};

/** Why no water or flour brings a density to its target. */
export function refusedWords(
  { code, densityGCm3, targetGCm3 }: Extract<Correction<object>, { readonly ok: false }>,
  format: Format,
): string {
  const [read, target] = [format.show("density", densityGCm3), format.show("density", targetGCm3)];
  switch (code) {
    case "water-lowers-density":
      return `It weighs ${read} and should weigh ${target}: it is lighter already, and water lowers it further. Stir from the bottom, let the air out, weigh again.`;
    case "flour-raises-density":
      return `It weighs ${read} and should weigh ${target}: flour would raise it further.`;
    case "target-out-of-reach":
      return `No water brings it to ${target}. Look at its target.`;
  }
}

/** Over-watered: what was found, what was expected, what can be done. */
export function overWateredWords(
  { silicaInLiquid, startSilica, addedSilica, surplusWaterKg }: Extract<Restoring, { readonly ok: false }>,
  format: Format,
): string {
  const share = (value: number): string => format.show("share", value);
  return `Its liquid holds ${share(silicaInLiquid)} silica; it was made with ${share(startSilica)}. ${
    surplusWaterKg > 0
      ? `${format.show("litre", surplusWaterKg)} of water are too much in it.`
      : "It has too much flour in it."
  } A sol of ${share(addedSilica)} can’t lift it. Stir it with the lid off until that much has dried off, use a stronger sol, blend it with fresh slurry, or give it up.`;
}

export const cannotFlowWords = (
  { flourVolumeFraction, limit }: Extract<FirstMix, { readonly ok: false }>,
  format: Format,
): string =>
  `${format.show("percent", flourVolumeFraction)} of its volume would be flour; packed that close (${format.show("percent", limit)}) nothing flows. Take less flour for the sol.`;
