import { learnCoatGains, type LearnedCoat } from "../physics/evidence/learnedBuild.ts";
import { takenBy, type Taken } from "../logbook/bucket/dippedOut.ts";
import { weighedCoats } from "../logbook/drying/learnedGains.ts";
import type { Bucket, Piece, Recipe, Shop } from "../logbook/piece/piece.ts";
import { statesOf } from "./listed.ts";
import { readSurroundings } from "./reads.ts";
import type { ShopDb } from "./rows.ts";

/** What left the buckets on pieces, with all it was reckoned from. */
export type TakenData = {
  readonly taken: Taken;
  /** Pieces through and put away too: what they took is gone all the same. */
  readonly pieces: readonly Piece[];
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly buckets: ReadonlyMap<string, Bucket>;
  readonly shop: Shop;
  readonly gains: ReadonlyMap<string, LearnedCoat>;
};

export async function readTaken(db: ShopDb, now: number): Promise<TakenData> {
  const { pieces, around } = await db.transaction("r", db.projections, db.entries, db.settings, async () => ({
    pieces: await statesOf(db, "piece"),
    around: await readSurroundings(db, []),
  }));
  const gains = learnCoatGains(pieces.flatMap((piece) => weighedCoats(piece, { surroundings: around, now })));
  const { recipes, buckets, shop } = around;
  return { taken: takenBy(pieces, { buckets, shop, gains }), pieces, recipes, buckets, shop, gains };
}
