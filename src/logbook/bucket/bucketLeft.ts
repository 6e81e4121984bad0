import { piecesLeft } from "../../physics/slurry/stock.ts";
import type { CoatTaken, Taken } from "./dippedOut.ts";
import type { Piece, Recipe } from "../piece/piece.ts";

/** How far the slurry in a bucket goes. */
export type BucketLeft = {
  /** Slurry above what must stay to cover the tallest piece, L. */
  readonly spareL: number;
  /** One usual dip, mean of the last ten, L; and how many of them are left. */
  readonly dipL: number;
  readonly dips: number;
  /** Dips a piece takes from this bucket: by the recipes of the last pieces dipped from it. */
  readonly dipsPerPiece: number;
  readonly pieces: number;
};

const lastDips = 10;
const lastPieces = 5;

/** Null where nothing of known size was dipped from it, or its density is not known. */
export function bucketLeft(given: {
  readonly bucketId: string;
  readonly taken: Taken;
  readonly pieces: readonly Pick<Piece, "id" | "plan">[];
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly volumeL: number;
  readonly leastL: number;
  readonly densityGCm3: number;
}): BucketLeft | null {
  const { bucketId, taken, volumeL, leastL, densityGCm3 } = given;
  const own = taken.dips.filter((dip) => dip.bucketId === bucketId);
  const last = own.slice(-lastDips);
  if (last.length === 0 || densityGCm3 <= 0) return null;
  const dipL = last.reduce((sum, { slurryKg }) => sum + slurryKg, 0) / last.length / densityGCm3;
  const dipsPerPiece = perPiece(own, given);
  const dips = piecesLeft({ volumeL, leastVolumeL: leastL, perPieceL: dipL });
  const pieces = piecesLeft({ volumeL, leastVolumeL: leastL, perPieceL: dipL * dipsPerPiece });
  if (dips === null || pieces === null) return null;
  return { spareL: Math.max(0, volumeL - leastL), dipL, dips, dipsPerPiece, pieces };
}

/** Coats of the kinds this bucket gives in the recipes of the last pieces; without a recipe, the coats it gave them. */
function perPiece(
  own: readonly CoatTaken[],
  {
    pieces,
    recipes,
  }: {
    readonly pieces: readonly Pick<Piece, "id" | "plan">[];
    readonly recipes: ReadonlyMap<string, Recipe>;
  },
): number {
  const kinds = new Set(own.map(({ kind }) => kind));
  const ids = [...new Set(own.toReversed().map(({ pieceId }) => pieceId))].slice(0, lastPieces);
  const counts = ids.map((id) => {
    const given = own.filter(({ pieceId }) => pieceId === id).length;
    const recipe = recipes.get(pieces.find((piece) => piece.id === id)?.plan.recipeId ?? "");
    const planned = recipe?.coats.filter(({ kind }) => kinds.has(kind)).length ?? 0;
    return Math.max(given, planned);
  });
  return counts.reduce((sum, count) => sum + count, 0) / Math.max(1, counts.length);
}
