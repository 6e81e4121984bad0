import { expect, test } from "vitest";
import { objFile, slicesOf } from "../../../tests/meshFiles.ts";
import { MeshFault } from "../meshFault.ts";
import { openMeshReader } from "../readMesh.ts";
import { boxes } from "../../../tests/meshes/testSolids.ts";
import { measureMesh, readMesh } from "../../../tests/meshes/atOnce.ts";

const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);
const corners = "v 0 0 0\nv 2 0 0\nv 2 2 0\nv 0 2 0\nv 0 0 2\nv 2 0 2\nv 2 2 2\nv 0 2 2\n";
const quads = [
  [4, 3, 2, 1],
  [5, 6, 7, 8],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 4, 8, 7],
  [4, 1, 5, 8],
] as const;
const volume = (lines: string): number | null => measureMesh(readMesh(text(lines), "figure.obj")).volume;
const cube = (face: (quad: readonly number[]) => string): string =>
  `${corners}${quads.map((q) => `f ${face(q)}\n`).join("")}`;

test("a cube of squares is eight, whatever else its faces name", () => {
  for (const corner of [
    (v: number) => `${v}`,
    (v: number) => `${v}/${v}`,
    (v: number) => `${v}//1`,
    (v: number) => `${v}/3/1`,
    (v: number) => `${v - 9}`,
    (v: number) => `${v - 9}/-1/-1`,
  ])
    expect(volume(cube((quad) => quad.map(corner).join(" ")))).toBe(8);
});

test("comments, other statements, returns, tabs, carried-on lines and a missing last line end do not matter", () => {
  const plain = cube((quad) => quad.join(" "));
  expect(volume(`# v 9 9 9\nmtllib a.mtl\no f 1 2 3\nvn 0 0 1\nvt 0 0\ng f\ns off\n${plain}`)).toBe(8);
  expect(volume(plain.replaceAll("\n", "\r\n"))).toBe(8);
  expect(volume(plain.replaceAll("\n", "\r"))).toBe(8);
  expect(volume(plain.replaceAll(" ", "\t  "))).toBe(8);
  expect(volume(plain.trimEnd())).toBe(8);
  expect(volume(plain.replaceAll(/f (\d) (\d) /g, "f $1 \\\n $2 \\\r\n "))).toBe(8);
  expect(volume(plain.replace("v 2 2 2", "v 2 2 2 1.0 0.5 0.5"))).toBe(8);
  expect(volume(plain.replaceAll("\nf", " # a face follows\nf"))).toBe(8);
  expect(volume(`\ufeff${plain}`)).toBe(8);
});

test("a polygon with a dent is cut inside its border", () => {
  const dented = readMesh(text("v 0 0 0\nv 4 0 0\nv 4 4 0\nv 2 1 0\nv 0 4 0\nf 1 2 3 4 5\n"), "figure.obj");
  expect(measureMesh(dented).area).toBeCloseTo(16 - 6, 6);
  expect(dented.notes).toEqual([{ code: "polygons-split", count: 1 }]);
});

test.each([
  ["a face of a vertex that is not there", `${corners}f 1 2 9\n`, "bad-index"],
  ["a face counted back too far", `${corners}f 1 2 -9\n`, "bad-index"],
  ["vertex 0", `${corners}f 0 1 2\n`, "bad-index"],
  ["a word for a corner", `${corners}f 1 2 horn\n`, "bad-index"],
  ["a vertex of two numbers", "v 1 2\nf 1 1 1\n", "bad-number"],
  ["a decimal comma", "v 1,5 2 3\nf 1 1 1\n", "bad-number"],
  ["a vertex that is not a number", "v nan 2 3\nf 1 1 1\n", "bad-number"],
  ["points alone", corners, "no-faces"],
  ["lines alone", `${corners}l 1 2\n`, "no-faces"],
  ["a coordinate of a million", "v 1e6 2 3\nf 1 1 1\n", "out-of-range"],
])("%s is refused", (_, lines, code) => {
  expect(() => readMesh(text(lines), "figure.obj")).toThrow(expect.objectContaining({ code }));
});

test("text of two bytes a letter is named, with its mark or without, in either order", () => {
  const plain = cube((quad) => quad.join(" "));
  const little = new Uint8Array(Buffer.from(`\ufeff${plain}`, "utf16le"));
  const big = new Uint8Array(Buffer.from(`\ufeff${plain}`, "utf16le").swap16());
  for (const bytes of [little, big, little.slice(2), big.slice(2)])
    expect(() => readMesh(bytes, "figure.obj")).toThrow(expect.objectContaining({ code: "utf16" }));
});

test("slices of any size give the same mesh as the whole file", () => {
  const lines = `${cube((quad) => quad.join(" \\\r\n "))}# end\r\n`;
  for (const bytes of [text(lines), objFile(boxes([[0, 3, 0, 4, 0, 5]]))]) {
    const whole = readMesh(bytes, "figure.obj");
    for (const size of [1, 2, 3, 7, 100]) {
      const reader = openMeshReader("figure.obj", bytes.length);
      for (const slice of slicesOf(bytes, size)) reader.feed(slice);
      expect(reader.end()).toEqual(whole);
    }
  }
});

test("a line that never ends is refused before it fills the memory", () => {
  const reader = openMeshReader("figure.obj", 1e9);
  const spaces = text(`v ${" ".repeat(1_000_000)}`);
  expect(() => {
    for (let i = 0; i < 10; i++) reader.feed(spaces);
  }).toThrow(MeshFault);
});
