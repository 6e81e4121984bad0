import { bareDrying } from "../drying/bareDrying.ts";
import { coverAnswer } from "../drying/coverAnswer.ts";
import { dippedFrom } from "../bucket/dippedFrom.ts";
import { dryMinimum } from "../drying/dryMinimum.ts";
import { dryingMemory } from "../drying/dryingMemory.ts";
import { finalDry } from "../drying/finalDry.ts";
import { fireAnswer } from "../drying/fireAnswer.ts";
import { staysOf } from "../air/hanging.ts";
import type { Memo } from "../log/memo.ts";
import { makeMemo } from "../log/memo.ts";
import { metalReady } from "../fire/metalReady.ts";
import { crackStates } from "./crackStates.ts";
import { nextAction, nextCoat } from "./nextAction.ts";
import type { Piece } from "./piece.ts";
import { withRunHeat } from "../fire/runHeat.ts";
import { kilnNow, runsOfPiece } from "../fire/runsOfPiece.ts";
import { asSaid, sayingOf } from "../drying/saidThen.ts";
import { shellDrying } from "../drying/shellDrying.ts";
import { wallStanding } from "./shellWall.ts";
import type { Standing } from "./standing.ts";
import type { Surroundings } from "./surroundings.ts";

/**
 * Where a piece stands at `now`, epoch ms: its log, its recipe and its rooms' air put together. Total: numbers no
 * shop could have are left out of the sums, never thrown over. Whoever asks again and again hands in a memo: then
 * only what is new is worked out.
 */
export function standingOf(
  told: Piece,
  surroundings: Surroundings,
  now: number,
  memo: Memo = makeMemo(),
): Standing {
  const runs = runsOfPiece(told, surroundings.runs);
  // As hot as its runs were by all that is known of them now, so that every rule and screen has the same figure.
  const piece = withRunHeat(told, runs);
  const memory = dryingMemory(memo, piece, surroundings);
  const { shop, recipes, rooms, readings } = surroundings;
  const recipe = recipes.get(piece.plan.recipeId ?? "") ?? null;
  const roomId = piece.rooms.at(-1)?.roomId ?? "";
  const sums = shellDrying(piece, { surroundings, recipe, now, memory });
  const drying = asSaid(sums, { piece, around: surroundings });
  const outer = drying.at(-1) ?? null;
  const next = nextCoat(piece, recipe);
  const wall = wallStanding({ piece, recipe, shop, drying, next });
  const from = { surroundings, recipe, now, memory };
  const bare = outer && bareDrying(piece, outer, from);
  const whole =
    bare !== null && mattersToFire(piece)
      ? finalDry(piece, { ...from, drying: [...drying.slice(0, -1), bare], wallMm: wall.reachedMm })
      : null;
  const cover =
    bare &&
    coverAnswer(piece, { outer: bare, minimum: dryMinimum(bare.coat, { ...surroundings, recipe }), now });
  const stays = staysOf(piece, surroundings, memo);
  const forFire = bare && fireAnswer(piece, { outer: bare, whole, stays, now });
  const isLast = next === null && (piece.phase === "coating" || piece.phase === "reviewed");
  const cracks = crackStates(piece);
  const bars = metalReady(piece, { runs, now });
  return {
    piece,
    now,
    recipe,
    room: rooms.get(roomId) ?? null,
    readings: readings.get(roomId) ?? [],
    shop,
    drying,
    runs,
    dippedFrom: dippedFrom(piece, surroundings, memo),
    outer,
    cover,
    forFire,
    cracks,
    saying: sayingOf(piece, { outer, cover, now, around: surroundings }),
    next,
    coatsDone: piece.coats.length,
    coatsPlanned: recipe?.coats.length ?? null,
    wall,
    finalDry: isLast ? whole : null,
    metalBars: bars,
    action: nextAction({ piece, recipe, next, cover, forFire, bars, cracks, kiln: kilnNow(piece, runs) }),
  };
}

/** Until it has been fired it matters how dry the shell is, or was when it went in. */
const mattersToFire = ({ phase }: Piece): boolean =>
  phase === "coating" || phase === "reviewed" || phase === "burnout" || phase === "burnt-out";
