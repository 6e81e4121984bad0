import type { Vec3 } from "../../geometry/vector.ts";

export type MarkKind = "gate" | "vent" | "drain" | "feeder";

/** Something tapped on the pattern; the point in mesh mm, the normal outward where the tap knew it. */
export type Mark = {
  readonly id: string;
  readonly kind: MarkKind;
  readonly point: Vec3;
  readonly normal: Vec3 | null;
  readonly diameterMm: number;
};
