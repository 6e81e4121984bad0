import type { ShopDb } from "./rows.ts";

/** What was being written under a key, as it was given; null when there is nothing. The reader checks its shape. */
export async function readDraft(db: ShopDb, key: string): Promise<unknown> {
  return (await db.drafts.get(key))?.value ?? null;
}

export async function writeDraft(db: ShopDb, key: string, value: unknown): Promise<void> {
  await db.drafts.put({ key, value });
}

export async function dropDraft(db: ShopDb, key: string): Promise<void> {
  await db.drafts.delete(key);
}

/** Whether anything is half-written, so that an update must ask first. */
export async function hasDrafts(db: ShopDb): Promise<boolean> {
  return (await db.drafts.limit(1).primaryKeys()).length > 0;
}
