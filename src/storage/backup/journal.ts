import type { PatternRow } from "../rows.ts";
import type { KeyedRow, PhotoRow, ShopDb } from "../rows.ts";

/** One restore at a time in a browser, whatever the number of tabs; sweeping waits for none and passes over one. */
const lockName = "dipbook-restore";

export const whileRestoring = <T>(work: () => Promise<T>): Promise<T> =>
  "locks" in navigator ? navigator.locks.request(lockName, work) : work();

/** Puts photos in and notes them, in one transaction. */
export const putPhotosAside = (db: ShopDb, photos: readonly PhotoRow[]): Promise<void> =>
  db.transaction("rw", db.journal, db.photos, async () => {
    await db.photos.bulkAdd(photos);
    await db.journal.bulkPut(photos.map(({ id }) => ({ key: `photo/${id}`, photoId: id })));
  });

export const putPatternAside = (db: ShopDb, pattern: PatternRow): Promise<void> =>
  db.transaction("rw", db.journal, db.patterns, async () => {
    await db.patterns.add(pattern);
    await db.journal.put({ key: `pattern/${pattern.id}`, patternId: pattern.id });
  });

export const noteReplaced = (db: ShopDb, table: "settings" | "drafts", row: KeyedRow): Promise<string> =>
  db.journal.put({ key: `${table}/${row.key}`, table, row });

/**
 * The restore has come to its end: settings and forms come in, the notes go; inside a transaction on journal, settings
 * and drafts. A form is taken where there is none of its key. Of the settings this device keeps its name in the log,
 * and what it has seen of its due times.
 */
export async function closeJournal(db: ShopDb): Promise<void> {
  for (const note of await db.journal.toArray()) {
    if (!("table" in note)) continue;
    const { table, row } = note;
    const here = await db[table].get(row.key);
    if (here === undefined) await db[table].add(row);
    else if (table === "settings")
      await db.settings.put({ key: row.key, value: mixed(row.value, here.value) });
  }
  await db.journal.clear();
}

const ofThisDevice = [
  "deviceId",
  "lastSeenDueAt",
  "ringTested",
  "calendarSequence",
  "lastBackup",
  "askedToKeepAt",
  "keepAnswerSeenAt",
  "installHintSeenAt",
  "movedTo",
] as const;

function mixed(theirs: unknown, ours: unknown): unknown {
  if (typeof theirs !== "object" || theirs === null || typeof ours !== "object" || ours === null) return ours;
  const own = ofThisDevice.flatMap((key) => (key in ours ? [[key, Reflect.get(ours, key)]] : []));
  return { ...ours, ...theirs, ...Object.fromEntries(own) };
}

/**
 * Takes out what a restore put in that never came to its end; the log never knew of it. Does nothing while a restore
 * is under way in any tab. Gives how many photos and meshes were taken out.
 */
export async function sweepUnfinished(db: ShopDb): Promise<number> {
  if (!("locks" in navigator)) return sweep(db);
  return navigator.locks.request(lockName, { ifAvailable: true }, (lock) => (lock === null ? 0 : sweep(db)));
}

/** The same for whoever holds the restore's place. */
export const sweep = (db: ShopDb): Promise<number> =>
  db.transaction("rw", db.journal, db.photos, db.patterns, db.staged, async () => {
    const notes = await db.journal.toArray();
    const photoIds = notes.flatMap((note) => ("photoId" in note ? [note.photoId] : []));
    const patternIds = notes.flatMap((note) => ("patternId" in note ? [note.patternId] : []));
    await db.photos.bulkDelete(photoIds);
    await db.patterns.bulkDelete(patternIds);
    await db.staged.clear();
    await db.journal.clear();
    return photoIds.length + patternIds.length;
  });
