import type { Standing } from "../logbook/standing.ts";
import type { Figure, FigureUnit } from "./finding.ts";
import { figure } from "./finding.ts";
import { coatsAreDone } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

const unitOf = {
  alloy: "count",
  head: "m",
  part: "mm",
  coats: "count",
} as const satisfies Record<Standing["wall"]["missing"][number], FigureUnit>;

/** The wall can't be set against the head because a number is missing. Each missing one is a figure without a value. */
export function cannotJudgeWall(standing: Standing): readonly FindingOf<"cannot-judge-wall">[] {
  const { wall } = standing;
  if (wall.judged !== null) return [];
  // A piece that is still to be coated has no wall to be missed.
  const missing = wall.missing.filter((what) => what !== "coats" || coatsAreDone(standing));
  if (missing.length === 0) return [];
  return [
    {
      rule: "cannot-judge-wall",
      variant: "missing",
      level: "watch",
      figures: Object.fromEntries(
        missing.map((what): readonly [string, Figure] => [what, figure(null, unitOf[what])]),
      ),
      texts: {},
      entries: [],
      source: "derived: wall needed follows from the metal's density, its head and the span of the wall",
    },
  ];
}
