import { closedHollowsOf, noHollows } from "../../geometry/closedHollows.ts";
import { joinSeams } from "../../geometry/joinSeams.ts";
import { measureSteps } from "../../geometry/measureMesh.ts";
import { mendMesh } from "../../geometry/mendMesh.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import type { ReadMesh } from "../../geometry/read/reader.ts";
import { refuseFlat } from "../../geometry/refuseFlat.ts";
import { openMeshReader } from "../../geometry/readMesh.ts";
import type { Vec3 } from "../../geometry/vector.ts";
import type { PatternCaps } from "../patternCaps.ts";
import type { PatternAsked } from "../patternMessages.ts";
import { holeSizes, measuresOf, type FoundPattern } from "./foundPattern.ts";
import { fileId, mostAtOnce, sliceBytes } from "./fileId.ts";
import { lighten } from "./lighten.ts";
import type { OpenedPattern } from "./openedPattern.ts";
import { breathe, drive, type Work } from "./work.ts";

/** A mesh ready for the sums, about the middle of its box, with the copy that is shown. */
export type ReadyMesh = { readonly mesh: Mesh; readonly display: Mesh };

/** From the file to a mesh that can be asked. Throws a MeshFault for a file that can't be trusted. */
export async function openPattern(
  { file, name, caps, keptIds = [] }: PatternAsked["open"],
  work: Work,
): Promise<{ readonly opened: OpenedPattern; readonly ready: ReadyMesh; readonly whole: Mesh }> {
  const { id, read } = await readFile({ file, name, keptIds }, work);
  refuseFlat(read);
  const { found, ready } = await findOut({ mesh: read, caps, capUpTo: undefined }, work);
  const { format, unit, notes } = read;
  return {
    opened: { id, file: { name, sizeBytes: file.size, format, unit, notes }, found },
    ready,
    whole: read,
  };
}

/** Reads and digests in one go over the file. */
async function readFile(
  { file, name, keptIds }: { file: Blob; name: string; keptIds: readonly string[] },
  { signal, tell }: Work,
): Promise<{ readonly id: string; readonly read: ReadMesh }> {
  const reader = openMeshReader(name, file.size);
  const id = fileId(file.size > mostAtOnce ? keptIds : []);
  const step = file.size > mostAtOnce ? sliceBytes : mostAtOnce;
  for (let at = 0; at < file.size; at += step) {
    const bytes = new Uint8Array(await file.slice(at, at + step).arrayBuffer());
    id.feed(bytes);
    for (let from = 0; from < bytes.length; from += sliceBytes) {
      reader.feed(bytes.subarray(from, from + sliceBytes));
      tell("read", Math.min(1, (at + from + sliceBytes) / file.size));
      await breathe(signal);
    }
  }
  const read = reader.end();
  tell("hash", 1);
  return { id: await id.end(), read };
}

/** Measures a mesh, mends what can be mended, and makes the copies; `capUpTo` Infinity closes every hole. */
export async function findOut(
  { mesh, caps, capUpTo }: { mesh: Mesh; caps: PatternCaps; capUpTo: number | undefined },
  work: Work,
): Promise<{ readonly found: FoundPattern; readonly ready: ReadyMesh }> {
  const asFiled = await drive(measureSteps(mesh), "measure", work);
  work.tell("mend", 0);
  await breathe(work.signal);
  const isSound =
    asFiled.watertight && !asFiled.insideOut && asFiled.components === 1 && asFiled.degenerate === 0;
  const seen = asFiled.borderEdges > 0 && capUpTo === undefined ? joinSeams(mesh) : null;
  const seams = seen === null ? null : { within: seen.within, before: seen.before, after: seen.after };
  await breathe(work.signal);
  // Edges that may be one are not holes: what to do with them is asked first.
  const mended = isSound ? null : mendMesh({ mesh, capUpTo: seams === null ? capUpTo : 0 });
  await breathe(work.signal);
  const measures = mended === null ? asFiled : await drive(measureSteps(mended.mesh), "measure", work);
  work.tell("lighten", 0);
  await breathe(work.signal);
  const { middle } = measures.box;
  const whole = about(mended?.mesh ?? mesh, middle);
  const triangles = whole.idx.length / 3;
  const isWhole = triangles <= caps.full;
  const used = isWhole ? whole : await lighten(whole, caps.full / 2);
  const display = await lighten(used, caps.display);
  const found: FoundPattern = {
    measures: measuresOf(measures),
    filed: {
      watertight: asFiled.watertight,
      insideOut: asFiled.insideOut,
      openVolume: asFiled.openVolume,
      borderEdges: asFiled.borderEdges,
      flippedEdges: asFiled.flippedEdges,
    },
    mended: {
      degenerate: asFiled.degenerate,
      doubles: mended?.doubles ?? 0,
      turnedOver: mended?.turnedOver ?? 0,
      turnedBodies: mended?.turnedBodies ?? 0,
      capped: holeSizes(mended?.capped ?? []),
      left: holeSizes(mended?.left ?? []),
      cappedCount: mended?.capped.length ?? 0,
      leftCount: mended?.left.length ?? 0,
    },
    hollows: measures.components > 1 ? closedHollowsOf(whole) : noHollows,
    seams,
    middle,
    display,
    analysed: { triangles: used.idx.length / 3, isWhole },
  };
  return { found, ready: { mesh: used, display } };
}

/** The same about another origin; in double, so that a pattern far from it keeps the digits its file had. */
function about({ pos, idx }: Mesh, [x, y, z]: Vec3): Mesh {
  const moved = new Float32Array(pos.length);
  for (let at = 0; at < pos.length; at += 3) {
    moved[at] = pos[at]! - x;
    moved[at + 1] = pos[at + 1]! - y;
    moved[at + 2] = pos[at + 2]! - z;
  }
  return { pos: moved, idx };
}
