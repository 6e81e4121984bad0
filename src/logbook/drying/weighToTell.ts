import { millisecondsInMinute as minuteMs, millisecondsInWeek as weekMs } from "date-fns/constants";
import { steadyLeastS, steadyMostRh, steadyTimes } from "../../physics/evidence/steadyMass.ts";
import type { CoatSpan } from "./coatSpan.ts";
import { chainOf, finestShare } from "./coatWeights.ts";
import { airAt } from "../air/hanging.ts";
import { wetLossAt } from "./weighPairs.ts";

/** When a second weighing of the coat can tell whether it is dry at the slowest place of the shell, and on what scale. */
export type WeighToTell =
  | {
      readonly missing: null;
      /** The weighing it is compared with, epoch ms; null: there is none yet, and the first is due now. */
      readonly firstAt: number | null;
      readonly nextAt: number;
      /** The scale's step, g. */
      readonly scaleG: number;
      /** A finer scale that would tell sooner, and when; null where none would. */
      readonly finerScaleG: number | null;
      readonly finerAt: number | null;
    }
  | {
      /**
       * "air": the room was not read. "damp-air": over 70 %. "area": neither weighed nor measured. "too-slow": not within
       * a week even on the finest scale.
       */
      readonly missing: "air" | "damp-air" | "area" | "too-slow";
    };

/** The scale of a shop that has weighed nothing of this coat, and those that are finer, g. */
const usualScaleG = 1;
const finerScalesG = [1, 0.1] as const;
/** A finer scale that saves less than this is not worth a word. */
const worthMs = 10 * minuteMs;

/** `now` is epoch ms. The room's air ahead is its forecast. */
export function weighToTell(span: CoatSpan, now: number): WeighToTell {
  const there = airAt(span.stays, now);
  if (there === null) return { missing: "air" };
  if (there.reading.rh > steadyMostRh) return { missing: "damp-air" };
  const chain = chainOf(span.seen, span.weights);
  const last = chain.drying.at(-1) ?? null;
  const massG = last?.massG ?? chain.stuccoed?.massG ?? span.weights.dryG;
  if (massG === null && span.weights.areaM2 === null) return { missing: "area" };
  const from = last?.at ?? now;
  const scaleG = last === null && chain.stuccoed === null ? usualScaleG : chain.balanceG;
  const tellsAt = (stepG: number): number | null => {
    const of = { place: span.places.slowest, massG: massG ?? 0, from, to: from + weekMs };
    const at = wetLossAt(span, { ...of, enoughG: steadyTimes * stepG });
    return at === null ? null : Math.max(at, from + steadyLeastS * 1000);
  };
  const finer = finerScalesG.find((stepG) => stepG < scaleG && stepG >= finestShare * (massG ?? 0)) ?? null;
  const [nextAt, finerAt] = [tellsAt(scaleG), finer === null ? null : tellsAt(finer)];
  const firstAt = last?.at ?? null;
  if (nextAt === null) {
    if (finer === null || finerAt === null) return { missing: "too-slow" };
    return { missing: null, firstAt, nextAt: finerAt, scaleG: finer, finerScaleG: null, finerAt: null };
  }
  const isWorth = finerAt !== null && finerAt < nextAt - worthMs;
  return {
    missing: null,
    firstAt,
    nextAt,
    scaleG,
    finerScaleG: isWorth ? finer : null,
    finerAt: isWorth ? finerAt : null,
  };
}
