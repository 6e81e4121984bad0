import { isPhoto } from "../photos.ts";
import type { BackupItem, NotABackup, OpenBackup, ReadWork } from "./items.ts";
import { linesOf } from "./readZip.ts";

/** What the first version called itself. */
const jsonFormat = "dipbook-log";
const jsonVersion = 1;
/** A text this long is as much as a browser will hold in one piece: past it only a file in lines can be read. */
const wholeTextBytes = 400_000_000;

/**
 * Opens a backup of version 1: one JSON text, as the app wrote it with a line for each entry and each photo, or as a
 * person may have saved it again. Whole text is parsed as such; one that is damaged or too long is read line by line.
 */
export async function openJson(file: Blob): Promise<OpenBackup | NotABackup> {
  const first = (await firstLine(file)).slice(0, 400);
  const text = file.size <= wholeTextBytes ? parsed(await file.text()) : undefined;
  // A text that can't be parsed tells these in its first line, before its lists begin.
  const head = /^[^[]*/.exec(first)?.[0] ?? "";
  const told = (key: string, pattern: RegExp): unknown =>
    text === undefined ? pattern.exec(head)?.[1] : fieldOf(text, key);
  const format = told("format", /"format":"([^"]{0,60})"/);
  if (format !== jsonFormat) return { code: "not-a-backup", found: found(text, first) };
  const version = Number(told("version", /"version":(\d{1,6})/));
  if (!Number.isInteger(version) || version < 1)
    return { code: "not-a-backup", found: "a file without a version" };
  if (version > jsonVersion) return { code: "newer-backup", version, known: jsonVersion };
  if (text !== undefined && !Array.isArray(fieldOf(text, "entries")))
    return { code: "not-a-backup", found: "a file without a list of entries" };
  const madeAt = Number(told("madeAt", /"madeAt":(\d{1,16})/));
  return {
    head: {
      version: 1,
      madeAt: Number.isFinite(madeAt) ? madeAt : null,
      device: null,
      manifest: null,
      isWhole: text !== undefined,
    },
    items: (work) => (text === undefined ? itemsByLine(file, work) : itemsOf(text, file.size, work)),
  };
}

async function firstLine(file: Blob): Promise<string> {
  for await (const line of linesOf(file.slice(0, 4096))) return line;
  return "";
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const found = (text: unknown, first: string): string =>
  text === undefined ? (first === "" ? "an empty file" : "a file that is no backup") : "another JSON file";

const fieldOf = (value: unknown, key: string): unknown =>
  typeof value === "object" && value !== null && Object.hasOwn(value, key)
    ? (value as Readonly<Record<string, unknown>>)[key]
    : undefined;
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

async function* itemsOf(
  text: unknown,
  ofBytes: number,
  { onProgress, signal }: ReadWork,
): AsyncGenerator<BackupItem> {
  let place = 0;
  for (const [key, mayBeAside] of [
    ["entries", false],
    ["setAside", true],
  ] as const)
    for (const row of listOf(fieldOf(text, key))) {
      signal?.throwIfAborted();
      place += 1;
      yield { kind: "line", place, row, mayBeAside };
    }
  for (const [index, photo] of listOf(fieldOf(text, "photos")).entries()) {
    signal?.throwIfAborted();
    yield photoOf(photo, index + 1);
  }
  onProgress?.({ doneBytes: ofBytes, ofBytes });
}

/** The layout the app wrote: each list opens on a line of its own, and each thing in it is a line. */
async function* itemsByLine(file: Blob, { onProgress, signal }: ReadWork): AsyncGenerator<BackupItem> {
  let list: "entries" | "setAside" | "photos" | null = null;
  let [place, photo, doneBytes] = [0, 0, 0];
  for await (const line of linesOf(file)) {
    signal?.throwIfAborted();
    doneBytes += line.length + 1;
    onProgress?.({ doneBytes, ofBytes: file.size });
    const opens = /^\]?,?"(entries|setAside|photos)":\[$/.exec(line)?.[1];
    if (opens !== undefined) list = opens as "entries" | "setAside" | "photos";
    if (opens !== undefined || list === null || /^[\]}]+$/.test(line)) continue;
    const row = parsed(line.replace(/,$/, ""));
    if (list === "photos") {
      photo += 1;
      yield row === undefined ? { kind: "bad-photo", name: `${photo}`, why: "cut-off" } : photoOf(row, photo);
    } else {
      place += 1;
      yield row === undefined
        ? { kind: "bad-line", place, why: "not-json" }
        : { kind: "line", place, row, mayBeAside: list === "setAside" };
    }
  }
}

function photoOf(value: unknown, number: number): BackupItem {
  const [id, type, data] = [fieldOf(value, "id"), fieldOf(value, "type"), fieldOf(value, "data")];
  const name = typeof id === "string" && id !== "" && id.length <= 64 ? id : null;
  const bytes = typeof data === "string" ? fromBase64(data) : null;
  const blob = bytes !== null && typeof type === "string" ? new Blob([bytes], { type }) : null;
  return name === null || blob === null || !isPhoto(blob)
    ? { kind: "bad-photo", name: name ?? String(number), why: "not-a-photo" }
    : { kind: "photo", id: name, type: blob.type, bytes: blob.size, blob: () => blob };
}

function fromBase64(data: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(data), (char) => char.charCodeAt(0));
  } catch {
    return null;
  }
}
