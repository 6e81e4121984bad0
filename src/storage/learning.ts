import { millisecondsInDay as dayMs } from "date-fns/constants";
import type { CoatWeighing } from "../physics/evidence/learnedBuild.ts";
import { trustedLearning } from "../physics/evidence/trustedLearning.ts";
import type { ShopPair } from "../logbook/drying/dryingPairs.ts";
import { pairsOf } from "../logbook/drying/dryingPairs.ts";
import type { LearnedDrying, WithoutOwn } from "../logbook/drying/learnedDrying.ts";
import { teachingPairs, withoutOwn } from "../logbook/drying/learnedDrying.ts";
import type { WallRead } from "../logbook/drying/learnedGains.ts";
import { wallReads, weighedCoats } from "../logbook/drying/learnedGains.ts";
import { textHash } from "../logbook/log/textHash.ts";
import type { Piece, ProvenLoad, Shop } from "../logbook/piece/piece.ts";
import { provenLoad } from "../logbook/piece/provenLoads.ts";
import type { Surroundings } from "../logbook/piece/surroundings.ts";
import { isDemoId } from "./demoShopLines.ts";
import { statesOf } from "./listed.ts";
import { readSurroundings } from "./reads.ts";
import { learnedFromRow, learningKey, learningSums, rowOfLearned } from "./learningRow.ts";
import { provenKey, rowOfProven } from "./provenRow.ts";
import type { ShopDb } from "./rows.ts";

/** From so long after its last dip on no reading to come changes what a piece teaches. */
const settledMs = 14 * dayMs;
const beforeCoatMs = 2 * dayMs;

/** What one piece teaches, with a mark of all it was worked out from. */
type Taught = {
  readonly mark: string;
  readonly pairs: readonly ShopPair[];
  readonly weighings: readonly CoatWeighing[];
  readonly reads: readonly WallRead[];
};
type Lessons = { readonly sums: number; readonly byPiece: Readonly<Record<string, Taught>> };

const lessonsKey = "lessons";

/** Everything the shop has been taught: what it learned, and from what. */
export type Learned = {
  readonly learning: LearnedDrying;
  readonly pairs: readonly ShopPair[];
  readonly weighings: readonly CoatWeighing[];
  readonly reads: readonly WallRead[];
  readonly pieces: ReadonlyMap<string, string>;
};

/**
 * Works out what the shop has learned from all pieces, also those through and put away, and keeps it beside the
 * settings: it can be had from the log at any time. Pieces of the demo teach only while none of the shop's own does.
 * A piece long dry is worked out once. `anew` forgets what was kept, as after readings of long ago were corrected.
 */
export async function relearn(
  db: ShopDb,
  now: number,
  { anew = false }: { readonly anew?: boolean | undefined } = {},
): Promise<Learned> {
  const { pieces, poured, kept, around } = await db.transaction(
    "r",
    db.projections,
    db.entries,
    db.settings,
    async () => {
      const states = await statesOf(db, "piece");
      const all = states.filter(teaches);
      const before = anew ? null : lessonsOf((await db.settings.get(lessonsKey))?.value);
      const bare = await readSurroundings(db, []);
      const fresh = all.filter((piece) => !isKept(before?.byPiece[piece.id], piece, bare, now));
      const since = fresh.reduce(
        (first, { coats }) => Math.min(first, coats[0]?.dippedAt ?? first),
        Infinity,
      );
      return {
        pieces: all,
        poured: states.filter(({ outcome, pours }) => outcome !== null && pours.length > 0),
        kept: before?.byPiece ?? {},
        around:
          fresh.length === 0
            ? bare
            : await readSurroundings(db, [{ from: since - beforeCoatMs, to: Infinity }]),
      };
    },
  );
  const byPiece: Record<string, Taught> = {};
  for (const piece of pieces) {
    const known = kept[piece.id];
    byPiece[piece.id] = known && isKept(known, piece, around, now) ? known : teach(piece, around, now);
  }
  const lessons: Lessons = { sums: learningSums, byPiece };
  const pairs = ownFirst(byPiece, (one) => one.pairs);
  const mark = pairsMark(pairs, around.shop);
  const before = learnedFromRow((await db.settings.get(learningKey))?.value);
  const learning = before?.mark === mark ? before : await learnSlowly(pairs, around.shop);
  const row = rowOfLearned(learning, mark);
  await db.transaction("rw", db.settings, async () => {
    await putIfNew(db, learningKey, row);
    await putIfNew(db, lessonsKey, lessons);
    const loads = provenBy(poured, around.shop);
    if (loads.length > 0) await putIfNew(db, provenKey, rowOfProven(loads));
    else if ((await db.settings.get(provenKey)) !== undefined) await db.settings.delete(provenKey);
  });
  return {
    learning,
    pairs,
    weighings: ownFirst(byPiece, (one) => one.weighings),
    reads: ownFirst(byPiece, (one) => one.reads),
    pieces: new Map(pieces.map(({ id, plan }) => [id, plan.name])),
  };
}

/** What poured shells bore; the demo's invented ones count only while the shop has poured none of its own. */
function provenBy(poured: readonly Piece[], shop: Shop): readonly ProvenLoad[] {
  const own = poured.filter(({ id }) => !isDemoId(id));
  return (own.length > 0 ? own : poured).flatMap((piece) => provenLoad(piece, shop) ?? []);
}

/** As `learnFrom`, with a breath after each coat left out, so that a hundred of them hold up no tap. */
async function learnSlowly(pairs: readonly ShopPair[], { pairsLeftOut }: Shop): Promise<LearnedDrying> {
  const teaching = teachingPairs(pairs, pairsLeftOut);
  const without = new Map<string, WithoutOwn>();
  for (const pair of teaching) {
    without.set(pair.coatId, withoutOwn(teaching, pair));
    await new Promise((go) => setTimeout(go, 0));
  }
  return { ...trustedLearning(teaching), without };
}

function pairsMark(pairs: readonly ShopPair[], { pairsLeftOut }: Shop): string {
  const teaching = teachingPairs(pairs, pairsLeftOut).map(
    ({ coatId, group, predictedS, wetAtS, dryAtS, weight }) => [
      coatId,
      group,
      predictedS,
      wetAtS,
      dryAtS,
      weight,
    ],
  );
  return textMark(JSON.stringify(teaching));
}

/** Lessons of one sort: the shop's own, and the demo's invented ones only while there are none of its own. */
function ownFirst<T>(byPiece: Lessons["byPiece"], sort: (one: Taught) => readonly T[]): readonly T[] {
  const all = Object.entries(byPiece);
  const own = all.filter(([id]) => !isDemoId(id)).flatMap(([, one]) => sort(one));
  return own.length > 0 ? own : all.flatMap(([, one]) => sort(one));
}

const teaches = ({ dryness, wall }: Piece): boolean => dryness.length > 0 || wall.length > 0;

function teach(piece: Piece, surroundings: Surroundings, now: number): Taught {
  const from = { surroundings, now };
  return {
    mark: markOf(piece, surroundings),
    pairs: pairsOf(piece, from),
    weighings: weighedCoats(piece, from),
    reads: wallReads(piece),
  };
}

function isKept(known: Taught | undefined, piece: Piece, around: Surroundings, now: number): boolean {
  const lastDip = piece.coats.at(-1)?.dippedAt ?? -Infinity;
  return known !== undefined && now - lastDip > settledMs && known.mark === markOf(piece, around);
}

/** Stands for all of a piece's own that its lessons rest on, and the shop's figures. */
function markOf(piece: Piece, { shop }: Surroundings): string {
  const { coats, dryness, wall, weighings, rooms, burnouts, firings, preheats, plan } = piece;
  const own = [plan.areaM2, plan.geometry, plan.recipeId, shop.slurryKgM2, shop.buildMm];
  const text = JSON.stringify([coats, dryness, wall, weighings, rooms, burnouts, firings, preheats, own]);
  return textMark(text);
}

const textMark = (text: string): string =>
  `${text.length} ${textHash(text, 0x811c9dc5)} ${textHash(text, 0x1234567)}`;

function lessonsOf(value: unknown): Lessons | null {
  // Written by this file alone: its number says whether it is of today's shape.
  return typeof value === "object" && value !== null && "sums" in value && value.sums === learningSums
    ? (value as Lessons)
    : null;
}

/** What screens look at is written only when it has changed. */
async function putIfNew(db: ShopDb, key: string, value: unknown): Promise<void> {
  const before = (await db.settings.get(key))?.value;
  if (JSON.stringify(before) !== JSON.stringify(value)) await db.settings.put({ key, value });
}
