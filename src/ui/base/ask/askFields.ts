import { ranges } from "../../../logbook/entries/ranges.ts";
import type { WallPart } from "../../../logbook/entries/pieceBodies.ts";
import { asGiven, figureOrNull, type ReadOf } from "../forms/formFields.ts";

const headMm = { low: ranges.headM.low * 1000, high: ranges.headM.high * 1000 };
const span = { remedy: "Measure it on the pattern." };

/** What the shell check needs of a plan; the plan's form and the single questions ask it alike. */
export const wallFields = {
  headMm: figureOrNull("headM", {
    what: "head",
    remedy: "Measure from the lip of the cup straight down to the lowest part, or leave it empty.",
    own: { quantity: "mm", range: headMm, why: "a head is measured in the unit of the other lengths" },
  }),
  part: asGiven<"flat" | "rim" | "round" | null>(null),
  widthMm: figureOrNull("widthMm", { what: "width", ...span }),
  lengthMm: figureOrNull("lengthMm", { what: "length", ...span }),
  diameterMm: figureOrNull("diameterMm", { what: "diameter", ...span }),
};

/** What a metal sum needs of it. */
export const metalFields = {
  alloyId: asGiven<string | null>(null),
  metalKg: figureOrNull("metalKg", {
    what: "metal",
    remedy: "Correct it, or leave it empty until you know.",
  }),
};

export const partOptions = [
  { value: "flat", label: "A flat panel", hint: "A plate, a base, a broad back." },
  { value: "rim", label: "An open rim", hint: "A flat part with one edge free." },
  { value: "round", label: "A tube", hint: "A limb, a vessel, the cup." },
] as const;

/** The weakest part with its sizes; null while one of them is missing. */
export function partOf({
  part,
  widthMm,
  lengthMm,
  diameterMm,
}: Omit<ReadOf<typeof wallFields>, "headMm">): WallPart | null {
  if ((part === "flat" || part === "rim") && widthMm !== null && lengthMm !== null)
    return { kind: part, widthMm, lengthMm };
  if (part === "round" && diameterMm !== null) return { kind: "round", diameterMm };
  return null;
}
