import { type Entry, shopStream } from "../logbook/entries/entry.ts";
import { demoLinesOf, isDemoId, isDemoThing } from "./demoShopLines.ts";
import { parseEntry } from "./entrySchema.ts";
import { learningKey } from "./learningRow.ts";
import { provenKey } from "./provenRow.ts";
import { refold } from "./rebuild.ts";
import type { PhotoRow, ShopDb, StoredEntry } from "./rows.ts";

const demoKinds = ["piece", "room", "bucket", "recipe", "run", "melt", "pour"] as const;
const isDemo = (stream: string): boolean => demoKinds.some((kind) => stream.startsWith(`${kind}/demo-`));

/**
 * Puts the demo shop in, in place of one already there. Its streams and its photos must all carry ids that start with
 * `demo-`; in the shop's own stream it may tell of things with such ids, and of its own coats.
 */
export function loadDemo(
  db: ShopDb,
  entries: readonly Entry[],
  photos: readonly PhotoRow[] = [],
): Promise<void> {
  for (const { id } of photos)
    if (!isDemoId(id))
      throw new RangeError(`a photo of the demo has an id that starts with demo-, got ${id}`);
  const own = new Set(entries.filter(({ stream }) => isDemo(stream)).map(({ id }) => id));
  for (const entry of entries) {
    const parsed = parseEntry(entry);
    const isOwn = entry.stream === shopStream ? isDemoThing(entry.body, own) : isDemo(entry.stream);
    if (!isOwn)
      throw new RangeError(`demo entries go into demo- streams, got ${entry.type} in ${entry.stream}`);
    if (!parsed.ok)
      throw new RangeError(`demo ${entry.type}: ${parsed.fault.field}: ${parsed.fault.expected}`);
  }
  return db.transaction("rw", db.entries, db.projections, db.photos, db.settings, async () => {
    await removeDemo(db);
    await db.entries.bulkAdd(entries);
    await db.photos.bulkPut(photos);
    await refold(db, [...new Set(entries.map(({ stream }) => stream))]);
  });
}

/** Takes the demo shop out, with whatever was logged on it meanwhile; what is real stays as it is. */
export function removeDemo(db: ShopDb): Promise<void> {
  return db.transaction("rw", db.entries, db.projections, db.photos, db.settings, async () => {
    await removeShopLines(db);
    for (const kind of demoKinds) {
      const streams = [`${kind}/demo-`, `${kind}/demo-\uffff`] as const;
      await db.entries.where("[stream+at]").between([streams[0], -Infinity], [streams[1], Infinity]).delete();
      await db.projections
        .where("stream")
        .between(...streams)
        .delete();
    }
    await db.photos.where("id").between("demo-", "demo-\uffff").delete();
    // What invented coats taught goes with them; the shop's own is worked out again from its log.
    await db.settings.bulkDelete([learningKey, provenKey]);
  });
}

/** The shop has one stream for its own things, so the demo's lines in it are told by what they speak of. */
async function removeShopLines(db: ShopDb): Promise<void> {
  const lines = await linesBetween(db, shopStream, shopStream).toArray();
  if (lines.length === 0) return;
  const coats = await linesBetween(db, "piece/demo-", "piece/demo-\uffff").primaryKeys();
  const gone = demoLinesOf(lines, new Set(coats));
  if (gone.size === 0) return;
  await db.entries.bulkDelete([...gone]);
  if (gone.size === lines.length) await db.projections.delete(shopStream);
  else await refold(db, [shopStream]);
}

/** What the shop itself has logged, the demo's lines left out: how many, and when the first was written, epoch ms. */
export type OwnCount = { readonly entries: number; readonly firstAt: number | null };

export function readOwnCount(db: ShopDb): Promise<OwnCount> {
  return db.transaction("r", db.entries, async () => {
    const coats = await linesBetween(db, "piece/demo-", "piece/demo-\uffff").primaryKeys();
    const ofTheShop = demoLinesOf(await linesBetween(db, shopStream, shopStream).toArray(), new Set(coats));
    const counts = await Promise.all(
      demoKinds.map((kind) => linesBetween(db, `${kind}/demo-`, `${kind}/demo-\uffff`).count()),
    );
    const demo = counts.reduce((sum, count) => sum + count, ofTheShop.size);
    const entries = (await db.entries.count()) - demo;
    if (entries === 0) return { entries, firstAt: null };
    const isOwn = ({ id, stream }: StoredEntry): boolean =>
      !(typeof stream === "string" && isDemo(stream)) && !ofTheShop.has(id);
    // Ids begin with the time they were made, so that the first one is the oldest line.
    const first = await db.entries.orderBy("id").filter(isOwn).first();
    return { entries, firstAt: first?.recordedAt ?? null };
  });
}

const linesBetween = (db: ShopDb, first: string, last: string) =>
  db.entries.where("[stream+at]").between([first, -Infinity], [last, Infinity]);

export async function hasDemo(db: ShopDb): Promise<boolean> {
  const found = await db.projections.where("stream").startsWith("piece/demo-").first();
  return found !== undefined;
}
