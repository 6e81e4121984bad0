import type { Restoring } from "../../../physics/slurry/bucketMix.ts";
import type { Correction, FirstMix } from "../../../physics/slurry/slurry.ts";
import type { Format } from "../../base/format/units.ts";
import type { Hold } from "../../../logbook/bucket/makeUpSums.ts";

/** Said beside a sum that is not to be acted on. */
export const holdWords: Readonly<Record<Hold, string>> = {
  "do-not-thin": "Add nothing. It is thick for its density, so it does not lack water. Do a gel test first.",
  "leave-alone": "In range. No change needed.",
  "read-again": "Stir it up and check it again before you add anything.",
};

/** Why no water or flour brings a density to its target. */
export function refusedWords(
  { code, densityGCm3, targetGCm3 }: Extract<Correction<object>, { readonly ok: false }>,
  format: Format,
): string {
  const [read, target] = [format.show("density", densityGCm3), format.show("density", targetGCm3)];
  switch (code) {
    case "water-lowers-density":
      return `It weighs ${read} and should weigh ${target}: too light already, and water lowers it further. Stir from the bottom, let the air out, weigh again.`;
    case "flour-raises-density":
      return `It weighs ${read} and should weigh ${target}: flour would raise it further.`;
    case "target-out-of-reach":
      return `No amount of water brings it to ${target}. Check its target.`;
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
      ? `${format.show("litre", surplusWaterKg)} too much water in it.`
      : "It has too much flour in it."
  } A sol of ${share(addedSilica)} can’t raise it. Stir with the lid off until that much has evaporated, use a stronger sol, blend in fresh slurry, or discard it.`;
}

export const cannotFlowWords = (
  { flourVolumeFraction, limit }: Extract<FirstMix, { readonly ok: false }>,
  format: Format,
): string =>
  `${format.show("percent", flourVolumeFraction)} of its volume would be flour; above ${format.show("percent", limit)} nothing flows. Take less flour for the sol.`;
