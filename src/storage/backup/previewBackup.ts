import { crc32 } from "../../geometry/read/crc32.ts";
import type { ParseFault } from "../entrySchema.ts";
import type { ShopDb, StoredEntry } from "../rows.ts";
import { withBytes } from "./lentBytes.ts";
import type { BackupHead, FoundPhoto, NotABackup, OpenBackup, ReadWork, Unreadable } from "./items.ts";
import { canonical, judgeRow } from "./judgeRow.ts";
import { openBackup } from "./openBackup.ts";
import type { CopiedTable } from "./writeBackup.ts";

export type UnreadRow = { readonly place: number } & (
  { readonly why: Unreadable; readonly fault: null } | { readonly why: "fault"; readonly fault: ParseFault }
);

/** What would come of a restore, found by reading the whole backup and changing nothing. */
export type BackupPreview = {
  readonly head: BackupHead;
  readonly entries: {
    readonly found: number;
    readonly fresh: number;
    readonly already: number;
    /** Lines this program can't read; they are kept as they are. */
    readonly aside: number;
    /** Same id, other content: what is here stays. */
    readonly clashes: readonly string[];
    readonly bad: readonly UnreadRow[];
  };
  readonly photos: {
    readonly found: number;
    readonly fresh: number;
    readonly already: number;
    readonly clashes: readonly string[];
    readonly bad: readonly { readonly name: string; readonly why: Unreadable }[];
  };
  readonly kept: Readonly<Record<CopiedTable, number>> & { readonly bad: number };
};

/** Whether the backup is just what it says it is: nothing lost, altered or missing. */
export function isSound({ head, entries, photos, kept }: BackupPreview): boolean {
  const bad = entries.bad.length + photos.bad.length + kept.bad;
  if (!head.isWhole || bad > 0) return false;
  const told = head.manifest?.counts;
  return told === undefined || (told.entries === entries.found && told.photos === photos.found);
}

const page = 500;
const utf8 = new TextEncoder();

/** Reads a backup through. Against `db` it says what is new; with null it only says whether the file is sound. */
export async function previewBackup(
  db: ShopDb | null,
  file: Blob,
  work: ReadWork = {},
): Promise<BackupPreview | NotABackup> {
  const opened = await openBackup(file);
  return "code" in opened ? opened : lookThrough(db, opened, work);
}

async function lookThrough(
  db: ShopDb | null,
  { head, items }: OpenBackup,
  work: ReadWork,
): Promise<BackupPreview> {
  const entries = {
    found: 0,
    fresh: 0,
    already: 0,
    aside: 0,
    clashes: [] as string[],
    bad: [] as UnreadRow[],
  };
  const photos = {
    found: 0,
    fresh: 0,
    already: 0,
    clashes: [] as string[],
    bad: [] as { name: string; why: Unreadable }[],
  };
  const kept = { settings: 0, drafts: 0, patterns: 0, bad: 0 };
  // The same line twice in one file is one; twice with other content is a clash.
  const seen = new Map<string, number>();
  const photoSizes = new Map<string, number>();
  const photosHere = await photoIdsIn(db);
  let waiting: StoredEntry[] = [];
  const compare = async (): Promise<void> => {
    const there = db === null ? [] : await db.entries.bulkGet(waiting.map(({ id }) => id));
    for (const [i, row] of waiting.entries()) {
      const text = sumOfText(canonical(row));
      const twin = seen.get(row.id) ?? (there[i] === undefined ? undefined : sumOfText(canonical(there[i])));
      seen.set(row.id, twin ?? text);
      if (twin === undefined) entries.fresh += 1;
      else if (twin === text) entries.already += 1;
      else entries.clashes.push(row.id);
    }
    waiting = [];
  };
  for await (const item of items(work))
    switch (item.kind) {
      case "line": {
        entries.found += 1;
        const judged = judgeRow(item.row, item.mayBeAside);
        if (judged.kind === "bad") entries.bad.push({ place: item.place, why: "fault", fault: judged.fault });
        else {
          if (judged.kind === "aside") entries.aside += 1;
          waiting.push(judged.row);
          if (waiting.length >= page) await compare();
        }
        break;
      }
      case "bad-line":
        entries.bad.push({ place: item.place, why: item.why, fault: null });
        break;
      case "photo": {
        photos.found += 1;
        const size = photoSizes.get(item.id);
        photoSizes.set(item.id, size ?? item.bytes);
        const here = db !== null && photosHere.has(item.id) ? await comparePhoto(db, item) : "fresh";
        const is = size === undefined ? here : size === item.bytes ? "already" : "clash";
        if (is === "clash") photos.clashes.push(item.id);
        else photos[is] += 1;
        break;
      }
      case "bad-photo":
        photos.bad.push({ name: item.name, why: item.why });
        break;
      case "kept":
        kept[item.table] += 1;
        break;
      case "bad-kept":
        kept.bad += 1;
        break;
    }
  await compare();
  return { head, entries, photos, kept };
}

/** Enough of a row to tell its twin by, so that a log of any length is looked through without being held. */
const sumOfText = (text: string): number => crc32(0, utf8.encode(text));

/** Asked once: asking the store for each photo leaves it a transaction to clear away for each. */
export const photoIdsIn = async (db: ShopDb | null): Promise<ReadonlySet<string>> =>
  new Set(db === null ? [] : await db.photos.toCollection().primaryKeys());

/** Whether a photo of this id is here, with the same bytes or with others. */
async function comparePhoto(
  db: ShopDb,
  { id, type, bytes, blob }: FoundPhoto,
): Promise<"fresh" | "already" | "clash"> {
  const twin = (await db.photos.get(id))?.blob;
  if (twin === undefined) return "fresh";
  return twin.size === bytes && twin.type === type && (await haveSameBytes(twin, blob()))
    ? "already"
    : "clash";
}

const haveSameBytes = (a: Blob, b: Blob): Promise<boolean> =>
  withBytes(a, (x) => withBytes(b, (y) => x.length === y.length && x.every((byte, i) => byte === y[i])));
