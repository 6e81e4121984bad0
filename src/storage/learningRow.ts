import { z } from "zod";
import type { LearnedDrying } from "../logbook/drying/learnedDrying.ts";

/** Where what was learned is kept, beside the settings. */
export const learningKey = "learning";

/**
 * Counts up whenever the sums behind what is learned change: what an older count made is not trusted, and is worked out
 * anew from the log.
 */
export const learningSums = 2;

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
  sums: z.literal(learningSums),
  /** Stands for the pairs it was learned from. */
  mark: z.string(),
  shop: factor,
  groups: z.array(z.tuple([z.string(), factor])),
  scatter: z.number().nonnegative(),
  without: z.array(z.tuple([z.string(), z.object({ factor, shopPairs: z.number().int().nonnegative() })])),
});

export type LearningRow = z.infer<typeof schema>;

/** What was learned, as it is kept; null where nothing is, or what is kept can't be read: it is worked out again. */
export function learnedFromRow(value: unknown): (LearnedDrying & { readonly mark: string }) | null {
  const read = schema.safeParse(value);
  if (!read.success) return null;
  const { mark, shop, groups, scatter, without } = read.data;
  return { mark, shop, groups: new Map(groups), scatter, without: new Map(without) };
}

export const rowOfLearned = (
  { shop, groups, scatter, without }: LearnedDrying,
  mark: string,
): LearningRow => ({
  sums: learningSums,
  mark,
  shop,
  groups: [...groups],
  scatter,
  without: [...without],
});
