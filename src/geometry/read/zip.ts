import { MeshFault } from "../meshFault.ts";
import { crc32 } from "./crc32.ts";
import { textOf } from "./floatScanner.ts";
import { createInflater } from "./inflate.ts";
import type { Inflater } from "./inflate.ts";
import { cutShort } from "./limits.ts";
import { join } from "./pieces.ts";
import type { Reader } from "./reader.ts";

/** What may come out of one archive, bytes, and how many times the bytes that went in. */
const mostOut = 1_600_000_000;
const mostRatio = 250;
const ratioFrom = 16_000_000;
const mostEntries = 10_000;

const localHead = 0x0403_4b50;
const directory = new Set([0x0201_4b50, 0x0605_4b50, 0x0606_4b50, 0x0807_4b50]);
const descriptorMark = 0x0807_4b50;
const headBytes = 30;

type Entry = {
  readonly name: string;
  /** Sizes and sum follow the data. */
  readonly described: boolean;
  readonly sum: number;
  readonly sink: Reader<void> | null;
  readonly inflater: Inflater | null;
  left: number;
  crc: number;
  done: boolean;
};

/**
 * Reads a zip archive from the front as it arrives (APPNOTE 6.3.10, sections 4.3–4.4). `open` says who takes an entry's
 * bytes, null to pass over it. Refuses archives that unpack to absurd sizes.
 */
export function zipReader(open: (name: string) => Reader<void> | null): Reader<void> {
  let kept: Uint8Array = new Uint8Array(0);
  let entry: Entry | null = null;
  let entries = 0;
  let ended = false;
  let sizeIn = 0;
  let sizeOut = 0;

  function take(bytes: Uint8Array): void {
    sizeOut += bytes.length;
    if (sizeOut > mostOut || (sizeOut > ratioFrom && sizeOut > mostRatio * sizeIn))
      throw new MeshFault({
        code: "too-much-inside",
        found: `${sizeOut} bytes out of ${sizeIn}`,
        expected: `at most ${mostRatio} times as much, and ${mostOut} bytes`,
        remedy: "do not trust this file; export the pattern again",
      });
    if (entry === null || entry.sink === null) return;
    entry.crc = crc32(entry.crc, bytes);
    entry.sink.feed(bytes);
  }

  function openEntry(bytes: Uint8Array, at: number): number {
    if (bytes.length - at < headBytes) return -1;
    const view = new DataView(bytes.buffer, bytes.byteOffset + at);
    const [nameSize, extraSize] = [view.getUint16(26, true), view.getUint16(28, true)];
    const size = headBytes + nameSize + extraSize;
    if (bytes.length - at < size) return -1;
    const flags = view.getUint16(6, true);
    const method = view.getUint16(8, true);
    const name = textOf(bytes, at + headBytes, at + headBytes + nameSize);
    if (++entries > mostEntries) throw badArchive(`more than ${mostEntries} entries`);
    const described = (flags & 8) !== 0;
    const left = view.getUint32(18, true);
    if ((flags & 1) !== 0) throw badArchive("an archive under a password");
    if (method !== 0 && method !== 8) throw badArchive(`an entry packed in way ${method}`);
    if (method === 0 && (described || left === 0xffff_ffff)) throw badArchive(`"${name}" without its size`);
    const sink = open(name);
    // What nobody wants is passed over still packed, where its size is known.
    const isPassedOver = sink === null && !described && left !== 0xffff_ffff;
    entry = {
      name,
      described,
      sum: view.getInt32(14, true),
      sink,
      inflater: method === 8 && !isPassedOver ? createInflater(take) : null,
      left,
      crc: 0,
      done: false,
    };
    return at + size;
  }

  function body(bytes: Uint8Array, at: number, current: Entry): number {
    if (current.inflater !== null) {
      const used = current.inflater.feed(bytes.subarray(at));
      current.done = current.inflater.done();
      return at + used;
    }
    const number = Math.min(current.left, bytes.length - at);
    if (number > 0) take(bytes.subarray(at, at + number));
    current.left -= number;
    current.done = current.left === 0;
    return at + number;
  }

  /** Past what describes an entry after its data; −1 when it has not all arrived. Closes the entry. */
  function close(bytes: Uint8Array, at: number, current: Entry): number {
    let next = at;
    let sum = current.sum;
    if (current.described) {
      // With or without its mark, and with sizes of four or eight bytes: what follows tells.
      if (bytes.length - at < 28) return -1;
      const view = new DataView(bytes.buffer, bytes.byteOffset + at);
      const from = view.getUint32(0, true) === descriptorMark ? 4 : 0;
      const known = (place: number): boolean => {
        const mark = view.getUint32(place, true);
        return mark === localHead || directory.has(mark);
      };
      if (!known(from + 12) && !known(from + 20)) throw badArchive(`no end to "${current.name}"`);
      next = at + from + (known(from + 12) ? 12 : 20);
      sum = view.getInt32(from, true);
    }
    if (current.sink !== null) {
      if (current.crc !== sum) throw badArchive(`"${current.name}" whose check sum is wrong`);
      current.sink.end();
    }
    entry = null;
    return next;
  }

  function feed(fresh: Uint8Array): void {
    sizeIn += fresh.length;
    if (ended) return;
    const bytes = kept.length === 0 ? fresh : join(kept, fresh);
    kept = new Uint8Array(0);
    let at = 0;
    while (!ended) {
      const current: Entry | null = entry;
      let next = at;
      if (current === null) {
        if (bytes.length - at < 4) break;
        const mark = new DataView(bytes.buffer, bytes.byteOffset + at).getUint32(0, true);
        ended = directory.has(mark);
        if (ended) return;
        if (mark !== localHead) throw badArchive("bytes between the entries");
        next = openEntry(bytes, at);
      } else if (current.done) next = close(bytes, at, current);
      else next = body(bytes, at, current);
      if (next < 0) break;
      at = next;
      if (current !== null && entry === current && !current.done) break;
    }
    kept = bytes.slice(at);
  }

  function end(): void {
    if (!ended) throw cutShort("an archive without its directory", "a whole zip archive");
  }

  return { feed, end };
}

const badArchive = (found: string): MeshFault =>
  new MeshFault({
    code: "bad-archive",
    found,
    expected: "a zip archive as 3MF describes it",
    remedy: "copy or export the file again, or as binary STL",
  });
