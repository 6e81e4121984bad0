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

/** Ids of the patterns kept for which `suits` is true, read one at a time too. */
export async function patternIds(db: ShopDb, suits: (kept: unknown) => boolean): Promise<readonly string[]> {
  const ids: string[] = [];
  await db.patterns.each(({ id, kept }) => {
    if (suits(kept)) ids.push(id);
  });
  return ids;
}

export async function removePattern(db: ShopDb, id: string): Promise<void> {
  await db.transaction("rw", db.patterns, () => db.patterns.delete(id));
}
