import { dippedFrom } from "./dippedFrom.ts";
import type { DryingMemory } from "./dryingMemory.ts";
import { finalDry } from "./finalDry.ts";
import { metalReady } from "./metalReady.ts";
import { nextAction, nextCoat } from "./nextAction.ts";
import type { Piece } from "./piece.ts";
import { shellDrying } from "./shellDrying.ts";
import { wallStanding } from "./shellWall.ts";
import type { Standing, Surroundings } from "./standing.ts";

/**
 * Where a piece stands at `now`, epoch ms: its log, its recipe and its rooms' air put together. Total: numbers no
 * shop could have are left out of the sums, never thrown over. Whoever asks again and again hands in a memory: then
 * only what is new is reckoned.
 */
export function standingOf(
  piece: Piece,
  surroundings: Surroundings,
  now: number,
  memory: DryingMemory | null = null,
): Standing {
  const { shop, recipes, rooms, readings } = surroundings;
  const recipe = recipes.get(piece.plan.recipeId ?? "") ?? null;
  const roomId = piece.rooms.at(-1)?.roomId ?? "";
  const drying = shellDrying(piece, { surroundings, recipe, now, memory });
  const outer = drying.at(-1) ?? null;
  const next = nextCoat(piece, recipe);
  const wall = wallStanding({ piece, recipe, shop, drying });
  const isLast = next === null && (piece.phase === "coating" || piece.phase === "reviewed");
  const whole = isLast
    ? finalDry(piece, { surroundings, recipe, now, memory, drying, wallMm: wall.reachedMm })
    : null;
  const runs = piece.runIds.flatMap((id) => surroundings.runs?.get(id) ?? []);
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
    dippedFrom: dippedFrom(piece, surroundings),
    outer,
    next,
    coatsDone: piece.coats.length,
    coatsPlanned: recipe?.coats.length ?? null,
    wall,
    finalDry: whole,
    metalBars: bars,
    action: nextAction({ piece, recipe, next, outer, whole, bars, now }),
  };
}
