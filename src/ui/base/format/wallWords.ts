import type { Coat } from "../../../logbook/piece/piece.ts";
import type { JudgedWall, WallStanding } from "../../../logbook/piece/standing.ts";
import type { Format } from "./units.ts";

/** A wall's word as a sentence begins; the findings' titles say the same of walls that fall short. */
export const wallWords: Record<JudgedWall["word"], string> = {
  carries: "Carries this pour by the estimate",
  marginal: "Borderline for this pour",
  thin: "Too thin for this pour",
  fails: "Expected to break in this pour",
};

/** The same of a shell whose coats are still to come: nothing of it carries yet. */
export const plannedWallWords: Record<JudgedWall["word"], string> = {
  carries: "With its coats on it will carry this pour by the estimate",
  marginal: "With its coats on it will be borderline for this pour",
  thin: "With its coats on it will be too thin for this pour",
  fails: "Even with its coats on it would break in this pour",
};

export const wallMissingWords: Record<WallStanding["missing"][number], string> = {
  alloy: "the alloy",
  head: "the head (lip of the cup down to the lowest part)",
  part: "the weakest part of the shell",
  coats: "the first coat",
};

/** "7.7 mm (6.2 mm to 9.6 mm)": what is likely there, and the range to allow for. */
export function wallRange(
  { likelyMm, lowMm, highMm }: Pick<JudgedWall, "likelyMm" | "lowMm" | "highMm">,
  format: Format,
): string {
  const show = (mm: number): string => format.show("mm", mm);
  return `${show(likelyMm)} (${show(lowMm)} to ${show(highMm)})`;
}

/** What asks for it: the pour, or handling where the head asks for no more. */
export const neededBy = ({
  neededMm,
  floorMm,
}: {
  readonly neededMm: number;
  readonly floorMm: number;
}): "this pour" | "handling" => (neededMm > floorMm ? "this pour" : "handling");

/**
 * "this pour needs 6.2 mm"; where the head asks for no more than handling and burnout do, "handling needs 4.5 mm".
 * The one wording of drawing, page, finding and sheet.
 */
export const neededText = (
  { neededMm, floorMm }: { readonly neededMm: number; readonly floorMm: number },
  format: Format,
): string => `${neededBy({ neededMm, floorMm })} needs ${format.show("mm", neededMm)}`;

/** What a thickness rests on where coats went on before the log; null where none did, or a caliper read the shell. */
export function beforeLogWords(
  coats: readonly Pick<Coat, "beforeLog">[],
  basis: WallStanding["basis"],
): string | null {
  const count = coats.filter(({ beforeLog }) => beforeLog !== undefined).length;
  if (count === 0 || basis === "measured") return null;
  return count === 1
    ? "1 coat went on before the log began; its thickness is estimated."
    : `${count} coats went on before the log began; their thickness is estimated.`;
}

/** "1 more coat", "3 more coats". */
export const moreCoats = (count: number): string => (count === 1 ? "1 more coat" : `${count} more coats`);

/** What the strength in a verdict comes from. */
export const strengthFromWords: Record<JudgedWall["strengthFrom"], string> = {
  starting: "a starting value",
  recipe: "by the recipe",
  bars: "by your test bars",
  pours: "by what your shells of this recipe have held",
};
