import type { EntryType } from "../../logbook/entry.ts";
import type { DewaxWay } from "../../logbook/pieceBodies.ts";
import type { MetalHazard } from "../../trade/alloys.ts";
import type { BurnoutMaterial } from "../../trade/patternBurnout.ts";
import type { Format } from "../format/units.ts";
import { dewaxCautions } from "./dewaxCautions.ts";

export type CautionStep = "burnout" | `dewax-${DewaxWay}` | "firing" | "pour" | "knock-out";

/** The step whose cautions belong beside an entry's form. */
export const cautionOf: Partial<Record<EntryType, CautionStep>> = {
  "burnout-started": "burnout",
  "burnout-read": "burnout",
  "shell-fired": "firing",
  "shell-preheated": "firing",
  "metal-poured": "pour",
  "shell-knocked-out": "knock-out",
};

/** Said wherever a figure could be taken for permission. */
export const standingCaution =
  "Dipbook is a logbook and its sums are estimates. Local codes, the makers' sheets and licensed practice come first; no verdict here makes a shell or a pour safe.";

/** Common practice, no source, save the dust limits of respirable silica, which every safety sheet prints. */
export function cautionLines(
  step: CautionStep,
  format: Format,
  /** Of the alloy that is planned; null while none is. */
  hazards: readonly MetalHazard[] | null,
  /** What is in the shells; null while nobody said, and then all of it is told. */
  material: BurnoutMaterial | null = null,
): readonly string[] {
  switch (step) {
    case "burnout":
      return [
        `Pattern smoke is poisonous and it burns. Work outdoors or under a hood, and keep out of the smoke, worst from about ${format.show("temp", 200)} to ${format.show("temp", 550)}.`,
        ...(isOneOf(material, ["foam", "pu-foam", "resin"])
          ? [
              "Foams give off styrene, some of them cyanide; resins give off acrylates. No one stands downwind.",
            ]
          : []),
        ...(isOneOf(material, ["wax"])
          ? ["Never put water on burning wax. Keep a lid, dry sand and a way out."]
          : []),
        "A damp shell can burst as its water boils: only a dry one goes in.",
      ];
    case "dewax-flash":
      return dewaxCautions.flash;
    case "dewax-steam":
      return dewaxCautions.steam;
    case "dewax-hot-water":
      return dewaxCautions["hot-water"];
    case "dewax-staged":
      return dewaxCautions.staged;
    case "firing":
      return [
        "Hot kiln and hot shell: face shield, heat gloves, natural-fibre clothes, closed leather shoes, no one else within reach.",
        "Ventilate: carbon monoxide has no smell. Protection of the kiln is the work of its own controller.",
      ];
    case "pour":
      return [
        "Water under molten metal throws it. Shell, sand, ladle, skimmer, moulds and floor must be dry and warm.",
        "Face shield over glasses, leather apron and spats, heat gloves, wool or leather, boots without laces. Two people, a clear path, a bed of dry sand under everything.",
        ...fumeLines(hazards),
        "If the wall leaks: step back, let it run into the sand. Never catch it, never use water.",
      ];
    case "knock-out":
      return [
        "Shell dust is silica, part of it turned to cristobalite by firing; it scars the lungs and it is not seen. Wear a fitted P3 or P100 respirator.",
        "Work outdoors or with extraction; damp the shell once it is cold, and clean up wet or with a filtered vacuum, never with a broom or an air line.",
        "The inside stays hot for hours after the skin is cool. Eyes: shards fly.",
      ];
  }
}

/** True where it may be one of these: nobody knows what an unnamed pattern gives off. */
const isOneOf = (material: BurnoutMaterial | null, those: readonly BurnoutMaterial[]): boolean =>
  material === null || material === "other" || those.includes(material);

function fumeLines(hazards: readonly MetalHazard[] | null): readonly string[] {
  const isTold = (hazard: MetalHazard) => hazards === null || hazards.includes(hazard);
  return [
    ...(isTold("zinc-fume")
      ? ["Zinc smokes white and gives metal fever: hood or open air, and a respirator for metal fume."]
      : []),
    ...(isTold("lead")
      ? [
          "Lead in the alloy: no food or drink near, wash before eating, keep its dust off clothes that go home.",
        ]
      : []),
  ];
}
