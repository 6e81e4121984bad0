import { bodiesOf } from "./bodies.ts";
import { dropDoubles } from "./dropDoubles.ts";
import { edgesOf } from "./edges.ts";
import { holesOf } from "./holes.ts";
import type { Hole } from "./holes.ts";
import type { Mesh } from "./mesh.ts";
import { orient } from "./orient.ts";
import { turnOutward } from "./turnOutward.ts";
import { dropDegenerate, weldMesh } from "./weld.ts";

/** A mesh made fit for the sums, and all that was done to it. */
export type Mended = {
  readonly mesh: Mesh;
  /** Triangles that named a place twice, left out. */
  readonly degenerate: number;
  /** Triangles drawn a second time, left out. */
  readonly doubles: number;
  /** Triangles turned over to agree with their neighbours. */
  readonly turnedOver: number;
  /** Bodies that were inside out. */
  readonly turnedBodies: number;
  readonly capped: readonly Hole[];
  /** Holes too wide to cap unasked, widest first. */
  readonly left: readonly Hole[];
};

/** A hole narrower than this share of the diagonal is capped unasked: cappings then part by little; judgement. */
const smallHole = 0.1;

/**
 * Welds, leaves out collapsed triangles and those drawn twice, turns what is turned over or inside out, and caps holes whose rim spans less
 * than `capUpTo` of the diagonal (0 none, Infinity all), each with a fan from the middle of its rim. A patch that is all
 * rim would enclose nothing and is only capped by Infinity. What runs on edges of three triangles stays.
 */
export function mendMesh({
  mesh,
  capUpTo = smallHole,
}: {
  mesh: Mesh;
  capUpTo?: number | undefined;
}): Mended {
  const welded = dropDegenerate(weldMesh(mesh));
  const { mesh: once, doubles } = dropDoubles(welded.mesh);
  const { mesh: agreed, turnedOver } =
    edgesOf(once).flippedEdges > 0 ? orient(once) : { mesh: once, turnedOver: 0 };
  const { mesh: outward, bodies } = turnOutward(agreed);
  const { open, flippedEdges } = edgesOf(outward);
  const holes = flippedEdges > 0 ? [] : holesOf(outward, open);
  const isPatch = capUpTo === Infinity ? () => false : patchesOf(outward, holes);
  const isCapped = (hole: Hole): boolean => hole.share < capUpTo && !isPatch(hole);
  const capped = holes.filter(isCapped);
  return {
    mesh: capped.length === 0 ? outward : capAll(outward, capped),
    degenerate: welded.degenerate,
    doubles,
    turnedOver,
    turnedBodies: bodies,
    capped,
    left: holes.filter((hole) => !isCapped(hole)),
  };
}

/** Whether a rim runs through every point of its body. */
function patchesOf(mesh: Mesh, holes: readonly Hole[]): (hole: Hole) => boolean {
  if (holes.length === 0) return () => false;
  const { count, ofTriangle } = bodiesOf(mesh);
  const bodyOf = new Int32Array(mesh.pos.length / 3).fill(-1);
  const points = new Uint32Array(count);
  for (let i = 0; i < mesh.idx.length; i++) {
    const v = mesh.idx[i]!;
    if (bodyOf[v]! >= 0) continue;
    const body = ofTriangle[Math.floor(i / 3)]!;
    bodyOf[v] = body;
    points[body]!++;
  }
  return ({ rim }) => rim.length === points[bodyOf[rim[0]!]!];
}

function capAll(mesh: Mesh, holes: readonly Hole[]): Mesh {
  const wide = holes.filter(({ rim }) => rim.length > 3);
  const pos = new Float32Array(mesh.pos.length + 3 * wide.length);
  pos.set(mesh.pos);
  const caps: number[] = [];
  let hub = mesh.pos.length / 3;
  for (const { rim, middle } of holes) {
    if (rim.length === 3) {
      caps.push(...rim);
      continue;
    }
    pos.set(middle, 3 * hub);
    for (const [i, v] of rim.entries()) caps.push(v, rim[(i + 1) % rim.length]!, hub);
    hub++;
  }
  const idx = new Uint32Array(mesh.idx.length + caps.length);
  idx.set(mesh.idx);
  idx.set(caps, mesh.idx.length);
  return { ...mesh, pos, idx };
}
