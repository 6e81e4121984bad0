import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { slicesOf, stlBinaryFile, stlTextFile } from "../../../tests/meshFiles.ts";
import { MeshFault } from "../meshFault.ts";
import { openMeshReader } from "../readMesh.ts";
import { boxes } from "../../../tests/meshes/testSolids.ts";
import type { ReadMesh } from "./reader.ts";
import { measureMesh, readMesh } from "../../../tests/meshes/atOnce.ts";

const cube = boxes([[0, 10, 0, 10, 0, 10]]);
const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);
const models = new URL("../../../node_modules/stl-models/", import.meta.url);
const model = (path: string): ReadMesh => readMesh(readFileSync(new URL(path, models)), path);

function faultOf(bytes: Uint8Array, name = "figure.stl"): MeshFault {
  try {
    readMesh(bytes, name);
  } catch (fault) {
    if (fault instanceof MeshFault) return fault;
    throw fault;
  }
  throw new Error("the file was read");
}

test("a binary file whose head says solid is binary all the same", () => {
  const read = readMesh(stlBinaryFile(cube, "solid figure made of facets"), "figure.stl");
  expect(read.format).toBe("stl-binary");
  expect(measureMesh(read).volume).toBe(1000);
});

test("facets are the fewer of what the head counts and what the bytes hold", () => {
  const bytes = stlBinaryFile(cube);
  const count = (said: number): Uint8Array => {
    const copy = bytes.slice();
    new DataView(copy.buffer).setUint32(80, said, true);
    return copy;
  };
  for (const said of [0, 66, 4_294_967_295]) {
    const read = readMesh(count(said), "figure.stl");
    expect(read.idx.length / 3).toBe(12);
    expect(read.notes).toEqual([{ code: "count-wrong", count: 12 }]);
  }
  const fewer = readMesh(count(11), "figure.stl");
  expect(fewer.idx.length / 3).toBe(11);
  expect(fewer.notes).toEqual([{ code: "bytes-ignored", count: 50 }]);
});

test("a binary file cut inside a facet says so, with both numbers", () => {
  const fault = faultOf(stlBinaryFile(cube).slice(0, 84 + 7 * 50 + 20));
  expect(fault.code).toBe("cut-short");
  expect(fault.found).toContain("7");
  expect(fault.expected).toContain("12");
  expect(faultOf(stlBinaryFile(cube).slice(0, 60)).code).toBe("cut-short");
});

test("bytes that are no whole facet after the last one are refused", () => {
  const longer = new Uint8Array(84 + 12 * 50 + 17);
  longer.set(stlBinaryFile(cube));
  expect(faultOf(longer).code).toBe("bad-size");
});

test.each([
  ["not a number", 0x7fc0_0000],
  ["infinite", 0x7f80_0000],
  ["of a million", 0x4974_2400],
])("a coordinate %s is refused", (_, bits) => {
  const bytes = stlBinaryFile(cube);
  new DataView(bytes.buffer).setUint32(84 + 3 * 50 + 12, bits, true);
  const fault = faultOf(bytes);
  expect(fault.code).toBe("out-of-range");
  expect(fault.found).toContain("facet 4");
});

test("facets of two, four and five corners are left out or cut, and counted", () => {
  const facet = (...corners: readonly string[]): string =>
    `facet normal 0 0 1\nouter loop\n${corners.map((c) => `vertex ${c}\n`).join("")}endloop\nendfacet\n`;
  const read = readMesh(
    text(
      `solid\n${facet("0 0 0", "1 0 0")}${facet("0 0 0", "4 0 0", "4 4 0", "0 4 0")}` +
        `${facet("0 0 5", "4 0 5", "4 4 5", "2 6 5", "0 4 5")}endsolid\n`,
    ),
    "figure.stl",
  );
  expect(read.idx.length / 3).toBe(2 + 3);
  expect(read.notes).toEqual([
    { code: "polygons-split", count: 2 },
    { code: "facets-dropped", count: 1 },
  ]);
  expect(measureMesh(read).area).toBeCloseTo(16 + 20, 6);
});

test("case, indents, returns and a name of many words do not matter", () => {
  const plain = new TextDecoder().decode(stlTextFile(cube));
  for (const changed of [
    plain.toUpperCase(),
    plain.replaceAll("\n", "\r\n"),
    plain.replaceAll("\n", "\r"),
    plain.replaceAll(/^ +/gm, "\t\t"),
  ])
    expect(measureMesh(readMesh(text(changed), "figure.stl")).volume).toBe(1000);
});

test("a text file cut inside a facet says so; one that only lacks its end is noted", () => {
  const plain = new TextDecoder().decode(stlTextFile(cube));
  const inside = plain.slice(0, plain.lastIndexOf("vertex") + 9);
  expect(faultOf(text(inside)).code).toBe("cut-short");
  const ended = plain.slice(0, plain.indexOf("endsolid"));
  expect(readMesh(text(ended), "figure.stl").notes).toEqual([{ code: "end-missing", count: 1 }]);
});

test("a decimal comma is named, not read as something else", () => {
  const fault = faultOf(
    text(new TextDecoder().decode(stlTextFile(cube)).replace("vertex 0 0", "vertex 0,5 0")),
  );
  expect(fault.code).toBe("bad-number");
  expect(fault.found).toContain("0,5");
});

test("an empty file and one without facets are faults, never a watertight nothing", () => {
  expect(faultOf(new Uint8Array(0)).code).toBe("empty-file");
  expect(faultOf(text("solid empty\nendsolid empty\n")).code).toBe("no-faces");
  expect(faultOf(new Uint8Array(84)).code).toBe("no-faces");
});

test("slices of any size give the same mesh as the whole file", () => {
  for (const bytes of [stlBinaryFile(cube, "solid"), stlTextFile(cube)]) {
    const whole = readMesh(bytes, "figure.stl");
    for (const size of [1, 49, 50, 333, 5000]) {
      const reader = openMeshReader("figure.stl", bytes.length);
      for (const slice of slicesOf(bytes, size)) reader.feed(slice);
      expect(reader.end()).toEqual(whole);
    }
  }
});

test("published odd files: each is read for what it holds or refused by name", () => {
  // stl-models 0.12.0 (MIT): a unit tetrahedron, V 1/6, in every state of disrepair.
  const whole = [
    "missingEndsolid.ascii",
    "missingNormal.ascii",
    "notANumberNormal.ascii",
    "solidNameMismatch.ascii",
    "wrongNormal.ascii",
    "incorrectFaceCounter.bin",
  ];
  for (const name of whole)
    expect(measureMesh(model(`broken/${name}.stl`)).volume, name).toBeCloseTo(1 / 6, 12);
  for (const name of ["fourVertices", "quad", "twoVertices", "missingFace"])
    expect(measureMesh(model(`broken/${name}.ascii.stl`)).volume, name).toBeNull();
  expect(measureMesh(model("broken/wrongHeader.bin.stl")).volume).toBe(1_000_000);
  expect(measureMesh(model("polytopes/tetrahedronMinusZero.bin.stl")).watertight).toBe(true);
  expect(() => model("misc/multiWordName.bin.stl")).toThrow(MeshFault);
  expect(() => model("misc/faceless.ascii.stl")).toThrow(MeshFault);
  expect(() => model("broken/empty.stl")).toThrow(MeshFault);
});
