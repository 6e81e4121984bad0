import type { Entry } from "../logbook/entry.ts";
import { parseEntry } from "./entrySchema.ts";
import { refold } from "./rebuild.ts";
import type { ShopDb } from "./shopDb.ts";

const demoKinds = ["piece", "room", "bucket", "recipe"] as const;
const isDemo = (stream: string): boolean => demoKinds.some((kind) => stream.startsWith(`${kind}/demo-`));

/** Puts the demo shop in, in place of one already there. Its streams must all carry ids that start with `demo-`. */
export function loadDemo(db: ShopDb, entries: readonly Entry[]): Promise<void> {
  for (const entry of entries) {
    const parsed = parseEntry(entry);
    if (!isDemo(entry.stream))
      throw new RangeError(`demo entries go into demo- streams, got ${entry.stream}`);
    if (!parsed.ok)
      throw new RangeError(`demo ${entry.type}: ${parsed.fault.field}: ${parsed.fault.expected}`);
  }
  return db.transaction("rw", db.entries, db.projections, db.photos, async () => {
    await removeDemo(db);
    await db.entries.bulkAdd(entries);
    await refold(db, [...new Set(entries.map(({ stream }) => stream))]);
  });
}

/** Takes the demo shop out, with whatever was logged on its pieces meanwhile; real streams stay as they are. */
export function removeDemo(db: ShopDb): Promise<void> {
  return db.transaction("rw", db.entries, db.projections, db.photos, async () => {
    for (const kind of demoKinds) {
      const streams = [`${kind}/demo-`, `${kind}/demo-\uffff`] as const;
      await db.entries.where("[stream+at]").between([streams[0], -Infinity], [streams[1], Infinity]).delete();
      await db.projections
        .where("stream")
        .between(...streams)
        .delete();
    }
    await db.photos.where("id").between("demo-", "demo-\uffff").delete();
  });
}

export async function hasDemo(db: ShopDb): Promise<boolean> {
  const found = await db.projections.where("stream").startsWith("piece/demo-").first();
  return found !== undefined;
}
