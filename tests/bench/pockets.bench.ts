import { expect, test } from "@playwright/test";
import { dexelsOf } from "../../src/geometry/dexels.ts";
import { findTips } from "../../src/geometry/findTips.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { surfaceOf } from "../../src/geometry/surface.ts";
import { trappedInDexels } from "../../src/geometry/trappedVolume.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";
import { knot } from "./knot.ts";
import {
  fillFromGate,
  flatSpans,
  freezeOrder,
  recesses,
  searchAttitudes,
  wallThickness,
} from "../meshes/atOnce.ts";

const sizes = (process.env["BENCH_TRIANGLES"] ?? "20000,300000,1200000").split(",").map(Number);
const up: Vec3 = [0.31, 0.17, 1];
const asked = { minRise: 2, minVolume: 50 };

/** Best, middle and worst of `runs`, ms. */
function time(runs: number, work: () => unknown): string {
  const ms = Array.from({ length: runs }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  }).sort((a, b) => a - b);
  return [ms[0], ms[runs >> 1], ms.at(-1)].map((t) => Math.round(t ?? 0)).join("/");
}

const copied = ({ pos, idx }: Mesh): Mesh => ({ pos: pos.slice(), idx: idx.slice() });

for (const triangles of sizes) {
  test(`pockets of a knot of ${triangles} triangles`, () => {
    test.setTimeout(600_000);
    const mesh = knot(triangles);
    const rows: [string, string][] = [];
    const row = (name: string, runs: number, work: () => unknown): void => {
      rows.push([name, time(runs, work)]);
    };
    // A pass over the bytes: nothing that looks at every vertex and triangle can be faster.
    let sum = 0;
    row("floor: one pass over the bytes", 3, () => {
      for (const x of mesh.pos) sum += x;
      for (const v of mesh.idx) sum += v;
    });
    expect(sum).not.toBeNaN();
    row("weld and neighbours", 3, () => surfaceOf(copied(mesh)));
    const tips = findTips({ mesh, up, ...asked });
    row(`tips (${tips.length})`, 3, () => findTips({ mesh, up, ...asked }));
    const vents = tips.slice(0, 1).map(({ point }) => point);
    for (const cells of [256, 512]) {
      row(`columns ${cells}: cut`, 3, () => dexelsOf({ mesh, up, cells }));
      const dexels = dexelsOf({ mesh, up, cells });
      row(`columns ${cells}: what stays`, 3, () => trappedInDexels({ dexels, vents }));
    }
    const gate = tips.at(-1)?.point ?? [0, 0, 0];
    for (const cells of [128, 256])
      row(`fill from a gate, ${cells} cells`, 3, () => fillFromGate({ mesh, up, gate, vents, cells }));
    row("thick and thin, 128 cells", 1, () => wallThickness({ mesh, cells: 128, on: knot(20_000) }));
    row("thick and thin, 256 cells", 1, () => wallThickness({ mesh, cells: 256, on: knot(20_000) }));
    row("freezing order, 96 cells", 1, () => freezeOrder({ mesh, cells: 96, feeds: [] }));
    row("flats", 1, () => flatSpans(mesh));
    row("recesses, 96 cells, 14 ways", 1, () => recesses({ mesh, cells: 96, minDepth: 2 }));
    row("attitudes, searched at 20 000", 1, () => searchAttitudes({ mesh, light: knot(20_000), ...asked }));
    console.log(`\n${mesh.idx.length / 3} triangles, ms best/middle/worst`);
    for (const [name, ms] of rows) console.log(`${name.padEnd(36)} ${ms.padStart(18)}`);
    console.log(`memory ${Math.round(process.memoryUsage().rss / 2 ** 20)} MB`);
  });
}
