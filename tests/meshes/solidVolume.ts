import type { Solid } from "../../src/geometry/simpleSolids.ts";

/** Volume of a solid, m³. */
export function solidVolumeM3(solid: Solid): number {
  switch (solid.kind) {
    case "box":
      return (solid.widthMm / 1000) * (solid.depthMm / 1000) * (solid.heightMm / 1000);
    case "cylinder":
      return (Math.PI / 4) * (solid.diameterMm / 1000) ** 2 * (solid.heightMm / 1000);
    case "sphere":
      return (Math.PI / 6) * (solid.diameterMm / 1000) ** 3;
  }
}
