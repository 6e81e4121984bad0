import { expect, test } from "vitest";
import { plyBinaryFile, plyTextFile, slicesOf } from "../../../tests/meshFiles.ts";
import { openMeshReader } from "../readMesh.ts";
import { boxes } from "../../../tests/meshes/testSolids.ts";
import { measureMesh, readMesh } from "../../../tests/meshes/atOnce.ts";

const cube = boxes([[0, 2, 0, 2, 0, 2]]);
const text = (lines: string): Uint8Array => new TextEncoder().encode(lines);

/** A cube of squares with numbers of every kind about it: colours, doubles, a list in the faces before the corners, edges after. */
function oddFile(little: boolean): Uint8Array {
  const head = text(
    `ply\r\nformat binary_${little ? "little" : "big"}_endian 1.0\r\nobj_info odd\r\nelement vertex 8\r\nproperty uchar red\r\n` +
      "property double z\r\nproperty short quality\r\nproperty int16 y\r\nproperty float32 x\r\nelement material 2\r\nproperty list ushort char name\r\n" +
      "property uint8 kind\r\nelement face 6\r\nproperty list uint8 float texcoord\r\nproperty int flags\r\nproperty list uint ushort vertex_index\r\n" +
      "element edge 1\r\nproperty int a\r\nend_header\r\n",
  );
  const body = new DataView(new ArrayBuffer(4096));
  let at = 0;
  const put = (
    kind: "Uint8" | "Int16" | "Uint16" | "Int32" | "Uint32" | "Float32" | "Float64",
    value: number,
  ): void => {
    if (kind === "Uint8") body.setUint8(at, value);
    else body[`set${kind}`](at, value, little);
    at += kind === "Uint8" ? 1 : Number(kind.slice(-2)) / 8;
  };
  for (let v = 0; v < 8; v++) {
    put("Uint8", 200);
    put("Float64", v & 4 ? 2 : 0);
    put("Int16", -5);
    put("Int16", v & 2 ? 2 : 0);
    put("Float32", v & 1 ? 2 : 0);
  }
  for (const name of [3, 0]) {
    put("Uint16", name);
    for (let i = 0; i < name; i++) put("Uint8", 65);
    put("Uint8", 1);
  }
  for (const quad of [
    [2, 3, 1, 0],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [1, 3, 7, 5],
    [3, 2, 6, 7],
    [2, 0, 4, 6],
  ]) {
    put("Uint8", 2);
    put("Float32", 0.5);
    put("Float32", 0.5);
    put("Int32", 9);
    put("Uint32", 4);
    for (const v of quad) put("Uint16", v);
  }
  put("Int32", 1);
  return new Uint8Array(Buffer.concat([head, new Uint8Array(body.buffer, 0, at)]));
}

test("numbers of every kind, further blocks and further lists are passed over, in either byte order", () => {
  for (const little of [true, false]) {
    const read = readMesh(oddFile(little), "figure.ply");
    expect(measureMesh(read).volume).toBe(8);
    expect(read.notes).toEqual([{ code: "polygons-split", count: 6 }]);
  }
});

test("slices of any size give the same mesh as the whole file", () => {
  for (const bytes of [oddFile(true), oddFile(false), plyTextFile(cube), plyBinaryFile(cube, "big")]) {
    const whole = readMesh(bytes, "figure.ply");
    for (const size of [1, 3, 64, 1000]) {
      const reader = openMeshReader("figure.ply", bytes.length);
      for (const slice of slicesOf(bytes, size)) reader.feed(slice);
      expect(reader.end()).toEqual(whole);
    }
  }
});

const head =
  "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\nproperty float z\n";
const faces = "element face 1\nproperty list uchar int vertex_indices\nend_header\n";

test.each([
  ["a cloud of points", `${head}end_header\n0 0 0\n1 0 0\n0 1 0\n`, "no-faces"],
  [
    "a mesh that counts no face",
    `${head}${faces.replace("face 1", "face 0")}0 0 0\n1 0 0\n0 1 0\n`,
    "no-faces",
  ],
  ["a file cut after its points", `${head}${faces}0 0 0\n1 0 0\n0 1 0\n`, "cut-short"],
  ["a file cut in its header", head, "cut-short"],
  ["a face of a vertex that is not there", `${head}${faces}0 0 0\n1 0 0\n0 1 0\n3 0 1 3\n`, "bad-index"],
  ["a face that counts below 0", `${head}${faces}0 0 0\n1 0 0\n0 1 0\n3 0 1 -1\n`, "bad-index"],
  ["a point without its z", `${head}${faces}0 0 0\n1 0\n0 1 0\n3 0 1 2\n`, "bad-number"],
  ["a point that is not a number", `${head}${faces}0 0 0\n1 0 nan\n0 1 0\n3 0 1 2\n`, "out-of-range"],
  ["an unknown kind of number", head.replace("float z", "half z") + faces, "bad-header"],
  ["points without z", `${head.replace("property float z\n", "")}${faces}`, "bad-header"],
  ["minus three vertices", head.replace("vertex 3", "vertex -3") + faces, "bad-header"],
])("%s is refused", (_, lines, code) => {
  expect(() => readMesh(text(lines), "figure.ply")).toThrow(expect.objectContaining({ code }));
});

test("a count of thousands of millions asks for no memory, and a cut file says what is missing", () => {
  const bytes = plyBinaryFile(cube, "little");
  const said = new TextDecoder("latin1").decode(bytes).replace("vertex 8", "vertex 4000000000");
  expect(() => readMesh(new Uint8Array(Buffer.from(said, "latin1")), "figure.ply")).toThrow(
    expect.objectContaining({ code: "cut-short" }),
  );
  expect(() => readMesh(bytes.slice(0, -1), "figure.ply")).toThrow(
    expect.objectContaining({ found: "11 of face" }),
  );
});
