/**
 * Cuts a flat polygon into triangles, each three places in `corners` (x, y, z each). A convex one is fanned; another is
 * cut ear by ear (G. Meisters, Polygons Have Ears, 1975) in the plane its area faces; one that crosses itself is fanned,
 * which keeps the border right.
 */
export function cutPolygon(corners: Float64Array): readonly number[] {
  const n = corners.length / 3;
  if (n === 3) return [0, 1, 2];
  const flat = flatten(corners);
  return isConvex(flat) ? fan(n) : (earsOf(flat) ?? fan(n));
}

/** Ears are sought corner by corner; beyond this many the square of the time is too much. */
const mostCorners = 2000;

/**
 * Triangles of a polygon seen in the plane its area faces, whether it is flat or not, cutting the sharpest ear first
 * so that the surface stays small. Null when it crosses itself there or has too many corners.
 */
export function earsOf(flat: Float64Array): readonly number[] | null {
  const n = flat.length / 2;
  if (n > mostCorners) return null;
  const left = Array.from({ length: n }, (_, i) => i);
  const cut: number[] = [];
  while (left.length > 3) {
    const at = bestEar(flat, left);
    if (at === null) return null;
    cut.push(left[(at + left.length - 1) % left.length]!, left[at]!, left[(at + 1) % left.length]!);
    left.splice(at, 1);
  }
  return [...cut, ...left];
}

function bestEar(flat: Float64Array, left: readonly number[]): number | null {
  const n = left.length;
  const dents = left.filter((b, i) => turn(flat, left[(i + n - 1) % n]!, b, left[(i + 1) % n]!) <= 0);
  let best: number | null = null;
  let shortest = Infinity;
  for (let i = 0; i < n; i++) {
    const [a, b, c] = [left[(i + n - 1) % n]!, left[i]!, left[(i + 1) % n]!];
    if (turn(flat, a, b, c) < 0) continue;
    const chord = Math.hypot(flat[2 * a]! - flat[2 * c]!, flat[2 * a + 1]! - flat[2 * c + 1]!);
    if (chord >= shortest) continue;
    if (dents.some((d) => d !== a && d !== b && d !== c && isInside(flat, a, b, c, d))) continue;
    best = i;
    shortest = chord;
  }
  return best;
}

/** Twice the area of a triangle of the plane, positive when it turns left. */
function turn(flat: Float64Array, a: number, b: number, c: number): number {
  const [ax, ay] = [flat[2 * a]!, flat[2 * a + 1]!];
  return (flat[2 * b]! - ax) * (flat[2 * c + 1]! - ay) - (flat[2 * b + 1]! - ay) * (flat[2 * c]! - ax);
}

const isInside = (flat: Float64Array, a: number, b: number, c: number, d: number): boolean =>
  turn(flat, a, b, d) >= 0 && turn(flat, b, c, d) >= 0 && turn(flat, c, a, d) >= 0;

function isConvex(flat: Float64Array): boolean {
  const n = flat.length / 2;
  for (let i = 0; i < n; i++) if (turn(flat, i, (i + 1) % n, (i + 2) % n) < 0) return false;
  return true;
}

const fan = (n: number): readonly number[] =>
  Array.from({ length: n - 2 }, (_, i) => [0, i + 1, i + 2]).flat();

/**
 * The polygon in the plane across its greatest area component, turning left. Newell's sums give the direction
 * (M. Newell's method, in Sutherland, Sproull & Schumacker, Computing Surveys 6, 1974).
 */
export function flatten(corners: Float64Array): Float64Array {
  const n = corners.length / 3;
  const area = [0, 0, 0];
  const [ox, oy, oz] = [corners[0]!, corners[1]!, corners[2]!];
  for (let i = 0; i < n; i++) {
    const [a, b] = [3 * i, 3 * ((i + 1) % n)];
    const [ax, ay, az] = [corners[a]! - ox, corners[a + 1]! - oy, corners[a + 2]! - oz];
    const [bx, by, bz] = [corners[b]! - ox, corners[b + 1]! - oy, corners[b + 2]! - oz];
    area[0]! += ay * bz - az * by;
    area[1]! += az * bx - ax * bz;
    area[2]! += ax * by - ay * bx;
  }
  const sizes = area.map(Math.abs);
  const across = sizes.indexOf(Math.max(...sizes));
  const [u, v] =
    area[across]! >= 0 ? [(across + 1) % 3, (across + 2) % 3] : [(across + 2) % 3, (across + 1) % 3];
  const flat = new Float64Array(2 * n);
  for (let i = 0; i < n; i++) {
    flat[2 * i] = corners[3 * i + u]!;
    flat[2 * i + 1] = corners[3 * i + v]!;
  }
  return flat;
}
