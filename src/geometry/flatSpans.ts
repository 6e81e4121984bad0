import { crossingsOf, turnedInto } from "./crossings.ts";
import { planeDistance } from "./distanceField.ts";
import { flatRegions } from "./flatRegions.ts";
import type { Mesh } from "./mesh.ts";
import type { Steps } from "./steps.ts";
import { surfaceOf } from "./surface.ts";
import { plus, squareTo, times, type Vec3 } from "./vector.ts";

/** A flat of the surface as a wall sees it: a plate of `width` (its widest round patch) by `length`. */
export type FlatSpan = {
  /** Middle of the plate, on the surface. */
  readonly point: Vec3;
  /** Outward. */
  readonly normal: Vec3;
  readonly width: number;
  readonly length: number;
  readonly area: number;
};

/**
 * The widest flats, the widest first, at most 8: surface within 8° of one direction, and in it the largest circle, whose
 * diameter is the short span; the long span is how far that circle, let shrink by 15 %, can be pushed along. Mesh units.
 */
export function* flatSpansSteps(mesh: Mesh): Steps<readonly FlatSpan[]> {
  const surface = surfaceOf(mesh);
  yield 0.2;
  const regions = flatRegions(surface, { withinRad: (8 * Math.PI) / 180, most: 8 });
  const spans: FlatSpan[] = [];
  for (const [n, region] of regions.entries()) {
    yield 0.5 + (0.5 * n) / regions.length;
    const span = spanOf({ pos: surface.pos, idx: region.idx }, region.normal);
    if (span) spans.push({ ...span, normal: region.normal, area: region.area });
  }
  return spans.sort((a, b) => b.width - a.width);
}

const pixels = 200;
const shrunk = 0.85;

function spanOf(region: Mesh, normal: Vec3): Pick<FlatSpan, "point" | "width" | "length"> | null {
  const [u, v] = squareTo(normal);
  const { uvw, low, high } = turnedInto(region, [u, v, normal]);
  const pitch = Math.max(high[0] - low[0], high[1] - low[1]) / pixels;
  if (!(pitch > 0)) return null;
  // A rim of two empty pixels, so that the edge of the region is an edge.
  const nu = Math.ceil((high[0] - low[0]) / pitch) + 4;
  const nv = Math.ceil((high[1] - low[1]) / pitch) + 4;
  const raster = {
    nu,
    nv,
    pitch,
    u0: (low[0] + high[0] - nu * pitch) / 2,
    v0: (low[1] + high[1] - nv * pitch) / 2,
  };
  const { cell, at, count } = crossingsOf(region.idx, uvw, raster);
  const isIn = new Uint8Array(nu * nv);
  const height = new Float64Array(nu * nv);
  for (let k = 0; k < count; k++) {
    isIn[cell[k]!] = 1;
    height[cell[k]!] = at[k]!;
  }
  const distance = planeDistance(isIn, { nu, nv });
  let middle = 0;
  for (let c = 0; c < distance.length; c++) if (distance[c]! > distance[middle]!) middle = c;
  const most = distance[middle]!;
  if (!(most > 0)) return null;
  const track = trackOf({ distance, nu, from: middle, least: shrunk * most });
  const length = longestSpan(track, nu) * pitch + 2 * shrunk * most * pitch;
  const centre = nearestToMean(track, nu);
  const along = times(u, raster.u0 + ((centre % nu) + 0.5) * pitch);
  const across = times(v, raster.v0 + (Math.floor(centre / nu) + 0.5) * pitch);
  const point = plus(plus(along, across), times(normal, height[centre]!));
  const width = 2 * most * pitch;
  return { point, width, length: Math.max(width, length) };
}

/** Pixels at least so far from the edge that hang together with one. */
function trackOf({
  distance,
  nu,
  from,
  least,
}: {
  distance: Float32Array;
  nu: number;
  from: number;
  least: number;
}): readonly number[] {
  const seen = new Set([from]);
  for (const pixel of seen) {
    for (const step of [-1, 1, -nu, nu]) if ((distance[pixel + step] ?? 0) >= least) seen.add(pixel + step);
  }
  return [...seen];
}

function longestSpan(track: readonly number[], nu: number): number {
  let longest = 0;
  for (let turn = 0; turn < 36; turn++) {
    const [cos, sin] = [Math.cos((Math.PI * turn) / 36), Math.sin((Math.PI * turn) / 36)];
    let low = Infinity;
    let high = -Infinity;
    for (const pixel of track) {
      const at = (pixel % nu) * cos + Math.floor(pixel / nu) * sin;
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    longest = Math.max(longest, high - low);
  }
  return longest;
}

function nearestToMean(track: readonly number[], nu: number): number {
  const x = track.reduce((sum, p) => sum + (p % nu), 0) / track.length;
  const y = track.reduce((sum, p) => sum + Math.floor(p / nu), 0) / track.length;
  const apart = (p: number): number => Math.hypot((p % nu) - x, Math.floor(p / nu) - y);
  return track.reduce((best, p) => (apart(p) < apart(best) ? p : best));
}
