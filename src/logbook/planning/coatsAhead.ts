import type { RecipeCoat } from "../../trade/coats.ts";
import { bucketFor } from "../dip/dipPlan.ts";
import { standingOf } from "../piece/buildStanding.ts";
import type { Memo } from "../log/memo.ts";
import { hasSeenFire } from "../piece/evolvePiece.ts";
import { nextCoat } from "../piece/nextAction.ts";
import type { Coat, Piece } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import type { Surroundings } from "../piece/surroundings.ts";

/** What a look ahead rests on beside the piece. */
export type Ahead = { readonly around: Surroundings; readonly memo: Memo };

/** A coat the recipe still asks for. */
export type CoatToCome = RecipeCoat & { readonly step: number; readonly number: number };

/** The coats the recipe still asks for, in the order they go on; empty without a recipe. */
export function coatsToCome({ piece, recipe }: Pick<Standing, "piece" | "recipe">): readonly CoatToCome[] {
  const coats: CoatToCome[] = [];
  let then = piece;
  for (;;) {
    const next = nextCoat(then, recipe);
    if (next === null) return coats;
    coats.push(next);
    then = { ...then, coats: [...then.coats, coatOf(then, next, { at: 0, bucketId: null })] };
  }
}

/** The piece with this coat put on at `at`, epoch ms, as a dip would write it: where it hangs now, not prewetted. */
export function withCoat(
  piece: Piece,
  coat: CoatToCome,
  { at, around }: { readonly at: number } & Pick<Ahead, "around">,
): Piece {
  const bucketId = bucketFor(coat.kind, [...around.buckets.values()], null)?.id ?? null;
  return { ...piece, coats: [...piece.coats, coatOf(piece, coat, { at, bucketId })] };
}

function coatOf(
  piece: Piece,
  { number, step, kind, stuccoId }: CoatToCome,
  { at, bucketId }: { readonly at: number; readonly bucketId: string | null },
): Coat {
  return {
    id: `ahead ${number}`,
    number,
    step,
    kind,
    stuccoId,
    bucketId,
    roomId: piece.rooms.at(-1)?.roomId ?? "",
    prewet: false,
    dippedAt: at,
    redips: [],
    acceptedDamp: null,
    note: null,
    photos: [],
    afterBurnout: hasSeenFire(piece),
  };
}

/**
 * Where a piece as it may become stands at `at`, epoch ms, by the one forecast. The memo is the plan's own: what is
 * kept of a coat that is not on must not crowd out what the rack keeps. Whether its wall bears is not asked here, so
 * the part that would be judged is left out: that verdict takes longer than all the drying.
 */
export function standingAhead(piece: Piece, { around, memo }: Ahead, at: number): Standing {
  const { part: _, ...plan } = piece.plan;
  return standingOf({ ...piece, plan }, around, at, memo);
}
