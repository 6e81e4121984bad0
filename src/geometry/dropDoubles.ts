import { bodiesOf } from "./bodies.ts";
import { edgesOf } from "./edges.ts";
import type { Mesh } from "./mesh.ts";
import { asWelded } from "./weld.ts";

/**
 * Leaves one of each face that is drawn more than once, as of a body exported twice, or with a front and a back to every
 * face. Two faces back to back, such as the wall between two bodies joined by it, enclose nothing: on a surface that stops
 * nowhere both go. None goes where that would open the surface. Wants a welded mesh; gives the very mesh and 0 when there
 * are none.
 */
export function dropDoubles(mesh: Mesh): { readonly mesh: Mesh; readonly doubles: number } {
  const { idx } = mesh;
  const triangles = idx.length / 3;
  const { firstOf, isAlone } = sameFaces(mesh);
  if (isAlone) return { mesh, doubles: 0 };
  // How often each face is drawn its own way round less the other, by its first drawing.
  const net = new Int32Array(triangles);
  for (let t = 0; t < triangles; t++) net[firstOf[t]!]! += runsUp(idx, t) ? 1 : -1;
  const { count, ofTriangle } = bodiesOf(mesh);
  const hasSkin = new Uint8Array(count);
  for (let t = 0; t < triangles; t++) if (net[firstOf[t]!] !== 0) hasSkin[ofTriangle[t]!] = 1;
  const open = edgesOf(mesh).open.length;
  const stops = open > 0;
  const done = new Uint8Array(triangles);
  const kept: number[] = [];
  for (let t = 0; t < triangles; t++) {
    const first = firstOf[t]!;
    if (net[first] === 0 && hasSkin[ofTriangle[t]!] === 1) {
      const way = runsUp(idx, t) ? 1 : 2;
      // Where the surface stops, a pair may be all that closes it: one of each stays.
      if (stops && (done[first]! & way) === 0) {
        done[first]! |= way;
        kept.push(t);
      }
      continue;
    }
    if (done[first] !== 0 || (net[first] !== 0 && runsUp(idx, t) !== net[first]! > 0)) continue;
    done[first] = 1;
    kept.push(t);
  }
  if (kept.length === triangles) return { mesh, doubles: 0 };
  const left = new Uint32Array(3 * kept.length);
  for (const [n, t] of kept.entries()) left.set(idx.subarray(3 * t, 3 * t + 3), 3 * n);
  const once = asWelded({ ...mesh, idx: left });
  // A body drawn twice with its faces cut otherwise has only some in common: without them it would be open.
  return edgesOf(once).open.length > open
    ? { mesh, doubles: 0 }
    : { mesh: once, doubles: triangles - kept.length };
}

/** Whether the corners run in rising order, turned as they may be. */
function runsUp(idx: Uint32Array, t: number): boolean {
  const [a, b, c] = [idx[3 * t]!, idx[3 * t + 1]!, idx[3 * t + 2]!];
  return (a < b ? 1 : 0) + (b < c ? 1 : 0) + (c < a ? 1 : 0) === 2;
}

/** The first triangle of the same three corners, for each; corners sorted, triangles by their lowest. */
function sameFaces({ pos, idx }: Mesh): { readonly firstOf: Uint32Array; readonly isAlone: boolean } {
  const triangles = idx.length / 3;
  const vertices = pos.length / 3;
  const low = (t: number): number => Math.min(idx[3 * t]!, idx[3 * t + 1]!, idx[3 * t + 2]!);
  const high = (t: number): number => Math.max(idx[3 * t]!, idx[3 * t + 1]!, idx[3 * t + 2]!);
  const sum = (t: number): number => idx[3 * t]! + idx[3 * t + 1]! + idx[3 * t + 2]!;
  const start = new Uint32Array(vertices + 1);
  for (let t = 0; t < triangles; t++) start[low(t) + 1]!++;
  for (let v = 0; v < vertices; v++) start[v + 1]! += start[v]!;
  const listed = new Uint32Array(triangles);
  const next = start.slice(0, vertices);
  for (let t = 0; t < triangles; t++) listed[next[low(t)]!++] = t;
  const firstOf = new Uint32Array(triangles);
  let isAlone = true;
  for (let v = 0; v < vertices; v++) {
    const here = listed.subarray(start[v], start[v + 1]);
    if (here.length > 1) here.sort((a, b) => high(a) - high(b) || sum(a) - sum(b) || a - b);
    for (let i = 0; i < here.length; i++) {
      const [t, before] = [here[i]!, here[i - 1]];
      const isSame = before !== undefined && high(before) === high(t) && sum(before) === sum(t);
      firstOf[t] = isSame ? firstOf[before]! : t;
      if (isSame) isAlone = false;
    }
  }
  return { firstOf, isAlone };
}
