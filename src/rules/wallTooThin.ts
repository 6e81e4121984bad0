import type { JudgedWall, Standing } from "../logbook/piece/standing.ts";
import { isBelow } from "../physics/shell/wallVerdict.ts";
import { figure } from "./finding.ts";
import { halvedStrength } from "./halvedStrength.ts";
import { coatsAreDone } from "./stage.ts";
import type { FindingOf } from "./variants.ts";
import { wayFigures } from "./wayFigures.ts";

type Found = FindingOf<"wall-too-thin">;

const source =
  "plate and tube formulas: Roark's Formulas for Stress and Strain, 7th ed., table 11.4; first-order reliability: ISO 2394, EN 1990 annex C; limits: judgement, set by the walls of usual work; least wall: common practice, no source";

/**
 * The wall that is there against the wall the head needs, once no coat is to come. Before that, whether the
 * recipe will get there: a piece at its second coat is not a thin one.
 */
export function wallTooThin(standing: Standing): readonly Found[] {
  if (standing.piece.coats.length === 0 && coatsAreDone(standing)) return [];
  return coatsAreDone(standing) ? ofWall(standing) : ofPlan(standing);
}

/** The coats for which the wall counts at half its strength, by number. */
const dampTexts = (standing: Standing): Readonly<Record<string, string>> => {
  const damp = halvedStrength(standing)?.damp ?? [];
  return damp.length === 0 ? {} : { damp: damp.map(({ coat }) => coat.number).join(", ") };
};

/** What every verdict below "carries" says of itself. */
const verdictFigures = (judged: JudgedWall, floorMm: number) => ({
  likelyMm: figure(judged.likelyMm, "mm"),
  lowMm: figure(judged.lowMm, "mm"),
  highMm: figure(judged.highMm, "mm"),
  neededMm: figure(judged.neededMm, "mm"),
  floorMm: figure(floorMm, "mm"),
  pressure: figure(judged.headPressurePa, "Pa"),
  coatsToAdd: figure(judged.coatsToAdd, "count"),
  ...(judged.ways === null ? {} : wayFigures(judged.ways)),
});

function ofWall(standing: Standing): readonly Found[] {
  const { wall, piece } = standing;
  const { judged, likelyMm, floorMm } = wall;
  const entries = [...piece.coats.map(({ id }) => id), ...piece.wall.slice(-1).map(({ id }) => id)];
  if (judged !== null && judged.word !== "carries")
    return [
      {
        rule: "wall-too-thin",
        variant: judged.word,
        level: judged.word === "marginal" ? "watch" : "hold",
        figures: verdictFigures(judged, floorMm),
        texts: dampTexts(standing),
        entries,
        source,
      },
    ];
  if (wall.missing.includes("coats") || !isBelow(likelyMm, floorMm)) return [];
  return [
    {
      rule: "wall-too-thin",
      variant: "below-floor",
      level: "watch",
      figures: { likelyMm: figure(likelyMm, "mm"), floorMm: figure(floorMm, "mm") },
      texts: {},
      entries,
      source,
    },
  ];
}

function ofPlan(standing: Standing): readonly Found[] {
  const { wall, piece } = standing;
  if (wall.planned === null) return [];
  const { likelyMm, judged } = wall.planned;
  const entries = piece.coats.map(({ id }) => id);
  if (judged !== null && judged.word !== "carries")
    return [
      {
        rule: "wall-too-thin",
        variant: "plan-short",
        level: judged.word === "marginal" ? "note" : "watch",
        figures: verdictFigures(judged, wall.floorMm),
        texts: dampTexts(standing),
        entries,
        source,
      },
    ];
  if (!isBelow(likelyMm, wall.floorMm)) return [];
  return [
    {
      rule: "wall-too-thin",
      variant: "plan-below-floor",
      level: "note",
      figures: { likelyMm: figure(likelyMm, "mm"), floorMm: figure(wall.floorMm, "mm") },
      texts: {},
      entries,
      source,
    },
  ];
}
