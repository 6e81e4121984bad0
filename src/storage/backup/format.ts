import { z } from "zod";
import { crc32 } from "../../geometry/read/crc32.ts";

/**
 * A backup is one zip, stored and not packed, so that a damaged one can be read as far as it is sound:
 *
 *   entries/00001.ndjson   at most `linesAPart` lines each, `{"c":"<CRC-32 of the row, 8 hex>","r":<row>}`
 *   photos/<id>.<kind>     each photo as a file
 *   kept/<table>.ndjson    settings, half-written forms and meshes, a line each, as the entries
 *   kept/<n>.bin           the binary parts of those lines
 *   manifest.json          last: what is in it, and the SHA-256 of every part
 *
 * Version 1 was one JSON file; it is read for ever (`readJson.ts`).
 */
export const zipFormat = "dipbook-backup";
export const zipVersion = 2;
export const linesAPart = 2000;
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

export async function sha256Of(bytes: ArrayBuffer): Promise<string> {
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

/** The file name of a photo in a backup; its id can be read back from it where the manifest is lost. */
export const photoName = ({ id, type }: { readonly id: string; readonly type: string }): string =>
  `photos/${encodeURIComponent(id)}.${kinds[type] ?? "bin"}`;

export function photoOfName(name: string): { readonly id: string; readonly type: string } | null {
  const found = /^photos\/(.+)\.([a-z0-9]+)$/.exec(name);
  const type = Object.entries(kinds).find(([, kind]) => kind === found?.[2])?.[0];
  try {
    return found?.[1] === undefined || type === undefined ? null : { id: decodeURIComponent(found[1]), type };
  } catch {
    return null;
  }
}
