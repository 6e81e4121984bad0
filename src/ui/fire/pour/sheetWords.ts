import { sentence } from "../../base/format/sentence.ts";
import type { LineState, SheetLine } from "../../../logbook/pour/pourSheet.ts";
import type { Why, WhyCode } from "../../../logbook/pour/pourSheetWhys.ts";
import type { PourSupply } from "../../../logbook/pour/pourSupply.ts";
import type { PourKnown } from "../../../rules/pourLog.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { atTime, clockTime, soonTime } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";

/** What must be true, as a statement to be ticked. */
const names: Readonly<Record<string, string>> = {
  "review-clear": "Every shell is reviewed",
  "shell-sound": "No cracks: inspected and tapped",
  "shell-empty": "Shells are empty, clean and dry inside",
  "shell-fired": "Fired hot and long enough",
  "shell-dry": "Shells are dry",
  "wall-carries": "Shell holds the metal head",
  "shell-hot": "Shells are at temperature",
  "vents-noted": "Pattern has vents",
  "metal-enough": "Enough metal",
  "crucible-fill": "The crucible is not too full",
  "metal-heat": "Metal is at pouring temperature",
  "vents-open": "Vents open, cup clean",
  "sand-dry": "Sand is dry throughout",
  "face-shield": "Face shield over glasses, everyone",
  "leathers-gloves-boots": "Leathers, heat gloves, closed boots; nothing that melts",
  "ingot-mould-hot-dry": "Ingot mould is hot and dry, and big enough",
  "tools-hot-dry": "Tongs, shank, skimmer, thermocouple are hot and dry",
  "path-clear": "Path walked and clear",
  "second-person": "A second person is here and knows the stop word",
  "sand-and-extinguisher": "Dry sand and the extinguisher are at hand",
  "no-water": "No water near metal, no wet floor",
  ventilation: "Fumes blow away from you",
};

export const lineName = (id: string): string =>
  names[id] ?? id.replace(/^hold:/, "No stop warning: ").replaceAll("-", " ");

type Say = { readonly format: Format; readonly now: number };

const temp = ({ format }: Say, c: number | undefined): string =>
  c === undefined ? "" : format.show("temp", c);
const at = ({ format }: Say, ms: number | undefined): string =>
  ms === undefined ? "" : clockTime(ms, format.locale);
const planned = (why: Why, say: Say, otherwise: string): string =>
  why.c === undefined || why.at === undefined
    ? otherwise
    : `planned: ${temp(say, why.c)} ${atTime(why.at, say.now, say.format.locale)}`;
const range = (why: Why, say: Say): string => `${temp(say, why.lowC)} to ${temp(say, why.highC)}`;

const words: Readonly<Record<WhyCode, (why: Why, say: Say) => string>> = {
  "no-shells": () => "no shell in this pour",
  "shells-not-here": () => "a shell is not on this device",
  "no-review": () => "no review is signed",
  "review-hold": () => "its review says hold",
  "coats-since-review": () => "coats went on after its review",
  "open-crack": () => "open crack in its log",
  "patch-not-dry": () => "crack repaired, not yet dry",
  "look-for-cracks": () => "inspect it with a light and tap it before it is hot",
  "pattern-inside": () => "pattern still inside: no dewax, burnout or firing in its log",
  "wax-film": () => "wax film not burnt off",
  residue: () => "carbon or ash inside",
  rinsed: () => "rinsed with water and not dried since",
  cold: () => "fired, then cold for more than a day: dry it again first",
  "stop-warning": () => "stop warning",
  "not-fired": () => "no firing in its log",
  "fired-too-little": (why, say) =>
    why.c === undefined || why.minutes === undefined
      ? "fired too cool or too short"
      : `fired too cool or too short: ${temp(say, why.c)} for ${say.format.show("min", Math.round(why.minutes))}`,
  damp: () => "not known to be dry: a firing dries it",
  "dry-by-estimate": () => "dry by estimate, not yet fired",
  "wall-fails": () => "the shell is too thin for this head",
  "wall-marginal": () => "strong enough with little to spare",
  "wall-not-judged": () => "shell strength not known: a figure is missing",
  "preheat-not-begun": (why, say) => planned(why, say, "preheat not begun"),
  "heat-not-read": () => "no kiln reading since the preheat began",
  "heat-read-old": (why, say) => `${temp(say, why.c)} read ${at(say, why.at)}: measure it again`,
  "heat-too-low": (why, say) =>
    `${temp(say, why.c)} read ${at(say, why.at)}, at least ${temp(say, why.lowC)} needed`,
  "heat-under-plan": (why, say) =>
    `${temp(say, why.c)} read ${at(say, why.at)}, ${temp(say, why.lowC)} planned`,
  "not-soaked": (why, say) =>
    `at temperature for ${say.format.show("min", Math.floor(why.minutes ?? 0))} by the readings, ${say.format.show("min", Math.ceil(why.wantedMin ?? 0))} needed`,
  "no-vent-noted": () => "no vent in its plan: check",
  "melt-not-begun": (why, say) => planned(why, say, "the melt has not begun"),
  "metal-not-known": () => "metal in the crucible or in the shells not known: weigh it",
  "metal-not-weighed": () => "the charge was not weighed",
  "metal-short": () => "less metal than the shells hold",
  "crucible-not-known": () => "crucible volume not set: check",
  "crucible-too-full": () => "too full to lift with tongs",
  "no-alloy": () => "no alloy set, so no pouring range",
  "metal-not-read": () => "not measured since the melt started",
  "metal-read-old": (why, say) => `${temp(say, why.c)} read ${at(say, why.at)}: measure it again`,
  "metal-too-cold": (why, say) =>
    `too cold: ${temp(say, why.c)} read ${at(say, why.at)}, should be ${range(why, say)}`,
  "metal-too-hot": (why, say) =>
    `too hot: ${temp(say, why.c)} read ${at(say, why.at)}, should be ${range(why, say)}`,
  "metal-planned-cold": (why, say) => `planned too cold: ${temp(say, why.c)}, should be ${range(why, say)}`,
  "metal-planned-hot": (why, say) => `planned too hot: ${temp(say, why.c)}, should be ${range(why, say)}`,
  "not-looked-at": () => "not checked yet",
  "tick-old": () => "ticked too long ago: check again",
  "said-no": () => "checked: not OK",
};

/** One reason in words, a finding's by its own title. */
export function whyText(why: Why, { holds }: Pick<PourKnown, "holds">, say: Say): string {
  const { finding, pieceId, shell, code } = why;
  const held = holds.find(
    (one) =>
      finding !== undefined &&
      one.pieceId === pieceId &&
      one.finding.rule === finding.rule &&
      one.finding.variant === finding.variant,
  );
  const text = held === undefined ? words[code](why, say) : findingText(held.finding, say.format).title;
  return shell === null ? sentence(text) : `${shell}: ${held === undefined ? text : lower(text)}`;
}

export const stateMarks: Readonly<Record<LineState, { readonly sign: string; readonly word: string }>> = {
  ok: { sign: "✓", word: "OK" },
  "not-ok": { sign: "✕", word: "Not OK" },
  planned: { sign: "◷", word: "Planned" },
  "to-check": { sign: "○", word: "To check" },
};

/** The figure beside a line, where there is one. */
export function lineFigure(
  { id, read, state, check, isTickable }: SheetLine,
  { supply, shells }: { readonly supply: PourSupply; readonly shells: PourKnown["shells"] },
  { format, now }: Say,
): string | null {
  const { wantedKg, metalKg, metalFrom, fill } = supply;
  if (read !== null) return `${format.show("temp", read.c)} read ${soonTime(read.at, now, format.locale)}`;
  if (id === "metal-enough" && wantedKg !== null && metalKg !== null)
    return `${format.show("kg", metalKg)} ${metalFrom === "weighed" ? "weighed, less loss" : "planned"}, ${format.show("kg", wantedKg)} wanted`;
  if (id === "crucible-fill" && fill !== null)
    return `${format.show("percent", fill.share)} full${metalFrom === "weighed" ? "" : " as planned"}, ${format.show("kg", fill.mostKg)} at most`;
  if (id === "wall-carries") {
    const judged = shells.flatMap(({ standing }) => standing.wall.judged ?? []);
    if (judged.length === 0) return null;
    const nearest = judged.reduce((least, one) => (one.index < least.index ? one : least));
    return `${format.show("mm", nearest.likelyMm)} of shell, ${format.show("mm", nearest.neededMm)} needed`;
  }
  return state === "ok" && isTickable && check !== null
    ? `checked ${soonTime(check.at, now, format.locale)}`
    : null;
}

export const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
