import { MeshFault } from "../meshFault.ts";
import { textOf } from "./floatScanner.ts";
import { join } from "./pieces.ts";

const longestTag = 65_536;
const mostAttributes = 64;
const [less, more, slash, equals, quote, apostrophe, bang, query, colon] = [
  60, 62, 47, 61, 34, 39, 33, 63, 58,
];

/** One tag as it stands in the bytes; only good until the next. */
export type Tag = {
  bytes: Uint8Array;
  closing: boolean;
  nameFrom: number;
  nameTo: number;
  attributes: number;
  /** For each attribute where its name starts and ends and its value starts and ends. */
  readonly spans: Int32Array;
};

/**
 * Finds the tags of an XML document as its bytes arrive; text between them, comments and instructions are passed over.
 * Refuses a document type, so no entity can be made to grow, and tags beyond all reason.
 */
export function tagScanner(onTag: (tag: Tag) => void): {
  readonly feed: (bytes: Uint8Array) => void;
  readonly end: () => void;
} {
  const tag: Tag = {
    bytes: new Uint8Array(0),
    closing: false,
    nameFrom: 0,
    nameTo: 0,
    attributes: 0,
    spans: new Int32Array(4 * mostAttributes),
  };
  let kept: Uint8Array = new Uint8Array(0);

  /** Where what starts with "<!" or "<?" ends; −1 when it has not all arrived. */
  function passOver(bytes: Uint8Array, at: number): number {
    if (bytes.length - at < 9) return -1;
    const start = textOf(bytes, at, at + 9);
    const stop = start.startsWith("<!--")
      ? "-->"
      : start === "<![CDATA["
        ? "]]>"
        : start[1] === "?"
          ? "?>"
          : null;
    if (stop === null) throw badText(`"${start}"`);
    for (let to = at + 2; to + stop.length <= bytes.length; to++) {
      if (bytes[to + stop.length - 1] !== more) continue;
      if (textOf(bytes, to, to + stop.length) === stop) return to + stop.length;
    }
    return -1;
  }

  /** Reads the tag whose "<" is at `from`; where it ends, or −1 when it has not all arrived. */
  function read(bytes: Uint8Array, from: number): number {
    const end = bytes.length;
    let at = from + 1;
    if (at >= end) return -1;
    if (bytes[at] === bang || bytes[at] === query) return passOver(bytes, from);
    tag.closing = bytes[at] === slash;
    if (tag.closing) at++;
    tag.nameFrom = at;
    while (at < end && !isNameEnd(bytes[at]!)) at++;
    tag.nameTo = at;
    tag.attributes = 0;
    for (;;) {
      while (at < end && (bytes[at]! <= 32 || bytes[at] === slash)) at++;
      if (at >= end) return -1;
      if (bytes[at] === more) return at + 1;
      const name = at;
      while (at < end && !isNameEnd(bytes[at]!)) at++;
      const nameTo = at;
      while (at < end && bytes[at]! <= 32) at++;
      if (at >= end) return -1;
      if (bytes[at] !== equals) throw badText(`"${textOf(bytes, from, Math.min(end, from + 60))}"`);
      at++;
      while (at < end && bytes[at]! <= 32) at++;
      if (at >= end) return -1;
      const mark = bytes[at]!;
      if (mark !== quote && mark !== apostrophe)
        throw badText(`"${textOf(bytes, from, Math.min(end, from + 60))}"`);
      const value = ++at;
      while (at < end && bytes[at] !== mark) at++;
      if (at >= end) return -1;
      if (tag.attributes < mostAttributes) {
        const span = 4 * tag.attributes++;
        tag.spans[span] = name;
        tag.spans[span + 1] = nameTo;
        tag.spans[span + 2] = value;
        tag.spans[span + 3] = at;
      }
      at++;
    }
  }

  function feed(fresh: Uint8Array): void {
    const bytes = kept.length === 0 ? fresh : join(kept, fresh);
    tag.bytes = bytes;
    let at = 0;
    for (;;) {
      while (at < bytes.length && bytes[at] !== less) at++;
      if (at >= bytes.length) break;
      const next = read(bytes, at);
      if (next < 0) break;
      if (bytes[at + 1] !== bang && bytes[at + 1] !== query) onTag(tag);
      at = next;
    }
    if (bytes.length - at > longestTag) throw badText(`a tag of more than ${longestTag} bytes`);
    kept = bytes.slice(at);
  }

  function end(): void {
    if (kept.length > 0) throw badText("a tag without an end");
  }

  return { feed, end };
}

const isNameEnd = (byte: number): boolean =>
  byte <= 32 || byte === more || byte === slash || byte === equals || byte === less;

/** The tag's name, with its prefix. */
export const nameOf = (tag: Tag): string => textOf(tag.bytes, tag.nameFrom, tag.nameTo);

/** Value of an attribute, whatever its prefix; null when it is not there. */
export function attributeOf(tag: Tag, name: string): string | null {
  for (let i = 0; i < tag.attributes; i++) {
    const [from, to] = [tag.spans[4 * i]!, tag.spans[4 * i + 1]!];
    const start = to - name.length;
    if (start < from || (start > from && tag.bytes[start - 1] !== colon)) continue;
    if (textOf(tag.bytes, start, to) !== name) continue;
    return textOf(tag.bytes, tag.spans[4 * i + 2]!, tag.spans[4 * i + 3]!);
  }
  return null;
}

const badText = (found: string): MeshFault =>
  new MeshFault({
    code: "bad-archive",
    found,
    expected: "the XML of a 3MF model",
    remedy: "export the pattern again, or as binary STL",
  });
