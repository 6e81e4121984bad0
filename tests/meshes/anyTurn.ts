import fc from "fast-check";
import { asFiled, rotated, turnedBy, type Rotation } from "../../src/geometry/rotation.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { moved } from "./testSolids.ts";

// By whole numbers and without a leaning to small ones: a double of any size is mostly next to nothing.
const angle = fc.noBias(fc.integer({ min: -314_159, max: 314_159 })).map((n) => n / 1e5);

/** A turn in space: about z, then x, then z again (Euler's angles), so that any can come. */
export const anyTurn: fc.Arbitrary<Rotation> = fc
  .tuple(angle, angle, angle)
  .map(([a, b, c]) => turnedBy(turnedBy(turnedBy(asFiled, "z", a), "x", b), "z", c));

export const turnedInSpace = (mesh: Mesh, rotation: Rotation): Mesh =>
  moved(mesh, (p) => rotated(rotation, p));
