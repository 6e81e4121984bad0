import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { sha256Stream } from "./sha256.ts";

function hashOf(slices: readonly Uint8Array[]): string {
  const hash = sha256Stream();
  for (const slice of slices) hash.feed(slice);
  return hash.end();
}

test("nothing, and abc, have the digests the standard gives", () => {
  expect(hashOf([])).toBe("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  expect(hashOf([new TextEncoder().encode("abc")])).toBe(
    "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
});

test("any bytes cut in any slices have the digest another library finds", () => {
  fc.assert(
    fc.property(fc.array(fc.uint8Array({ maxLength: 200 }), { maxLength: 8 }), (slices) => {
      expect(hashOf(slices)).toBe(createHash("sha256").update(Buffer.concat(slices)).digest("hex"));
    }),
    { numRuns: 200 },
  );
});
