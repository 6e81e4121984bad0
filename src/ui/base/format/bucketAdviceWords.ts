import type { AdviceLack } from "../../../logbook/bucket/bucketAdvice.ts";
import type { CorrectionStep } from "../../../physics/slurry/correctionAdvice.ts";
import type { Predicted } from "../../../physics/slurry/correctionPredicted.ts";
import type { Format } from "./units.ts";
import { slurryAdvice as t, lackTexts } from "../words/slurryAdvice.ts";

/** One thing to do at the bucket, and why. */
export type AdviceText = { readonly title: string; readonly says: string };

const halves = t["halves.addHalfStir15"];

export function adviceWords(advice: CorrectionStep, format: Format): AdviceText {
  switch (advice.code) {
    case "bring-to-temperature":
      return {
        title: t["advice.bring-to-temperature.title"]({ referenceC: format.show("temp", advice.referenceC) }),
        says: t["advice.bring-to-temperature.says"]({
          slurryC: format.show("temp", advice.slurryC),
          secondsThere: format.show("s", advice.secondsThere),
        }),
      };
    case "weigh-density":
      return {
        title: t["advice.weigh-density.title"],
        says: t["advice.weigh-density.says"],
      };
    case "leave-alone":
      return { title: t["advice.leave-alone.title"], says: t["advice.leave-alone.says"] };
    case "add-water":
      return {
        title: t["advice.add-water.title"]({ waterL: format.show("litre", advice.waterL) }),
        says: t["advice.add-water.says"]({ halves, expectedWords: expectedWords(advice.predicted, format) }),
      };
    case "do-not-thin":
      return {
        title: t["advice.do-not-thin.title"],
        says: t["advice.do-not-thin.says"],
      };
    case "gel-test":
      return {
        title: t["advice.gel-test.title"],
        says: t["advice.gel-test.says"]({ 60: format.show("temp", 60) }),
      };
    case "clean-and-check-cup":
      return {
        title: t["advice.clean-and-check-cup.title"],
        says: t["advice.clean-and-check-cup.says"],
      };
    case "stir-and-read-again":
      return {
        title: t["advice.stir-and-read-again.title"],
        says: t["advice.stir-and-read-again.says"],
      };
    case "let-air-out-and-weigh-again":
      return {
        title: t["advice.let-air-out-and-weigh-again.title"],
        says: t["advice.let-air-out-and-weigh-again.says"],
      };
    case "weigh-liquor":
      return {
        title: t["advice.weigh-liquor.title"],
        says: t["advice.weigh-liquor.says"],
      };
    case "let-water-dry-off":
      return {
        title: t["advice.let-water-dry-off.title"]({
          surplusWaterKg: format.show("kg", advice.surplusWaterKg),
        }),
        says: t["advice.let-water-dry-off.says"],
      };
    case "add-flour-and-binder":
      return {
        title: t["advice.add-flour-and-binder.title"]({ partsWords: partsWords(advice, format) }),
        says: t["advice.add-flour-and-binder.says"]({
          halves,
          expectedWords: expectedWords(advice.predicted, format),
        }),
      };
  }
}

function partsWords(
  { flourKg, solKg, waterKg }: Extract<CorrectionStep, { readonly code: "add-flour-and-binder" }>,
  format: Format,
): string {
  const part = (kg: number | null, name: string): readonly string[] =>
    kg === null || kg < 0.0005 ? [] : [t["parts.kgOfName"]({ kg: format.show("kg", kg), name })];
  const parts = [...part(waterKg, "water"), ...part(solKg, "binder"), ...part(flourKg, "flour")];
  const last = parts.at(-1);
  if (last === undefined) return "nothing";
  return parts.length === 1 ? last : t["parts.listAndLast"]({ list: parts.slice(0, -1).join(", "), last });
}

function expectedWords(predicted: Predicted | null, format: Format): string {
  return predicted === null ? "" : ` ${expectedText(predicted, format)}`;
}

/** What the next reading should say. */
export function expectedText(predicted: Predicted, format: Format): string {
  const density = format.show("density", predicted.densityGCm3);
  const { secondsBand: band } = predicted;
  if (band === null) return t["expected.itShouldThenWeigh"]({ density });
  return t["expected.itShouldThenWeighAgain"]({
    density,
    likelyS: format.show("s", band.likelyS),
    part: format.number(band.lowS, 1),
    part2: format.number(band.highS, 1),
  });
}

/** What is missing before anything can be advised. */
export const lackWords: Readonly<Record<AdviceLack, string>> = lackTexts;
