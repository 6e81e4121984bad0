import { bodiesOf, usedVertices } from "./bodies.ts";
import { edgesOf } from "./edges.ts";
import { holesOf } from "./holes.ts";
import type { Hole } from "./holes.ts";
import { massPropertiesOf } from "./massProperties.ts";
import type { Box, Inertia } from "./massProperties.ts";
import type { Mesh } from "./mesh.ts";
import type { Steps } from "./steps.ts";
import { unionVolumeOf } from "./unionVolume.ts";
import type { Vec3 } from "./vector.ts";
import { dropDegenerate, weldMesh } from "./weld.ts";

/** Why a mesh has no single volume, and between what the volume lies when its holes are capped one way or another. */
export type OpenVolume = {
  /** null where no cap can give one: the surface contradicts itself. */
  readonly low: number | null;
  readonly high: number | null;
  readonly reasons: readonly ("border" | "non-manifold" | "flipped")[];
};

export type MeshMeasures = {
  readonly triangles: number;
  readonly vertices: number;
  /** Triangles that named a place twice; they were left out. */
  readonly degenerate: number;
  readonly area: number;
  /** null unless watertight; then `openVolume` says what can be said. */
  readonly volume: number | null;
  readonly openVolume: OpenVolume | null;
  /** Bodies that overlap counted once; null unless watertight. */
  readonly unionVolume: number | null;
  /** The two volumes part by more than a two-hundredth: bodies overlap, or surfaces cross. */
  readonly overlaps: boolean;
  /** The surface was inside out; volume, centre and inertia are of the turned one. */
  readonly insideOut: boolean;
  readonly watertight: boolean;
  readonly borderEdges: number;
  readonly nonManifoldEdges: number;
  readonly flippedEdges: number;
  readonly holes: readonly Hole[];
  readonly components: number;
  /** Vertices − edges + triangles. */
  readonly euler: number;
  /** Handles of all components together; null unless watertight. */
  readonly genus: number | null;
  /** Centre of the volume; null unless watertight. */
  readonly centre: Vec3 | null;
  /** About the middle of the box; null unless watertight. */
  readonly inertia: Inertia | null;
  readonly box: Box;
  /** The pattern lies so far from the origin that its file's 32-bit coordinates have lost their last digits. */
  readonly farOff: boolean;
};

const overlapShare = 0.005;
const farOffTimes = 1e4;

/**
 * What can be known of a surface, in its own unit: points are welded exactly and collapsed triangles left out first;
 * nothing is mended. An open mesh has no volume but a range with its reasons. A RangeError for a mesh without triangles.
 */
export function* measureSteps(given: Mesh): Steps<MeshMeasures> {
  const { mesh, degenerate } = dropDegenerate(weldMesh(given));
  yield 0.25;
  const { box, area, volume: signed, centre, inertia } = massPropertiesOf(mesh);
  yield 0.35;
  const { edges, borderEdges, nonManifoldEdges, flippedEdges, open } = edgesOf(mesh);
  yield 0.55;
  const { count } = bodiesOf(mesh);
  const vertices = usedVertices(mesh);
  const triangles = mesh.idx.length / 3;
  const euler = vertices - edges + triangles;
  const watertight = borderEdges + nonManifoldEdges + flippedEdges === 0;
  const holes = flippedEdges === 0 ? holesOf(mesh, open) : [];
  yield 0.7;
  const insideOut = watertight && signed < 0;
  const turn = insideOut ? -1 : 1;
  const union = watertight ? unionVolumeOf(insideOut ? turned(mesh) : mesh, turn * signed) : null;
  const isClosed = !watertight && flippedEdges === 0 && open.length === 0;
  const closedVolume = isClosed ? unionVolumeOf(signed < 0 ? turned(mesh) : mesh, Math.abs(signed)) : null;
  return {
    triangles,
    vertices,
    degenerate,
    area,
    volume: watertight ? turn * signed : null,
    openVolume: watertight
      ? null
      : openVolumeOf({ signed, closedVolume, holes, borderEdges, nonManifoldEdges, flippedEdges }),
    unionVolume: union,
    overlaps: union !== null && Math.abs(union - turn * signed) > overlapShare * Math.abs(signed),
    insideOut,
    watertight,
    borderEdges,
    nonManifoldEdges,
    flippedEdges,
    holes,
    components: count,
    euler,
    genus: watertight ? count - euler / 2 : null,
    centre: watertight ? centre : null,
    inertia: watertight ? scaled(inertia, turn) : null,
    box,
    farOff: Math.max(...box.middle.map(Math.abs)) > farOffTimes * box.diagonal,
  };
}

function openVolumeOf({
  signed,
  closedVolume,
  holes,
  borderEdges,
  nonManifoldEdges,
  flippedEdges,
}: Pick<MeshMeasures, "holes" | "borderEdges" | "nonManifoldEdges" | "flippedEdges"> & {
  signed: number;
  /** Of what the surface encloses, bodies that overlap once, where it stops nowhere. */
  closedVolume: number | null;
}): OpenVolume {
  const reasons = [
    ...(borderEdges > 0 ? (["border"] as const) : []),
    ...(nonManifoldEdges > 0 ? (["non-manifold"] as const) : []),
    ...(flippedEdges > 0 ? (["flipped"] as const) : []),
  ];
  if (flippedEdges > 0) return { low: null, high: null, reasons };
  if (closedVolume !== null && Math.abs(closedVolume - Math.abs(signed)) > overlapShare * Math.abs(signed))
    return { low: closedVolume, high: closedVolume, reasons };
  const low = holes.reduce((sum, { capped }) => sum + capped.low, signed);
  const high = holes.reduce((sum, { capped }) => sum + capped.high, signed);
  // Inside out as a whole: the same range of the turned surface.
  return low + high < 0 ? { low: -high, high: -low, reasons } : { low, high, reasons };
}

/** The same surface with every triangle turned over. */
function turned(mesh: Mesh): Mesh {
  const idx = mesh.idx.slice();
  for (let i = 0; i < idx.length; i += 3) [idx[i + 1], idx[i + 2]] = [idx[i + 2]!, idx[i + 1]!];
  return { ...mesh, idx };
}

const scaled = ({ xx, yy, zz, xy, yz, zx }: Inertia, by: number): Inertia => ({
  xx: by * xx,
  yy: by * yy,
  zz: by * zz,
  xy: by * xy,
  yz: by * yz,
  zx: by * zx,
});
