import { MeshoptSimplifier } from "meshoptimizer/simplifier";
import type { Mesh } from "../../geometry/mesh.ts";

/** How far over the number asked for a copy may stay before its shape gives way to the number. */
const slack = 1.25;

/**
 * A copy of at most about `most` triangles, the mesh itself when it has no more. Edges are collapsed, which keeps a closed
 * skin closed; a mesh that can't be thinned so is clustered instead. Never measure volume on it.
 */
export async function lighten(mesh: Mesh, most: number): Promise<Mesh> {
  if (mesh.idx.length <= 3 * most) return mesh;
  await MeshoptSimplifier.ready;
  const { pos, idx } = mesh;
  const [collapsed] = MeshoptSimplifier.simplify(idx, pos, 3, 3 * most, 1);
  if (collapsed.length <= slack * 3 * most && collapsed.length > 0) return compacted(mesh, collapsed);
  const [clustered] = MeshoptSimplifier.simplifySloppy(idx, pos, 3, null, 3 * most, 1);
  return compacted(mesh, clustered.length > 0 ? clustered : collapsed);
}

/** Only the vertices that are left. `idx` is rewritten. */
function compacted(mesh: Mesh, idx: Uint32Array): Mesh {
  const [remap, count] = MeshoptSimplifier.compactMesh(idx);
  const pos = new Float32Array(3 * count);
  for (let v = 0; v < remap.length; v++) {
    const to = remap[v]!;
    if (to < count) pos.set(mesh.pos.subarray(3 * v, 3 * v + 3), 3 * to);
  }
  return { ...mesh, pos, idx };
}
