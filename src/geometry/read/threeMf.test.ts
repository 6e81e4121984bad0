import { expect, test } from "vitest";
import { modelMesh, modelText, slicesOf, threeMfFile, zipFile } from "../../../tests/meshFiles.ts";
import { openMeshReader } from "../readMesh.ts";
import { arc, boxes, turned, turnedInsideOut } from "../../../tests/meshes/testSolids.ts";
import { measureMesh, readMesh } from "../../../tests/meshes/atOnce.ts";

const box = boxes([[0, 10, 0, 20, 0, 30]]);
const part = (id: number, content: string, more = ""): string =>
  `<object id="${id}" ${more}>${content}</object>`;
const read = (model: string, more: Readonly<Record<string, string>> = {}): ReturnType<typeof readMesh> =>
  readMesh(zipFile({ "3D/3dmodel.model": model, ...more }), "figure.3mf");
const codeOf = (run: () => unknown): string => {
  try {
    run();
    return "read";
  } catch (fault) {
    return (fault as { code?: string }).code ?? String(fault);
  }
};

test("a box of 10 × 20 × 30 has 6000 and 2200, packed, stored and with sizes after the data", () => {
  const model = modelText(part(1, modelMesh(box)), `<item objectid="1"/>`);
  for (const way of [{}, { stored: true }, { described: true }]) {
    const mesh = readMesh(
      zipFile(
        {
          "[Content_Types].xml": "<Types/>",
          "3D/3dmodel.model": model,
          "Metadata/thumbnail.png": new Uint8Array(999),
        },
        way,
      ),
      "figure.3mf",
    );
    const { volume, area } = measureMesh(mesh);
    expect([volume, area, mesh.unit, mesh.format]).toEqual([6000, 2200, "mm", "3mf"]);
  }
});

test.each([
  ["micron", "micron"],
  ["millimeter", "mm"],
  ["centimeter", "cm"],
  ["inch", "inch"],
  ["foot", "foot"],
  ["meter", "m"],
] as const)("a model in %s says so", (named, unit) => {
  expect(readMesh(threeMfFile(box, named), "figure.3mf").unit).toBe(unit);
});

test("a placed object is turned, scaled and moved row by row, and a mirrored one keeps its outside", () => {
  // x goes to 2y, y to −3x, z stays: turned by a quarter and stretched.
  const turned = read(
    modelText(part(1, modelMesh(box)), `<item objectid="1" transform="0 2 0 -3 0 0 0 0 1 100 200 300"/>`),
  );
  const { box: to, volume, insideOut } = measureMesh(turned);
  expect([to.low, to.high]).toEqual([
    [40, 200, 300],
    [100, 220, 330],
  ]);
  expect([volume, insideOut]).toEqual([36_000, false]);
  const mirrored = measureMesh(
    read(modelText(part(1, modelMesh(box)), `<item objectid="1" transform="-1 0 0 0 1 0 0 0 1 0 0 0"/>`)),
  );
  expect([mirrored.volume, mirrored.insideOut, mirrored.box.low[0]]).toEqual([6000, false, -10]);
});

test("components within components are placed one after the other, inner first", () => {
  const inner = part(
    2,
    `<components><component objectid="1" transform="1 0 0 0 1 0 0 0 1 100 0 0"/><component objectid="1"/></components>`,
  );
  const outer = part(
    3,
    `<components><component objectid="2" transform="2 0 0 0 2 0 0 0 2 0 0 0"/></components>`,
  );
  const {
    volume,
    components,
    box: to,
  } = measureMesh(
    read(
      modelText(
        part(1, modelMesh(box)) + inner + outer,
        `<item objectid="3" transform="1 0 0 0 1 0 0 0 1 7 0 0"/>`,
      ),
    ),
  );
  expect([volume, components]).toEqual([96_000, 2]);
  expect([to.low[0], to.high[0]]).toEqual([7, 7 + 2 * 110]);
});

test("the root is the one the relationships name, and further models may hold its parts in their own unit", () => {
  const rels = `<Relationships xmlns="x"><Relationship Target="/Metadata/t.png" Id="r0" Type="http://x/thumbnail"/><Relationship Target="/3D/root.model" Id="r1" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`;
  const root = modelText(
    part(1, `<components><component p:path="/3D/Objects/part.model" objectid="9"/></components>`),
    `<item objectid="1"/>`,
  );
  const other = modelText(part(9, modelMesh(box)), "", "centimeter");
  const mesh = readMesh(
    zipFile({ "3D/Objects/part.model": other, "3D/root.model": root, "_rels/.rels": rels }),
    "figure.3mf",
  );
  expect([measureMesh(mesh).volume, mesh.unit]).toEqual([6_000_000, "mm"]);
});

test("what the build does not place is not there, and supports are left out", () => {
  const two = part(1, modelMesh(box)) + part(2, modelMesh(boxes([[0, 1, 0, 1, 0, 1]])), `type="support"`);
  const some = read(modelText(two, `<item objectid="1"/><item objectid="2"/>`));
  expect([measureMesh(some).volume, some.notes]).toEqual([6000, [{ code: "supports-skipped", count: 1 }]]);
  const none = read(modelText(part(1, modelMesh(box)), ""));
  expect([measureMesh(none).volume, none.notes]).toEqual([6000, [{ code: "objects-unplaced", count: 1 }]]);
});

test("a prefix for the model's own elements is understood, and another's vertices are not taken for its own", () => {
  const model = modelText(part(1, modelMesh(box)), `<item objectid="1"/>`);
  const prefixed = model
    .replaceAll(
      /<(\/?)(model|resources|object|mesh|vertices|vertex|triangles|triangle|build|item)\b/g,
      "<$1m:$2",
    )
    .replace("xmlns=", "xmlns:m=");
  expect(measureMesh(read(prefixed)).volume).toBe(6000);
  const sliced = model.replace("</vertices>", `</vertices><s:vertices><s:vertex x="1" y="2"/></s:vertices>`);
  expect(measureMesh(read(sliced)).volume).toBe(6000);
  const single = model
    .replaceAll(/"(-?[\d.]+)"/g, "' $1'")
    .replaceAll("<vertex ", "<vertex\n\tname='a > b' ");
  expect(measureMesh(read(single)).volume).toBe(6000);
});

test("an object drawn inside out is left so for the measuring to say", () => {
  expect(measureMesh(readMesh(threeMfFile(turnedInsideOut(box)), "figure.3mf")).insideOut).toBe(true);
});

test("slices of any size give the same mesh as the whole file", () => {
  for (const described of [false, true]) {
    const bytes = zipFile(
      { "3D/3dmodel.model": modelText(part(1, modelMesh(box)), `<item objectid="1"/>`), "a.txt": "more" },
      { described },
    );
    const whole = readMesh(bytes, "figure.3mf");
    for (const size of [1, 7, 100, 1024]) {
      const reader = openMeshReader("figure.3mf", bytes.length);
      for (const slice of slicesOf(bytes, size)) reader.feed(slice);
      expect(reader.end()).toEqual(whole);
    }
  }
});

test.each([
  ["a component of itself", part(1, `<components><component objectid="1"/></components>`), "bad-scene"],
  [
    "a ring of components",
    part(1, `<components><component objectid="2"/></components>`) +
      part(2, `<components><component objectid="1"/></components>`),
    "bad-scene",
  ],
  [
    "a component that is not there",
    part(1, `<components><component objectid="7"/></components>`),
    "bad-scene",
  ],
  [
    "a triangle of a vertex that is not there",
    part(1, modelMesh(box).replace(`v1="0"`, `v1="8"`)),
    "bad-scene",
  ],
  ["a vertex without y", part(1, modelMesh(box).replace(`y="0"`, "")), "bad-scene"],
  ["a vertex that is not a number", part(1, modelMesh(box).replace(`y="0"`, `y="nan"`)), "bad-scene"],
  ["an object without a surface", part(1, "<mesh><vertices/><triangles/></mesh>"), "no-faces"],
  ["a document type", `<!DOCTYPE a [<!ENTITY b "c">]>`, "bad-archive"],
])("%s is refused", (_, resources, code) => {
  expect(codeOf(() => read(modelText(resources, `<item objectid="1"/>`)))).toBe(code);
});

test("an object placed flat, a unit that does not exist and an archive without a model are refused", () => {
  const flat = modelText(part(1, modelMesh(box)), `<item objectid="1" transform="1 0 0 0 1 0 0 0 0 0 0 0"/>`);
  expect(codeOf(() => read(flat))).toBe("bad-scene");
  expect(codeOf(() => readMesh(threeMfFile(box, "furlong"), "figure.3mf"))).toBe("bad-scene");
  expect(codeOf(() => readMesh(zipFile({ "a.txt": "nothing" }), "figure.3mf"))).toBe("no-faces");
});

test("copies of copies are refused before they are made: beyond ten million triangles, or beyond reason", () => {
  const copied = (first: string): string =>
    modelText(
      part(1, first) +
        Array.from({ length: 20 }, (_, i) =>
          part(i + 2, `<components>${`<component objectid="${i + 1}"/>`.repeat(2)}</components>`),
        ).join(""),
      `<item objectid="21"/>`,
    );
  const ring = turned(arc({ r: 40, z: 0, radius: 10, from: 0, to: 6 }, 40), 120);
  expect(codeOf(() => read(copied(modelMesh(ring))))).toBe("too-many-triangles");
  expect(codeOf(() => read(copied("<mesh><vertices/><triangles/></mesh>")))).toBe("bad-scene");
});

test("an archive that unpacks a thousandfold is refused", () => {
  const bomb = zipFile({ "3D/3dmodel.model": " ".repeat(40_000_000) });
  expect(bomb.length).toBeLessThan(60_000);
  expect(codeOf(() => readMesh(bomb, "figure.3mf"))).toBe("too-much-inside");
});

test("a cut archive says so, and one with a wrong digit does not pass its check sum", () => {
  const bytes = zipFile(
    { "3D/3dmodel.model": modelText(part(1, modelMesh(box)), `<item objectid="1"/>`) },
    { stored: true },
  );
  expect(codeOf(() => readMesh(bytes.slice(0, 900), "figure.3mf"))).toBe("cut-short");
  const digit = bytes.slice();
  digit[new TextDecoder("latin1").decode(bytes).indexOf(`z="30"`) + 3]! ^= 1;
  expect(codeOf(() => readMesh(digit, "figure.3mf"))).toBe("bad-archive");
});
