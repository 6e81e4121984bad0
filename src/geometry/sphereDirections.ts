import type { Vec3 } from "./vector.ts";

/** `count` directions spread evenly over the sphere: the golden-angle spiral (e.g. Á. González, 2010). */
export function sphereDirections(count: number): readonly Vec3[] {
  const golden = Math.PI * (3 - Math.sqrt(5));
  return Array.from({ length: count }, (_, n): Vec3 => {
    const z = 1 - (2 * n + 1) / count;
    const r = Math.sqrt(1 - z * z);
    return [r * Math.cos(golden * n), r * Math.sin(golden * n), z];
  });
}
