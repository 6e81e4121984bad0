import { nextAction, nextCoat } from "./nextAction.ts";
import type { Piece } from "./piece.ts";
import { shellDrying } from "./shellDrying.ts";
import { wallStanding } from "./shellWall.ts";
import type { Standing, Surroundings } from "./standing.ts";

/**
 * Where a piece stands at `now`, epoch ms: its log, its recipe and its rooms' air put together. Total: numbers no
 * shop could have are left out of the sums, never thrown over.
 */
export function standingOf(piece: Piece, surroundings: Surroundings, now: number): Standing {
  const { shop, recipes, rooms, readings } = surroundings;
  const recipe = recipes.get(piece.plan.recipeId ?? "") ?? null;
  const roomId = piece.rooms.at(-1)?.roomId ?? "";
  const drying = shellDrying(piece, { surroundings, recipe, now });
  const outer = drying.at(-1) ?? null;
  const next = nextCoat(piece, recipe);
  return {
    piece,
    now,
    recipe,
    room: rooms.get(roomId) ?? null,
    readings: readings.get(roomId) ?? [],
    shop,
    drying,
    outer,
    next,
    coatsDone: piece.coats.length,
    coatsPlanned: recipe?.coats.length ?? null,
    wall: wallStanding({ piece, recipe, shop, drying }),
    action: nextAction({ piece, recipe, next, outer }),
  };
}
