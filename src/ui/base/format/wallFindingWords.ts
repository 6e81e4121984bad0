import type { Say, WordsOf } from "./findingSay.ts";
import { sentence } from "./sentence.ts";
import { neededText } from "./wallWords.ts";
import { noSingleWay, wayWords } from "./wallWayWords.ts";

const halved = (say: Say): string =>
  say.list("damp").length === 0
    ? ""
    : ` Its strength is reduced: damp under the next coat, ${say.coatsIn("damp").toLowerCase()}.`;

/** What is likely there, and the range to allow for. */
const range = (say: Say): string => `${say.show("likelyMm")} (${say.show("lowMm")} to ${say.show("highMm")})`;
/** A wall that falls short of its pour is short of what the pour asks, or of what handling asks beyond that. */
const needs = (say: Say): string =>
  sentence(neededText({ neededMm: say.value("neededMm"), floorMm: say.value("floorMm") }, say.format));
const wall = (say: Say): string => `The shell is ${range(say)}. ${needs(say)}.${halved(say)}`;
const measure = "Measure the real thickness with a caliper on a broken edge of the cup or sprue, and log it.";
/** The ways that would each be enough, the first as it stands, the others after an "Or". */
const add = (say: Say): string => {
  const [first = noSingleWay, ...others] = wayWords(say);
  return [first, ...others.map((way) => `Or ${way.charAt(0).toLowerCase()}${way.slice(1)}`)].join(" ");
};

export const thinWallWords: WordsOf<"wall-too-thin"> = {
  fails: (say) => ({
    title: "Shell expected to break in this pour",
    says: wall(say),
    remedy: `No metal in it as it stands. ${add(say)} ${measure}`,
  }),
  thin: (say) => ({
    title: "Shell too thin for this pour",
    says: wall(say),
    remedy: `Expect cracks. ${add(say)} ${measure}`,
  }),
  marginal: (say) => ({
    title: "Shell borderline for this pour",
    says: wall(say),
    remedy: `${add(say)} Sand packed round it catches a leak. ${measure}`,
  }),
  "below-floor": (say) => ({
    title: "Shell thinner than the recipe's minimum",
    says: `The shell is ${say.show("likelyMm")}; the recipe wants at least ${say.show("floorMm")} for handling and burnout.`,
    remedy: `Add a coat, or handle it with care and support it in the kiln. ${measure}`,
  }),
  "plan-short": (say) => ({
    title: "Your recipe gives too thin a shell",
    says: `Your recipe gives ${range(say)}. ${needs(say)}.${halved(say)}`,
    remedy: add(say),
  }),
  "plan-below-floor": (say) => ({
    title: "Your recipe stays below its own minimum",
    says: `Your recipe gives ${say.show("likelyMm")}; its minimum is ${say.show("floorMm")}.`,
    remedy: "Add a backup coat.",
  }),
};

const missing: readonly (readonly [key: string, what: string, how: string])[] = [
  ["alloy", "the alloy", "Choose the alloy: its weight presses on the shell."],
  [
    "head",
    "the head",
    "Stand the piece as it will be poured and measure straight up from its lowest point to the lip of the cup: that is the head.",
  ],
  [
    "part",
    "the weakest part of the shell",
    "Measure the widest flat both ways with a ruler, or across the thickest round.",
  ],
  ["coats", "the coats", "Log the coats that are on it, or measure the shell with a caliper at the cup."],
];

function missingWords(say: Say): { readonly says: string; readonly remedy: string } {
  const absent = missing.filter(([key]) => say.has(key));
  return {
    says: `Not entered: ${absent.map(([, what]) => what).join(", ")}.`,
    remedy: absent.map(([, , how]) => how).join(" "),
  };
}

export const cannotJudgeWords: WordsOf<"cannot-judge-wall"> = {
  missing: (say) => ({ title: "Shell strength not known", ...missingWords(say) }),
  "will-be-missing": (say) => ({ title: "Not enough entered to check the shell", ...missingWords(say) }),
};
