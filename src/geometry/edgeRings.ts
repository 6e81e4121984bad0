import type { Mesh } from "./mesh.ts";

/**
 * For every corner of every triangle, whose edge runs on from it, the next corner whose edge has the same two ends: a ring
 * of two inside a surface, of one at its border, of more where several skins meet. Triangles must name three different
 * vertices. The time goes with n log n in the edges at a vertex.
 */
export function edgeRings({ pos, idx }: Pick<Mesh, "pos" | "idx">): Uint32Array {
  const vertices = pos.length / 3;
  const lowEnd = (i: number): number => Math.min(idx[i]!, idx[after(i)]!);
  const highEnd = (i: number): number => Math.max(idx[i]!, idx[after(i)]!);
  const start = new Uint32Array(vertices + 1);
  for (let i = 0; i < idx.length; i++) start[lowEnd(i) + 1]!++;
  for (let v = 0; v < vertices; v++) start[v + 1]! += start[v]!;
  const corners = new Uint32Array(idx.length);
  const free = start.slice(0, vertices);
  for (let i = 0; i < idx.length; i++) corners[free[lowEnd(i)]!++] = i;
  const ring = new Uint32Array(idx.length);
  for (let v = 0; v < vertices; v++) {
    const end = start[v + 1]!;
    sortPart(corners, start[v]!, end, highEnd);
    for (let from = start[v]!; from < end;) {
      const high = highEnd(corners[from]!);
      let to = from + 1;
      for (; to < end && highEnd(corners[to]!) === high; to++) ring[corners[to - 1]!] = corners[to]!;
      ring[corners[to - 1]!] = corners[from]!;
      from = to;
    }
  }
  return ring;
}

/** The corner after corner i of the same triangle. */
const after = (i: number): number => (i % 3 === 2 ? i - 2 : i + 1);

/** Most vertices have a handful of edges; at a hub of thousands an insertion sort would crawl. */
function sortPart(values: Uint32Array, from: number, to: number, key: (value: number) => number): void {
  if (to - from > 24) {
    values.subarray(from, to).sort((a, b) => key(a) - key(b) || a - b);
    return;
  }
  for (let i = from + 1; i < to; i++) {
    const value = values[i]!;
    let at = i;
    for (; at > from && key(values[at - 1]!) > key(value); at--) values[at] = values[at - 1]!;
    values[at] = value;
  }
}
