import { z } from "zod";
import { withBytes } from "./lentBytes.ts";
import { crc32 } from "../../geometry/read/crc32.ts";

/**
 * A backup is one zip, stored and not packed, so that a damaged one can be read as far as it is sound:
 *
 *   entries/00001.ndjson   at most a `fullPart` each, lines of the form
 *                          `{"c":"<CRC-32 of the row, 8 hex>","r":<row>}`
 *   photos/<id>=<c>.<kind> each photo as a file; `c` is the CRC-32 of its id and type, 8 hex
 *   kept/<table>.ndjson    settings, half-written forms and meshes, a line each, as the entries
 *   kept/<n>.bin           the binary parts of those lines
 *   manifest.json          last: what is in it, and the SHA-256 of every part
 *
 * Version 1 was one JSON file; it is read for ever (`readJson.ts`).
 */
export const zipFormat = "dipbook-backup";
export const zipVersion = 2;
/** A part of entries is closed at either; a logger's day is one line of a hundred thousand letters. */
export const fullPart = { lines: 2000, letters: 2_000_000 } as const;
export const manifestName = "manifest.json";

export type Part = {
  readonly name: string;
  readonly bytes: number;
  readonly sha256: string;
  /** Of a photo alone: its id and type as they were in the store. */
  readonly photo?: { readonly id: string; readonly type: string } | undefined;
};

export type Manifest = {
  readonly format: typeof zipFormat;
  readonly version: number;
  readonly app: string;
  /** Version of the entries' schema. */
  readonly schema: number;
  readonly madeAt: number;
  readonly device: string;
  readonly choice: { readonly photos: boolean; readonly since: number | null };
  readonly counts: { readonly entries: number; readonly photos: number; readonly kept: number };
  /** Time of the newest entry; null in an empty log. */
  readonly lastEntryAt: number | null;
  readonly parts: readonly Part[];
};

const count = z.int().min(0);
export const manifestSchema = z.object({
  format: z.literal(zipFormat),
  version: z.int().min(1),
  app: z.string().max(40),
  schema: z.int().min(1),
  madeAt: z.number().min(0),
  device: z.string().max(64),
  choice: z.object({ photos: z.boolean(), since: z.number().nullable() }),
  counts: z.object({ entries: count, photos: count, kept: count }),
  lastEntryAt: z.number().nullable(),
  parts: z.array(
    z.object({
      name: z.string().min(1).max(300),
      bytes: count,
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
      photo: z.object({ id: z.string().min(1).max(64), type: z.string().max(100) }).optional(),
    }),
  ),
}) satisfies z.ZodType<Manifest>;

const utf8 = new TextEncoder();
const hex8 = (sum: number): string => (sum >>> 0).toString(16).padStart(8, "0");
const crcOf = (text: string): string => hex8(crc32(0, utf8.encode(text)));

const open = '{"c":"';
const middle = '","r":';

/** A row as a line with its own checksum, without the line's end. */
export function sealLine(row: unknown): string {
  const text = JSON.stringify(row);
  return `${open}${crcOf(text)}${middle}${text}}`;
}

export type Unsealed =
  | { readonly ok: true; readonly row: unknown }
  | { readonly ok: false; readonly why: "cut-off" | "checksum" | "not-json" };

/** A line back as its row; refused where a letter of it was changed or lost. */
export function unsealLine(line: string): Unsealed {
  const start = open.length + 8 + middle.length;
  if (!line.startsWith(open) || line.slice(start - middle.length, start) !== middle || !line.endsWith("}"))
    return { ok: false, why: "cut-off" };
  const text = line.slice(start, -1);
  if (crcOf(text) !== line.slice(open.length, open.length + 8)) return { ok: false, why: "checksum" };
  try {
    return { ok: true, row: JSON.parse(text) };
  } catch {
    return { ok: false, why: "not-json" };
  }
}

export const sha256OfBlob = (blob: Blob): Promise<string> => withBytes(blob, sha256Of);

export async function sha256Of(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

const kinds: Readonly<Record<string, string>> = {
  "image/jpeg": "jpg",
  "image/png": "png",
  "image/webp": "webp",
  "image/heic": "heic",
  "image/avif": "avif",
  "image/gif": "gif",
};

const sumOfId = ({ id, type }: { readonly id: string; readonly type: string }): string =>
  crcOf(`${id} ${kinds[type] ?? "bin"}`);

/**
 * The file name of a photo in a backup. Its id can be read back from it where the manifest is lost, and has a checksum
 * of its own there, so that no photo comes in under another's id.
 */
export const photoName = (photo: { readonly id: string; readonly type: string }): string =>
  `photos/${encodeURIComponent(photo.id)}=${sumOfId(photo)}.${kinds[photo.type] ?? "bin"}`;

/** Names of before had no checksum: then only an id as the app makes them is taken. */
const bareId = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

export function photoOfName(name: string): { readonly id: string; readonly type: string } | null {
  const [, text, sum, kind] = /^photos\/([^=]+)(?:=([0-9a-f]{8}))?\.([a-z0-9]+)$/.exec(name) ?? [];
  const type = Object.keys(kinds).find((one) => kinds[one] === kind);
  if (text === undefined || type === undefined) return null;
  try {
    const id = decodeURIComponent(text);
    const isSound = sum === undefined ? bareId.test(id) : sum === sumOfId({ id, type });
    return isSound ? { id, type } : null;
  } catch {
    return null;
  }
}
