import type { Coat } from "../../../logbook/piece/piece.ts";
import type { JudgedWall, WallStanding } from "../../../logbook/piece/standing.ts";
import type { Format } from "./units.ts";
import {
  wallTexts as t,
  wallNames,
  plannedWallTexts,
  wallMissingTexts,
  strengthFromTexts,
} from "../words/wallTexts.ts";
import { counts } from "../words/counts.ts";

/** A wall's word as a sentence begins; the findings' titles say the same of walls that fall short. */
export const wallWords: Record<JudgedWall["word"], string> = wallNames;

/** The same of a shell whose coats are still to come: nothing of it carries yet. */
export const plannedWallWords: Record<JudgedWall["word"], string> = plannedWallTexts;

export const wallMissingWords: Record<WallStanding["missing"][number], string> = wallMissingTexts;

/** "7.7 mm (6.2 mm to 9.6 mm)": what is likely there, and the range to allow for. */
export function wallRange(
  { likelyMm, lowMm, highMm }: Pick<JudgedWall, "likelyMm" | "lowMm" | "highMm">,
  format: Format,
): string {
  const show = (mm: number): string => format.show("mm", mm);
  return t["wallRange.showShowToShow"]({ show: show(likelyMm), show2: show(lowMm), show3: show(highMm) });
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
): string =>
  t["needed.neededByNeedsNeededMm"]({
    neededBy: neededBy({ neededMm, floorMm }),
    neededMm: format.show("mm", neededMm),
  });

/** What a thickness rests on where coats went on before the log; null where none did, or a caliper read the shell. */
export function beforeLogWords(
  coats: readonly Pick<Coat, "beforeLog">[],
  basis: WallStanding["basis"],
): string | null {
  const count = coats.filter(({ beforeLog }) => beforeLog !== undefined).length;
  if (count === 0 || basis === "measured") return null;
  return t["beforeLog.coats"](count);
}

/** "1 more coat", "3 more coats". */
export const moreCoats = (count: number): string => counts.moreCoats(count);

/** What the strength in a verdict comes from. */
export const strengthFromWords: Record<JudgedWall["strengthFrom"], string> = strengthFromTexts;
