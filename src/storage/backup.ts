import type { Moment } from "../logbook/command.ts";
import {
  backupFormat,
  backupMaxBytes,
  backupVersion,
  canonical,
  checkBackup,
  problemsListed,
  type BackupContents,
  type ImportProblem,
} from "./backupFile.ts";
import { toBase64 } from "./base64.ts";
import { parseEntry } from "./entrySchema.ts";
import { isOutOfSpace } from "./quota.ts";
import { refold } from "./rebuild.ts";
import type { PhotoRow, ShopDb, StoredEntry } from "./shopDb.ts";

export type Imported =
  | { readonly ok: true; readonly added: number; readonly already: number }
  | { readonly ok: false; readonly problems: readonly ImportProblem[] };

const page = 2000;

/**
 * The whole log and its photos as one JSON file, a line an entry, built in parts so that no part is large. The meshes
 * kept for display are left out: each is as large as a hundred photos, the log holds what was measured on them, and
 * reading the file again brings them back.
 */
export async function exportShop(db: ShopDb, { now }: Pick<Moment, "now">): Promise<Blob> {
  const entries: string[] = [];
  const setAside: string[] = [];
  // One transaction, so that a correction is never in the file by half.
  await db.transaction("r", db.entries, async () => {
    for (let after: string | null = null; ;) {
      const rows: StoredEntry[] = await (after === null ? db.entries : db.entries.where("id").above(after))
        .limit(page)
        .toArray();
      for (const row of rows) (parseEntry(row).ok ? entries : setAside).push(JSON.stringify(row));
      const last = rows.at(-1);
      if (rows.length < page || last === undefined) return;
      after = last.id;
    }
  });
  const head = { format: backupFormat, version: backupVersion, madeAt: now };
  const parts: BlobPart[] = [
    `${JSON.stringify(head).slice(0, -1)},\n"entries":[\n`,
    new Blob([entries.join(",\n")]),
    `\n],"setAside":[\n${setAside.join(",\n")}\n],"photos":[\n`,
  ];
  for (const [index, id] of (await db.photos.toCollection().primaryKeys()).entries()) {
    const blob = (await db.photos.get(id))?.blob;
    if (blob === undefined) continue;
    const photo = JSON.stringify({ id, type: blob.type, data: await toBase64(blob) });
    parts.push(new Blob([index === 0 ? "" : ",\n", photo]));
  }
  return new Blob([...parts, "\n]}\n"], { type: "application/json" });
}

/**
 * Joins a backup to the log: what is new is added, what is there already stays. Everything is checked first and
 * either all of it goes in or none. Settings and drafts are not touched.
 */
export async function importShop(db: ShopDb, file: string | Blob): Promise<Imported> {
  const bytes = typeof file === "string" ? file.length : file.size;
  if (bytes > backupMaxBytes)
    return { ok: false, problems: [{ code: "too-large", bytes, maxBytes: backupMaxBytes }] };
  const checked = checkBackup(typeof file === "string" ? file : await file.text());
  if (!checked.ok) return checked;
  try {
    return await db.transaction("rw", db.entries, db.projections, db.photos, async () =>
      join(db, checked.contents),
    );
  } catch (error) {
    if (isOutOfSpace(error)) return { ok: false, problems: [{ code: "out-of-space" }] };
    throw error;
  }
}

async function join(db: ShopDb, { rows, photos }: BackupContents): Promise<Imported> {
  const problems: ImportProblem[] = [];
  const known = new Map<string, StoredEntry>();
  for (let start = 0; start < rows.length; start += page) {
    const ids = rows.slice(start, start + page).map(({ row }) => row.id);
    for (const row of await db.entries.bulkGet(ids)) if (row !== undefined) known.set(row.id, row);
  }
  const added: StoredEntry[] = [];
  for (const { row, place } of rows) {
    const twin = known.get(row.id);
    if (twin === undefined) {
      known.set(row.id, row);
      added.push(row);
    } else if (canonical(twin) !== canonical(row)) {
      problems.push({ code: "id-clash", entry: place, id: row.id });
      if (problems.length >= problemsListed) break;
    }
  }
  const pictures = new Map<string, PhotoRow>();
  for (const { id, blob, place } of photos) {
    const twin = pictures.get(id) ?? (await db.photos.get(id));
    if (twin === undefined) pictures.set(id, { id, blob });
    else if (
      (twin.blob.size !== blob.size || twin.blob.type !== blob.type) &&
      problems.length < problemsListed
    )
      problems.push({ code: "photo-clash", photo: place, id });
  }
  if (problems.length > 0) return { ok: false, problems };
  await db.entries.bulkAdd(added);
  await db.photos.bulkAdd([...pictures.values()]);
  await refold(db, [...new Set(added.map(({ stream }) => stream))]);
  return { ok: true, added: added.length, already: rows.length - added.length };
}
