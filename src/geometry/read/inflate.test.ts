import fc from "fast-check";
import { constants, crc32 as zlibSum, deflateRawSync } from "node:zlib";
import { expect, test } from "vitest";
import { slicesOf } from "../../../tests/meshFiles.ts";
import { MeshFault } from "../meshFault.ts";
import { crc32 } from "./crc32.ts";
import { createInflater } from "./inflate.ts";

function unpack(packed: Uint8Array, slice: number): { out: Uint8Array; done: boolean; used: number } {
  const parts: Uint8Array[] = [];
  const inflater = createInflater((bytes) => parts.push(bytes.slice()));
  let used = 0;
  for (const bytes of slicesOf(packed, slice)) {
    if (inflater.done()) break;
    used += inflater.feed(bytes);
  }
  return { out: new Uint8Array(Buffer.concat(parts)), done: inflater.done(), used };
}

const ways = fc.record({
  level: fc.integer({ min: 0, max: 9 }),
  strategy: fc.constantFrom(
    constants.Z_DEFAULT_STRATEGY,
    constants.Z_HUFFMAN_ONLY,
    constants.Z_RLE,
    constants.Z_FIXED,
  ),
});
const contents = fc.oneof(
  fc.uint8Array({ maxLength: 3000 }),
  fc
    .array(fc.constantFrom("<vertex x=", "1.5", " y=", "-2", "/>\n"), { maxLength: 3000 })
    .map((words) => new TextEncoder().encode(words.join(""))),
);

test("what zlib packs in any way comes out the same, in slices of any size", () => {
  fc.assert(
    fc.property(contents, ways, fc.integer({ min: 1, max: 5000 }), (raw, way, slice) => {
      const { out, done } = unpack(deflateRawSync(raw, way), slice);
      expect(done).toBe(true);
      expect(Buffer.compare(out, raw)).toBe(0);
    }),
    { numRuns: 120 },
  );
});

test("a megabyte with copies from far back comes out the same", () => {
  const raw = Uint8Array.from({ length: 1_000_000 }, (_, i) => ((i * i) >> 7) ^ (i % 31_000));
  expect(Buffer.compare(unpack(deflateRawSync(raw), 65_536).out, raw)).toBe(0);
});

test("bytes after the end are left for whoever comes next", () => {
  const packed = deflateRawSync(Buffer.from("a figure, a figure, a figure"));
  const more = new Uint8Array(packed.length + 40).fill(7);
  more.set(packed);
  for (const slice of [1, 2, 5, 1000]) expect(unpack(more, slice).used).toBe(packed.length);
});

test("damaged data is a fault or stays unfinished, never anything else", () => {
  const packed = deflateRawSync(Buffer.from("one horn, two horns, three horns, a tooth".repeat(40)));
  fc.assert(
    fc.property(fc.nat(packed.length - 1), fc.integer({ min: 1, max: 255 }), (at, flip) => {
      const bad = Uint8Array.from(packed);
      bad[at]! ^= flip;
      try {
        unpack(bad, 64);
      } catch (fault) {
        expect(fault).toBeInstanceOf(MeshFault);
      }
    }),
  );
});

test("the check sum is the one zip uses", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 99 }), fc.uint8Array({ maxLength: 99 }), (first, second) => {
      expect(crc32(crc32(0, first), second) >>> 0).toBe(zlibSum(Buffer.concat([first, second])));
    }),
  );
  // ISO 3309 / PNG specification: the check value of "123456789".
  expect(crc32(0, new TextEncoder().encode("123456789")) >>> 0).toBe(0xcbf4_3926);
});
