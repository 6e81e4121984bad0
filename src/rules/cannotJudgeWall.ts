import type { Standing } from "../logbook/piece/standing.ts";
import { practice } from "../trade/practice.ts";
import type { Figure, FigureUnit } from "./finding.ts";
import { figure } from "./finding.ts";
import type { Asked } from "./stage.ts";
import { coatsAreDone, isBeforeFire, isNews } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

const unitOf = {
  alloy: "count",
  head: "m",
  part: "mm",
  coats: "count",
} as const satisfies Record<Standing["wall"]["missing"][number], FigureUnit>;

/**
 * The wall can't be set against the head because a number is missing. Each missing one is a figure without a value.
 * It is to be watched when half the coats are on, when the last one is, at the review, and from the fire on; else it is
 * a note, for there is time. A piece of which only the name is known is left alone until half its coats are on.
 */
export function cannotJudgeWall(standing: Asked): readonly FindingOf<"cannot-judge-wall">[] {
  const { wall, atReview = false, piece } = standing;
  if (wall.judged !== null) return [];
  const isDone = coatsAreDone(standing);
  if (!isDone && hasNameOnly(standing) && standing.coatsDone < halfItsCoats(standing)) return [];
  // A piece that is still to be coated has no wall to be missed.
  const missing = wall.missing.filter((what) => what !== "coats" || isDone);
  if (missing.length === 0) return [];
  const isWatched = atReview || !isBeforeFire(piece) || isTimely(standing);
  return [
    {
      rule: "cannot-judge-wall",
      variant: isWatched ? "missing" : "will-be-missing",
      level: isWatched ? "watch" : "note",
      figures: Object.fromEntries(
        missing.map((what): readonly [string, Figure] => [what, figure(null, unitOf[what])]),
      ),
      texts: {},
      entries: [],
      source: "derived: wall needed follows from the metal's density, its head and the span of the wall",
    },
  ];
}

const halfItsCoats = ({ coatsPlanned }: Standing): number =>
  Math.ceil((coatsPlanned ?? practice.usualCoats.value) / 2);

/** Just after the coat that makes half the shell, and just after the last one. */
function isTimely(standing: Standing): boolean {
  const { piece, now } = standing;
  const turning = [
    piece.coats[halfItsCoats(standing) - 1],
    coatsAreDone(standing) ? piece.coats.at(-1) : undefined,
  ];
  return turning.some((coat) => coat !== undefined && isNews(coat.dippedAt, now));
}

const hasNameOnly = ({ recipe, piece: { plan } }: Standing): boolean =>
  recipe === null && plan.alloyId === undefined && plan.headM === undefined && plan.part === undefined;
