import type { Say, WordsOf } from "./findingSay.ts";
import { sentence } from "./sentence.ts";
import { neededText } from "./wallWords.ts";
import { noSingleWay, wayWords } from "./wallWayWords.ts";
import { wallFindings as t } from "../words/wallFindings.ts";

const halved = (say: Say): string =>
  say.list("damp").length === 0
    ? ""
    : t["halved.itsStrengthIsReduced"]({ dampCoats: say.coatsIn("damp").toLowerCase() });

/** What is likely there, and the range to allow for. */
const range = (say: Say): string =>
  t["range.likelyMmLowMmToHighMm"]({
    likelyMm: say.show("likelyMm"),
    lowMm: say.show("lowMm"),
    highMm: say.show("highMm"),
  });
/** A wall that falls short of its pour is short of what the pour asks, or of what handling asks beyond that. */
const needs = (say: Say): string =>
  sentence(neededText({ neededMm: say.value("neededMm"), floorMm: say.value("floorMm") }, say.format));
const wall = (say: Say): string =>
  t["wall.theShellIsRange"]({ range: range(say), needs: needs(say), halved: halved(say) });
const measure = t["measure.measureTheRealThickness"];
/** The ways that would each be enough, the first as it stands, the others after an "Or". */
const add = (say: Say): string => {
  const [first = noSingleWay, ...others] = wayWords(say);
  return [
    first,
    ...others.map((way) => t["add.orWhenpart"]({ when: way.charAt(0).toLowerCase(), part: way.slice(1) })),
  ].join(" ");
};

export const thinWallWords: WordsOf<"wall-too-thin"> = {
  fails: (say) => ({
    title: t["thinWall.fails.title"],
    says: wall(say),
    remedy: t["thinWall.fails.remedy"]({ add: add(say), measure }),
  }),
  thin: (say) => ({
    title: t["thinWall.thin.title"],
    says: wall(say),
    remedy: t["thinWall.thin.remedy"]({ add: add(say), measure }),
  }),
  marginal: (say) => ({
    title: t["thinWall.marginal.title"],
    says: wall(say),
    remedy: t["thinWall.marginal.remedy"]({ add: add(say), measure }),
  }),
  "below-floor": (say) => ({
    title: t["thinWall.below-floor.title"],
    says: t["thinWall.below-floor.says"]({ likelyMm: say.show("likelyMm"), floorMm: say.show("floorMm") }),
    remedy: t["thinWall.below-floor.remedy"]({ measure }),
  }),
  "plan-short": (say) => ({
    title: t["thinWall.plan-short.title"],
    says: t["thinWall.plan-short.says"]({ range: range(say), needs: needs(say), halved: halved(say) }),
    remedy: add(say),
  }),
  "plan-below-floor": (say) => ({
    title: t["thinWall.plan-below-floor.title"],
    says: t["thinWall.plan-below-floor.says"]({
      likelyMm: say.show("likelyMm"),
      floorMm: say.show("floorMm"),
    }),
    remedy: t["thinWall.plan-below-floor.remedy"],
  }),
};

const missing: readonly (readonly [key: string, what: string, how: string])[] = [
  ["alloy", t["missing.theAlloy"], t["missing.chooseTheAlloyIts"]],
  ["head", t["missing.theHead"], t["missing.standThePieceAs"]],
  ["part", t["missing.theWeakestPartOf"], t["missing.measureTheWidestFlat"]],
  ["coats", t["missing.theCoats"], t["missing.logTheCoatsThat"]],
];

function missingWords(say: Say): { readonly says: string; readonly remedy: string } {
  const absent = missing.filter(([key]) => say.has(key));
  return {
    says: t["missing.says"]({ list: absent.map(([, what]) => what).join(", ") }),
    remedy: absent.map(([, , how]) => how).join(" "),
  };
}

export const cannotJudgeWords: WordsOf<"cannot-judge-wall"> = {
  missing: (say) => ({ title: t["cannotJudge.missing.title"], ...missingWords(say) }),
  "will-be-missing": (say) => ({ title: t["cannotJudge.will-be-missing.title"], ...missingWords(say) }),
};
