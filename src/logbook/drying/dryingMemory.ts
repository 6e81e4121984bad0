import { shopStream, streamOf } from "../entries/entry.ts";
import type { Memo } from "../log/memo.ts";
import { groundOf } from "../log/memo.ts";
import type { Piece } from "../piece/piece.ts";
import type { Surroundings } from "../piece/surroundings.ts";

/** Where the stamp of what the shop has learned stands among those of the streams. */
export const learningStamp = "learning";

/** What a piece's drying was before, and what all of it rests on besides the air and the bucket: the stamps of its log, its recipe, the shop and what was learned. */
export type DryingMemory = { readonly memo: Memo; readonly rest: readonly unknown[] };

/** The memory of one piece's drying; made once for all that is asked of it at one time. */
export const dryingMemory = (memo: Memo, piece: Piece, { stamps }: Surroundings): DryingMemory => ({
  memo,
  rest: [
    groundOf(stamps, streamOf("piece", piece.id)),
    recipeGround(piece, stamps),
    groundOf(stamps, shopStream),
    groundOf(stamps, learningStamp),
  ],
});

/** The stamp of a piece's recipe; null where it has none. */
export const recipeGround = ({ plan }: Piece, stamps: Surroundings["stamps"]): unknown =>
  plan.recipeId ? groundOf(stamps, streamOf("recipe", plan.recipeId)) : null;
