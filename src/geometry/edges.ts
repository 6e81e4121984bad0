import type { Mesh } from "./mesh.ts";

/** What the edges of a welded mesh say of it. */
export type Edges = {
  readonly edges: number;
  /** Edges of one triangle. */
  readonly borderEdges: number;
  /** Edges of three or more. */
  readonly nonManifoldEdges: number;
  /** Edges of two triangles that run along them the same way, so one of the two is turned over. */
  readonly flippedEdges: number;
  /**
   * Pairs of vertices, along the triangle, where a surface stops: every edge as often as it is run one way more
   * than the other. What they enclose is missing from the surface, so they always close to loops.
   */
  readonly open: Uint32Array;
};

/** Counts edges by sorting each at its lower vertex. Triangles must name three different vertices. */
export function edgesOf({ pos, idx }: Mesh): Edges {
  const vertices = Math.floor(pos.length / 3);
  const start = new Uint32Array(vertices + 1);
  for (let i = 0; i < idx.length; i += 3) {
    const [a, b, c] = [idx[i]!, idx[i + 1]!, idx[i + 2]!];
    start[(a < b ? a : b) + 1]!++;
    start[(b < c ? b : c) + 1]!++;
    start[(c < a ? c : a) + 1]!++;
  }
  for (let v = 0; v < vertices; v++) start[v + 1]! += start[v]!;
  // The higher vertex · 2, and 1 where the edge runs down to the lower one.
  const ends = new Uint32Array(idx.length);
  const next = start.slice(0, vertices);
  for (let i = 0; i < idx.length; i += 3) {
    const [a, b, c] = [idx[i]!, idx[i + 1]!, idx[i + 2]!];
    ends[next[a < b ? a : b]!++] = a < b ? 2 * b : 2 * a + 1;
    ends[next[b < c ? b : c]!++] = b < c ? 2 * c : 2 * b + 1;
    ends[next[c < a ? c : a]!++] = c < a ? 2 * a : 2 * c + 1;
  }
  const open: number[] = [];
  let [edges, borderEdges, nonManifoldEdges, flippedEdges] = [0, 0, 0, 0];
  for (let low = 0; low < vertices; low++) {
    const [from, to] = [start[low]!, start[low + 1]!];
    sortPart(ends, from, to);
    for (let i = from; i < to;) {
      const high = ends[i]! >>> 1;
      let up = 0;
      let down = 0;
      for (; i < to && ends[i]! >>> 1 === high; i++)
        if ((ends[i]! & 1) === 0) up++;
        else down++;
      edges++;
      if (up + down === 1) borderEdges++;
      else if (up + down > 2) nonManifoldEdges++;
      else if (up !== down) flippedEdges++;
      for (let k = down; k < up; k++) open.push(low, high);
      for (let k = up; k < down; k++) open.push(high, low);
    }
  }
  return { edges, borderEdges, nonManifoldEdges, flippedEdges, open: Uint32Array.from(open) };
}

/** Most vertices have a handful of edges; a hub of thousands would make an insertion sort crawl. */
function sortPart(values: Uint32Array, from: number, to: number): void {
  if (to - from > 24) {
    values.subarray(from, to).sort();
    return;
  }
  for (let i = from + 1; i < to; i++) {
    const value = values[i]!;
    let at = i;
    for (; at > from && values[at - 1]! > value; at--) values[at] = values[at - 1]!;
    values[at] = value;
  }
}
