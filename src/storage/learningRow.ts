import { z } from "zod";
import type { ShopLearning } from "../physics/shopLearning.ts";

/** Where what was learned is kept, beside the settings. */
export const learningKey = "learning";

const factor = z.object({
  factor: z.number().positive(),
  low: z.number().positive(),
  high: z.number().positive(),
  lnMean: z.number(),
  lnSd: z.number().nonnegative(),
  scatter: z.number().nonnegative(),
  safeMultiplier: z.number().positive(),
  pairs: z.number().int().nonnegative(),
  limited: z.boolean(),
});
const schema = z.object({
  shop: factor,
  groups: z.array(z.tuple([z.string(), factor])),
  scatter: z.number().nonnegative(),
});

export type LearningRow = z.infer<typeof schema>;

/** What was learned, as it is kept; null where nothing is, or what is kept can't be read: it is worked out again. */
export function learnedFromRow(value: unknown): ShopLearning | null {
  const read = schema.safeParse(value);
  return read.success ? { ...read.data, groups: new Map(read.data.groups) } : null;
}
