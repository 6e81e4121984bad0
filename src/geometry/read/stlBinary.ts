import { MeshFault } from "../meshFault.ts";
import { asWelded, createWelder } from "../weld.ts";
import { growingIndices, makeRoom } from "./growing.ts";
import { cutShort, mostTriangles, noFaces, outOfRange, refuseTooMany } from "./limits.ts";
import { notesOf } from "./reader.ts";
import type { ReadMesh, Reader } from "./reader.ts";

const headBytes = 84;
const facetBytes = 50;
const batchFacets = 8192;
/** Bits of 1e6 as a 32-bit float: without the sign, the bits of floats order as integers, infinities and NaN last. */
const widestBits = 0x4974_2400;
const signless = 0x7fff_ffff;

/**
 * Binary STL: 80 bytes of anything, a count, and 50 bytes a facet. The count is not trusted: facets are the fewer of
 * the count and what the bytes hold, and a count of 0 means as many as there are.
 */
export function stlBinaryReader(sizeBytes: number): Reader<ReadMesh> {
  const held = new Uint8Array(headBytes);
  const bits = new Int32Array(9 * batchFacets);
  const claimed = Math.min(mostTriangles, Math.max(0, Math.floor((sizeBytes - headBytes) / facetBytes)));
  const welder = createWelder(claimed * 0.52);
  const idx = growingIndices(3 * claimed);
  let kept = 0;
  let started = false;
  let size = 0;
  let count = 0;
  let most = 0;
  let facets = 0;

  function facetsOf(bytes: Uint8Array, from: number, wanted: number): void {
    const number = Math.min(wanted, most - facets);
    if (number <= 0) return;
    refuseTooMany(facets + number);
    makeRoom(idx, 3 * number);
    const view = new DataView(bytes.buffer, bytes.byteOffset + from, number * facetBytes);
    for (let done = 0; done < number;) {
      const batch = Math.min(batchFacets, number - done);
      let b = 0;
      for (let f = 0; f < batch; f++) {
        const at = (done + f) * facetBytes + 12;
        for (let k = 0; k < 36; k += 4) {
          const value = view.getInt32(at + k, true);
          if ((value & signless) >= widestBits)
            throw outOfRange(view.getFloat32(at + k, true), `in facet ${facets + f + 1}`);
          bits[b++] = value;
        }
      }
      welder.add(bits, 3 * batch, idx.data, idx.n);
      idx.n += 3 * batch;
      facets += batch;
      done += batch;
    }
  }

  /** Fills the held bytes up to `wanted`; gives how many it took. */
  function hold(bytes: Uint8Array, from: number, wanted: number): number {
    const taken = Math.min(wanted - kept, bytes.length - from);
    held.set(bytes.subarray(from, from + taken), kept);
    kept += taken;
    return taken;
  }

  function feed(bytes: Uint8Array): void {
    size += bytes.length;
    let at = 0;
    if (!started) {
      at = hold(bytes, 0, headBytes);
      if (kept < headBytes) return;
      started = true;
      kept = 0;
      count = new DataView(held.buffer).getUint32(80, true);
      most = count === 0 ? Infinity : count;
    }
    if (kept > 0) {
      at += hold(bytes, at, facetBytes);
      if (kept < facetBytes) return;
      kept = 0;
      facetsOf(held, 0, 1);
    }
    const whole = Math.floor((bytes.length - at) / facetBytes);
    facetsOf(bytes, at, whole);
    hold(bytes, at + whole * facetBytes, facetBytes);
  }

  function end(): ReadMesh {
    if (!started) throw cutShort(`${size} bytes`, `at least the ${headBytes} bytes of a binary STL's head`);
    const fits = Math.floor((size - headBytes) / facetBytes);
    const spare = (size - headBytes) % facetBytes;
    if (spare > 0 && count > fits) throw cutShort(`${fits} whole facets`, `the ${count} its head counts`);
    if (spare > 0)
      throw new MeshFault({
        code: "bad-size",
        found: `${size} bytes, which is not 84 and 50 for each facet`,
        expected: `${headBytes + count * facetBytes} bytes for the ${count} facets its head counts`,
        remedy: "export the pattern again; the file was changed on its way",
      });
    if (facets === 0) throw noFaces("a binary STL without a facet");
    return asWelded({
      pos: welder.positions(),
      idx: idx.data.length === idx.n ? idx.data : idx.data.slice(0, idx.n),
      unit: null,
      format: "stl-binary",
      notes: notesOf({
        "count-wrong": count === 0 || count > fits ? fits : 0,
        "bytes-ignored": (fits - facets) * facetBytes,
      }),
    });
  }

  return { feed, end };
}
