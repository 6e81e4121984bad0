import { crc32 } from "../../geometry/read/crc32.ts";
import type { FileWindow } from "./fileWindow.ts";
import { sha256Of } from "./format.ts";

/** A file found in a zip by its own head, without the list at the zip's end. */
export type FoundFile = {
  readonly name: string;
  /** What is there of it; less than it was where the zip is cut off within it. */
  readonly bytes: number;
  readonly isCut: boolean;
  /** Made when it is asked for, of the type given: a browser keeps a record of every blob. */
  readonly blob: (type?: string) => Blob;
  /** Whether its bytes are those of this SHA-256; with none, those its head gives the checksum of. */
  readonly isSound: (sha256: string | undefined) => Promise<boolean>;
};

const scanBytes = 1 << 20;
const headBytes = 30;
const longestName = 300;
const ours = /^(entries\/|photos\/|kept\/|manifest\.json$)/;

/**
 * Every file of ours in a zip whose end or middle is damaged, found by the signature of its local head (PK 03 04,
 * APPNOTE 4.3.7). Files are stored, not packed, and their sizes stand in their heads, so each is read by itself.
 */
export async function* salvageZip(zip: FileWindow): AsyncGenerator<FoundFile> {
  let at = 0;
  while (at + headBytes <= zip.file.size) {
    const head = await nextHead(zip, at);
    if (head === null) return;
    const found = fileOf(zip, head);
    yield found;
    const end = head.dataAt + head.bytes;
    // Where a size is wrong the next head lies elsewhere: it is looked for from the last one on.
    at = !found.isCut && (await signatureAt(zip, end)) ? end : head.at + headBytes;
  }
}

/** The file whose local head lies just there; null where none of ours does. */
export async function fileAt(zip: FileWindow, at: number): Promise<FoundFile | null> {
  const head = await zip.lend(at, headBytes + longestName, (bytes) =>
    bytes.length > headBytes && bytes[0] === 0x50 ? headAt(bytes, 0, at) : null,
  );
  return head === null ? null : fileOf(zip, head);
}

function fileOf(zip: FileWindow, { name, dataAt, bytes, sum }: Head): FoundFile {
  const end = Math.min(zip.file.size, dataAt + bytes);
  const isCut = end < dataAt + bytes;
  return {
    name,
    bytes: Math.max(0, end - dataAt),
    isCut,
    blob: (type) => zip.file.slice(dataAt, end, type),
    isSound: async (sha256) =>
      !isCut &&
      zip.lend(dataAt, bytes, async (own) =>
        sha256 === undefined ? crc32(0, own) >>> 0 === sum : (await sha256Of(own)) === sha256,
      ),
  };
}

type Head = {
  readonly at: number;
  readonly name: string;
  readonly dataAt: number;
  readonly bytes: number;
  readonly sum: number;
};

async function nextHead(zip: FileWindow, from: number): Promise<Head | null> {
  for (let start = from; start < zip.file.size; start += scanBytes) {
    // Stretches overlap by a head and its name, so that none falls between two.
    const head = await zip.lend(start, scanBytes + headBytes + longestName, (bytes) =>
      firstHead(bytes, start),
    );
    if (head !== null) return head;
  }
  return null;
}

function firstHead(bytes: Uint8Array, start: number): Head | null {
  const limit = Math.min(scanBytes, bytes.length - headBytes + 1);
  for (let i = bytes.indexOf(0x50); i !== -1 && i < limit; i = bytes.indexOf(0x50, i + 1)) {
    const head = headAt(bytes, i, start);
    if (head !== null) return head;
  }
  return null;
}

function headAt(bytes: Uint8Array, i: number, start: number): Head | null {
  if (bytes[i + 1] !== 0x4b || bytes[i + 2] !== 3 || bytes[i + 3] !== 4) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset + i);
  const [stored, sum, size] = [view.getUint16(8, true), view.getUint32(14, true), view.getUint32(22, true)];
  const [nameBytes, extraBytes] = [view.getUint16(26, true), view.getUint16(28, true)];
  if (stored !== 0 || nameBytes === 0 || nameBytes > longestName || i + headBytes + nameBytes > bytes.length)
    return null;
  const name = new TextDecoder().decode(bytes.subarray(i + headBytes, i + headBytes + nameBytes));
  if (!ours.test(name)) return null;
  return { at: start + i, name, dataAt: start + i + headBytes + nameBytes + extraBytes, bytes: size, sum };
}

/** Whether another head or the list of contents follows, or the zip ends here. */
async function signatureAt(zip: FileWindow, at: number): Promise<boolean> {
  return at >= zip.file.size || zip.lend(at, 2, ([p, k]) => p === 0x50 && k === 0x4b);
}
