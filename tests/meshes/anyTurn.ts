import fc from "fast-check";
import { asFiled, rotated, turnedBy, type Rotation } from "../../src/geometry/rotation.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { moved } from "./testSolids.ts";

const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });

/** A turn in space: about z, then x, then z again (Euler's angles), so that any can come. */
export const anyTurn: fc.Arbitrary<Rotation> = fc
  .tuple(angle, angle, angle)
  .map(([a, b, c]) => turnedBy(turnedBy(turnedBy(asFiled, "z", a), "x", b), "z", c));

export const turnedInSpace = (mesh: Mesh, rotation: Rotation): Mesh =>
  moved(mesh, (p) => rotated(rotation, p));
