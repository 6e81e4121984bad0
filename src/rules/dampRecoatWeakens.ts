import type { Standing } from "../logbook/standing.ts";
import { practice } from "../trade/practice.ts";
import { figure } from "./finding.ts";
import { bestHeat, isEnough } from "./firings.ts";
import type { FindingOf } from "./variants.ts";

/**
 * The wall is reckoned at half its strength because a coat went on over a damp one. Where it still carries the
 * head so, that is only told. Where the wall can't be judged, `cannot-judge-wall` speaks.
 */
export function dampRecoatWeakens({
  piece,
  wall,
  drying,
}: Standing): readonly FindingOf<"damp-recoat-weakens">[] {
  const { judged } = wall;
  if (judged === null || !judged.morHalved) return [];
  const accepted = new Set(piece.coats.map(({ acceptedDamp }) => acceptedDamp?.coatId));
  const damp = drying
    .slice(0, -1)
    .filter(
      ({ coat, verdict, basis }) =>
        verdict === "wet" || (verdict !== "dry" && !basis.assumed && accepted.has(coat.id)),
    );
  const heat = bestHeat(piece);
  // Strength is also halved for a poor firing, of which `fired-too-little` speaks.
  if (damp.length === 0 && heat !== null && !isEnough(heat)) return [];
  const share = practice.weakShare.value;
  const carries = judged.band === "carries";
  return [
    {
      rule: "damp-recoat-weakens",
      variant: carries ? "carries" : "short",
      level: carries ? "note" : "watch",
      figures: {
        coats: figure(damp.length, "count"),
        fullMPa: figure(judged.morMPa / share, "MPa"),
        usedMPa: figure(judged.morMPa, "MPa"),
        fullSafety: figure(judged.safety / share, "factor"),
        usedSafety: figure(judged.safety, "factor"),
      },
      texts: {},
      entries: damp.map(({ coat }) => coat.id),
      source: practice.weakShare.source,
    },
  ];
}
