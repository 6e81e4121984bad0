import { BufferAttribute, BufferGeometry, type Color } from "three";
import type { Mesh } from "../../../geometry/mesh.ts";
import type { SceneColours } from "./sceneColours.ts";

/** Corners of their own for each triangle, so that each can have a colour. */
export function triangleList({ pos, idx }: Mesh): BufferGeometry {
  const soup = new Float32Array(3 * idx.length);
  for (let n = 0; n < idx.length; n++) {
    const at = 3 * idx[n]!;
    soup[3 * n] = pos[at]!;
    soup[3 * n + 1] = pos[at + 1]!;
    soup[3 * n + 2] = pos[at + 2]!;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(soup, 3));
  geometry.computeBoundingSphere();
  return geometry;
}

/** Thinnest to thickest, then unknown; light and dark alternate little, so that neighbours part by lightness too. */
export const bandColours = (colours: SceneColours): readonly Color[] => [
  colours.hold,
  colours.ember.clone().lerp(colours.pattern, 0.45),
  colours.pattern,
  colours.clear,
  colours.note,
  colours["line-strong"],
];

export function colourBands(geometry: BufferGeometry, bands: Uint8Array, colours: SceneColours): void {
  const bytes = new Uint8Array(9 * bands.length);
  const palette = bandColours(colours).map(({ r, g, b }) => [r * 255, g * 255, b * 255] as const);
  for (let t = 0; t < bands.length; t++) {
    const colour = palette[bands[t]!] ?? palette[5]!;
    for (let k = 0; k < 9; k++) bytes[9 * t + k] = colour[k % 3]!;
  }
  geometry.setAttribute("color", new BufferAttribute(bytes, 3, true));
}

/** An indexed mesh as it is, for bars and pockets. */
export function plainGeometry({ pos, idx }: Mesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(pos, 3));
  geometry.setIndex(new BufferAttribute(idx, 1));
  geometry.computeBoundingSphere();
  return geometry;
}
