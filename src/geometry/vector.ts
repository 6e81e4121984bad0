export type Vec3 = readonly [x: number, y: number, z: number];

export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];
/** By the plain root: Math.hypot is ten times slower. */
export const length = (a: Vec3): number => Math.sqrt(dot(a, a));
export const negated = (a: Vec3): Vec3 => [-a[0], -a[1], -a[2]];

/** The same direction of length 1. A RangeError when it has no direction. */
export function unit(a: Vec3): Vec3 {
  const size = length(a);
  if (!(size > 0 && size < Infinity))
    throw new RangeError(`a direction must have a length, found [${a.join(", ")}]`);
  return times(a, 1 / size);
}

/** Two unit directions square to `w` and to each other, so that (u, v, w) is right-handed. */
export function squareTo(w: Vec3): readonly [u: Vec3, v: Vec3] {
  const least: Vec3 =
    Math.abs(w[0]) <= Math.abs(w[1]) && Math.abs(w[0]) <= Math.abs(w[2])
      ? [1, 0, 0]
      : Math.abs(w[1]) <= Math.abs(w[2])
        ? [0, 1, 0]
        : [0, 0, 1];
  const u = unit(cross(least, w));
  return [u, cross(w, u)];
}
