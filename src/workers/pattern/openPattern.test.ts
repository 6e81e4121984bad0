import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { MeshFault } from "../../geometry/meshFault.ts";
import { refuseFlat } from "../../geometry/refuseFlat.ts";
import { asFiled, rotated, turnedBy } from "../../geometry/rotation.ts";
import { objFile, stlBinaryFile } from "../../../tests/meshFiles.ts";
import { towers } from "../../../tests/meshes/testShapes.ts";
import { boxes, moved, refined, together, turnedInsideOut } from "../../../tests/meshes/testSolids.ts";
import { capsOf } from "../patternCaps.ts";
import { fileId, mostAtOnce, sliceBytes } from "./fileId.ts";
import { openPattern } from "./openPattern.ts";
import type { Work } from "./work.ts";

const sha256 = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
const work: Work = { signal: new AbortController().signal, tell: () => {} };
const caps = capsOf({ memoryGb: 8, isTouch: false });
const opened = (bytes: Uint8Array, name: string, keptIds: readonly string[] = []) =>
  openPattern({ file: new Blob([Uint8Array.from(bytes)]), name, caps, keptIds }, work);
const codeOf = async (bytes: Uint8Array, name: string): Promise<string> => {
  try {
    await opened(bytes, name);
  } catch (error) {
    if (error instanceof MeshFault) return error.code;
    throw error;
  }
  return "none";
};

test("a file that fits in memory is kept by its SHA-256, as it always was", async () => {
  const file = stlBinaryFile(towers);
  expect((await opened(file, "a.stl")).opened.id).toBe(sha256(file));
  // FIPS 180-4's own example.
  const id = fileId([]);
  id.feed(new TextEncoder().encode("abc"));
  expect(await id.end()).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
});

test("a larger one is kept by the digest of its slices' digests, and still found by its old id", async () => {
  const figure = objFile(towers);
  const file = new Uint8Array(mostAtOnce + 1000).fill(35); // A comment line of OBJ, without an end to it.
  for (let at = 1000; at < file.length; at += 1000) file[at] = 10;
  file.set(figure);
  file[figure.length] = 10;
  const digests: Uint8Array[] = [];
  for (let at = 0; at < file.length; at += sliceBytes)
    digests.push(
      createHash("sha256")
        .update(file.subarray(at, at + sliceBytes))
        .digest(),
    );
  const now = await opened(file, "a.obj");
  expect(now.opened.id).toBe(sha256(Buffer.concat(digests)));
  expect(now.opened.found.measures.volume).toBe(53_880);
});

test("a file in slices is found by the id of the older kind, and by no other", async () => {
  const slices = [1, 2, 3].map((n) => new Uint8Array(1000).fill(n));
  const whole = sha256(Buffer.concat(slices));
  const idOf = (kept: readonly string[]): Promise<string> => {
    const id = fileId(kept);
    for (const slice of slices) id.feed(slice);
    return id.end();
  };
  const now = await idOf([]);
  expect(now).toBe(sha256(Buffer.concat(slices.map((slice) => Buffer.from(sha256(slice), "hex")))));
  expect(await idOf(["f".repeat(64)])).toBe(now);
  expect(await idOf(["f".repeat(64), whole])).toBe(whole);
  slices[1]![500] = 9;
  expect(await idOf([whole])).not.toBe(now);
  expect(await idOf([whole])).not.toBe(whole);
});

test("an empty or a flat mesh is a clear fault, whichever way it lies", async () => {
  const plate = refined(boxes([[0, 40, 0, 40, 0, 40]]), 4);
  const flat = moved(plate, ([x, y]) => [x, y, 0]);
  const leaning = turnedBy(turnedBy(asFiled, "x", 0.6), "y", -1.1);
  for (const mesh of [flat, moved(flat, (p) => rotated(leaning, p)), together(flat, turnedInsideOut(flat))])
    expect(await codeOf(stlBinaryFile(mesh), "flat.stl")).toBe("flat");
  const line = moved(plate, ([x]) => [x, 2 * x, 3 * x]);
  const point = moved(plate, () => [5, 5, 5]);
  expect(await codeOf(stlBinaryFile(line), "line.stl")).toBe("no-area");
  expect(await codeOf(stlBinaryFile(point), "point.stl")).toBe("no-area");
  expect(await codeOf(new Uint8Array(84), "none.stl")).toBe("no-faces");
  expect(await codeOf(new Uint8Array(0), "none.stl")).toBe("empty-file");
  expect(() => refuseFlat(flat)).toThrow(/all in one plane.*thickness/);
  // A sheet a thousandth of its width is a body.
  expect(() => refuseFlat(boxes([[0, 100, 0, 100, 0, 0.1]]))).not.toThrow();
});

test("a file of a hollow body inside out, drawn twice, opens as the right one", async () => {
  const hollow = together(boxes([[0, 40, 0, 40, 0, 40]]), turnedInsideOut(boxes([[5, 35, 5, 35, 5, 35]])));
  for (const mesh of [
    hollow,
    turnedInsideOut(hollow),
    together(hollow, hollow),
    turnedInsideOut(together(hollow, hollow)),
  ]) {
    const { found } = (await opened(stlBinaryFile(mesh), "a.stl")).opened;
    expect(found.measures).toMatchObject({
      volume: 37_000,
      area: 9600 + 5400,
      watertight: true,
      overlaps: false,
    });
  }
});
