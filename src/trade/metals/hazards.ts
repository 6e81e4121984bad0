import type { Contents, Element } from "../../physics/metal/scrap.ts";
import type { Published } from "../published.ts";

/** What to be warned of before this metal is melted, poured, broken out or ground; the page has the words. */
export type MetalHazard =
  | "beryllium"
  | "cadmium"
  | "lead"
  | "zinc-fume"
  | "magnesium"
  | "phosphorus"
  | "nickel"
  | "antimony"
  | "manganese"
  | "copper-fume"
  | "rust-and-damp"
  | "glare"
  | "no-glow"
  | "oxide-film"
  | "hydrogen"
  | "oxygen-pick-up";

const judged = (value: number, why: string): Published => ({
  value,
  basis: "judgement",
  source: `judgement, no source; ${why}`,
});

/** Share of a metal above which its hazard is named; fractions. The most it may hold counts, never the middle. */
export const hazardAbove = {
  beryllium: judged(0, "its fume scars the lungs at any share"),
  cadmium: judged(0.0001, "more than a trace"),
  lead: judged(0.003, "lead-free bronzes may hold up to 0.3 %"),
  zinc: judged(0.01, "it boils at 907 °C, below every pour in a copper alloy"),
  magnesium: judged(0.01, "casting alloys hold under 0.5 %; above 1 % the melt burns"),
  phosphorus: judged(0.001, "bronzes hold up to 0.05 %; phosphor copper 15 %"),
  nickel: judged(0.01, "up to 1 % comes along in tin bronzes"),
  antimony: judged(0.01, "up to 0.25 % comes along in bronzes"),
  manganese: judged(0.05, "aluminium bronzes hold up to 3.5 %"),
  aluminium: judged(0.005, "enough for a skin on the stream"),
} as const satisfies Record<string, Published>;

/** Lead from which an alloy is called leaded: it was put in, and didn't come along. */
export const leadedFrom: Published = judged(0.01, "leaded bronzes and brasses hold 1 % or more");
/** Share from which an element is the base of the metal. */
export const baseFrom: Published = judged(0.5, "half of it");
/** Least copper of a metal that is copper and nothing else. */
export const pureFrom: Published = judged(0.99, "coppers begin there");

/** Hazards of a metal by what it may hold, worst first: a row of the table, an own copy or a mix as calculated. */
export function hazardsOf(contents: Contents): readonly MetalHazard[] {
  const most = (element: Element): number => contents[element]?.high ?? 0;
  const isBase = (element: Element): boolean => most(element) >= baseFrom.value;
  const above = (element: Element, limit: Published): boolean => most(element) > limit.value;
  const isAluminium = isBase("al");
  const isPureCopper = (contents.cu?.low ?? 0) >= pureFrom.value;
  const found: readonly (readonly [MetalHazard, boolean])[] = [
    ["beryllium", above("be", hazardAbove.beryllium)],
    ["cadmium", above("cd", hazardAbove.cadmium)],
    ["lead", above("pb", hazardAbove.lead)],
    // Aluminium is poured below where zinc boils.
    ["zinc-fume", above("zn", hazardAbove.zinc) && !isAluminium],
    ["magnesium", above("mg", hazardAbove.magnesium)],
    ["phosphorus", above("p", hazardAbove.phosphorus)],
    ["nickel", above("ni", hazardAbove.nickel)],
    ["antimony", above("sb", hazardAbove.antimony)],
    ["manganese", above("mn", hazardAbove.manganese)],
    ["copper-fume", isBase("cu")],
    ["rust-and-damp", isAluminium],
    ["glare", isBase("fe")],
    ["no-glow", isAluminium || isBase("sn")],
    ["oxide-film", above("al", hazardAbove.aluminium)],
    ["hydrogen", isAluminium || isPureCopper],
    ["oxygen-pick-up", isPureCopper || isBase("ag")],
  ];
  return found.flatMap(([hazard, is]) => (is ? [hazard] : []));
}
