import { useMemo } from "react";
import type { Mesh } from "../../../geometry/mesh.ts";
import type { WallThickness } from "../../../geometry/wallThickness.ts";
import { cross, length, minus, type Vec3 } from "../../../geometry/vector.ts";
import { bandOf, heatBands, unknownBand, type HeatBands } from "../scene/heatBands.ts";

/** Thickness as bands: for the legend, and one for each triangle of the picture. */
export function useThickBands(
  mesh: Mesh,
  thickness: WallThickness | null,
): { readonly bands: HeatBands; readonly ofTriangle: Uint8Array } | null {
  return useMemo(() => {
    const field = thickness?.field;
    // A copy kept by an older page may have other triangles.
    if (field === undefined || field.length !== mesh.idx.length / 3) return null;
    const bands = heatBands(field, areasOf(mesh));
    const ofTriangle = Uint8Array.from(field, (mm) => (mm > 0 ? bandOf(bands.limitsMm, mm) : unknownBand));
    return { bands, ofTriangle };
  }, [mesh, thickness]);
}

function areasOf({ pos, idx }: Mesh): Float32Array {
  const corner = (n: number): Vec3 => {
    const at = 3 * idx[n]!;
    return [pos[at]!, pos[at + 1]!, pos[at + 2]!];
  };
  return Float32Array.from({ length: idx.length / 3 }, (_, t) => {
    const a = corner(3 * t);
    return length(cross(minus(corner(3 * t + 1), a), minus(corner(3 * t + 2), a))) / 2;
  });
}
