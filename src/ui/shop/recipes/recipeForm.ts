import { ranges } from "../../../logbook/entries/ranges.ts";
import type { CoatKind, RecipeBody, RecipeCoat } from "../../../trade/coats.ts";
import { usualFactor, wallFigures } from "../../../trade/wallFigures.ts";
import {
  asGiven,
  figure,
  figureOrNone,
  rowsOf,
  ticked,
  withoutEmpty,
  words,
  wordsOrNone,
  type DraftOf,
} from "../../base/forms/formFields.ts";

/** A coat being edited; `key` keeps it apart from its twins while rows move. */
export const coatFields = {
  key: asGiven(0),
  kind: asGiven<CoatKind>("prime"),
  stuccoId: asGiven<string | null>(null),
  targetDryness: figure("targetDryness", {
    what: "dryness",
    remedy: "95% suits most coats, 99% the last.",
  }),
  leastDryH: figureOrNone("leastDryH", {
    what: "minimum drying time",
    remedy: "Leave it empty for the bucket's or the shop's.",
  }),
};
export type CoatDraft = DraftOf<typeof coatFields>;

const mostCoats = ranges.recipeCoats.high;
export const recipeFields = {
  name: words("name", "Give the recipe a name.", 120),
  coats: rowsOf(coatFields, {
    most: mostCoats,
    none: "Found no coats, expected at least one. Add a coat.",
    tooMany: (count) => `Found ${count} coats, expected ${mostCoats} at most. Remove some.`,
    toRow: ({ kind, stuccoId, targetDryness, leastDryH }): RecipeCoat =>
      withoutEmpty({ kind, stuccoId, targetDryness, leastDryH }),
  }),
  morMPa: figure("morMPa", {
    what: "strength",
    remedy: "Break a fired test bar, or leave the starting value.",
  }),
  safetyFactor: figure("safetyFactor", {
    what: "margin",
    remedy: "3 is usual; 4 for a heavy pour or a first use.",
  }),
  floorMm: figure("floorMm", {
    what: "minimum shell thickness",
    remedy: "It is what handling and burnout need at any head.",
  }),
  polymer: ticked,
  note: wordsOrNone,
};

export const blankRecipe: RecipeBody = {
  name: "",
  coats: [{ kind: "prime", stuccoId: "80-120", targetDryness: 0.95 }],
  morMPa: wallFigures.strengthMPa.value,
  safetyFactor: usualFactor.value,
  floorMm: 6.5,
};

export function draftOfRecipe({
  name,
  coats,
  morMPa,
  safetyFactor,
  floorMm,
  polymer = false,
  note = "",
}: RecipeBody): DraftOf<typeof recipeFields> {
  const rows = coats.map((coat, key) => ({ key, ...coat, leastDryH: coat.leastDryH ?? null }));
  return { name, coats: rows, morMPa, safetyFactor, floorMm, polymer, note };
}

const freshKey = (coats: readonly CoatDraft[]): number => Math.max(-1, ...coats.map(({ key }) => key)) + 1;

/** One more of the same after the given place; at the end where there is none. */
export function coatAdded(coats: readonly CoatDraft[], after: number): readonly CoatDraft[] {
  const like = coats[after] ?? { kind: "prime", stuccoId: "80-120", targetDryness: 0.95, leastDryH: null };
  return coats.toSpliced(after + 1, 0, { ...like, key: freshKey(coats) });
}

export const coatRemoved = (coats: readonly CoatDraft[], at: number): readonly CoatDraft[] =>
  coats.toSpliced(at, 1);

/** The coat at `from` moved by one place; the list as it was where it can't. */
export function coatMoved(coats: readonly CoatDraft[], from: number, by: -1 | 1): readonly CoatDraft[] {
  const coat = coats[from];
  const to = from + by;
  if (coat === undefined || to < 0 || to >= coats.length) return coats;
  return coats.toSpliced(from, 1).toSpliced(to, 0, coat);
}

/** "General bronze copy", then "General bronze copy 2". */
export function freeName(name: string, taken: readonly string[]): string {
  const first = `${name} copy`;
  if (!taken.includes(first)) return first;
  for (let count = 2; ; count += 1) if (!taken.includes(`${first} ${count}`)) return `${first} ${count}`;
}
