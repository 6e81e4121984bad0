import { z } from "zod";
import type { EntryBodies } from "../../logbook/entry.ts";
import { ranges } from "../../logbook/ranges.ts";
import type { Format } from "../format/units.ts";
import { figureOrNone, oneOf, words, wordsOrNone } from "../log/gate.ts";

export type BucketUse = EntryBodies["bucket-set"]["use"];
export const bucketUses = [
  { value: "prime", label: "Prime", hint: "Fine flour, the face of the casting." },
  { value: "backup", label: "Backup", hint: "The coats that carry." },
  { value: "single", label: "One for all", hint: "A single slurry for every coat." },
  { value: "seal", label: "Seal", hint: "The last dip, without stucco." },
] as const satisfies readonly { value: BucketUse; label: string; hint: string }[];

export type BucketDraft = { readonly name: string; readonly use: BucketUse | null; readonly slurry: string };

export const bucketSchema: z.ZodType<EntryBodies["bucket-set"]> = z.object({
  name: words("name", "Write what stands on the bucket.", 120),
  use: oneOf(["prime", "backup", "single", "seal"], "what it is for"),
  slurry: z.string().trim().max(200, { error: "Found more than 200 letters, expected fewer. Shorten it." }),
});

export type ReadingDraft = {
  readonly cup: string;
  readonly cupS: number | null;
  readonly slurryC: number | null;
  readonly densityGCm3: number | null;
  readonly pH: number | null;
  readonly note: string;
};
export const noReading: ReadingDraft = {
  cup: "",
  cupS: null,
  slurryC: null,
  densityGCm3: null,
  pH: null,
  note: "",
};

const orEmpty = "Correct it, or leave it empty if it was not measured.";

/** A reading: any of its figures, but not none of them. */
export function readingSchema(format: Format): z.ZodType<EntryBodies["bucket-read"]> {
  return z
    .object({
      cup: wordsOrNone,
      cupS: figureOrNone(format, { what: "cup time", quantity: "s", range: ranges.cupS, remedy: orEmpty }),
      slurryC: figureOrNone(format, {
        what: "slurry temperature",
        quantity: "temp",
        range: ranges.slurryC,
        remedy: orEmpty,
      }),
      densityGCm3: figureOrNone(format, {
        what: "density",
        quantity: "density",
        range: ranges.densityGCm3,
        remedy: orEmpty,
      }),
      pH: figureOrNone(format, { what: "pH", quantity: "plain", range: ranges.pH, remedy: orEmpty }),
      note: wordsOrNone,
    })
    .superRefine((reading, context) => {
      const { cup: _, ...said } = reading;
      if (Object.values(said).every((value) => value === null || value === undefined))
        context.addIssue({
          code: "custom",
          path: ["cupS"],
          message:
            "Found nothing to log, expected at least one figure or a note. Time the cup, or write what was done.",
        });
    })
    .transform(({ cup, cupS, slurryC, densityGCm3, pH, note }) => ({
      cup,
      cupS: cupS ?? undefined,
      slurryC: slurryC ?? undefined,
      densityGCm3: densityGCm3 ?? undefined,
      pH: pH ?? undefined,
      note,
    }));
}
