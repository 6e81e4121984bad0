import { crc32, deflateRawSync } from "node:zlib";
import type { Mesh } from "../src/geometry/mesh.ts";

const text = (value: string): Uint8Array => new TextEncoder().encode(value);
/** Nine digits tell every 32-bit float from the next, and are what programs write. */
const short = (value: number): number => Number(value.toPrecision(9));
const corner = ({ pos }: Mesh, v: number): readonly number[] => [
  short(pos[3 * v]!),
  short(pos[3 * v + 1]!),
  short(pos[3 * v + 2]!),
];
const triangles = ({ idx }: Mesh): readonly (readonly [number, number, number])[] =>
  Array.from({ length: idx.length / 3 }, (_, t) => [idx[3 * t]!, idx[3 * t + 1]!, idx[3 * t + 2]!]);

/** Writers of every format we read, for tests and the bench: plain, one way each, checked by what other files say. */
export function stlBinaryFile(mesh: Mesh, head = ""): Uint8Array {
  const { pos, idx } = mesh;
  const bytes = new Uint8Array(84 + (50 * idx.length) / 3);
  bytes.set(text(head).subarray(0, 80));
  const view = new DataView(bytes.buffer);
  view.setUint32(80, idx.length / 3, true);
  for (let i = 0; i < idx.length; i++) {
    const at = 84 + 50 * Math.floor(i / 3) + 12 + 12 * (i % 3);
    for (let k = 0; k < 3; k++) view.setFloat32(at + 4 * k, pos[3 * idx[i]! + k]!, true);
  }
  return bytes;
}

export function stlTextFile(mesh: Mesh): Uint8Array {
  const facets = triangles(mesh).map(
    (t) =>
      `facet normal 0 0 0\n outer loop\n${t.map((v) => `  vertex ${corner(mesh, v).join(" ")}\n`).join("")} endloop\nendfacet\n`,
  );
  return text(`solid a figure of facet and vertex\n${facets.join("")}endsolid a figure\n`);
}

const vertexLines = (mesh: Mesh, before: string): string =>
  Array.from({ length: mesh.pos.length / 3 }, (_, v) => `${before}${corner(mesh, v).join(" ")}\n`).join("");

export const objFile = (mesh: Mesh): Uint8Array =>
  text(
    `# a figure\no figure\n${vertexLines(mesh, "v ")}${triangles(mesh)
      .map((t) => `f ${t.map((v) => v + 1).join(" ")}\n`)
      .join("")}`,
  );

const plyHead = (mesh: Mesh, layout: string): string =>
  `ply\nformat ${layout} 1.0\ncomment a figure\nelement vertex ${mesh.pos.length / 3}\nproperty float x\nproperty float y\n` +
  `property float z\nelement face ${mesh.idx.length / 3}\nproperty list uchar int vertex_indices\nend_header\n`;

export const plyTextFile = (mesh: Mesh): Uint8Array =>
  text(
    `${plyHead(mesh, "ascii")}${vertexLines(mesh, "")}${triangles(mesh)
      .map((t) => `3 ${t.join(" ")}\n`)
      .join("")}`,
  );

export function plyBinaryFile(mesh: Mesh, order: "little" | "big"): Uint8Array {
  const head = text(plyHead(mesh, `binary_${order}_endian`));
  const { pos, idx } = mesh;
  const bytes = new Uint8Array(head.length + 4 * pos.length + (13 * idx.length) / 3);
  bytes.set(head);
  const view = new DataView(bytes.buffer, head.length);
  const little = order === "little";
  for (let i = 0; i < pos.length; i++) view.setFloat32(4 * i, pos[i]!, little);
  for (let i = 0; i < idx.length; i++) {
    const at = 4 * pos.length + 13 * Math.floor(i / 3);
    view.setUint8(at, 3);
    view.setInt32(at + 1 + 4 * (i % 3), idx[i]!, little);
  }
  return bytes;
}

export const modelMesh = (mesh: Mesh): string =>
  `<mesh><vertices>${Array.from({ length: mesh.pos.length / 3 }, (_, v) => {
    const [x, y, z] = corner(mesh, v);
    return `<vertex x="${x}" y="${y}" z="${z}" />`;
  }).join("\n")}</vertices><triangles>${triangles(mesh)
    .map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}" />`)
    .join("\n")}</triangles></mesh>`;

export const modelText = (resources: string, build: string, unit = "millimeter"): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<!-- <vertex> --><model unit="${unit}" xml:lang="en" ` +
  `xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><metadata name="Title">a &lt;figure></metadata>` +
  `<resources>${resources}</resources><build>${build}</build></model>`;

export const threeMfFile = (mesh: Mesh, unit?: string): Uint8Array =>
  zipFile({
    "3D/3dmodel.model": modelText(
      `<object id="1" type="model">${modelMesh(mesh)}</object>`,
      `<item objectid="1" />`,
      unit,
    ),
  });

type ZipWay = { readonly stored?: boolean | undefined; readonly described?: boolean | undefined };

/** A zip archive; `described` puts the sizes after the data. */
export function zipFile(
  entries: Readonly<Record<string, string | Uint8Array>>,
  { stored = false, described = false }: ZipWay = {},
): Uint8Array {
  const parts: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const [name, content] of Object.entries(entries)) {
    const raw = typeof content === "string" ? text(content) : content;
    const body = stored ? raw : deflateRawSync(raw);
    const sums = Uint8Array.from({ length: 12 });
    const view = new DataView(sums.buffer);
    view.setUint32(0, crc32(raw), true);
    view.setUint32(4, body.length, true);
    view.setUint32(8, raw.length, true);
    const head = new Uint8Array(30 + name.length);
    const ofHead = new DataView(head.buffer);
    ofHead.setUint32(0, 0x0403_4b50, true);
    ofHead.setUint16(4, 20, true);
    ofHead.setUint16(6, described ? 8 : 0, true);
    ofHead.setUint16(8, stored ? 0 : 8, true);
    if (!described) head.set(sums, 14);
    ofHead.setUint16(26, name.length, true);
    head.set(text(name), 30);
    const listed = new Uint8Array(46 + name.length);
    const ofListed = new DataView(listed.buffer);
    ofListed.setUint32(0, 0x0201_4b50, true);
    listed.set(head.subarray(4, 30), 6);
    listed.set(sums, 16);
    ofListed.setUint32(42, at, true);
    listed.set(text(name), 46);
    directory.push(listed);
    const tail = described ? Uint8Array.from([0x50, 0x4b, 7, 8, ...sums]) : new Uint8Array(0);
    parts.push(head, body, tail);
    at += head.length + body.length + tail.length;
  }
  const end = new Uint8Array(22);
  const ofEnd = new DataView(end.buffer);
  ofEnd.setUint32(0, 0x0605_4b50, true);
  ofEnd.setUint16(10, directory.length, true);
  ofEnd.setUint32(16, at, true);
  return Uint8Array.from(Buffer.concat([...parts, ...directory, end]));
}

/** Cuts a file as a browser would, `size` bytes a slice. */
export function* slicesOf(bytes: Uint8Array, size: number): Generator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.slice(at, at + size);
}
