import { cross, dot, length, negated, squareTo, unit, type Vec3 } from "./vector.ts";

/** Turns mesh coordinates into those of the shop, z up: rows of a rotation matrix. */
export type Rotation = readonly [Vec3, Vec3, Vec3];

export const asFiled: Rotation = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export const rotated = ([x, y, z]: Rotation, p: Vec3): Vec3 => [dot(x, p), dot(y, p), dot(z, p)];

/** The direction of the mesh that points up. */
export const upOf = (rotation: Rotation): Vec3 => rotation[2];

/** First `before`, then `after`. */
function followedBy(before: Rotation, after: Rotation): Rotation {
  const columns: Rotation = [
    [before[0][0], before[1][0], before[2][0]],
    [before[0][1], before[1][1], before[2][1]],
    [before[0][2], before[1][2], before[2][2]],
  ];
  return after.map((row) => rotated(columns, row)) as unknown as Rotation;
}

/** Turned further about an axis of the shop, right-handed. */
export function turnedBy(rotation: Rotation, axis: "x" | "y" | "z", rad: number): Rotation {
  const about: Record<typeof axis, Vec3> = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
  return followedBy(rotation, aboutAxis(about[axis], rad));
}

/** The shortest turn that brings `up` of the mesh upright. */
export function uprightFor(up: Vec3): Rotation {
  return shortestTurn(unit(up), [0, 0, 1]);
}

/** Turned further, the shortest way, until a face with this outward normal (mesh coordinates) lies on the bench. */
export function faceDown(rotation: Rotation, normal: Vec3): Rotation {
  return followedBy(rotation, shortestTurn(unit(rotated(rotation, normal)), [0, 0, -1]));
}

function shortestTurn(from: Vec3, to: Vec3): Rotation {
  const axis = cross(from, to);
  const sine = length(axis);
  const cosine = dot(from, to);
  if (sine > 1e-12) return aboutAxis(unit(axis), Math.atan2(sine, cosine));
  return cosine > 0 ? asFiled : aboutAxis(squareTo(from)[0], Math.PI);
}

/** Rodrigues' formula. */
function aboutAxis(axis: Vec3, rad: number): Rotation {
  const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
  const row = (k: 0 | 1 | 2): Vec3 => {
    const e: Vec3 = [k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0];
    // Row k is what the turn back makes of axis k.
    const side = cross(negated(axis), e);
    const share = axis[k] * (1 - cos);
    return [
      e[0] * cos + side[0] * sin + axis[0] * share,
      e[1] * cos + side[1] * sin + axis[1] * share,
      e[2] * cos + side[2] * sin + axis[2] * share,
    ];
  };
  return [row(0), row(1), row(2)];
}
