import { BlobReader, BlobWriter, ZipReader, configure, type FileEntry } from "@zip.js/zip.js/lib/zip-core.js";
import { isPhoto } from "../photos.ts";
import type { Manifest, Part } from "./format.ts";
import {
  manifestName,
  manifestSchema,
  photoOfName,
  sha256Of,
  unsealLine,
  zipFormat,
  zipVersion,
} from "./format.ts";
import type { BackupItem, NotABackup, OpenBackup, ReadWork, Unreadable } from "./items.ts";
import { unpack } from "./packed.ts";
import { salvageZip } from "./salvageZip.ts";
import { keptTables, type KeptTable } from "./writeBackup.ts";

configure({ useWebWorkers: false });

/** A file of the zip, and its bytes when they are asked for; null where they are not what they were. */
type ZipFile = {
  readonly name: string;
  readonly bytes: number;
  readonly read: () => Promise<Blob | null>;
  /** The bytes as far as they are there, sound or not: their lines have checksums of their own. */
  readonly raw: () => Promise<Blob>;
};

/** Opens a backup of version 2, whole or damaged. */
export async function openZip(file: Blob): Promise<OpenBackup | NotABackup> {
  const salvage = onceSalvaged(file);
  const listed = await filesOf(file, salvage);
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

async function filesOf(file: Blob, salvage: Salvage): Promise<readonly ZipFile[] | null> {
  const zip = new ZipReader(new BlobReader(file), { checkCrc32: true });
  try {
    const files: ZipFile[] = [];
    for await (const entry of zip.getEntriesGenerator())
      if (!entry.directory) files.push(listedFile(entry, salvage));
    return files;
  } catch {
    return null;
  }
}

/** A file as the zip's list has it; where the list no longer leads to it, it is looked for by its own head. */
function listedFile(entry: FileEntry, salvage: Salvage): ZipFile {
  const { filename: name } = entry;
  const found = async (): Promise<ZipFile | undefined> => (await salvage()).find((one) => one.name === name);
  const listed = async (): Promise<Blob | null> => {
    try {
      return await entry.getData(new BlobWriter());
    } catch {
      return null;
    }
  };
  return {
    name,
    bytes: entry.uncompressedSize,
    read: async () => (await listed()) ?? (await (await found())?.read()) ?? null,
    raw: async () => (await listed()) ?? (await (await found())?.raw()) ?? new Blob([]),
  };
}

type Salvage = () => Promise<readonly ZipFile[]>;

/** The whole file is looked through once at most, and only where its list fails. */
function onceSalvaged(file: Blob): Salvage {
  let made: Promise<readonly ZipFile[]> | null = null;
  return () => (made ??= salvaged(file));
}

async function salvaged(file: Blob): Promise<readonly ZipFile[]> {
  const files: ZipFile[] = [];
  for await (const { name, blob, isSound } of salvageZip(file))
    files.push({
      name,
      bytes: blob.size,
      read: async () => ((await isSound()) ? blob : null),
      raw: async () => blob,
    });
  return files;
}

async function manifestOf(files: readonly ZipFile[]): Promise<Manifest | NotABackup | null> {
  const blob = await files.find(({ name }) => name === manifestName)?.read();
  if (blob === undefined || blob === null) return null;
  let value: unknown;
  try {
    value = JSON.parse(await blob.text());
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
    if (file.name.startsWith("entries/"))
      for await (const line of linesOf(await file.raw())) {
        place += 1;
        const read = unsealLine(line);
        yield read.ok
          ? { kind: "line", place, row: read.row, mayBeAside: true }
          : { kind: "bad-line", place, why: read.why };
      }
    else if (file.name.startsWith("photos/")) yield await photoOf(file, part);
    if (!file.name.startsWith("kept/")) went(file);
  }
  for (const table of keptTables) yield* keptOf(table, files);
  for (const file of files) if (file.name.startsWith("kept/")) went(file);
  for (const { name, photo } of manifest?.parts ?? []) {
    if (there.has(name)) continue;
    if (photo !== undefined) yield { kind: "bad-photo", name: photo.id, why: "missing" };
    else if (name.startsWith("entries/")) yield { kind: "bad-line", place: place + 1, why: "missing" };
    else yield { kind: "bad-kept", table: name, why: "missing" };
  }
}

async function photoOf(file: ZipFile, part: Part | undefined): Promise<BackupItem> {
  const { name } = file;
  const told = part?.photo ?? photoOfName(name);
  const blob = await file.read();
  const bad = (why: Unreadable): BackupItem => ({ kind: "bad-photo", name: told?.id ?? name, why });
  if (blob === null) return bad("checksum");
  if (told === null) return bad("not-a-photo");
  if (part !== undefined && (await sha256Of(await blob.arrayBuffer())) !== part.sha256)
    return bad("checksum");
  const photo = blob.slice(0, blob.size, told.type);
  return isPhoto(photo) ? { kind: "photo", id: told.id, blob: photo } : bad("not-a-photo");
}

async function* keptOf(table: KeptTable, files: readonly ZipFile[]): AsyncGenerator<BackupItem> {
  const file = files.find(({ name }) => name === `kept/${table}.ndjson`);
  if (file === undefined) return;
  const binary = async (n: number): Promise<Blob | null> =>
    (await files.find(({ name }) => name === `kept/${String(n).padStart(5, "0")}.bin`)?.read()) ?? null;
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
  const reader = text.stream().pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (;;) {
    const { done, value } = await reader.read();
    const lines = (rest + (value ?? "")).split("\n");
    rest = done ? "" : (lines.pop() ?? "");
    for (const line of lines) if (line !== "") yield line;
    if (done) return;
  }
}
