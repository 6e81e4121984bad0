import type { PiecePlan, PlanChanges } from "../../../logbook/entries/pieceBodies.ts";
import type { GeometryClass } from "../../../trade/geometryClasses.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import type { Format } from "../../base/format/units.ts";
import {
  asGiven,
  checkFields,
  figureOrNull,
  shortWords,
  words,
  type DraftOf,
  type ReadOf,
} from "../../base/forms/formFields.ts";
import { metalFields, partOf, wallFields } from "../../base/ask/askFields.ts";
import type { EntryForm } from "../../base/forms/useEntryForm.ts";
import { coreFields, coreOf, draftOfCore } from "./planCore.ts";
import { draftOfSupport, supportFields, supportOf } from "./planSupport.ts";

const remedy = "Correct it, or leave it empty until you know.";

/** What is asked of a piece; all but the name may be empty, which is "not known". */
export const planFields = {
  name: words("name", "Give the piece a name.", 120),
  material: asGiven<PatternMaterial | null>(null),
  ...metalFields,
  metalBy: asGiven<"mass" | "volume">("mass"),
  metalLitre: figureOrNull("metalLitre", { what: "metal", remedy }),
  ...wallFields,
  ...supportFields,
  ...coreFields,
  areaM2: figureOrNull("areaM2", { what: "surface", remedy }),
  recipeId: asGiven<string | null>(null),
  geometry: asGiven<GeometryClass | null>(null),
  pockets: asGiven<readonly GeometryClass[]>([]),
  roomId: asGiven<string | null>(null),
  note: shortWords(4000, "Found more than 4000 letters, expected fewer. Shorten the note."),
};
export type PlanForm = EntryForm<typeof planFields, unknown>;
type PlanDraft = DraftOf<typeof planFields>;
type Read = ReadOf<typeof planFields>;

export function draftOfPlan(plan: PiecePlan, roomId: string | null): PlanDraft {
  const round = plan.part?.kind === "round" ? plan.part : null;
  const flat = plan.part?.kind === "round" ? null : (plan.part ?? null);
  return {
    name: plan.name,
    material: plan.material ?? null,
    alloyId: plan.alloyId ?? null,
    metalBy: plan.metalLitre !== undefined && plan.metalKg === undefined ? "volume" : "mass",
    metalKg: plan.metalKg ?? null,
    metalLitre: plan.metalLitre ?? null,
    headMm: plan.headM === undefined ? null : plan.headM * 1000,
    part: plan.part?.kind ?? null,
    widthMm: flat?.widthMm ?? null,
    lengthMm: flat?.lengthMm ?? null,
    diameterMm: round?.diameterMm ?? null,
    ...draftOfSupport(plan),
    ...draftOfCore(plan),
    areaM2: plan.areaM2 ?? null,
    recipeId: plan.recipeId ?? null,
    geometry: plan.geometry ?? null,
    pockets: plan.pockets ?? [],
    roomId,
    note: plan.note ?? "",
  };
}

/** Form to plan; every key but the name may be null, which is "not known". */
export function readPlan(draft: PlanDraft, format: Format) {
  const read = checkFields(planFields, draft, format, ({ part, widthMm, lengthMm }) => {
    if ((part !== "flat" && part !== "rim") || (widthMm === null) === (lengthMm === null)) return {};
    const missing = widthMm === null ? "width" : "length";
    return {
      [`${missing}Mm`]: `Enter both sides of the flat. Give the ${missing}, or clear the other.`,
    };
  });
  return read.ok
    ? ({ ok: true, value: { plan: planOf(read.value), roomId: read.value.roomId } } as const)
    : read;
}

/** What the form asks: the mesh, and how well the metal is known, are told elsewhere, and it must not clear them. */
type Asked = Omit<PiecePlan, "patternId" | "metalKnown">;
type WholePlan = { readonly [K in keyof Asked]-?: Exclude<Asked[K], undefined> | null };

function planOf(draft: Read): WholePlan {
  const part = partOf(draft);
  return {
    name: draft.name,
    material: draft.material,
    alloyId: draft.alloyId,
    metalKg: draft.metalBy === "mass" ? draft.metalKg : null,
    metalLitre: draft.metalBy === "volume" ? draft.metalLitre : null,
    headM: draft.headMm === null ? null : draft.headMm / 1000,
    part,
    support: supportOf(draft, part?.kind),
    core: coreOf(draft),
    areaM2: draft.areaM2,
    recipeId: draft.recipeId,
    geometry: draft.geometry,
    pockets: pocketsOf(draft),
    note: draft.note === "" ? null : draft.note,
  };
}

/** The named place is not one of the further ones, however the ticks came to stand. */
function pocketsOf({ geometry, pockets }: Read): WholePlan["pockets"] {
  const further = pockets.filter((pocket) => pocket !== (geometry ?? "open"));
  return further.length === 0 ? null : further;
}

/** What differs from the plan that stands; empty when nothing does. */
export function changesBetween(before: PiecePlan, after: WholePlan): PlanChanges {
  const keys = Object.keys(after) as (keyof Asked)[];
  const differs = (key: keyof Asked) => JSON.stringify(before[key] ?? null) !== JSON.stringify(after[key]);
  return Object.fromEntries(keys.filter(differs).map((key) => [key, after[key]]));
}
