import { BlobReader, BlobWriter, ZipReader, configure, type FileEntry } from "@zip.js/zip.js/lib/zip-core.js";
import { isPhoto } from "../photos.ts";
import { windowOn, type FileWindow } from "./fileWindow.ts";
import type { Manifest, Part } from "./format.ts";
import {
  manifestName,
  manifestSchema,
  photoOfName,
  sha256OfBlob,
  unsealLine,
  zipFormat,
  zipVersion,
} from "./format.ts";
import { holding } from "./lentBytes.ts";
import type { BackupItem, NotABackup, OpenBackup, ReadWork, Unreadable } from "./items.ts";
import { unpack } from "./packed.ts";
import { fileAt, salvageZip, type FoundFile } from "./salvageZip.ts";
import { copiedTables, type CopiedTable } from "./writeBackup.ts";

configure({ useWebWorkers: false });

/** A file of the zip, and its bytes when they are asked for: as a stretch of the zip, not as a copy. */
type ZipFile = {
  readonly name: string;
  readonly bytes: number;
  /** Null where the bytes are not what they were by `sha256`, or, where that is lost, by the checksum beside them. */
  readonly read: (sha256: string | undefined) => Promise<SoundFile | null>;
  /** The bytes as far as they are there, sound or not: their lines have checksums of their own. */
  readonly raw: () => Promise<Blob>;
};
type SoundFile = Pick<FoundFile, "bytes" | "blob">;

/** Opens a backup of version 2, whole or damaged. */
export async function openZip(file: Blob): Promise<OpenBackup | NotABackup> {
  const zip = windowOn(file);
  const salvage = onceSalvaged(zip);
  const listed = await filesOf(zip, salvage);
  const files = listed ?? (await salvage());
  const manifest = await manifestOf(files);
  if (manifest !== null && "code" in manifest) return manifest;
  if (manifest === null && !files.some(({ name }) => /^(entries|photos)\//.test(name)))
    return { code: "not-a-backup", found: "another zip" };
  return {
    head: {
      version: 2,
      madeAt: manifest?.madeAt ?? null,
      device: manifest?.device ?? null,
      manifest,
      isWhole: listed !== null && manifest !== null,
    },
    items: (work) => itemsOf(files, { manifest, ofBytes: file.size, ...work }),
  };
}

async function filesOf(zip: FileWindow, salvage: Salvage): Promise<readonly ZipFile[] | null> {
  try {
    const files: ZipFile[] = [];
    const packed = oncePacked(zip.file);
    for await (const entry of entriesOf(zip.file)) files.push(listedFile(zip, entry, { salvage, packed }));
    return files;
  } catch {
    return null;
  }
}

async function* entriesOf(file: Blob): AsyncGenerator<FileEntry> {
  for await (const entry of new ZipReader(new BlobReader(file)).getEntriesGenerator())
    if (!entry.directory) yield entry;
}

/** A file as the zip's list has it; where the list no longer leads to it, it is looked for by its own head. */
function listedFile(
  zip: FileWindow,
  // The whole entry is not kept: those of a large backup would come to tens of megabytes.
  { filename: name, offset, uncompressedSize: bytes }: FileEntry,
  { salvage, packed }: { readonly salvage: Salvage; readonly packed: Packed },
): ZipFile {
  const found = async (): Promise<ZipFile | undefined> => (await salvage()).find((one) => one.name === name);
  const listed = async (): Promise<FoundFile | null> => {
    const file = await fileAt(zip, offset);
    return file?.name === name && file.bytes === bytes ? file : unpacked((await packed()).get(offset));
  };
  return {
    name,
    bytes,
    read: async (sha256) => {
      const file = await listed();
      if (file !== null && (await file.isSound(sha256))) return file;
      return (await (await found())?.read(sha256)) ?? null;
    },
    raw: async () => (await listed())?.blob() ?? (await (await found())?.raw()) ?? new Blob([]),
  };
}

type Packed = () => Promise<ReadonlyMap<number, FileEntry>>;

/** The zip's list by where each file lies in it, read a second time where a file is not just stored. */
function oncePacked(file: Blob): Packed {
  let made: Promise<ReadonlyMap<number, FileEntry>> | null = null;
  const read = async (): Promise<ReadonlyMap<number, FileEntry>> => {
    const entries = new Map<number, FileEntry>();
    for await (const entry of entriesOf(file)) entries.set(entry.offset, entry);
    return entries;
  };
  return () => (made ??= read());
}

/** A packed file: somebody took the backup apart and zipped it again. */
async function unpacked(entry: FileEntry | undefined): Promise<FoundFile | null> {
  const blob = await entry?.getData(new BlobWriter(), { checkCrc32: true }).catch(() => null);
  if (entry === undefined || blob === undefined || blob === null) return null;
  return {
    name: entry.filename,
    bytes: blob.size,
    isCut: false,
    blob: (type) => (type === undefined ? blob : blob.slice(0, blob.size, type)),
    isSound: async (sha256) => sha256 === undefined || (await sha256OfBlob(blob)) === sha256,
  };
}

type Salvage = () => Promise<readonly ZipFile[]>;

/** The whole file is looked through once at most, and only where its list fails. */
function onceSalvaged(zip: FileWindow): Salvage {
  let made: Promise<readonly ZipFile[]> | null = null;
  return () => (made ??= salvaged(zip));
}

async function salvaged(zip: FileWindow): Promise<readonly ZipFile[]> {
  const files: ZipFile[] = [];
  for await (const found of salvageZip(zip))
    files.push({
      name: found.name,
      bytes: found.bytes,
      read: async (sha256) => ((await found.isSound(sha256)) ? found : null),
      raw: async () => found.blob(),
    });
  return files;
}

async function manifestOf(files: readonly ZipFile[]): Promise<Manifest | NotABackup | null> {
  const file = await files.find(({ name }) => name === manifestName)?.read(undefined);
  if (file === undefined || file === null) return null;
  let value: unknown;
  try {
    value = JSON.parse(await file.blob().text());
  } catch {
    return null;
  }
  const { format, version } = (typeof value === "object" && value !== null ? value : {}) as Partial<Manifest>;
  if (format !== zipFormat) return { code: "not-a-backup", found: "another zip" };
  if (typeof version === "number" && version > zipVersion)
    return { code: "newer-backup", version, known: zipVersion };
  const parsed = manifestSchema.safeParse(value);
  return parsed.success ? parsed.data : null;
}

type Reading = ReadWork & { readonly manifest: Manifest | null; readonly ofBytes: number };

async function* itemsOf(
  files: readonly ZipFile[],
  { manifest, ofBytes, onProgress, signal }: Reading,
): AsyncGenerator<BackupItem> {
  const parts = new Map(manifest?.parts.map((part) => [part.name, part]));
  const there = new Set(files.map(({ name }) => name));
  let doneBytes = 0;
  let place = 0;
  const went = (file: ZipFile): void => {
    signal?.throwIfAborted();
    doneBytes += file.bytes;
    onProgress?.({ doneBytes, ofBytes });
  };
  for (const file of files) {
    const part = parts.get(file.name);
    if (file.name.startsWith("entries/")) {
      const first = place + 1;
      let isBad = false;
      for await (const line of linesOf(await file.raw())) {
        place += 1;
        const read = unsealLine(line);
        isBad ||= !read.ok;
        yield read.ok
          ? { kind: "line", place, row: read.row, mayBeAside: true }
          : { kind: "bad-line", place, why: read.why };
      }
      // Each line may be sound and one be gone.
      if (part !== undefined && !isBad && (await sha256OfBlob(await file.raw())) !== part.sha256)
        yield { kind: "bad-line", place: first, why: "not-all-there" };
    } else if (file.name.startsWith("photos/")) yield await photoOf(file, { part, manifest });
    if (!file.name.startsWith("kept/")) went(file);
  }
  for (const table of copiedTables) yield* keptOf(table, { files, parts });
  for (const file of files) if (file.name.startsWith("kept/")) went(file);
  for (const { name, photo } of manifest?.parts ?? []) {
    if (there.has(name)) continue;
    if (photo !== undefined) yield { kind: "bad-photo", name: photo.id, why: "missing" };
    else if (name.startsWith("entries/")) yield { kind: "bad-line", place: place + 1, why: "missing" };
    else yield { kind: "bad-kept", table: name, why: "missing" };
  }
}

/** With a manifest a file it does not name is none of its photos; without one the file's own name tells. */
async function photoOf(
  file: ZipFile,
  { part, manifest }: { readonly part: Part | undefined; readonly manifest: Manifest | null },
): Promise<BackupItem> {
  const { name } = file;
  const told = manifest === null ? photoOfName(name) : part?.photo;
  const bad = (why: Unreadable): BackupItem => ({ kind: "bad-photo", name: told?.id ?? name, why });
  if (told === null || told === undefined) return bad("not-a-photo");
  const sound = await file.read(part?.sha256);
  if (sound === null) return bad("checksum");
  const { id } = told;
  const type = told.type.toLowerCase();
  return isPhoto({ type, size: sound.bytes })
    ? { kind: "photo", id, type, bytes: sound.bytes, blob: () => sound.blob(type) }
    : bad("not-a-photo");
}

async function* keptOf(
  table: CopiedTable,
  { files, parts }: { readonly files: readonly ZipFile[]; readonly parts: ReadonlyMap<string, Part> },
): AsyncGenerator<BackupItem> {
  const file = files.find(({ name }) => name === `kept/${table}.ndjson`);
  if (file === undefined) return;
  const binary = async (n: number): Promise<Blob | null> => {
    const wanted = `kept/${String(n).padStart(5, "0")}.bin`;
    const sound = await files.find(({ name }) => name === wanted)?.read(parts.get(wanted)?.sha256);
    return sound?.blob() ?? null;
  };
  for await (const line of linesOf(await file.raw())) {
    const read = unsealLine(line);
    if (!read.ok) {
      yield { kind: "bad-kept", table, why: read.why };
      continue;
    }
    const whole = await unpack(read.row, binary);
    yield whole === null
      ? { kind: "bad-kept", table, why: "binary-missing" }
      : { kind: "kept", table, row: whole.value };
  }
}

/** The lines of a text, the last one too where its end is missing; empty ones left out. */
export async function* linesOf(text: Blob): AsyncGenerator<string> {
  const reader = text.stream().getReader();
  // Not a stream that decodes: nothing would hold on to the pipe between the two while it waits.
  const decoder = new TextDecoder();
  let rest = "";
  for (;;) {
    const { done, value } = await holding(reader, () => reader.read());
    const lines = (rest + decoder.decode(value, { stream: !done })).split("\n");
    rest = done ? "" : (lines.pop() ?? "");
    for (const line of lines) if (line !== "") yield line;
    if (done) return;
  }
}
