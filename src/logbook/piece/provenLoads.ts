import { loadIndexMPa } from "../../physics/shell/wall.ts";
import type { Piece, ProvenLoad, Shop } from "./piece.ts";
import { lastCame } from "./pourCame.ts";
import { pourLoad } from "./shellWall.ts";

/**
 * What a piece that was poured says of the strength of its recipe's shells; null where nobody said how it came out, where
 * it was lost to something else, where it was not filled, or where its load isn't known. Metal through the wall is a shell that broke; a fin is
 * a crack that held, and counts for neither.
 */
export function provenLoad(piece: Piece, shop: Shop): ProvenLoad | null {
  const { outcome, pours, plan } = piece;
  if (outcome === null || pours.length === 0 || plan.recipeId === undefined) return null;
  const came = lastCame(piece);
  const broke = outcome.defects.includes("run-out") || came === "leaked";
  // A shell that was not filled did not bear its head.
  if (!broke && came !== "full") return null;
  if (!broke && (outcome.result === "lost" || outcome.defects.includes("fin"))) return null;
  const load = pourLoad(piece, shop);
  if (load === null) return null;
  return { pieceId: piece.id, recipeId: plan.recipeId, loadMPa: loadIndexMPa(load), held: !broke };
}
