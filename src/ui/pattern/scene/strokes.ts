import {
  CylinderGeometry,
  InstancedMesh,
  Matrix4,
  MeshBasicMaterial,
  Quaternion,
  Vector3,
  type Color,
} from "three";
import type { Vec3 } from "../../../geometry/vector.ts";

export type Stroke = readonly [from: Vec3, to: Vec3];

/** Lines with a thickness: the browser's own are a hair on a sharp screen. */
export function strokes(
  runs: readonly Stroke[],
  { radius, colour, isOver = false }: { radius: number; colour: Color; isOver?: boolean | undefined },
): { readonly mesh: InstancedMesh; readonly dispose: () => void } {
  const geometry = new CylinderGeometry(1, 1, 1, 7, 1);
  const material = new MeshBasicMaterial({ color: colour, depthTest: !isOver, transparent: isOver });
  const mesh = new InstancedMesh(geometry, material, runs.length);
  const [a, b, along, middle] = [new Vector3(), new Vector3(), new Vector3(), new Vector3()];
  const turn = new Quaternion();
  const upright = new Vector3(0, 1, 0);
  const matrix = new Matrix4();
  for (const [n, [from, to]] of runs.entries()) {
    along.subVectors(b.set(...to), a.set(...from));
    const length = along.length();
    middle.addVectors(a, b).multiplyScalar(0.5);
    if (length > 0) turn.setFromUnitVectors(upright, along.divideScalar(length));
    mesh.setMatrixAt(n, matrix.compose(middle, turn, new Vector3(radius, length, radius)));
  }
  mesh.frustumCulled = false;
  mesh.renderOrder = isOver ? 11 : 7;
  return {
    mesh,
    dispose: () => {
      geometry.dispose();
      material.dispose();
      mesh.dispose();
    },
  };
}

/** A stroke as dashes of about this length. */
export function dashes([from, to]: Stroke, dash: number): readonly Stroke[] {
  const span = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  const count = Math.max(1, Math.round(span / (2 * dash)));
  const at = (share: number): Vec3 => [
    from[0] + (to[0] - from[0]) * share,
    from[1] + (to[1] - from[1]) * share,
    from[2] + (to[2] - from[2]) * share,
  ];
  return Array.from({ length: count }, (_, n): Stroke => [at(n / count), at((n + 0.6) / count)]);
}
