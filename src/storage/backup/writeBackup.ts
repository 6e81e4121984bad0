import { ZipWriter, configure, Reader } from "@zip.js/zip.js/lib/zip-core.js";
import { schemaVersion } from "../../logbook/entries/lifts.ts";
import { crc32 } from "../../geometry/read/crc32.ts";
import { learningKey } from "../learningRow.ts";
import { provenKey } from "../provenRow.ts";
import { openRaw, rawKeys, rawRow, rawRows, rawRowsOf } from "../rawRows.ts";
import type { Manifest, Part } from "./format.ts";
import { fullPart, manifestName, photoName, sealLine, sha256Of, zipFormat, zipVersion } from "./format.ts";
import { windowBytes } from "./fileWindow.ts";
import { gathered } from "./gathered.ts";
import { withBytes } from "./lentBytes.ts";
import { pack } from "./packed.ts";

// Everything is stored as it is: a worker would only carry bytes to and fro.
configure({ useWebWorkers: false });

export type BackupChoice = {
  /** Photos and meshes, which are most of a backup's size. */
  readonly photos: boolean;
  /** Entries written or dated from then on, epoch ms, with their photos; null for all. */
  readonly since: number | null;
};

export type Progress = {
  readonly done: number;
  readonly of: number;
  readonly what: "entries" | "photos" | "kept";
};

export type BackupWork = {
  readonly choice: BackupChoice;
  readonly now: number;
  readonly app: string;
  readonly device: string;
  readonly onProgress?: ((progress: Progress) => void) | undefined;
  /** Cancels: the promise is then rejected with the signal's reason, and what was written is no backup. */
  readonly signal?: AbortSignal | undefined;
};

/**
 * Writes the store of this name as one zip, part by part; no part is larger than a photo, a mesh or `fullPart`.
 * It reads the store's own rows, so that it works where the app itself can't open, and what can't be read as an entry
 * goes along as it lies there. Gives the manifest. Throws where there is no store, or none that answers.
 */
export async function writeBackup(
  storeName: string,
  sink: WritableStream<Uint8Array>,
  work: BackupWork,
): Promise<Manifest> {
  const db = await openRaw(storeName);
  if (db === null) throw new Error("There is no log in this browser.");
  try {
    return await writeParts(db, sink, work);
  } finally {
    db.close();
  }
}

async function writeParts(
  db: IDBDatabase,
  sink: WritableStream<Uint8Array>,
  { choice, now, app, device, onProgress, signal }: BackupWork,
): Promise<Manifest> {
  const zip = new ZipWriter(gathered(sink), { extendedTimestamp: false });
  /** Its head is complete before its bytes: nothing of it need be held until its end is known. */
  const put = async (name: string, bytes: Bytes): Promise<string> => {
    const stored = { passThrough: true, compressionMethod: 0, uncompressedSize: bytes.length };
    await zip.add(name, new LentReader(bytes), { ...stored, crc32: crc32(0, bytes) >>> 0 });
    return sha256Of(bytes);
  };
  const parts: Part[] = [];
  const add: Add = async (name, bytes, photo) => {
    signal?.throwIfAborted();
    const sha256 = await put(name, bytes);
    parts.push({ name, bytes: bytes.length, sha256, ...(photo === undefined ? {} : { photo }) });
  };

  const entries = await writeEntries(db, add, { choice, onProgress });
  const photos = choice.photos ? await writePhotos(db, add, { wanted: entries.texts, onProgress }) : 0;
  const kept = choice.since === null ? await writeKept(db, add, { choice, onProgress }) : 0;

  const manifest: Manifest = {
    format: zipFormat,
    version: zipVersion,
    app,
    schema: schemaVersion,
    madeAt: now,
    device,
    choice,
    counts: { entries: entries.count, photos, kept },
    lastEntryAt: entries.lastAt,
    parts,
  };
  await put(manifestName, utf8.encode(JSON.stringify(manifest)));
  await zip.close();
  return manifest;
}

/** Gives the zip stretches of the bytes themselves; the library's own reader copies each. */
class LentReader extends Reader<Uint8Array> {
  readonly #bytes: Uint8Array;
  constructor(bytes: Uint8Array) {
    super(bytes);
    this.#bytes = bytes;
    this.size = bytes.length;
  }
  override readUint8Array(index: number, length: number): Promise<Uint8Array> {
    return Promise.resolve(this.#bytes.subarray(index, index + length));
  }
}

type Bytes = Uint8Array<ArrayBuffer>;
/** The bytes are lent until it ends. */
type Add = (name: string, bytes: Bytes, photo?: Part["photo"]) => Promise<void>;

const utf8 = new TextEncoder();

type WrittenEntries = {
  readonly count: number;
  readonly lastAt: number | null;
  /** Null: all photos go along. Else every text in the entries, among them the ids of their photos. */
  readonly texts: ReadonlySet<string> | null;
};

async function writeEntries(
  db: IDBDatabase,
  add: Add,
  { choice: { since }, onProgress }: Pick<BackupWork, "choice" | "onProgress">,
): Promise<WrittenEntries> {
  const of = (await rawKeys(db, "entries")).length;
  const texts = since === null ? null : new Set<string>();
  let [done, count, part] = [0, 0, 0];
  let lastAt: number | null = null;
  let lines: string[] = [];
  let letters = 0;
  const close = async (): Promise<void> => {
    if (lines.length === 0) return;
    part += 1;
    await add(`entries/${String(part).padStart(5, "0")}.ndjson`, utf8.encode(lines.join("")));
    [lines, letters] = [[], 0];
  };
  for await (const rows of rawRows(db, "entries")) {
    done += rows.length;
    onProgress?.({ done, of, what: "entries" });
    for (const row of rows) {
      if (since !== null && !isSince(row, since)) continue;
      lastAt = latest(lastAt, numberAt(row, "at"));
      if (texts !== null) gatherTexts(row, texts);
      const line = `${sealLine(row)}\n`;
      lines.push(line);
      letters += line.length;
      count += 1;
      if (lines.length >= fullPart.lines || letters >= fullPart.letters) await close();
    }
  }
  await close();
  return { count, lastAt, texts };
}

async function writePhotos(
  db: IDBDatabase,
  add: Add,
  { wanted, onProgress }: { wanted: ReadonlySet<string> | null } & Pick<BackupWork, "onProgress">,
): Promise<number> {
  const keys = (await rawKeys(db, "photos")).filter(
    (key): key is string => typeof key === "string" && (wanted === null || wanted.has(key)),
  );
  let count = 0;
  for (let at = 0; at < keys.length; at += photosAtOnce) {
    const photos = (await rawRowsOf(db, "photos", keys.slice(at, at + photosAtOnce))).flatMap(photoOf);
    for (const some of inStretches(photos))
      await withBytes(new Blob(some.map(({ blob }) => blob)), async (bytes) => {
        let start = 0;
        for (const { id, blob } of some) {
          const photo = { id, type: blob.type };
          await add(photoName(photo), bytes.subarray(start, start + blob.size), photo);
          start += blob.size;
          count += 1;
        }
      });
    onProgress?.({ done: Math.min(keys.length, at + photosAtOnce), of: keys.length, what: "photos" });
  }
  return count;
}

type StoredPhoto = { readonly id: string; readonly blob: Blob };

const photoOf = (row: unknown): readonly StoredPhoto[] =>
  typeof row === "object" &&
  row !== null &&
  "id" in row &&
  typeof row.id === "string" &&
  "blob" in row &&
  row.blob instanceof Blob
    ? [{ id: row.id, blob: row.blob }]
    : [];

/** Photos asked of the store at a time: what comes is their names; their bytes are read a stretch at a time. */
const photosAtOnce = 20;

/** Photos that are read with one stream: one for each photo is more for the browser to clear away than its bytes. */
function* inStretches(photos: readonly StoredPhoto[]): Generator<readonly StoredPhoto[]> {
  let some: StoredPhoto[] = [];
  let bytes = 0;
  for (const photo of photos) {
    if (some.length > 0 && bytes + photo.blob.size > windowBytes) {
      yield some;
      [some, bytes] = [[], 0];
    }
    some.push(photo);
    bytes += photo.blob.size;
  }
  if (some.length > 0) yield some;
}

export const copiedTables = ["settings", "drafts", "patterns"] as const;
export type CopiedTable = (typeof copiedTables)[number];

/** What can be made again from the log stays behind. */
const leftBehind = new Set<IDBValidKey>([learningKey, provenKey]);

/** Settings, half-written forms and meshes, each row a line with its binary parts beside it. */
async function writeKept(
  db: IDBDatabase,
  add: Add,
  { choice, onProgress }: Pick<BackupWork, "choice" | "onProgress">,
): Promise<number> {
  let [count, binaries] = [0, 0];
  for (const table of copiedTables) {
    if (table === "patterns" && !choice.photos) continue;
    const keys = (await rawKeys(db, table)).filter((key) => !leftBehind.has(key));
    const lines: string[] = [];
    for (const [index, key] of keys.entries()) {
      const row = await rawRow(db, table, key);
      if (row === undefined) continue;
      const packed = pack(row, binaries);
      for (const blob of packed.binaries) {
        const name = `kept/${String(binaries).padStart(5, "0")}.bin`;
        await withBytes(blob, (bytes) => add(name, bytes));
        binaries += 1;
      }
      lines.push(`${sealLine(packed.json)}\n`);
      onProgress?.({ done: index + 1, of: keys.length, what: "kept" });
    }
    count += lines.length;
    if (lines.length > 0) await add(`kept/${table}.ndjson`, utf8.encode(lines.join("")));
  }
  return count;
}

function numberAt(row: unknown, key: string): number | null {
  const value =
    typeof row === "object" && row !== null ? (row as Readonly<Record<string, unknown>>)[key] : null;
  return typeof value === "number" ? value : null;
}

const latest = (a: number | null, b: number | null): number | null =>
  a === null || b === null ? (a ?? b) : Math.max(a, b);

/** A row of which neither time can be read goes along: better one line too many. */
function isSince(row: unknown, since: number): boolean {
  const at = latest(numberAt(row, "at"), numberAt(row, "recordedAt"));
  return at === null || at >= since;
}

function gatherTexts(value: unknown, into: Set<string>): void {
  if (typeof value === "string") into.add(value);
  else if (typeof value === "object" && value !== null)
    for (const inner of Object.values(value)) gatherTexts(inner, into);
}
