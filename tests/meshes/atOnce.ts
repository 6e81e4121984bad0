import { searchAttitudesSteps } from "../../src/geometry/attitude.ts";
import { dexelsOf } from "../../src/geometry/dexels.ts";
import { fillFromGateSteps } from "../../src/geometry/fillFromGate.ts";
import { flatSpansSteps } from "../../src/geometry/flatSpans.ts";
import { freezeOrderSteps } from "../../src/geometry/freezeOrder.ts";
import { measureSteps } from "../../src/geometry/measureMesh.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import type { ReadMesh } from "../../src/geometry/read/reader.ts";
import { openMeshReader } from "../../src/geometry/readMesh.ts";
import { recessesSteps } from "../../src/geometry/recesses.ts";
import { roundSpansSteps } from "../../src/geometry/roundSpans.ts";
import type { Steps } from "../../src/geometry/steps.ts";
import { trappedInDexels, type Trapped } from "../../src/geometry/trappedVolume.ts";
import type { Vec3 } from "../../src/geometry/vector.ts";
import { wallThicknessSteps } from "../../src/geometry/wallThickness.ts";

/** Runs to the end without a pause. */
export function finish<Result>(steps: Steps<Result>): Result {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

// The app works in slices and steps, so that a worker can breathe and stop; a test wants the whole in one call.
const atOnce =
  <From, Result>(steps: (from: From) => Steps<Result>) =>
  (from: From): Result =>
    finish(steps(from));

export const searchAttitudes = atOnce(searchAttitudesSteps);
export const fillFromGate = atOnce(fillFromGateSteps);
export const flatSpans = atOnce(flatSpansSteps);
export const freezeOrder = atOnce(freezeOrderSteps);
export const measureMesh = atOnce(measureSteps);
export const recesses = atOnce(recessesSteps);
export const roundSpans = atOnce(roundSpansSteps);
export const wallThickness = atOnce(wallThicknessSteps);

export function readMesh(given: Uint8Array | ArrayBuffer, name: string): ReadMesh {
  const bytes = given instanceof Uint8Array ? given : new Uint8Array(given);
  const reader = openMeshReader(name, bytes.length);
  reader.feed(bytes);
  return reader.end();
}

export function trappedVolume({
  mesh,
  up,
  vents,
  columns = 256,
}: {
  readonly mesh: Mesh;
  readonly up: Vec3;
  readonly vents: readonly Vec3[];
  readonly columns?: number | undefined;
}): Trapped {
  return trappedInDexels({ dexels: dexelsOf({ mesh, up, cells: columns }), vents });
}
