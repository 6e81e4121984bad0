// Makes public/sample-pattern.stl: a gate finial of our own, an artichoke of 120 mm, z up, in mm. Run it after changing
// the form: node scripts/samplePattern.mjs [where to write]. Only sums, products and square roots, so that every machine
// writes the same bytes.
import { writeFileSync } from "node:fs";

const cellMm = 1.5;
const low = [-41.2, -41.3, -5.3];
const high = [41, 41, 124];

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

/** Turns about the z axis by steps of 22.5°: [cosine, sine] of each. */
const turns = (() => {
  const half = root(0.5);
  const [c, s] = [root((1 + half) / 2), root((1 - half) / 2)];
  const all = [[1, 0]];
  while (all.length < 16) {
    const [x, y] = all.at(-1);
    all.push([c * x - s * y, s * x + c * y]);
  }
  return all;
})();

/** `count` of a form that stands at x > 0, evenly about the z axis from turn `first` on. */
function round(count, first, form) {
  const places = Array.from({ length: count }, (_, i) => turns[(first + (16 / count) * i) % 16]);
  return (x, y, z) =>
    places.reduce((best, [c, s]) => Math.min(best, form(c * x + s * y, c * y - s * x, z)), Infinity);
}

/** A leaf: a rod in the middle plane through `points` [out, up, half thickness], `wider` times as wide as thick. */
function leaf(wider, ...points) {
  const stem = rod(...points.map(([out, up, thick]) => [out, 0, up, thick]));
  return (x, y, z) => stem(x, y / wider, z);
}

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

const foot = blend(
  3,
  ellipsoid([0, 0, 0], [27, 27, 7]),
  rod([0, 0, 0, 13], [0, 0, 12, 9], [0, 0, 30, 9]),
  round(1, 0, (x, y, z) => distance(root(x * x + y * y) - 10.5, 0, z - 14) - 3),
);
const bud = blend(6, ellipsoid([0, 0, 58], [28, 28, 31]), ellipsoid([0, 0, 86], [17, 17, 30]));
/** Rows from the lowest up; each leaf lies on the bud and turns outward at its tip. */
const leaves = [
  round(8, 0, leaf(2.6, [12, 30, 3], [24, 36, 3.4], [31, 45, 2.8], [35, 51, 1.8])),
  round(8, 1, leaf(2.6, [20, 42, 3], [26, 54, 3.4], [30, 64, 2.8], [33.5, 70.5, 1.8])),
  round(8, 0, leaf(2.5, [21, 58, 3], [23, 70, 3.3], [24.5, 80, 2.7], [27.5, 86.5, 1.8])),
  round(8, 1, leaf(2.2, [16, 74, 3], [16.5, 86, 3], [17, 95, 2.5], [19.5, 101.5, 1.8])),
  round(4, 0, leaf(2.4, [9, 88, 2.8], [9, 99, 2.8], [9.5, 106, 2.3], [11.5, 112, 1.8])),
];
const whole = blend(4, foot, bud, ...leaves);

/** Inside is below 0; the foot is cut level at z = 0, its edge rounded. */
const form = cut(2, whole, (_x, _y, z) => z);

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
  bytes.write("An artichoke finial, made by scripts/samplePattern.mjs; mm, z up");
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
