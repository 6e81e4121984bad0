import type { GeometryClass } from "../../trade/geometryClasses.ts";
import { geometryClasses } from "../../trade/geometryClasses.ts";
import type { DrynessSeen, Piece } from "../piece/piece.ts";
import type { DryingFrom } from "./shellDrying.ts";
import { shellDrying } from "./shellDrying.ts";
import type { CoatDrying } from "../piece/standing.ts";

/** A piece as if all of it were like one of its slower places, its face `seen` or not. */
type StandIns = { readonly plain: Piece; readonly seen: Piece | null };

/**
 * The outer coat as it dries in a pocket; null before the first coat. `named` is the place whose times are the piece's.
 *
 * The cautious rule (judgement): what was seen of the face or of the whole shell, in which a pocket is a small part, may
 * make the pocket later and never earlier. Each guess is the latest of three: the pocket's own sum with nothing seen,
 * the same with what speaks for pockets too, and the named place where that is no slower a kind. Only what was measured
 * dry in this pocket or a slower one, or by a weighing that can tell there, stands alone.
 */
export function pocketDrying(
  piece: Piece,
  geometry: GeometryClass,
  {
    named,
    from,
  }: {
    readonly named: { readonly geometry: GeometryClass; readonly drying: CoatDrying };
    readonly from: DryingFrom;
  },
): CoatDrying | null {
  const { plain, seen } = standInsOf(piece, geometry);
  const own = shellDrying(plain, from).at(-1);
  if (own === undefined) return null;
  const heard = seen === null ? undefined : shellDrying(seen, from).at(-1);
  if (heard?.evidence?.says === "dry" && heard.evidence.by !== "felt") return heard;
  const isSlower = geometryClasses[geometry].pocketSM >= geometryClasses[named.geometry].pocketSM;
  return [heard, isSlower ? named.drying : undefined].reduce<CoatDrying>(
    (slowest, other) => (other === undefined ? slowest : later(slowest, other)),
    own,
  );
}

function standInsOf(piece: Piece, geometry: GeometryClass): StandIns {
  const plan = { ...piece.plan, geometry };
  const dryness = piece.dryness.filter(speaksOfPockets);
  const id = `${piece.id} ${geometry}`;
  return {
    plain: { ...piece, id, plan, dryness: [] },
    seen: dryness.length === 0 ? null : { ...piece, id: `${id} seen`, plan, dryness },
  };
}

/**
 * The weight of the whole shell, the air of a bag about it, what was read at a place (heard by where that is), and a face
 * that is wet, for a pocket is as wet or wetter. A face that feels dry says nothing of a pocket.
 */
function speaksOfPockets(seen: DrynessSeen): boolean {
  switch (seen.method) {
    case "weight":
    case "bag":
    case "surface":
    case "resistance":
      return true;
    case "touch":
    case "colour":
      return seen.verdict !== "dry";
  }
}

const damper = ["dry", "maybe", "wet", "unknown"] as const;
const rank = ({ verdict }: CoatDrying): number => damper.indexOf(verdict);

/** The wetter of two ways the same coat may dry, figure by figure; what it rests on is told by the later one. */
function later(a: CoatDrying, b: CoatDrying): CoatDrying {
  const [last, first] = (b.readyAt.late ?? Infinity) > (a.readyAt.late ?? Infinity) ? [b, a] : [a, b];
  const readyAt = {
    early: latest(a.readyAt.early, b.readyAt.early),
    likely: latest(a.readyAt.likely, b.readyAt.likely),
    late: latest(a.readyAt.late, b.readyAt.late),
  };
  return {
    ...last,
    readyAt,
    reason: readyAt.likely === null ? (last.reason ?? first.reason) : null,
    leftShare: most(a.leftShare, b.leftShare),
    waterKgM2: most(a.waterKgM2, b.waterKgM2),
    startKgM2: Math.max(a.startKgM2, b.startKgM2),
    carriedKgM2: Math.max(a.carriedKgM2, b.carriedKgM2),
    verdict: rank(a) > rank(b) ? a.verdict : b.verdict,
  };
}

/** Never is later than any time. */
const latest = (a: number | null, b: number | null): number | null =>
  a === null || b === null ? null : Math.max(a, b);

/** What one of them does not know, the other tells. */
const most = (a: number | null, b: number | null): number | null =>
  a === null || b === null ? (a ?? b) : Math.max(a, b);
