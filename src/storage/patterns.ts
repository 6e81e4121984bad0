import { isOutOfSpace } from "./quota.ts";
import type { PatternRow, ShopDb } from "./rows.ts";

export type PatternHead = Pick<PatternRow, "id" | "name" | "savedAt">;

/** Keeps a pattern, in place of one of the same id; it is in the store when this resolves. */
export async function putPattern(
  db: ShopDb,
  row: PatternRow,
): Promise<{ readonly ok: true } | { readonly ok: false; readonly failure: "out-of-space" }> {
  try {
    await db.transaction("rw", db.patterns, () => db.patterns.put(row));
    return { ok: true };
  } catch (error) {
    if (isOutOfSpace(error)) return { ok: false, failure: "out-of-space" };
    throw error;
  }
}

export async function getPattern(db: ShopDb, id: string): Promise<PatternRow | null> {
  return (await db.patterns.get(id)) ?? null;
}

/** The patterns kept, newest first. Their meshes are read one at a time and let go again: together they are too large. */
export async function listPatterns(db: ShopDb): Promise<readonly PatternHead[]> {
  const heads: PatternHead[] = [];
  await db.patterns
    .orderBy("savedAt")
    .reverse()
    .each(({ id, name, savedAt }) => heads.push({ id, name, savedAt }));
  return heads;
}

export async function removePattern(db: ShopDb, id: string): Promise<void> {
  await db.transaction("rw", db.patterns, () => db.patterns.delete(id));
}
