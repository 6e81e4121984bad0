import fc from "fast-check";
import { expect, test } from "vitest";
import { anyTurn } from "../../tests/meshes/anyTurn.ts";
import { measureMesh, readMesh } from "../../tests/meshes/atOnce.ts";
import { cutPolygon } from "./polygon.ts";
import { asFiled, rotated, type Rotation } from "./rotation.ts";
import { cross, length, minus, plus, type Vec3 } from "./vector.ts";

type Point = readonly [x: number, y: number];

/** The shoelace formula (A. L. F. Meister, 1769): twice the area is the sum of x·y′ − x′·y round the polygon. */
const shoelace = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);

const inSpace = (points: readonly Point[], rotation: Rotation): readonly Vec3[] =>
  points.map(([x, y]) => rotated(rotation, [x, y, 0]));

/** Area by the triangles, and how far all that should point one way does not. */
function cutAreas(places: readonly Vec3[]): { readonly area: number; readonly facing: number } {
  const cut = cutPolygon(Float64Array.from(places.flat()));
  expect(cut).toHaveLength(3 * (places.length - 2));
  let area = 0;
  let sum: Vec3 = [0, 0, 0];
  for (let i = 0; i < cut.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => places[cut[i + k]!]!) as [Vec3, Vec3, Vec3];
    const across = cross(minus(b, a), minus(c, a));
    area += length(across) / 2;
    sum = plus(sum, across);
  }
  return { area, facing: length(sum) / 2 };
}

function comb(teeth: number): Point[] {
  const up = Array.from({ length: teeth }, (_, i): Point[] => [[2 * i, 0], [2 * i, 10], [2 * i + 1, 10], [2 * i + 1, 0]]).flat(); // prettier-ignore
  return [...up, [2 * teeth, 0], [2 * teeth, -1], [0, -1]].toReversed() as Point[];
}
/** A band rolled up: the inside lies round and round within the outside. */
function spiral(steps: number, turns: number): Point[] {
  const arm = (inset: number): Point[] =>
    Array.from({ length: steps }, (_, i): Point => {
      const angle = (2 * Math.PI * turns * i) / steps;
      const r = 5 + angle - inset;
      return [r * Math.cos(angle), r * Math.sin(angle)];
    });
  return [...arm(0), ...arm(2).toReversed()];
}
/** A square of 10 with a square hole of 4, joined by a bridge that is passed twice. */
const frame: readonly Point[] = [
  [0, 0], [10, 0], [10, 10], [0, 10], [0, 0], [3, 3], [3, 7], [7, 7], [7, 3], [3, 3],
]; // prettier-ignore
/** Two holes, one bridged through the other. */
const frames: readonly Point[] = [
  [0, 0], [20, 0], [20, 10], [0, 10], [0, 0],
  [2, 2], [2, 8], [8, 8], [12, 5], [12, 8], [18, 8], [18, 2], [12, 2], [12, 5], [8, 8], [8, 2], [2, 2],
]; // prettier-ignore
/** An L with five corners more on its straight sides. */
const ell: readonly Point[] = [
  [0, 0], [1, 0], [2, 0], [4, 0], [4, 2], [3, 2], [2, 2], [2, 3], [2, 4], [0, 4], [0, 2],
]; // prettier-ignore

const forms: readonly (readonly [string, readonly Point[], number])[] = [
  ["an L with corners on its sides", ell, 12],
  ["a square with a hole", frame, 84],
  // 200 less 36 and 36; the bridge from hole to hole has no width.
  ["a plate with two holes", frames, 128],
  ["a comb of 6 teeth", comb(6), 6 * 10 + 12],
  ["a comb of 2,000 teeth", comb(2000), 2000 * 10 + 4000],
  ["a spiral of 20,000 corners", spiral(10_000, 6), Math.abs(shoelace(spiral(10_000, 6)))],
  ["a star of 6,001 corners", star(6001), Math.abs(shoelace(star(6001)))],
];

function star(n: number): Point[] {
  return Array.from({ length: n }, (_, i): Point => {
    const r = 1 + ((i * 7919) % 100) / 25;
    return [r * Math.cos((2 * Math.PI * i) / n), r * Math.sin((2 * Math.PI * i) / n)];
  });
}

test.each(forms)("%s has its own area, either way round", (_, points, area) => {
  for (const way of [points, points.toReversed()]) {
    const found = cutAreas(inSpace(way, asFiled));
    expect(Math.abs(found.area / area - 1)).toBeLessThan(1e-9);
    expect(Math.abs(found.facing / area - 1)).toBeLessThan(1e-9);
  }
});

test("any polygon without crossings, in any place in space, has the area of the shoelace formula", () => {
  // Star-shaped round its middle and slanted, or a range of peaks over one of dales: neither can cross itself.
  const size = fc.double({ min: 0.05, max: 5, noNaN: true });
  const many = fc.array(size, { minLength: 3, maxLength: 60 });
  const slanted = fc.tuple(many, fc.double({ min: -2, max: 2, noNaN: true })).map(([radii, slant]) =>
    radii.map((r, i): Point => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [r * Math.cos(angle), r * (Math.sin(angle) + slant * Math.cos(angle))];
    }),
  );
  const range = fc.tuple(many, many).map(([dales, peaks]): Point[] => {
    const chain = (heights: readonly number[], sign: number): Point[] =>
      heights.map((h, i) => [(i + 0.5) / heights.length, sign * h]);
    return [[0, 0], ...chain(dales, -1), [1, 0], ...chain(peaks, 1).toReversed()];
  });
  fc.assert(
    fc.property(fc.oneof(slanted, range), anyTurn, (points, rotation) => {
      const { area } = cutAreas(inSpace(points, rotation));
      expect(Math.abs(area - Math.abs(shoelace(points)))).toBeLessThan(1e-9 * (1 + area));
    }),
    { numRuns: 400 },
  );
});

test("a prism on a comb of 3,000 corners, one face each end, has its volume and area from an OBJ and a PLY", () => {
  const foot = comb(749);
  const n = foot.length;
  const high = 5;
  const corners = [0, high].flatMap((z) => foot.map(([x, y]) => [x, y, z] as const));
  const lid = foot.map((_, i) => n + i);
  const sides = foot.map((_, i) => [i, (i + 1) % n, n + ((i + 1) % n), n + i]);
  const faces = [foot.map((_, i) => n - 1 - i), lid, ...sides];
  const isLeft = shoelace(foot) > 0;
  const outward = isLeft ? faces : faces.map((face) => face.toReversed());
  const obj = [
    ...corners.map((p) => `v ${p.join(" ")}`),
    ...outward.map((face) => `f ${face.map((v) => v + 1).join(" ")}`),
  ].join("\n");
  const head = `ply\nformat ascii 1.0\nelement vertex ${corners.length}\nproperty float x\nproperty float y\nproperty float z\nelement face ${outward.length}\nproperty list int int vertex_indices\nend_header\n`;
  const ply =
    head +
    [...corners.map((p) => p.join(" ")), ...outward.map((face) => `${face.length} ${face.join(" ")}`)].join(
      "\n",
    ) + // prettier-ignore
    "\n";
  const round = foot.reduce((sum, [x, y], i) => {
    const [u, v] = foot[(i + 1) % n]!;
    return sum + Math.hypot(u - x, v - y);
  }, 0);
  const area = 749 * 10 + 2 * 749;
  for (const [text, name] of [
    [obj, "a.obj"],
    [ply, "a.ply"],
  ] as const) {
    const found = measureMesh(readMesh(new TextEncoder().encode(text), name));
    expect(found.watertight).toBe(true);
    expect(Math.abs(found.volume! / (area * high) - 1)).toBeLessThan(1e-9);
    expect(Math.abs(found.area / (2 * area + round * high) - 1)).toBeLessThan(1e-9);
  }
});
