// Makes public/sample-pattern.stl: a horned bust of our own, 120 mm high, z up, face to −y, in mm. Run it after changing
// the form: node scripts/samplePattern.mjs [where to write]. Only sums, products and square roots, so that every machine
// writes the same bytes.
import { writeFileSync } from "node:fs";

const cellMm = 1.5;
const low = [-58.2, -44.4, -5.3];
const high = [58, 40, 124];

const root = Math.sqrt;
const distance = (x, y, z) => root(x * x + y * y + z * z);

/** Roughly the distance to an ellipsoid, exact on it. */
function ellipsoid([cx, cy, cz], [rx, ry, rz]) {
  return (x, y, z) => {
    const [dx, dy, dz] = [x - cx, y - cy, z - cz];
    const near = distance(dx / rx, dy / ry, dz / rz);
    const slope = distance(dx / (rx * rx), dy / (ry * ry), dz / (rz * rz));
    return slope === 0 ? -Math.min(rx, ry, rz) : (near * (near - 1)) / slope;
  };
}

/** A rod through `points` [x, y, z, radius], as thick as each says. */
function rod(...points) {
  return (x, y, z) => {
    let best = Infinity;
    for (let i = 0; i + 1 < points.length; i++) {
      const [ax, ay, az, ar] = points[i];
      const [bx, by, bz, br] = points[i + 1];
      const [ex, ey, ez] = [bx - ax, by - ay, bz - az];
      const along = ((x - ax) * ex + (y - ay) * ey + (z - az) * ez) / (ex * ex + ey * ey + ez * ez);
      const t = Math.min(1, Math.max(0, along));
      best = Math.min(best, distance(x - ax - t * ex, y - ay - t * ey, z - az - t * ez) - ar - t * (br - ar));
    }
    return best;
  };
}

/** Both sides of the middle plane. */
const twice = (form) => (x, y, z) => form(Math.abs(x), y, z);

/** Joins with a fillet of about `k` mm. */
function blend(k, ...forms) {
  return (x, y, z) => {
    let value = forms[0](x, y, z);
    for (let i = 1; i < forms.length; i++) {
      const next = forms[i](x, y, z);
      const h = Math.max(k - Math.abs(value - next), 0) / k;
      value = Math.min(value, next) - (h * h * k) / 4;
    }
    return value;
  };
}

function cut(k, form, tool) {
  const joined = blend(k, (x, y, z) => -form(x, y, z), tool);
  return (x, y, z) => -joined(x, y, z);
}

const body = blend(
  9,
  ellipsoid([0, 3, 9], [46, 22, 25]),
  ellipsoid([0, -3, 6], [30, 24, 26]),
  rod([0, 6, 24, 16], [0, 4, 60, 13.5]),
);
const skull = blend(
  6,
  ellipsoid([0, 1, 76], [20, 23, 23]),
  ellipsoid([0, -11, 61], [15.5, 15.5, 14]),
  twice(ellipsoid([11, -15, 71], [6, 6, 5])),
);
const features = blend(
  2.5,
  rod([0, -20, 80, 3], [0, -27, 71, 4]),
  twice(rod([3, -21, 84, 3], [15, -15, 86, 3])),
  twice(ellipsoid([8.5, -19.5, 77.5], [4, 3.6, 3.6])),
);
const ear = twice(rod([18, 2, 72, 4], [25, 4, 80, 4.5], [29, 6, 90, 1.8]));
const earHollow = twice(rod([24, -1.5, 76, 2.2], [27, 0, 84, 1.8]));
const horn = twice(
  rod([11, -8, 92, 6.5], [19, -9, 101, 5.4], [25, -7, 109, 4.1], [26, -3, 116, 2.9], [23.5, 1, 121.2, 1.75]),
);
const mouth = ellipsoid([0, -27, 60], [12, 12, 6.5]);
const lowerTeeth = twice(rod([7, -20, 50, 3.2], [7, -21.5, 57.8, 1.8]));
const upperTeeth = twice(rod([3.2, -20, 70, 2.8], [3.2, -22.5, 62.6, 1.7]));
const underChin = ellipsoid([0, -12, 45.5], [8, 6.5, 4]);

const head = blend(
  1.5,
  cut(2, cut(2.5, blend(4, skull, features), mouth), underChin),
  lowerTeeth,
  upperTeeth,
);
const whole = blend(5, body, head, cut(2, ear, earHollow), horn);

/** Inside is below 0; the foot is cut level at z = 0, its edge rounded. */
const form = cut(5, whole, (_x, _y, z) => z);

/**
 * Where in and out lie crosswise at the corners of a face of the grid, four triangles would meet in one edge: the outer
 * corner nearer the surface is taken in. Gives how many were.
 */
function fillCrossedFaces(value, [nx, ny, nz]) {
  const steps = [1, nx, nx * ny];
  let filled = 0;
  for (let at = 0; at < nx * ny * (nz - 1) - nx - 1; at++)
    for (const [p, q] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ]) {
      const face = [at, at + steps[p], at + steps[p] + steps[q], at + steps[q]];
      const [a, b, c, d] = face.map((corner) => value[corner] < 0);
      if (a !== c || b !== d || a === b) continue;
      const outer = a ? [face[1], face[3]] : [face[0], face[2]];
      value[value[outer[0]] <= value[outer[1]] ? outer[0] : outer[1]] = -0.05;
      filled++;
    }
  return filled;
}

/** Surface nets (S. Gibson, Constrained Elastic Surface Nets, 1998): a point in every cell the surface passes, joined across edges. */
function surfaceNets() {
  const n = low.map((from, k) => Math.ceil((high[k] - from) / cellMm) + 1);
  const [nx, ny, nz] = n;
  const at = (i, j, k) => (k * ny + j) * nx + i;
  const place = (k, i) => low[k] + i * cellMm;
  const value = new Float64Array(nx * ny * nz);
  for (let k = 0; k < nz; k++)
    for (let j = 0; j < ny; j++)
      for (let i = 0; i < nx; i++) value[at(i, j, k)] = form(place(0, i), place(1, j), place(2, k));
  while (fillCrossedFaces(value, n) > 0);
  const points = [];
  const pointOf = new Int32Array(value.length).fill(-1);
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((c) => [c & 1, (c >> 1) & 1, c >> 2]);
  const edges = corners.flatMap((a, c) =>
    [1, 2, 4].filter((bit) => !(c & bit)).map((bit) => [a, corners[c | bit]]),
  );
  for (let k = 0; k < nz - 1; k++)
    for (let j = 0; j < ny - 1; j++)
      for (let i = 0; i < nx - 1; i++) {
        const sum = [0, 0, 0];
        let crossed = 0;
        for (const [a, b] of edges) {
          const va = value[at(i + a[0], j + a[1], k + a[2])];
          const vb = value[at(i + b[0], j + b[1], k + b[2])];
          if (va < 0 === vb < 0) continue;
          const t = va / (va - vb);
          for (let axis = 0; axis < 3; axis++) sum[axis] += a[axis] + t * (b[axis] - a[axis]);
          crossed++;
        }
        if (crossed === 0) continue;
        pointOf[at(i, j, k)] = points.length;
        points.push([i, j, k].map((cell, axis) => place(axis, cell + sum[axis] / crossed)));
      }
  const triangles = [];
  const far = (a, b) => distance(...[0, 1, 2].map((k) => points[a][k] - points[b][k]));
  const quad = (a, b, c, d) => {
    if (far(a, c) <= far(b, d)) triangles.push([a, b, c], [a, c, d]);
    else triangles.push([a, b, d], [b, c, d]);
  };
  for (let k = 1; k < nz - 1; k++)
    for (let j = 1; j < ny - 1; j++)
      for (let i = 1; i < nx - 1; i++)
        for (const [dx, dy, dz] of [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ]) {
          const inside = value[at(i, j, k)] < 0;
          if (inside === value[at(i + dx, j + dy, k + dz)] < 0) continue;
          // The four cells round this edge of the grid, in turn about its direction.
          const around = [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ].map(([p, q]) =>
            dx
              ? pointOf[at(i, j - p, k - q)]
              : dy
                ? pointOf[at(i - q, j, k - p)]
                : pointOf[at(i - p, j - q, k)],
          );
          quad(...(inside ? around : around.toReversed()));
        }
  return { points, triangles };
}

/** Stands it on z = 0 with its top at 120. */
function sized({ points, triangles }) {
  let [bottom, top] = [Infinity, -Infinity];
  for (const [, , z] of points) {
    bottom = Math.min(bottom, z);
    top = Math.max(top, z);
  }
  const by = 120 / (top - bottom);
  return { triangles, points: points.map(([x, y, z]) => [x * by, y * by, (z - bottom) * by]) };
}

function binaryStl({ points, triangles }) {
  const bytes = Buffer.alloc(84 + 50 * triangles.length);
  bytes.write("A horned bust, made by scripts/samplePattern.mjs; mm, z up");
  bytes.writeUInt32LE(triangles.length, 80);
  for (const [t, corners] of triangles.entries()) {
    const [a, b, c] = corners.map((corner) => points[corner]);
    const [e, f] = [b, c].map((p) => p.map((value, k) => value - a[k]));
    const normal = [0, 1, 2].map((k) => e[(k + 1) % 3] * f[(k + 2) % 3] - e[(k + 2) % 3] * f[(k + 1) % 3]);
    const size = distance(...normal);
    const numbers = [...normal.map((value) => (size === 0 ? 0 : value / size)), ...a, ...b, ...c];
    for (const [i, value] of numbers.entries()) bytes.writeFloatLE(value, 84 + 50 * t + 4 * i);
  }
  return bytes;
}

const target = process.argv[2] ?? new URL("../public/sample-pattern.stl", import.meta.url);
writeFileSync(target, binaryStl(sized(surfaceNets())));
