import type { CoatDrying, Standing } from "../logbook/piece/standing.ts";
import type { Figure } from "./finding.ts";
import { figure } from "./finding.ts";
import { bestHeat, isEnough } from "./firings.ts";

/** The coats that were damp under the next one, and what that does to the strength the wall is counted with. */
export type HalvedStrength = {
  readonly damp: readonly CoatDrying[];
  readonly figures: Readonly<Record<"fullMPa" | "usedMPa", Figure>>;
};

/**
 * The wall counts with less than its whole strength because a coat went on over a damp one; null where it is not, where the
 * wall can't be judged, and where a poor firing is the reason, of which `fired-too-little` speaks.
 */
export function halvedStrength({ piece, wall, drying, runs }: Standing): HalvedStrength | null {
  const { judged } = wall;
  if (judged === null || judged.loadShare === 1) return null;
  const accepted = new Set(piece.coats.map(({ acceptedDamp }) => acceptedDamp?.coatId));
  const damp = drying
    .slice(0, -1)
    .filter(({ coat, verdict }) => verdict === "wet" || (verdict !== "dry" && accepted.has(coat.id)));
  const heat = bestHeat({ piece, runs });
  if (damp.length === 0 && heat !== null && !isEnough(heat)) return null;
  const share = judged.loadShare;
  return {
    damp,
    figures: {
      fullMPa: figure(judged.morMPa / share, "MPa"),
      usedMPa: figure(judged.morMPa, "MPa"),
    },
  };
}
