import type { ClosedHollows } from "../../geometry/closedHollows.ts";
import type { MeshMeasures } from "../../geometry/measureMesh.ts";
import type { Mended } from "../../geometry/mendMesh.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import type { Vec3 } from "../../geometry/vector.ts";

/** Measures without the rims of holes, which may be as long as the mesh. */
type Measures = Omit<MeshMeasures, "holes" | "inertia" | "centre">;

/** A hole by its size and by what capping it one way or another adds, cubed file units. */
export type HoleSize = {
  /** Diagonal of its rim over that of the mesh. */
  readonly share: number;
  readonly length: number;
  readonly low: number;
  readonly high: number;
};

/** What was found of a mesh and done to it, in the file's own unit. */
export type FoundPattern = {
  /** Of the mesh as it is used: mended where that was possible. */
  readonly measures: Measures;
  /** As it came. */
  readonly filed: Pick<Measures, "watertight" | "insideOut" | "openVolume" | "borderEdges" | "flippedEdges">;
  readonly mended: {
    readonly degenerate: number;
    /** Missing in what was kept before it was looked for. */
    readonly doubles?: number | undefined;
    readonly turnedOver: number;
    readonly turnedBodies: number;
    /** The widest first, and no more than are worth telling one by one; the counts are of all. */
    readonly capped: readonly HoleSize[];
    readonly left: readonly HoleSize[];
    readonly cappedCount: number;
    readonly leftCount: number;
  };
  /** Voids shut in by the solid, file units; left out where an older app measured. */
  readonly hollows?: ClosedHollows | undefined;
  /** Open edges that lie so close together that they may be one, file units; null where there are none, or no hole is left. */
  readonly seams: { readonly within: number; readonly before: number; readonly after: number } | null;
  /** Middle of the box in the file's coordinates; the meshes are about it. */
  readonly middle: Vec3;
  readonly display: Mesh;
  /** What analysis runs on, when not the whole mesh. */
  readonly analysed: { readonly triangles: number; readonly isWhole: boolean };
};

export function measuresOf(found: MeshMeasures): Measures {
  const { holes: _holes, inertia: _inertia, centre: _centre, ...measures } = found;
  return measures;
}

/** Holes told one by one; more than this are only a nuisance to read. */
const mostTold = 40;

export const holeSizes = (holes: Mended["capped"]): readonly HoleSize[] =>
  holes.slice(0, mostTold).map(({ share, length, capped: { low, high } }) => ({ share, length, low, high }));
