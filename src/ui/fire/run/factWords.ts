import type { FactsTogether, FireFacts } from "../../../logbook/fire/fireFacts.ts";
import { patternMaterials } from "../../../trade/patternMaterials.ts";
import { firingPractice } from "../../../physics/heat/firingLimits.ts";
import type { Format } from "../../base/format/units.ts";
import type { PlanInputs } from "../../../logbook/fire/planDraft.ts";

type Sources = Readonly<
  Record<"material" | "patternKg" | "wallMm" | "shellKg" | "damp" | "firedBefore" | "seenAbove1100", string>
>;

const massWords = {
  weighed: "weighed bare",
  printed: "estimate: printed with these walls and infill",
  mesh: "estimate: solid, from its 3D file",
  "metal-volume": "estimate: solid, from the metal’s volume",
  film: "estimate: the wax film that stays",
} as const;
const shellWords = (format: Format) => ({
  area: "area × thickness × density",
  "mesh-area": "3D file’s area × thickness × density",
  starting: `area not known: starting value, ${format.show("kg", 3)} a shell`,
});
const dampWords = (format: Format) => ({
  patched: "repaired since it was last fired",
  drying: "by the drying of its last coat",
  fired: "fired since its last coat",
  rinsed: `rinsed: dry it ${format.show("min", firingPractice.patchedHoldMin)} at ${format.show("temp", firingPractice.steamHoldC)} to ${format.show("temp", firingPractice.steamToC)} first`,
  cold: "fired, then cold for more than a day: shells take up water from the air",
  "no-coat": "no coat in the log",
});
const dampNames = { dry: "dry", damp: "not known to be dry", "patched-wet": "wet" } as const;

/** Where each figure of the plan comes from; once it is said over, what the log has. */
export function sourceWords(
  facts: readonly FireFacts[],
  {
    together,
    told,
    format,
  }: { readonly together: FactsTogether; readonly told: PlanInputs; readonly format: Format },
): Sources {
  const several = facts.length > 1;
  const each = <T>(pick: (one: FireFacts) => T, say: (value: T) => string): string => {
    const said = facts.map((one) => (several ? `${one.name}: ${say(pick(one))}` : say(pick(one))));
    return several ? said.join("; ") : (said[0] ?? "");
  };
  const as = (isSaid: boolean, words: string): string =>
    isSaid ? `Your figure. By the log: ${words}` : words;
  const materialName = (one: FireFacts["material"]): string =>
    one === null ? "not set" : patternMaterials[one].label;
  return {
    material: as(
      told.material !== undefined,
      `${each(({ material }) => material, materialName)} by its plan.${together.materials.length > 1 ? " They differ: fire them separately, or choose the most demanding." : ""}`,
    ),
    patternKg: as(
      told.patternKg !== undefined,
      each(
        ({ pattern }) => pattern,
        (pattern) =>
          pattern === null
            ? "not known: enter a weight, or the metal’s volume in its plan."
            : `${format.show("kg", pattern.massKg)}, ${massWords[pattern.source]}.`,
      ),
    ),
    wallMm: as(
      told.wallMm !== undefined,
      `${format.show("mm", together.wallMm)} on ${together.thickest}, ${facts.some(({ wallBasis }) => wallBasis === "measured") ? "by its caliper reading" : "by the coats’ table"}; inside corners can be 50% thicker.`,
    ),
    shellKg: as(
      told.shellKg !== undefined,
      each(
        ({ shell }) => shell,
        (shell) => `${format.show("kg", shell.massKg)}, ${shellWords(format)[shell.source]}`,
      ),
    ),
    damp: as(
      told.damp !== undefined,
      `${several ? `${together.dampest} is ` : ""}${dampNames[together.damp]}, ${
        dampWords(format)[facts.find(({ name }) => name === together.dampest)?.damp.source ?? "drying"]
      }.`,
    ),
    firedBefore: as(
      told.firedBefore !== undefined,
      together.firedBefore ? "A firing is in its log." : "No firing in the log.",
    ),
    seenAbove1100: as(
      told.seenAbove1100 !== undefined,
      together.seenAbove1100 ? "By a firing or a reading in its log." : "No such heat in the log.",
    ),
  };
}
