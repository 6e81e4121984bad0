import { z } from "zod";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { PiecePlan, PlanChanges } from "../../../logbook/entries/pieceBodies.ts";
import type { GeometryClass } from "../../../trade/geometryClasses.ts";
import type { PatternMaterial } from "../../../trade/patternMaterials.ts";
import type { Format } from "../../base/format/units.ts";
import { figureOrNone, words } from "../../base/forms/fieldSchema.ts";

export type PlanDraft = {
  readonly name: string;
  readonly material: PatternMaterial | null;
  readonly alloyId: string | null;
  readonly metalBy: "mass" | "volume";
  readonly metalKg: number | null;
  readonly metalLitre: number | null;
  readonly headMm: number | null;
  readonly part: "flat" | "round" | null;
  readonly widthMm: number | null;
  readonly lengthMm: number | null;
  readonly diameterMm: number | null;
  readonly areaM2: number | null;
  readonly recipeId: string | null;
  readonly geometry: GeometryClass | null;
  readonly pockets: readonly GeometryClass[];
  readonly roomId: string | null;
  readonly note: string;
};

export function draftOfPlan(plan: PiecePlan, roomId: string | null): PlanDraft {
  const flat = plan.part?.kind === "flat" ? plan.part : null;
  const round = plan.part?.kind === "round" ? plan.part : null;
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
    areaM2: plan.areaM2 ?? null,
    recipeId: plan.recipeId ?? null,
    geometry: plan.geometry ?? null,
    pockets: plan.pockets ?? [],
    roomId,
    note: plan.note ?? "",
  };
}

const headMm = { low: ranges.headM.low * 1000, high: ranges.headM.high * 1000 };
const orEmpty = "Correct it, or leave it empty until you know.";

/** Form to plan; every key but the name may be null, which is "not known". */
export function planSchema(format: Format) {
  const span = (what: string) =>
    figureOrNone(format, {
      what,
      quantity: "mm",
      range: ranges.spanMm,
      remedy: "Measure it on the pattern.",
    });
  return z
    .object({
      name: words("name", "Give the piece a name you would call across the shop.", 120),
      material: z.enum(["wax", "pla", "pvb", "resin", "foam", "other"]).nullable(),
      alloyId: z.string().nullable(),
      metalBy: z.enum(["mass", "volume"]),
      metalKg: figureOrNone(format, {
        what: "metal",
        quantity: "kg",
        range: ranges.metalKg,
        remedy: orEmpty,
      }),
      metalLitre: figureOrNone(format, {
        what: "metal",
        quantity: "litre",
        range: ranges.metalLitre,
        remedy: orEmpty,
      }),
      headMm: figureOrNone(format, {
        what: "head",
        quantity: "mm",
        range: headMm,
        remedy: "Measure from the lip of the cup straight down to the lowest wall, or leave it empty.",
      }),
      part: z.enum(["flat", "round"]).nullable(),
      widthMm: span("width"),
      lengthMm: span("length"),
      diameterMm: span("diameter"),
      areaM2: figureOrNone(format, {
        what: "surface",
        quantity: "m2",
        range: ranges.areaM2,
        remedy: orEmpty,
      }),
      recipeId: z.string().nullable(),
      geometry: z.enum(["open", "corner", "recess", "blind"]).nullable(),
      pockets: z.array(z.enum(["open", "corner", "recess", "blind"])).readonly(),
      roomId: z.string().nullable(),
      note: z
        .string()
        .trim()
        .max(4000, { error: "Found more than 4000 letters, expected fewer. Shorten the note." }),
    })
    .superRefine(({ part, widthMm, lengthMm }, context) => {
      if (part !== "flat" || (widthMm === null) === (lengthMm === null)) return;
      const missing = widthMm === null ? "width" : "length";
      context.addIssue({
        code: "custom",
        path: [`${missing}Mm`],
        message: `Found only one side of the flat, expected both. Give the ${missing}, or clear the other.`,
      });
    })
    .transform((draft) => ({ plan: planOf(draft), roomId: draft.roomId }));
}

type Read = Omit<PlanDraft, "name"> & { readonly name: string };
/** What the form asks: the mesh is told elsewhere, and it must not clear it. */
type Asked = Omit<PiecePlan, "patternId">;
type WholePlan = { readonly [K in keyof Asked]-?: Exclude<Asked[K], undefined> | null };

function planOf(draft: Read): WholePlan {
  return {
    name: draft.name,
    material: draft.material,
    alloyId: draft.alloyId,
    metalKg: draft.metalBy === "mass" ? draft.metalKg : null,
    metalLitre: draft.metalBy === "volume" ? draft.metalLitre : null,
    headM: draft.headMm === null ? null : draft.headMm / 1000,
    part: partOf(draft),
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

function partOf({ part, widthMm, lengthMm, diameterMm }: Read): WholePlan["part"] {
  if (part === "flat" && widthMm !== null && lengthMm !== null) return { kind: "flat", widthMm, lengthMm };
  if (part === "round" && diameterMm !== null) return { kind: "round", diameterMm };
  return null;
}

/** What differs from the plan that stands; empty when nothing does. */
export function changesBetween(before: PiecePlan, after: WholePlan): PlanChanges {
  const keys = Object.keys(after) as (keyof Asked)[];
  const differs = (key: keyof Asked) => JSON.stringify(before[key] ?? null) !== JSON.stringify(after[key]);
  return Object.fromEntries(keys.filter(differs).map((key) => [key, after[key]]));
}
