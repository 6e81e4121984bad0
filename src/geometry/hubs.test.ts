import { expect, test } from "vitest";
import { measureMesh, wallThickness } from "../../tests/meshes/atOnce.ts";
import { countWork } from "../../tests/meshes/countWork.ts";
import { dropDoubles } from "./dropDoubles.ts";
import { judged } from "./attitude.ts";
import { edgesOf } from "./edges.ts";
import { findTips } from "./findTips.ts";
import { flatRegions } from "./flatRegions.ts";
import { mendMesh } from "./mendMesh.ts";
import type { Mesh } from "./mesh.ts";
import { surfaceOf } from "./surface.ts";

/** Two cones foot to foot: half of all triangles meet in either point. */
function cones(triangles: number): Mesh {
  const around = triangles / 2;
  const pos = [0, 0, 20, 0, 0, -20];
  const idx: number[] = [];
  for (let i = 0; i < around; i++) {
    const angle = (2 * Math.PI * i) / around;
    pos.push(30 * Math.cos(angle), 30 * Math.sin(angle), 0);
    const [p, q] = [2 + i, 2 + ((i + 1) % around)];
    idx.push(0, p, q, 1, q, p);
  }
  return { pos: Float32Array.from(pos), idx: Uint32Array.from(idx) };
}

/** Wedges round one edge, like the pages of an open book: half of all triangles meet in it. */
function book(triangles: number): Mesh {
  const pages = triangles / 4;
  const pos = [0, 0, -20, 0, 0, 20];
  const idx: number[] = [];
  for (let i = 0; i < pages; i++) {
    const p = pos.length / 3;
    for (const part of [i, i + 0.5]) {
      const angle = (2 * Math.PI * part) / pages;
      pos.push(30 * Math.cos(angle), 30 * Math.sin(angle), 0);
    }
    idx.push(0, p + 1, p, 1, p, p + 1, 0, p, 1, 0, 1, p + 1);
  }
  return { pos: Float32Array.from(pos), idx: Uint32Array.from(idx) };
}

function withOneTurned({ pos, idx }: Mesh): Mesh {
  const next = idx.slice();
  [next[1], next[2]] = [next[2]!, next[1]!];
  return { pos, idx: next };
}

const hung = { up: [0.3, 0.2, 1], minRise: 1, minVolume: 1 } as const;
const sums: Readonly<Record<string, (mesh: Mesh) => unknown>> = {
  measured: measureMesh,
  mended: (mesh) => mendMesh({ mesh: withOneTurned(mesh) }),
  doubles: dropDoubles,
  tips: (mesh) => findTips({ mesh, ...hung }),
  hung: (mesh) => judged({ mesh, ...hung }),
  flats: (mesh) => flatRegions(surfaceOf(mesh), { withinRad: 0.14, most: 8 }),
  edges: edgesOf,
};
const forms: Readonly<Record<string, (triangles: number) => Mesh>> = { cones, book };
// Pages of a book get thinner than the columns of the volume, which are then taken four times as fine: no measure of a hub.
const cases = Object.keys(forms)
  .flatMap((form) => Object.keys(sums).map((sum) => [form, sum] as const))
  .filter(([form, sum]) => form !== "book" || sum !== "measured");

test.each(cases)("50,000 triangles of %s at one place cost at most 3 times 25,000: %s", (form, sum) => {
  const [few, many] = [25_000, 50_000].map((n) => {
    const mesh = forms[form]!(n);
    return countWork(() => sums[sum]!(mesh));
  });
  // Else nothing was counted.
  expect(few).toBeGreaterThan(25_000);
  expect(many! / few!).toBeLessThan(3);
});

test("the walls of many triangles at one place cost at most 3 times those of half as many", () => {
  const [few, many] = [5000, 10_000].map((n) => {
    const mesh = cones(n);
    return countWork(() => wallThickness({ mesh, cells: 32, samples: 100 }));
  });
  expect(few).toBeGreaterThan(5000);
  expect(many! / few!).toBeLessThan(3);
});
