import type { PlanChanges, WallPart } from "../../../logbook/entries/pieceBodies.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import { patternMaterials } from "../../../trade/patternMaterials.ts";
import type { EntryNames } from "./entryNames.ts";
import { headText, volumeText } from "./figureText.ts";
import { counts } from "../words/counts.ts";
import type { Format, Quantity } from "./units.ts";

/** "flat 120 mm × 200 mm", "round 80 mm". */
export function partWords(part: WallPart, format: Format): string {
  const show = (mm: number): string => format.show("mm", mm);
  return part.kind === "round"
    ? `round ${show(part.diameterMm)}`
    : `${part.kind === "rim" ? "open rim" : "flat"} ${show(part.widthMm)} × ${show(part.lengthMm)}`;
}

/** What a plan says, a part each; a key that is null says it is no longer known. */
export function planWords(
  plan: PlanChanges,
  { format, recipe, alloy }: Pick<EntryNames, "format" | "recipe" | "alloy">,
): readonly string[] {
  const say = <T>(
    name: string,
    value: T | null | undefined,
    show: (value: T) => string,
  ): readonly string[] =>
    value === undefined ? [] : [value === null ? `${name} not known` : `${name} ${show(value)}`];
  const sized = (name: string, quantity: Quantity, value: number | null | undefined): readonly string[] =>
    say(name, value, (known) => format.show(quantity, known));
  return [
    ...say("named", plan.name, (name) => name),
    ...say("pattern of", plan.material, (material) => inSentence(patternMaterials[material].label)),
    ...say("alloy", plan.alloyId, alloy),
    ...sized("metal", "kg", plan.metalKg),
    ...say("metal", plan.metalLitre, (litre) => volumeText(litre, format)),
    ...say("metal is", plan.metalKnown, (known) => known),
    ...say("head", plan.headM, (m) => headText(m, format)),
    ...say("wall part", plan.part, (part) => partWords(part, format)),
    ...say("support", plan.support, (support) => supportWords(support, format)),
    ...say("core", plan.core, (core) => coreWords(core, format)),
    ...sized("area", "m2", plan.areaM2),
    ...say("recipe", plan.recipeId, recipe),
    ...say("shape", plan.geometry, (geometry) => inSentence(geometryClasses[geometry].label)),
    ...say("slower places", plan.pockets, (pockets) =>
      pockets.map((pocket) => inSentence(geometryClasses[pocket].label)).join(", "),
    ),
    ...(plan.patternId === undefined ? [] : [plan.patternId === null ? "no mesh" : "begun from a mesh"]),
    ...(plan.note === undefined || plan.note === null ? [] : [plan.note]),
  ];
}

/** "ribs every 150 mm, vibrated sand in a box": what takes load off the flat. */
function supportWords(support: NonNullable<PlanChanges["support"]>, format: Format): string {
  const { ribEveryMm, crownMm, sand, edges } = support;
  const said = [
    ...(ribEveryMm === undefined ? [] : [`ribs every ${format.show("mm", ribEveryMm)}`]),
    ...(crownMm === undefined ? [] : [`crowned by ${format.show("mm", crownMm)}`]),
    ...(sand === undefined ? [] : [sand === "loose" ? "loose sand" : "vibrated sand in a box"]),
    ...(edges === undefined ? [] : ["edges held by the other face"]),
  ];
  return said.length === 0 ? "none" : said.join(", ");
}

/** "1.2 L, 6 pins, mouth 40 mm". */
function coreWords({ litre, pins, mouthMm }: NonNullable<PlanChanges["core"]>, format: Format): string {
  const said = [
    volumeText(litre, format),
    ...(pins === undefined ? [] : [counts.pins(pins)]),
    ...(mouthMm === undefined ? [] : [`mouth ${format.show("mm", mouthMm)}`]),
  ];
  return said.join(", ");
}

/** A label as it stands within a line: "Wax" becomes "wax", "PLA" stays. */
function inSentence(label: string): string {
  return /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}
