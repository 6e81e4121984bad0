/** Root of `i`, with the path halved on the way. */
export function rootOf(parent: Int32Array | Uint32Array, i: number): number {
  let at = i;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]!]!;
    at = parent[at]!;
  }
  return at;
}
