import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { mendMesh } from "./mendMesh.ts";
import type { Mesh } from "./mesh.ts";
import { arc, boxes, together, turned, turnedInsideOut } from "../../tests/meshes/testSolids.ts";
import { measureMesh, readMesh } from "../../tests/meshes/atOnce.ts";

const ball = turned(arc({ r: 0, z: 0, radius: 20, from: -Math.PI / 2, to: Math.PI / 2 }, 24), 48);
const whole = measureMesh(ball).volume ?? NaN;

/** The ball with `pick` of its triangles turned over. */
function withTurnedOver({ pos, idx }: Mesh, pick: readonly number[]): Mesh {
  const next = idx.slice();
  for (const t of new Set(pick)) [next[3 * t + 1], next[3 * t + 2]] = [idx[3 * t + 2]!, idx[3 * t + 1]!];
  return { pos, idx: next };
}

test("a whole mesh is left as it is", () => {
  const { mesh, ...done } = mendMesh({ mesh: ball });
  expect(mesh).toBe(ball);
  expect(done).toEqual({ degenerate: 0, doubles: 0, turnedOver: 0, turnedBodies: 0, capped: [], left: [] });
});

test("triangles turned over are turned back, whichever they are, and counted", () => {
  const some = fc.uniqueArray(fc.nat(ball.idx.length / 3 - 1), { minLength: 1, maxLength: 200 });
  fc.assert(
    fc.property(some, (pick) => {
      const { mesh, turnedOver } = mendMesh({ mesh: withTurnedOver(ball, pick) });
      expect(turnedOver).toBe(pick.length);
      expect(measureMesh(mesh)).toMatchObject({ watertight: true, volume: whole, insideOut: false });
    }),
    { numRuns: 40 },
  );
});

test("a mesh inside out is turned; a body inside out beside a good one too; a void is left a void", () => {
  expect(mendMesh({ mesh: turnedInsideOut(ball) })).toMatchObject({ turnedBodies: 1, turnedOver: 0 });
  const beside = together(boxes([[100, 140, 0, 40, 0, 40]]), turnedInsideOut(ball));
  expect(measureMesh(beside).volume).toBeCloseTo(64_000 - whole, 6);
  const { mesh, turnedBodies } = mendMesh({ mesh: beside });
  expect(turnedBodies).toBe(1);
  expect(measureMesh(mesh).volume).toBeCloseTo(64_000 + whole, 6);
  const hollow = together(boxes([[-30, 30, -30, 30, -30, 30]]), turnedInsideOut(ball));
  expect(mendMesh({ mesh: hollow }).turnedBodies).toBe(0);
});

test("small holes are capped and told of, wide ones left for their maker", () => {
  const pricked: Mesh = { pos: ball.pos, idx: ball.idx.slice(3 * 2) };
  const small = mendMesh({ mesh: pricked });
  expect(small.capped.length).toBeGreaterThan(0);
  expect(small.left).toEqual([]);
  const measured = measureMesh(small.mesh);
  expect(measured.watertight).toBe(true);
  expect(Math.abs((measured.volume ?? NaN) / whole - 1)).toBeLessThan(1e-3);

  const cut: Mesh = { pos: ball.pos, idx: Uint32Array.from(belowTop(ball, 10)) };
  const wide = mendMesh({ mesh: cut });
  expect([wide.capped.length, wide.left.length]).toEqual([0, 1]);
  expect(wide.left[0]?.share).toBeGreaterThan(0.1);
  const asked = mendMesh({ mesh: cut, capUpTo: Infinity });
  expect(measureMesh(asked.mesh)).toMatchObject({ watertight: true, euler: 2 });
});

test("loose triangles are no holes: capped they would make a skin around nothing", () => {
  const loose: Mesh = {
    pos: Float32Array.from(
      { length: 3 * ball.idx.length },
      (_, at) =>
        ball.pos[3 * ball.idx[Math.floor(at / 3)]! + (at % 3)]! +
        (at % 3 === 0 ? Math.floor(at / 9) * 1e-4 : 0),
    ),
    idx: Uint32Array.from(ball.idx, (_, n) => n),
  };
  const { mesh, capped, left } = mendMesh({ mesh: loose });
  expect(capped).toEqual([]);
  expect(left.length).toBeGreaterThan(1000);
  expect(measureMesh(mesh).watertight).toBe(false);
});

test("an open scan is closed hole by hole, and the volume is within the range told before", () => {
  const scan = readMesh(
    readFileSync(new URL("../../node_modules/stl-models/objects/bunny.bin.stl", import.meta.url)),
    "bunny.stl",
  );
  const { low, high } = measureMesh(scan).openVolume ?? { low: null, high: null };
  const some = mendMesh({ mesh: scan });
  expect([some.capped.length, some.left.length]).toEqual([1, 4]);
  const { volume, watertight } = measureMesh(mendMesh({ mesh: scan, capUpTo: Infinity }).mesh);
  expect(watertight).toBe(true);
  expect(volume).toBeGreaterThanOrEqual(low ?? NaN);
  expect(volume).toBeLessThanOrEqual(high ?? NaN);
});

function belowTop({ pos, idx }: Mesh, z: number): number[] {
  const kept: number[] = [];
  for (let i = 0; i < idx.length; i += 3) {
    const corners = [idx[i]!, idx[i + 1]!, idx[i + 2]!];
    if (corners.every((v) => pos[3 * v + 2]! <= z)) kept.push(...corners);
  }
  return kept;
}
