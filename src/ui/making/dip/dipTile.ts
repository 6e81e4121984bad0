import type { AcceptedDamp, SaidOfBeneath } from "../../../logbook/entries/pieceBodies.ts";
import type { Coat } from "../../../logbook/piece/piece.ts";
import type { CoatDrying, CoverAnswer, Standing } from "../../../logbook/piece/standing.ts";
import { coverHold } from "../../../rules/coverHold.ts";
import type { Finding } from "../../../rules/finding.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { startingRecipeOf } from "../../../trade/startingRecipes.ts";
import { hasDeepPlace } from "../../../logbook/drying/coverAnswer.ts";
import { coatGiven, type DipSession } from "../../../logbook/dip/dipSession.ts";

/** What one tile at the bucket has to say and would log. */
export type DipTile = {
  readonly pieceId: string;
  readonly name: string;
  /** The coat a tap logs. */
  readonly coat: {
    readonly number: number;
    readonly step: number | null;
    readonly kind: CoatKind;
    readonly stuccoId: string | null;
  };
  /** The kind the recipe wants when that is another than the bucket gives; null when they agree or nothing is wanted. */
  readonly recipeWants: CoatKind | null;
  readonly beyondRecipe: boolean;
  readonly last: CoatDrying | null;
  readonly cover: CoverAnswer | null;
  /** It has a place that no hand reaches. */
  readonly isDeep: boolean;
  /** What forbids a further coat: the tile says it, and asks before the tap counts. */
  readonly hold: Finding | null;
  /** Goes into the log with the tap, because the tile says it before the tap. */
  readonly damp: AcceptedDamp | null;
  /** What the tile says of the coat beneath: it goes into the log with the tap. */
  readonly said: SaidOfBeneath | null;
  readonly given: Coat | null;
  readonly leftOut: boolean;
};

/** The stucco to assume for a kind: the recipe's from here on, else what the piece last had, else a usual one. */
function stuccoFor(standing: Standing, kind: CoatKind): string | null {
  if (kind === "seal") return null;
  const from = standing.next?.step ?? 0;
  const planned = standing.recipe?.coats.filter((coat) => coat.kind === kind) ?? [];
  const ahead = standing.recipe?.coats.slice(from).find((coat) => coat.kind === kind);
  const before = standing.piece.coats.findLast((coat) => coat.kind === kind);
  const usual = startingRecipeOf("start-general")?.coats.find((coat) => coat.kind === kind);
  return ahead?.stuccoId ?? before?.stuccoId ?? planned.at(-1)?.stuccoId ?? usual?.stuccoId ?? null;
}

function dampOf({ outer: last, cover }: Standing): AcceptedDamp | null {
  if (last === null || cover?.state === "dry") return null;
  return { coatId: last.coat.id, leftShare: last.leftShare };
}

/** One piece's tile for a visit. `coatsBefore` is how many coats it had when the visit began. */
export function tileOf(
  { standing, findings }: { readonly standing: Standing; readonly findings: readonly Finding[] },
  session: DipSession,
  coatsBefore: number,
): DipTile {
  const { piece, next, recipe, outer, cover } = standing;
  const fits = next !== null && next.kind === session.kind;
  return {
    pieceId: piece.id,
    name: piece.plan.name,
    coat: {
      number: piece.coats.length + 1,
      step: fits ? next.step : null,
      kind: session.kind,
      stuccoId: fits ? next.stuccoId : stuccoFor(standing, session.kind),
    },
    recipeWants: next === null || fits ? null : next.kind,
    beyondRecipe: next === null && recipe !== null,
    last: outer,
    cover,
    isDeep: hasDeepPlace(piece),
    hold: coverHold(findings),
    damp: dampOf(standing),
    said: standing.saying,
    given: coatGiven(piece, coatsBefore),
    leftOut: session.leftOut.includes(piece.id),
  };
}
