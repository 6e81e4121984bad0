import type { Entry } from "../logbook/entry.ts";
import { envelopeSchema, parseEntry, shown, type Fault } from "./entrySchema.ts";
import { isPhoto } from "./photos.ts";
import type { StoredEntry } from "./shopDb.ts";

export const backupFormat = "dipbook-log";
export const backupVersion = 1;
/** A text this long is as much as a browser will hold in one piece; a longer file is refused before it is read. */
export const backupMaxBytes = 500_000_000;

/** What is wrong with a backup. `entry` and `photo` count from 1 in the file. The page makes the sentence. */
export type ImportProblem =
  | { readonly code: "too-large"; readonly bytes: number; readonly maxBytes: number }
  | { readonly code: "not-json" }
  | { readonly code: "not-a-backup"; readonly expected: string; readonly found: string }
  | { readonly code: "newer-backup"; readonly version: number; readonly known: number }
  | ({ readonly code: "bad-entry"; readonly entry: number } & Pick<Fault, "field" | "expected" | "found">)
  | {
      readonly code: "newer-entry";
      readonly entry: number;
      readonly expected: string;
      readonly found: string;
    }
  | { readonly code: "id-clash"; readonly entry: number; readonly id: string }
  | { readonly code: "bad-photo"; readonly photo: number; readonly expected: string; readonly found: string }
  | { readonly code: "photo-clash"; readonly photo: number; readonly id: string }
  | { readonly code: "out-of-space" };

export type BackupContents = {
  /** Rows as they were written, in the file's order; `place` counts from 1. */
  readonly rows: readonly { readonly row: StoredEntry; readonly place: number }[];
  readonly photos: readonly { readonly id: string; readonly blob: Blob; readonly place: number }[];
};
export type CheckedBackup =
  | { readonly ok: true; readonly contents: BackupContents }
  | { readonly ok: false; readonly problems: readonly ImportProblem[] };

/** No more than this many problems are listed; the first ones tell what is wrong. */
export const problemsListed = 20;

/** Reads a backup and checks every line of it before anything is done with it. Never throws. */
export function checkBackup(text: string): CheckedBackup {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused({ code: "not-json" });
  }
  const format = fieldOf(file, "format");
  if (format !== backupFormat)
    return refused({ code: "not-a-backup", expected: `format "${backupFormat}"`, found: shown(format) });
  const version = fieldOf(file, "version");
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1)
    return refused({ code: "not-a-backup", expected: "a version", found: shown(version) });
  if (version > backupVersion) return refused({ code: "newer-backup", version, known: backupVersion });
  const lists = {
    entries: fieldOf(file, "entries"),
    aside: fieldOf(file, "setAside"),
    photos: fieldOf(file, "photos"),
  };
  if (!Array.isArray(lists.entries))
    return refused({ code: "not-a-backup", expected: "a list of entries", found: shown(lists.entries) });
  return checkLists(lists.entries, asList(lists.aside), asList(lists.photos));
}

function checkLists(
  entries: readonly unknown[],
  aside: readonly unknown[],
  photos: readonly unknown[],
): CheckedBackup {
  const problems: ImportProblem[] = [];
  const rows: { row: StoredEntry; place: number }[] = [];
  const pictures: { id: string; blob: Blob; place: number }[] = [];
  for (const [index, value] of entries.entries()) {
    const parsed = parseEntry(value);
    if (parsed.ok) rows.push({ row: value as Entry, place: index + 1 });
    else problems.push(entryProblem(index + 1, parsed.fault));
    if (problems.length >= problemsListed) return { ok: false, problems };
  }
  for (const [index, value] of aside.entries()) {
    const place = entries.length + index + 1;
    if (isKeepable(value)) rows.push({ row: value, place });
    else
      problems.push({
        code: "bad-entry",
        entry: place,
        field: "",
        expected: "an entry",
        found: shown(value),
      });
    if (problems.length >= problemsListed) return { ok: false, problems };
  }
  for (const [index, value] of photos.entries()) {
    const photo = checkPhoto(value, index + 1);
    if ("code" in photo) problems.push(photo);
    else pictures.push({ ...photo, place: index + 1 });
    if (problems.length >= problemsListed) return { ok: false, problems };
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, contents: { rows, photos: pictures } };
}

const entryProblem = (entry: number, { code, field, expected, found }: Fault): ImportProblem =>
  code === "newer-version"
    ? { code: "newer-entry", entry, expected, found }
    : { code: "bad-entry", entry, field, expected, found };

/** A logger's day of a reading every ten seconds, told by a newer program, is still well below. */
const keepableLetters = 1_000_000;
/** Far deeper than any entry; what goes on without end can't be put in the store. */
const keepableDepth = 40;

const isShallow = (value: unknown, left: number): boolean =>
  typeof value !== "object" ||
  value === null ||
  (left > 0 && Object.values(value).every((inner) => isShallow(inner, left - 1)));

/** A line that was unreadable where it was exported comes back as such: only what the store needs of it is asked. */
function isKeepable(value: unknown): value is StoredEntry {
  try {
    return (
      envelopeSchema.safeParse(value).success &&
      isShallow(value, keepableDepth) &&
      JSON.stringify(value).length <= keepableLetters
    );
  } catch {
    // Nested so deep that it can't be written down again.
    return false;
  }
}

function checkPhoto(
  value: unknown,
  photo: number,
): { readonly id: string; readonly blob: Blob } | Extract<ImportProblem, { code: "bad-photo" }> {
  const bad = (expected: string, found: unknown) =>
    ({ code: "bad-photo", photo, expected, found: shown(found) }) as const;
  const id = fieldOf(value, "id");
  const type = fieldOf(value, "type");
  const data = fieldOf(value, "data");
  if (typeof id !== "string" || id === "" || id.length > 64) return bad("an id", id);
  const bytes = typeof data === "string" ? fromBase64(data) : null;
  if (typeof type !== "string" || bytes === null) return bad("a picture as base64", data);
  const blob = new Blob([bytes], { type });
  return isPhoto(blob)
    ? { id, blob }
    : bad("a picture of at most 15 MB", `${shown(type)}, ${blob.size} bytes`);
}

function fromBase64(data: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(data), (char) => char.charCodeAt(0));
  } catch {
    return null;
  }
}

const refused = (problem: ImportProblem): CheckedBackup => ({ ok: false, problems: [problem] });
const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const fieldOf = (value: unknown, key: string): unknown =>
  typeof value === "object" && value !== null && Object.hasOwn(value, key)
    ? (value as Readonly<Record<string, unknown>>)[key]
    : undefined;

/** A value as text with its keys in order, so that two copies of one line read the same however they were written. */
export const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === "object" && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
