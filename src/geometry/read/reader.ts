import type { LengthUnit, Mesh } from "../mesh.ts";

export type MeshFormat = "stl-binary" | "stl-text" | "obj" | "ply-text" | "ply-binary" | "3mf";

/** What a reader had to do that its maker should know: how often, and what. */
export type ReadNote = {
  readonly code:
    | "polygons-split"
    | "facets-dropped"
    | "count-wrong"
    | "bytes-ignored"
    | "end-missing"
    | "supports-skipped"
    | "objects-unplaced";
  readonly count: number;
};

export type ReadMesh = Mesh & {
  readonly unit: LengthUnit | null;
  readonly format: MeshFormat;
  readonly notes: readonly ReadNote[];
};

/** Takes a file slice by slice, in order; every step may throw a MeshFault. */
export type Reader<Result> = { readonly feed: (bytes: Uint8Array) => void; readonly end: () => Result };

/** The notes that have something to say. */
export function notesOf(counts: Partial<Readonly<Record<ReadNote["code"], number>>>): readonly ReadNote[] {
  return (Object.entries(counts) as [ReadNote["code"], number][])
    .filter(([, count]) => count > 0)
    .map(([code, count]) => ({ code, count }));
}
