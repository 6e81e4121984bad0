import { expect, test } from "vitest";
import { joinSeams } from "./joinSeams.ts";
import type { Mesh } from "./mesh.ts";
import { arc, turned } from "../../tests/meshes/testSolids.ts";
import { measureMesh } from "../../tests/meshes/atOnce.ts";

const ball = turned(arc({ r: 0, z: 0, radius: 20, from: -Math.PI / 2, to: Math.PI / 2 }, 12), 24);
const whole = measureMesh(ball).volume ?? NaN;

/** Every triangle for itself, its corners up to `by` away from where they belong. */
function cracked({ pos, idx }: Mesh, by: number): Mesh {
  let seed = 1;
  const shake = (): number => {
    seed = (seed * 16_807) % 2_147_483_647;
    return by * (seed / 1_073_741_824 - 1);
  };
  const apart = Float32Array.from({ length: 3 * idx.length }, (_, at) => {
    const corner = idx[Math.floor(at / 3)]!;
    return pos[3 * corner + (at % 3)]! + shake();
  });
  return { pos: apart, idx: Uint32Array.from(idx, (_, n) => n) };
}

test("a skin whose triangles lie a hair apart is joined to one, with its volume", () => {
  const loose = cracked(ball, 0.0005);
  expect(measureMesh(loose).borderEdges).toBe(loose.idx.length);
  const seams = joinSeams(loose);
  expect(seams).toMatchObject({ before: loose.idx.length, after: 0 });
  const { watertight, volume } = measureMesh(seams!.mesh);
  expect(watertight).toBe(true);
  expect(volume! / whole - 1).toBeCloseTo(0, 4);
});

test("a closed skin and a true hole have no seam to join", () => {
  expect(joinSeams(ball)).toBeNull();
  expect(joinSeams({ pos: ball.pos, idx: ball.idx.slice(60) })).toBeNull();
});

test("no distance is taken at which a triangle would vanish", () => {
  // A sliver 0.01 across beside a gap of 0.02: to close the gap would close the sliver.
  const pos = [0, 0, 0, 50, 0, 0, 50, 0.01, 0, 0, 0.03, 0, 50, 0.03, 0, 25, 40, 0];
  expect(joinSeams({ pos: Float32Array.from(pos), idx: Uint32Array.of(0, 1, 2, 3, 4, 5) })).toBeNull();
});
