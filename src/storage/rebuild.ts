import { projectionOf, type ProjectionRow } from "./projection.ts";
import type { ShopDb } from "./rows.ts";
import { readStream, type SetAside } from "./streams.ts";

export type Rebuilt = { readonly streams: number; readonly setAside: readonly SetAside[] };

/** Makes every row again from the log alone, in one transaction, and reports the lines that could not be read. */
export const rebuildProjections = (db: ShopDb): Promise<Rebuilt> =>
  db.transaction("rw", db.entries, db.projections, async () => remakeRows(db));

/** The same, inside a transaction on entries and projections that is under way; `onDone` is told after each stream. */
export async function remakeRows(db: ShopDb, onDone?: (done: number, of: number) => void): Promise<Rebuilt> {
  const streams = await streamNames(db);
  await db.projections.clear();
  const setAside: SetAside[] = [];
  for (const [index, stream] of streams.entries()) {
    setAside.push(...(await refold(db, [stream])));
    onDone?.(index + 1, streams.length);
  }
  return { streams: streams.length, setAside };
}

/** Writes the rows of the given streams from their entries; inside a transaction on entries and projections. */
export async function refold(db: ShopDb, streams: readonly string[]): Promise<readonly SetAside[]> {
  const rows: ProjectionRow[] = [];
  const empty: string[] = [];
  const aside: SetAside[] = [];
  for (const stream of streams) {
    const { entries, setAside } = await readStream(db, stream);
    const row = projectionOf(stream, entries);
    if (row === null) empty.push(stream);
    else rows.push(row);
    aside.push(...setAside);
  }
  await db.projections.bulkDelete(empty);
  await db.projections.bulkPut(rows);
  return aside;
}

/** Every stream there is, found by leaping from one to the next in the index: the rows between are not read. */
async function streamNames(db: ShopDb): Promise<readonly string[]> {
  const streams: string[] = [];
  for (let after = ""; ;) {
    const next = await db.entries.where("[stream+at]").above([after, Infinity]).first();
    if (next === undefined) return streams;
    streams.push(next.stream);
    after = next.stream;
  }
}
