import type { Format } from "../format/units.ts";
import type { PourParts } from "./pourParts.ts";
import type { LineState, SheetLine, WhyCode } from "./sheetItems.ts";

/** What must be true, as a statement to be ticked. */
const names: Readonly<Record<string, string>> = {
  "review-clear": "Every shell is reviewed",
  "shell-sound": "No open crack",
  "shell-empty": "Shells are empty, clean and dry inside",
  "shell-fired": "Fired hot and long enough",
  "wall-carries": "The wall carries the metal's head",
  "shell-hot": "Shells are at their heat",
  "vents-noted": "Vents are on the pattern",
  "metal-enough": "There is metal enough",
  "crucible-fill": "The crucible is not too full",
  "metal-heat": "The metal is known and hot enough",
  "vents-open": "Vents are open, cup is clean",
  "sand-dry": "Sand is dry right through",
  "face-shield": "Face shield over glasses, each of us",
  "leathers-gloves-boots": "Leathers, heat gloves, closed boots; nothing that melts",
  "ingot-mould-hot-dry": "Ingot mould is hot and dry, and big enough",
  "tools-hot-dry": "Tongs, shank, skimmer, thermocouple are hot and dry",
  "path-clear": "The path was walked and is clear",
  "second-person": "A second person is here and knows the word to stop",
  "sand-and-extinguisher": "Dry sand and the extinguisher are at hand",
  "no-water": "No water near metal, no wet floor",
  ventilation: "Fumes go away from us",
};

export const lineName = (id: string): string => names[id] ?? id.replaceAll("-", " ");

const why: Readonly<Record<WhyCode, string>> = {
  "no-shells": "no shell is in this pour",
  "shells-not-here": "a shell of it is not on this device",
  "no-review": "no review is signed",
  "review-hold": "its review says hold",
  "coats-since-review": "coats went on after its review",
  "open-crack": "an open crack stands in its log",
  "fire-broke-limit": "its kiln run broke a limit",
  "pattern-inside": "its pattern is still inside: no dewax, burnout or firing in its log",
  "wax-film": "dewaxed, and the film of wax not burnt off",
  residue: "carbon or ash was seen inside, and not seen gone",
  rinsed: "rinsed with water and not dried since",
  cold: "fired, then cold for more than a day: dry it again first",
  "not-fired": "no fire is in its log",
  "fired-too-little": "fired too cool or too short",
  "wall-fails": "the wall is too thin for this head",
  "wall-marginal": "the wall carries it with little to spare",
  "wall-not-judged": "the wall can't be judged: a figure is missing",
  "not-preheated": "its heat is not logged yet",
  "preheat-too-cold": "too cold for this section",
  "preheat-cold-if-thin": "too cold for thin work, and its section is not entered",
  "no-vent-noted": "no vent is noted on its pattern: look",
  "metal-not-known": "not known how much is wanted or melted",
  "metal-short": "less is melted than the shells hold",
  "crucible-not-known": "the crucible's brim is not known: look",
  "crucible-too-full": "too full to lift with tongs",
  "metal-too-cold-planned": "planned below where it is all melted",
  "no-alloy": "no alloy is named",
};

export const whyWords = ({ why: found }: SheetLine): readonly string[] =>
  found.map(({ shell, code }) => (shell === null ? capital(why[code]) : `${shell}: ${why[code]}`));

export const stateMarks: Readonly<Record<LineState, { readonly sign: string; readonly word: string }>> = {
  ok: { sign: "✓", word: "in order" },
  blocked: { sign: "✕", word: "blocked" },
  open: { sign: "○", word: "not looked at" },
};

/** The figure beside a reckoned line, where there is one. */
export function lineFigure(id: string, parts: PourParts, format: Format): string | null {
  const { wantedKg, metalKg, fill } = parts;
  if (id === "metal-enough" && wantedKg !== null && metalKg !== null)
    return `${format.show("kg", metalKg)} melted, ${format.show("kg", wantedKg)} wanted`;
  if (id === "crucible-fill" && fill !== null)
    return `${format.show("percent", fill.share)} of its brim, ${format.show("kg", fill.mostKg)} at most`;
  if (id === "wall-carries") {
    const judged = parts.items.flatMap(({ standing }) => standing.wall.judged ?? []);
    if (judged.length === 0) return null;
    return `least safety ${format.number(Math.min(...judged.map(({ safety }) => safety)), 1)}`;
  }
  return null;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
