import { isOutOfSpace } from "../quota.ts";
import { refold } from "../rebuild.ts";
import type { KeyedRow, PatternRow, PhotoRow, ShopDb, StoredEntry } from "../rows.ts";
import type { BackupItem, NotABackup, ReadWork } from "./items.ts";
import {
  closeJournal,
  noteReplaced,
  putPatternAside,
  sweep,
  whileRestoring,
  putPhotosAside,
} from "./journal.ts";
import { canonical, judgeRow } from "./judgeRow.ts";
import { openBackup } from "./openBackup.ts";
import { photoIdsIn } from "./previewBackup.ts";
import type { CopiedTable } from "./writeBackup.ts";

export type Restored =
  | {
      readonly ok: true;
      readonly added: number;
      readonly already: number;
      readonly clashes: number;
      readonly photos: number;
    }
  | { readonly ok: false; readonly why: NotABackup | { readonly code: "out-of-space" } };

const page = 500;
/** Photos that go in together; they are stretches of the file, and only their names are held. */
const photosAtOnce = 50;

/**
 * Joins a backup to the log: what is new is added, what is here stays as it is, what can't be read is left out.
 *
 * Photos and meshes go in first, harmless while no entry speaks of them; entries wait beside the log; then all
 * entries and the summaries of their streams join in one transaction. A stop at any point leaves the old log or the
 * whole new one, and what was put in for nothing is taken out again at the next start. With `settings` the settings
 * and half-written forms of the backup come in too, each where there is none of its key here.
 */
export const restoreBackup = (
  db: ShopDb,
  file: Blob,
  work: ReadWork & { readonly settings: boolean },
): Promise<Restored> => whileRestoring(() => restore(db, file, work));

async function restore(
  db: ShopDb,
  file: Blob,
  { settings, ...work }: ReadWork & { readonly settings: boolean },
): Promise<Restored> {
  const opened = await openBackup(file);
  if ("code" in opened) return { ok: false, why: opened };
  await sweep(db);
  try {
    const photos = await putAside(db, opened.items(work), settings);
    work.signal?.throwIfAborted();
    return { ok: true, photos, ...(await joinStaged(db)) };
  } catch (error) {
    await sweep(db);
    if (isOutOfSpace(error)) return { ok: false, why: { code: "out-of-space" } };
    throw error;
  }
}

/** Puts photos and meshes in the store and entries beside the log; gives how many photos were new. */
async function putAside(db: ShopDb, items: AsyncGenerator<BackupItem>, settings: boolean): Promise<number> {
  // What is here stays, whether or not it has the same bytes.
  const here = new Set(await photoIdsIn(db));
  let photos = 0;
  let shots: PhotoRow[] = [];
  const putShots = async (): Promise<void> => {
    await putPhotosAside(db, shots);
    photos += shots.length;
    shots = [];
  };
  let waiting: StoredEntry[] = [];
  const stage = async (): Promise<void> => {
    // Of two lines of one id in a file the first counts, as the look through it says.
    await db.transaction("rw", db.staged, async () => {
      const rows = [...new Map(waiting.toReversed().map((row) => [row.id, row])).values()];
      const there = await db.staged.bulkGet(rows.map(({ id }) => id));
      await db.staged.bulkAdd(rows.filter((_, i) => there[i] === undefined));
    });
    waiting = [];
  };
  for await (const item of items)
    if (item.kind === "line") {
      const judged = judgeRow(item.row, item.mayBeAside);
      if (judged.kind !== "bad") waiting.push(judged.row);
      if (waiting.length >= page) await stage();
    } else if (item.kind === "photo") {
      if (here.has(item.id)) continue;
      here.add(item.id);
      shots.push({ id: item.id, blob: item.blob() });
      if (shots.length >= photosAtOnce) await putShots();
    } else if (item.kind === "kept" && (settings || item.table === "patterns")) await putKept(db, item);
  await putShots();
  await stage();
  return photos;
}

async function putKept(
  db: ShopDb,
  { table, row }: { readonly table: CopiedTable; readonly row: unknown },
): Promise<void> {
  if (typeof row !== "object" || row === null) return;
  if (table === "patterns") {
    if (!isPattern(row) || (await db.patterns.get(row.id)) !== undefined) return;
    await putPatternAside(db, row);
  } else if (isKeyed(row)) await noteReplaced(db, table, row);
}

const isPattern = (row: object): row is PatternRow =>
  "id" in row &&
  typeof row.id === "string" &&
  "name" in row &&
  "savedAt" in row &&
  typeof row.savedAt === "number";
const isKeyed = (row: object): row is KeyedRow =>
  "key" in row && typeof row.key === "string" && "value" in row;

type Joined = { readonly added: number; readonly already: number; readonly clashes: number };

/** All entries that wait and the rows of their streams, in one transaction or not at all. */
const joinStaged = (db: ShopDb): Promise<Joined> =>
  db.transaction(
    "rw",
    [db.entries, db.staged, db.projections, db.journal, db.settings, db.drafts],
    async () => {
      let [added, already, clashes] = [0, 0, 0];
      const streams = new Set<string>();
      for (let after = ""; ;) {
        const rows: StoredEntry[] = await db.staged.where("id").above(after).limit(page).toArray();
        const last = rows.at(-1);
        if (last === undefined) break;
        after = last.id;
        const there = await db.entries.bulkGet(rows.map(({ id }) => id));
        const fresh = rows.filter((row, i) => {
          const twin = there[i];
          if (twin === undefined) return true;
          if (canonical(twin) === canonical(row)) already += 1;
          else clashes += 1;
          return false;
        });
        await db.entries.bulkAdd(fresh);
        for (const { stream } of fresh) streams.add(stream);
        added += fresh.length;
      }
      await refold(db, [...streams]);
      await closeJournal(db);
      await db.staged.clear();
      return { added, already, clashes };
    },
  );
