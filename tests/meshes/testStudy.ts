import type { Mesh } from "../../src/geometry/mesh.ts";
import { closedHollowsOf } from "../../src/geometry/closedHollows.ts";
import { measuresOf } from "../../src/workers/pattern/foundPattern.ts";
import { studyOf, type PatternStudy } from "../../src/ui/pattern/mesh/patternStudy.ts";
import { sumsVersion } from "../../src/ui/pattern/mesh/sumsVersion.ts";
import { measureMesh } from "./atOnce.ts";

/** A study of a mesh in mm, for tests: as it would be just after opening, its unit told. */
export function studyOfMesh(mesh: Mesh): PatternStudy {
  const measures = measuresOf(measureMesh(mesh));
  const { watertight, insideOut, openVolume, borderEdges, flippedEdges, triangles, box } = measures;
  const opened = {
    id: "ab".repeat(32),
    file: { name: "block.stl", sizeBytes: 684, format: "stl-binary", unit: null, notes: [] },
    found: {
      measures,
      filed: { watertight, insideOut, openVolume, borderEdges, flippedEdges },
      mended: {
        degenerate: 0,
        turnedOver: 0,
        turnedBodies: 0,
        capped: [],
        left: [],
        cappedCount: 0,
        leftCount: 0,
      },
      hollows: closedHollowsOf(mesh),
      seams: null,
      middle: box.middle,
      display: { pos: mesh.pos, idx: mesh.idx },
      analysed: { triangles, isWhole: true },
    },
  } as const;
  return { ...studyOf(opened, "Block", sumsVersion), unit: "mm" };
}

/** A closed block with a corner at the origin. */
export function block(x: number, y: number, z: number): Mesh {
  const pos = Float32Array.from(
    Array.from({ length: 8 }, (_, n) => [x * (n & 1), y * ((n >> 1) & 1), z * ((n >> 2) & 1)]).flat(),
  );
  const faces = [
    [0, 2, 3, 0, 3, 1],
    [4, 5, 7, 4, 7, 6],
    [0, 1, 5, 0, 5, 4],
    [2, 6, 7, 2, 7, 3],
    [0, 4, 6, 0, 6, 2],
    [1, 3, 7, 1, 7, 5],
  ];
  return { pos, idx: Uint32Array.from(faces.flat()) };
}
