import { z } from "zod";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { CoatKind, RecipeBody, RecipeCoat } from "../../../trade/coats.ts";
import type { Format } from "../../base/format/units.ts";
import { figure, figureOrNone, words, wordsOrNone } from "../../base/forms/fieldSchema.ts";

/** A coat being edited; `key` keeps it apart from its twins while rows move. */
export type CoatDraft = {
  readonly key: number;
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
  readonly targetDryness: number | null;
  /** A draft kept from before there was one lacks it. */
  readonly leastDryH?: number | null | undefined;
};
export type RecipeDraft = {
  readonly name: string;
  readonly coats: readonly CoatDraft[];
  readonly morMPa: number | null;
  readonly safetyFactor: number | null;
  readonly floorMm: number | null;
  readonly note: string;
};

export const blankRecipe: RecipeBody = {
  name: "",
  coats: [{ kind: "prime", stuccoId: "80-120", targetDryness: 0.95 }],
  morMPa: 4,
  safetyFactor: 3,
  floorMm: 6.5,
};

export function draftOfRecipe({
  name,
  coats,
  morMPa,
  safetyFactor,
  floorMm,
  note = "",
}: RecipeBody): RecipeDraft {
  return { name, coats: coats.map((coat, key) => ({ key, ...coat })), morMPa, safetyFactor, floorMm, note };
}

export function recipeSchema(format: Format): z.ZodType<RecipeBody> {
  const coat = z
    .object({
      kind: z.enum(["prime", "intermediate", "backup", "seal"]),
      stuccoId: z.string().nullable(),
      targetDryness: figure(format, {
        what: "dryness",
        quantity: "percent",
        range: ranges.targetDryness,
        remedy: "95% suits most coats, 99% the last.",
      }),
      leastDryH: figureOrNone(format, {
        what: "minimum drying time",
        quantity: "h",
        range: ranges.leastDryH,
        remedy: "Leave it empty for the bucket's or the shop's.",
      }).optional(),
    })
    .transform(({ kind, stuccoId, targetDryness, leastDryH }): RecipeCoat => ({
      kind,
      stuccoId,
      targetDryness,
      ...(typeof leastDryH === "number" ? { leastDryH } : {}),
    }));
  return z.object({
    name: words("name", "Give the recipe a name.", 120),
    coats: z
      .array(coat)
      .min(1, { error: "Found no coats, expected at least one. Add a coat." })
      .max(ranges.recipeCoats.high, {
        error: (issue) =>
          `Found ${(issue.input as readonly unknown[]).length} coats, expected ${ranges.recipeCoats.high} at most. Take some out.`,
      }),
    morMPa: figure(format, {
      what: "strength",
      quantity: "MPa",
      range: ranges.morMPa,
      remedy: "Break a fired test bar, or leave the starting value.",
    }),
    safetyFactor: figure(format, {
      what: "safety factor",
      quantity: "plain",
      range: ranges.safetyFactor,
      remedy: "3 is the starting value; 4 for a heavy pour or a first use.",
    }),
    floorMm: figure(format, {
      what: "least wall",
      quantity: "mm",
      range: ranges.floorMm,
      remedy: "It is what handling and burnout need whatever the sum says.",
    }),
    note: wordsOrNone,
  });
}

const freshKey = (coats: readonly CoatDraft[]): number => Math.max(-1, ...coats.map(({ key }) => key)) + 1;

/** One more of the same after the given place; at the end where there is none. */
export function coatAdded(coats: readonly CoatDraft[], after: number): readonly CoatDraft[] {
  const like = coats[after] ?? { kind: "prime", stuccoId: "80-120", targetDryness: 0.95 };
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
