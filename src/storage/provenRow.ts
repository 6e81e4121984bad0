import { z } from "zod";
import type { ProvenLoad } from "../logbook/piece/piece.ts";

/** Where what poured shells bore is kept, beside the settings: it can be had from the log at any time. */
export const provenKey = "proven";

const schema = z.object({
  /** Counts up when the sums behind it change: what an older count made is worked out anew. */
  sums: z.literal(1),
  loads: z.array(
    z.object({
      pieceId: z.string(),
      recipeId: z.string(),
      loadMPa: z.number().positive(),
      held: z.boolean(),
    }),
  ),
});

export function provenFromRow(value: unknown): readonly ProvenLoad[] {
  const read = schema.safeParse(value);
  return read.success ? read.data.loads : [];
}

export const rowOfProven = (loads: readonly ProvenLoad[]): z.infer<typeof schema> => ({
  sums: 1,
  loads: [...loads],
});
