export type LengthUnit = "mm" | "cm" | "m" | "inch" | "foot" | "micron";

/**
 * A surface of triangles: three coordinates a vertex, three vertices a triangle, counter-clockwise seen from outside.
 * Lengths are in the mesh's own unit; scale to mm before asking for anything with mm in its name. A file that
 * names no unit gives null.
 */
export type Mesh = {
  readonly pos: Float32Array;
  readonly idx: Uint32Array;
  readonly unit?: LengthUnit | null | undefined;
};
