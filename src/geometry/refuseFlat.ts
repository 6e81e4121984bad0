import { boxOf } from "./massProperties.ts";
import type { Mesh } from "./mesh.ts";
import { MeshFault } from "./meshFault.ts";
import { pointAt } from "./surface.ts";
import { cross, dot, length, minus, times, type Vec3 } from "./vector.ts";
import { dropDegenerate, weldMesh } from "./weld.ts";

/** Thinner than this share of its size is no body, in 32-bit coordinates. */
const flatShare = 1e-6;

/** A MeshFault for a mesh that can enclose nothing: no face with an area, or all of them in one plane. */
export function refuseFlat(given: Mesh): void {
  const { mesh } = dropDegenerate(weldMesh(given));
  const { pos, idx } = mesh;
  if (idx.length === 0) throw withoutArea(given.idx.length / 3);
  const { diagonal, middle } = boxOf(mesh);
  // Far from the origin the last digits of a coordinate are coarser than that.
  const slack = flatShare * Math.max(diagonal, ...middle.map((at) => Math.abs(at) / 10));
  let facing: Vec3 = [0, 0, 0];
  let largest = 0;
  let first = 0;
  for (let i = 0; i < idx.length; i += 3) {
    const a = pointAt(pos, idx[i]!);
    const across = cross(minus(pointAt(pos, idx[i + 1]!), a), minus(pointAt(pos, idx[i + 2]!), a));
    const size = length(across);
    if (size > largest) [largest, facing, first] = [size, across, idx[i]!];
  }
  // What a line of points so long has for an area by rounding alone.
  if (!(largest > slack * diagonal)) throw withoutArea(given.idx.length / 3);
  const normal = times(facing, 1 / largest);
  const zero = pointAt(pos, first);
  for (let i = 0; i < idx.length; i++)
    if (Math.abs(dot(minus(pointAt(pos, idx[i]!), zero), normal)) > slack) return;
  throw new MeshFault({
    code: "flat",
    found: `${idx.length / 3} triangles, all in one plane`,
    expected: "a body with a thickness",
    remedy: "give it a thickness where it was made, then export it again",
  });
}

const withoutArea = (triangles: number): MeshFault =>
  new MeshFault({
    code: "no-area",
    found: `${triangles} triangles, none with an area`,
    expected: "a surface of triangles",
    remedy: "check the scale it was exported with, then export it again",
  });
