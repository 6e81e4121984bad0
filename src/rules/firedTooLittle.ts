import type { Phase } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { practice } from "../trade/practice.ts";
import { figure } from "./finding.ts";
import type { Heat } from "./firings.ts";
import { bestHeat, isEnough } from "./firings.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"fired-too-little">;

const firedPhases: readonly Phase[] = ["fired", "preheated", "poured", "knocked-out", "finished"];

/** A shell fired too cool or too short has half the strength or less; one the log has no firing of can't be judged. */
export function firedTooLittle({ piece, runs }: Pick<Standing, "piece" | "runs">): readonly Found[] {
  if (!firedPhases.includes(piece.phase)) return [];
  const heat = bestHeat({ piece, runs });
  if (heat === null) return [finding(heat, { variant: "not-logged", level: "watch", entries: [] })];
  if (isEnough(heat)) return [];
  if (heat.peakC < practice.bondC.value)
    return [finding(heat, { variant: "not-bonded", level: "hold", entries: heat.entries })];
  const variant = heat.peakC < practice.firedC.value ? "cool" : "short";
  return [finding(heat, { variant, level: "watch", entries: heat.entries })];
}

function finding(heat: Heat | null, said: Pick<Found, "variant" | "level" | "entries">): Found {
  return {
    rule: "fired-too-little",
    ...said,
    figures: {
      peakC: figure(heat?.peakC ?? null, "C"),
      holdMin: figure(heat?.holdMin ?? null, "min"),
      limitC: figure(practice.firedC.value, "C"),
      limitMin: figure(practice.firedMin.value, "min"),
    },
    texts: {},
    source: practice.firedC.source,
  };
}
