import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as files from "../../tests/meshFiles.ts";
import { MeshFault } from "./meshFault.ts";
import { boxes, turned } from "../../tests/meshes/testSolids.ts";
import { measureMesh, readMesh } from "../../tests/meshes/atOnce.ts";

const vase = turned(
  [
    [0, 0.1],
    [7.3, 0.2],
    [3.1, 9.7],
    [11.9, 17.3],
    [10.4, 17.9],
    [2.2, 11.1],
    [0, 10.7],
  ],
  37,
);
const formats = [
  ["binary STL", "figure.stl", files.stlBinaryFile(vase)],
  ["text STL", "figure.stl", files.stlTextFile(vase)],
  ["OBJ", "figure.obj", files.objFile(vase)],
  ["text PLY", "figure.ply", files.plyTextFile(vase)],
  ["binary PLY, low byte first", "figure.ply", files.plyBinaryFile(vase, "little")],
  ["binary PLY, high byte first", "figure.ply", files.plyBinaryFile(vase, "big")],
  ["3MF", "figure.3mf", files.threeMfFile(vase)],
] as const;

test("a bare buffer is read as its bytes are", () => {
  const bytes = files.stlBinaryFile(vase);
  expect(readMesh(Uint8Array.from(bytes).buffer, "figure.stl")).toEqual(readMesh(bytes, "figure.stl"));
});

test.each(formats)("%s gives the same numbers as the mesh it was made from", (_, name, bytes) => {
  const truth = measureMesh(vase);
  const measured = measureMesh(readMesh(bytes, name));
  expect(Math.abs((measured.volume ?? NaN) / (truth.volume ?? NaN) - 1)).toBeLessThan(1e-12);
  expect(Math.abs(measured.area / truth.area - 1)).toBeLessThan(1e-12);
  for (const k of [0, 1, 2] as const) expect(measured.centre?.[k]).toBeCloseTo(truth.centre?.[k] ?? NaN, 9);
  expect(truth.insideOut).toBe(false);
  expect(measured).toMatchObject({
    watertight: true,
    insideOut: false,
    vertices: truth.vertices,
    triangles: truth.triangles,
    euler: 2,
    components: 1,
  });
});

test.each(formats)("%s is known without its name", (_, name, bytes) => {
  expect(readMesh(bytes, "pattern").format).toBe(readMesh(bytes, name).format);
  expect(readMesh(bytes, "WRONG.STL").format).toBe(readMesh(bytes, name).format);
});

test("a file of another kind is refused by name", () => {
  const picture = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, ...new Uint8Array(2000)]);
  for (const [name, code] of [
    ["photo.png", "unknown-format"],
    ["photo.obj", "unknown-format"],
  ] as const)
    expect(() => readMesh(picture, name)).toThrow(expect.objectContaining({ code }));
  expect(() => readMesh(new TextEncoder().encode("Dear maker, here is the figure."), "letter.txt")).toThrow(
    MeshFault,
  );
});

test("the bytes may lie anywhere in a larger block", () => {
  for (const [, name, bytes] of formats) {
    const block = new Uint8Array(bytes.length + 30).fill(0x20);
    block.set(bytes, 13);
    expect(readMesh(block.subarray(13, 13 + bytes.length), name)).toEqual(readMesh(bytes, name));
  }
});

describe("damaged files", () => {
  const small = boxes([[0, 2, 0, 3, 0, 4]]);
  const whole = [
    ["a.stl", files.stlBinaryFile(small)],
    ["a.stl", files.stlTextFile(small)],
    ["a.obj", files.objFile(small)],
    ["a.ply", files.plyTextFile(small)],
    ["a.ply", files.plyBinaryFile(small, "little")],
    ["a.ply", files.plyBinaryFile(small, "big")],
    ["a.3mf", files.threeMfFile(small)],
    [
      "a.3mf",
      files.zipFile(
        {
          "3D/3dmodel.model": files.modelText(
            `<object id="1">${files.modelMesh(small)}</object>`,
            `<item objectid="1"/>`,
          ),
        },
        { stored: true, described: false },
      ),
    ],
  ] as const;
  /** Read and measured, or refused by name; anything else fails the test. */
  const survives = (bytes: Uint8Array, name: string): void => {
    try {
      measureMesh(readMesh(bytes, name));
    } catch (fault) {
      if (fault instanceof MeshFault) return;
      // Whole but with every triangle collapsed: read, and nothing left to measure.
      if (fault instanceof RangeError && fault.message.startsWith("a mesh must have")) return;
      throw fault;
    }
  };
  const anyFile = fc.constantFrom(...whole);

  test("bytes changed anywhere are read or refused, never a crash", () => {
    const changes = fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(anyFile, changes, ([name, bytes], list) => {
        const copy = bytes.slice();
        for (const [at, value] of list) copy[at % copy.length] = value;
        survives(copy, name);
      }),
      { numRuns: 600 },
    );
  });

  test("files cut or lengthened anywhere are read or refused", () => {
    fc.assert(
      fc.property(anyFile, fc.nat(), fc.uint8Array({ maxLength: 60 }), ([name, bytes], at, more) => {
        survives(new Uint8Array(Buffer.concat([bytes.slice(0, at % (bytes.length + 1)), more])), name);
      }),
      { numRuns: 400 },
    );
  });

  test("any bytes under any name are read or refused", () => {
    const starts = fc.constantFrom("", "solid ", "ply\n", "PK\u0003\u0004", "v 1 2 3\nf ", "\u00ff\u00fe");
    const names = fc.constantFrom("a.stl", "a.obj", "a.ply", "a.3mf", "a", "");
    fc.assert(
      fc.property(starts, fc.uint8Array({ maxLength: 400 }), names, (start, bytes, name) => {
        survives(new Uint8Array(Buffer.concat([Buffer.from(start, "latin1"), bytes])), name);
      }),
      { numRuns: 400 },
    );
  });
});
