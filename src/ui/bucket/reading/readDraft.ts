import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { cupMean } from "../../../physics/slurry/cupReading.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";

/** A reading under way, as it stands in the draft: a dead battery costs nothing. Null is not measured. */
export type ReadDraft = {
  readonly step: ReadStep;
  readonly cupId: string | null;
  readonly dips: readonly number[];
  readonly slurryC: number | null;
  readonly how: "weighed" | "instrument";
  readonly weighedG: number | null;
  readonly weighedMl: number;
  readonly densityGCm3: number | null;
  readonly pH: number | null;
  readonly liquorGCm3: number | null;
  readonly plateG: number | null;
  readonly plateCm2: number;
  readonly gel: "gelled" | "liquid" | null;
  readonly gelH: number | null;
  readonly bacteriaPerMl: number | null;
  readonly ovenSolids: number | null;
  /** Looked at and smelt; with the signs that were found. */
  readonly looked: boolean;
  readonly signs: readonly Sign[];
  readonly asLeft: boolean;
  readonly photos: readonly string[];
};

export type Sign = "smell" | "skin" | "lumps" | "foam";
export type DipStep = "dip-1" | "dip-2" | "dip-3";
export type NumberStep =
  | "slurryC"
  | "weighedG"
  | "weighedMl"
  | "densityGCm3"
  | "pH"
  | "liquorGCm3"
  | "plateG"
  | "plateCm2"
  | "gelH"
  | "bacteriaPerMl"
  | "ovenSolids";
export type ReadStep = DipStep | NumberStep | "cup" | "density" | "sum" | "more" | "gel" | "looks" | "photo";

export const emptyReading: ReadDraft = {
  step: "dip-1",
  cupId: null,
  dips: [],
  slurryC: null,
  how: "weighed",
  weighedG: null,
  weighedMl: 100,
  densityGCm3: null,
  pH: null,
  liquorGCm3: null,
  plateG: null,
  plateCm2: 200,
  gel: null,
  gelH: null,
  bacteriaPerMl: null,
  ovenSolids: null,
  looked: false,
  signs: [],
  asLeft: false,
  photos: [],
};

const dipNumber: Readonly<Record<DipStep, 1 | 2 | 3>> = { "dip-1": 1, "dip-2": 2, "dip-3": 3 };
export const dipPlace = (step: DipStep): number => dipNumber[step] - 1;

/** The step after this one, once it is answered. Two dips that agree need no third. */
export function stepAfter(draft: ReadDraft, step: ReadStep): ReadStep {
  switch (step) {
    case "cup":
      return "dip-1";
    case "dip-1":
      return "dip-2";
    case "dip-2":
      return cupMean(draft.dips).ask === "third" ? "dip-3" : "slurryC";
    case "dip-3":
      return "slurryC";
    case "slurryC":
      return "density";
    case "density":
      return "pH";
    case "weighedMl":
      return "weighedG";
    case "weighedG":
    case "densityGCm3":
      return "pH";
    case "pH":
      return "sum";
    case "gel":
      return "gelH";
    case "plateCm2":
      return "plateG";
    case "liquorGCm3":
    case "plateG":
    case "gelH":
    case "bacteriaPerMl":
    case "ovenSolids":
    case "looks":
    case "photo":
      return "more";
    case "more":
      return "sum";
    case "sum":
      return "sum";
  }
}

/** The step after one that was left out: without the first dip there is no second. */
export function stepPast(draft: ReadDraft, step: ReadStep): ReadStep {
  if (step === "dip-1" || step === "dip-2" || step === "dip-3") return "slurryC";
  return step === "gel" ? "more" : stepAfter(draft, step);
}

const before: Readonly<Record<ReadStep, ReadStep | null>> = {
  cup: "dip-1",
  "dip-1": null,
  "dip-2": "dip-1",
  "dip-3": "dip-2",
  slurryC: "dip-1",
  density: "slurryC",
  weighedG: "density",
  weighedMl: "density",
  densityGCm3: "density",
  pH: "density",
  sum: "pH",
  more: "sum",
  liquorGCm3: "more",
  plateG: "more",
  plateCm2: "plateG",
  gel: "more",
  gelH: "gel",
  bacteriaPerMl: "more",
  ovenSolids: "more",
  looks: "more",
  photo: "more",
};
/** Null at the first: back leaves the reading. */
export const stepBefore = (step: ReadStep): ReadStep | null => before[step];

/** Nothing was measured, seen or photographed. */
export const isNothing = (draft: ReadDraft): boolean =>
  Object.keys(bodyOf(draft, null)).every((key) => key === "cupId" || key === "asLeft" || key === "name");

/** What goes into the log: raw numbers, nothing reckoned. */
export function bodyOf(draft: ReadDraft, name: string | null): EntryBodies["bucket-read"] {
  const { dips, how, gel, gelH, looked, signs, photos, plateG } = draft;
  const isWeighed = how === "weighed" && draft.weighedG !== null;
  const told = (sign: Sign): boolean | undefined => (looked ? signs.includes(sign) : undefined);
  return withoutEmpty({
    cupId: dips.length === 0 ? undefined : (draft.cupId ?? undefined),
    cupS: cupMean(dips).meanS ?? undefined,
    dipsS: dips.length === 0 ? undefined : dips,
    slurryC: draft.slurryC ?? undefined,
    densityGCm3: how === "instrument" ? (draft.densityGCm3 ?? undefined) : undefined,
    weighedG: isWeighed ? (draft.weighedG ?? undefined) : undefined,
    weighedMl: isWeighed ? draft.weighedMl : undefined,
    pH: draft.pH ?? undefined,
    liquorGCm3: draft.liquorGCm3 ?? undefined,
    ovenSolids: draft.ovenSolids ?? undefined,
    plateG: plateG ?? undefined,
    plateCm2: plateG === null ? undefined : draft.plateCm2,
    gelledAfterH: gel === "gelled" ? (gelH ?? undefined) : undefined,
    liquidForH: gel === "liquid" ? (gelH ?? undefined) : undefined,
    bacteriaPerMl: draft.bacteriaPerMl ?? undefined,
    smell: looked ? (signs.includes("smell") ? "foul" : "none") : undefined,
    skin: told("skin"),
    lumps: told("lumps"),
    foam: told("foam"),
    asLeft: draft.asLeft ? true : undefined,
    name: name ?? undefined,
    photos: photos.length === 0 ? undefined : photos,
  });
}
