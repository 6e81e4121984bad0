import type { EntryType } from "../../../logbook/entries/entry.ts";
import type { DewaxWay } from "../../../logbook/entries/shellFireBodies.ts";
import type { Contents } from "../../../physics/metal/scrap.ts";
import { fumeLimits } from "../../../trade/fumeLimits.ts";
import type { BurnoutMaterial } from "../../../trade/patternBurnout.ts";
import type { Format } from "../format/units.ts";
import { hazardLines, meltCautions } from "./hazardWords.ts";
import { dewaxCautions } from "./dewaxCautions.ts";
import { liftLines, noWeights, type Weights } from "./liftWords.ts";

export type CautionStep =
  "burnout" | `dewax-${DewaxWay}` | "firing" | "melt" | "pour" | "knock-out" | "finishing";

/** The step whose cautions belong beside an entry's form. */
export const cautionOf: Partial<Record<EntryType, CautionStep>> = {
  "burnout-started": "burnout",
  "burnout-read": "burnout",
  "shell-fired": "firing",
  "shell-preheated": "firing",
  "metal-poured": "pour",
  "shell-knocked-out": "knock-out",
  "piece-finished": "finishing",
};

/** Said wherever a figure could be taken for permission, once a page. */
export const standingCaution =
  "Dipbook is a logbook and its figures are estimates. Local codes, the makers' data sheets and licensed practice come first. No verdict here makes a shell or a pour safe.";

export type CautionsFor = {
  readonly step: CautionStep;
  /** What the metal may hold; null while no metal is named. */
  readonly contents: Contents | null;
  readonly weights?: Weights | undefined;
  /** What is in the shells; null while nobody said, and then all of it is told. */
  readonly material?: BurnoutMaterial | null | undefined;
};

/** Every caution of a step, each once. Common practice, no source, save the limits on what is breathed. */
export function cautionLines(
  { step, contents, weights = noWeights, material = null }: CautionsFor,
  format: Format,
): readonly string[] {
  const metal = (moment: "melt" | "pour" | "knock-out" | "grinding"): readonly string[] =>
    hazardLines(contents ?? unknownMetal, moment, format);
  switch (step) {
    case "burnout":
      return [
        `Pattern smoke is poisonous and it burns. Work outdoors or under a hood, and keep out of the smoke, worst from about ${format.show("temp", 200)} to ${format.show("temp", 550)}.`,
        ...(isOneOf(material, ["foam", "pu-foam", "resin"])
          ? ["Foams give off styrene, some of them cyanide; resins give off acrylates. Stay upwind."]
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
        "Hot kiln and hot shell: face shield, heat gloves, natural-fibre clothes, closed leather shoes. Clear the area.",
        "Ventilate: carbon monoxide has no smell. The kiln's own controller must protect the kiln.",
      ];
    case "melt":
      return [...meltCautions(format), ...liftLines(weights, format), ...metal("melt")];
    case "pour":
      return [
        "Water under molten metal throws it. Shell, sand, ladle, skimmer, moulds and floor must be dry and warm.",
        "Face shield over glasses, leather apron and spats, heat gloves, wool or leather, boots without laces. Two people, a clear path, a bed of dry sand under everything.",
        "Clear the area: onlookers and classes stand well back behind a line, upwind, with someone who keeps them there.",
        ...liftLines(weights, format),
        ...metal("pour"),
        "If the shell leaks: step back, let it run into the sand. Never catch it, never use water.",
      ];
    case "knock-out":
      return [
        "Shell dust is silica, part of it cristobalite. It scars the lungs and you can't see it. Wear a fitted P3 or P100 respirator.",
        "Work outdoors or with extraction, and damp the shell once it is cold. Clean up wet or with a filtered vacuum, never with a broom or air line.",
        "The inside stays hot for hours after the skin is cool. Eyes: shards fly, so clear the area.",
        "Never quench hot metal or a hot shell in water. A hollow casting with water in it throws steam.",
        ...liftLines({ ...weights, crucibleKg: null }, format),
        ...metal("knock-out"),
      ];
    case "finishing":
      return [...finishingLines(format), ...metal("grinding")];
  }
}

/** While no metal is named: what most copper alloys may hold, so that nothing is passed over. */
const unknownMetal: Contents = {
  cu: { low: 0.5, high: 1 },
  zn: { low: 0, high: 0.1 },
  pb: { low: 0, high: 0.05 },
};

/** True where it may be one of these: nobody knows what an unnamed pattern gives off. */
const isOneOf = (material: BurnoutMaterial | null, those: readonly BurnoutMaterial[]): boolean =>
  material === null || material === "other" || those.includes(material);

function finishingLines(format: Format): readonly string[] {
  const limit = ({ limit: { value }, unit }: (typeof fumeLimits)[keyof typeof fumeLimits]): string =>
    `${format.number(value, 3)} ${unit}`;
  return [
    `Grinding frees silica from shell left in corners (limit ${limit(fumeLimits["crystalline-silica"])} over eight hours). Fitted P3 or P100 mask, extraction or wet, eyes and ears covered.`,
    "Blasting: grit without silica, in a closed cabinet, or with supplied air.",
    "Welding and brazing: extraction at the arc. Brazing rods may hold zinc or cadmium.",
    "Caustic for shell left in hollows: face shield, rubber gloves, lye into water and never the other way. Never on aluminium: it gives off hydrogen.",
    `Patina: never acid on or beside a sulphide. It gives hydrogen sulphide (limit ${limit(fumeLimits["hydrogen-sulphide"])} at any moment). It kills, and you stop smelling it. Rinse well between the two.`,
    `Nitrates on a hot piece give nitrogen dioxide (limit ${limit(fumeLimits["nitrogen-dioxide"])} at any moment); the lungs fill hours later. Hood or open air, upwind.`,
    "Cyanide: never, in no recipe.",
  ];
}
