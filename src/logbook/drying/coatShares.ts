import { rhOverIce } from "../../physics/air/air.ts";
import { bagEvidence } from "../../physics/evidence/bagEvidence.ts";
import type { MovingAir } from "../../physics/air/film.ts";
import { resistanceEvidence } from "../../physics/evidence/resistanceEvidence.ts";
import { skinEvidence } from "../../physics/evidence/skinEvidence.ts";
import type { IndexedCoat } from "../../physics/evidence/surfaceEvidence.ts";
import { indexedCoat, judgeSurface, surfaceEvidence } from "../../physics/evidence/surfaceEvidence.ts";
import { airClasses } from "../../trade/airClasses.ts";
import type { CoatSpan, UsedObservation, UnusedObservation } from "./coatSpan.ts";
import { weightSays } from "./coatWeights.ts";
import type { Stay } from "../air/hanging.ts";
import { airAt } from "../air/hanging.ts";
import type { DrynessSeen } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import { speaksOf } from "./slowPlace.ts";

/**
 * Standard deviations of a thermometer on the shell, K: on its own, as a usual infrared one (from memory of data
 * sheets); and as a difference to a dry shell beside it, where its offset falls out.
 */
const absoluteK = 1;
const differenceK = 0.3;

/** A face this much beyond what drying can make of it, in standard deviations of the index, reads something else; judgement. */
const strayedSd = 3;
const leastIndexSd = 0.1;
/** No face is so much colder than a dry one beside it: air of 60 °C without a trace of water makes 38 K. */
const mostApartK = 45;

/** Reads every observation of a coat's span, oldest first. */
export function readObservations(span: CoatSpan): {
  readonly heard: readonly UsedObservation[];
  readonly unheard: readonly UnusedObservation[];
} {
  const pocketSM = span.stays.find(({ air }) => air !== null)?.air?.pocketSM ?? 0;
  const coat = indexedCoat(span.wet, pocketSM);
  const read = span.seen.flatMap((seen) => listen(seen, span, coat));
  return {
    heard: read.flatMap((one) => ("evidence" in one ? [one] : [])),
    unheard: read.flatMap((one) => ("why" in one ? [one] : [])),
  };
}

function listen(
  seen: DrynessSeen,
  span: CoatSpan,
  coat: IndexedCoat,
): readonly (UsedObservation | UnusedObservation)[] {
  const afterS = (seen.at - span.from) / 1000;
  switch (seen.method) {
    case "touch":
    case "colour": {
      const { method: source, verdict: saw } = seen;
      return [{ seen, said: { by: source, saw }, evidence: skinEvidence({ source, saw, afterS, coat }) }];
    }
    case "weight":
      return weightSays(seen, span);
    case "surface":
      return [surfaceSays(seen, span, coat)];
    case "bag": {
      const { rh: bagRh, roomRh, minutes } = seen;
      if (!within(ranges.rh, bagRh) || !within(ranges.rh, roomRh)) return [];
      const verdict = bagEvidence({ bagRh, roomRh, baggedS: minutes * 60, afterS, coat });
      if (verdict.kind === "refused") return [{ seen, why: verdict }];
      return [{ seen, said: { by: "bag", says: verdict.says }, evidence: verdict.evidence }];
    }
    case "resistance":
      return resistanceSays(seen, span, afterS);
  }
}

/** The air about the shell at a time, as the sums of heat want it; null where the room was not read. */
export function movingAirAt(stays: readonly Stay[], at: number): MovingAir | null {
  const there = airAt(stays, at);
  if (there === null) return null;
  const { airC, rh, air } = there.reading;
  return {
    tempC: airC,
    rh: rhOverIce({ tempC: airC, rh }),
    pressurePa: there.air.pressurePa,
    filmWM2K: airClasses[air].filmWM2K,
  };
}

function surfaceSays(
  seen: DrynessSeen & { readonly method: "surface" },
  { stays, from, places }: CoatSpan,
  coat: IndexedCoat,
): UsedObservation | UnusedObservation {
  const { surfaceC, dryShellC, place = "open" } = seen;
  const air = movingAirAt(stays, seen.at);
  if (air === null) return { seen, why: { code: "no-air" } };
  if (!within(ranges.surfaceC, surfaceC)) return { seen, why: { code: "out-of-range" } };
  const isBeside = within(ranges.surfaceC, dryShellC);
  if (isBeside && Math.abs(surfaceC - dryShellC) > mostApartK)
    return { seen, why: { code: "beyond-air", isWarmer: surfaceC > dryShellC } };
  const reading = isBeside
    ? ({ method: "difference", surfaceC, drySurfaceC: dryShellC, sensorK: differenceK } as const)
    : ({ method: "absolute", surfaceC, sensorK: absoluteK } as const);
  const verdict = judgeSurface(air, reading, coat);
  const speaks = speaksOf(place, places.named);
  const evidence = surfaceEvidence(verdict, { air, coat, afterS: (seen.at - from) / 1000, speaks });
  if (verdict.kind === "refused" || evidence === null)
    return { seen, why: verdict.kind === "refused" ? verdict : { code: "no-air" } };
  const { index, indexSd, endIndex, says, isSure } = verdict;
  const strayed = strayedSd * Math.max(indexSd, leastIndexSd);
  if (index < -strayed || index > 1 + strayed)
    return { seen, why: { code: "beyond-air", isWarmer: index > 1 } };
  const outerFaceOnly = speaks === "wet";
  return {
    seen,
    said: { by: "surface", index, indexSd, endIndex, says, isSure, place, outerFaceOnly },
    evidence,
  };
}

/** °C in which a film on sound contacts may be read. */
const filmC = { low: 0, high: 60 };

function resistanceSays(
  seen: DrynessSeen & { readonly method: "resistance" },
  { seen: all, stays, places }: CoatSpan,
  afterS: number,
): readonly (UsedObservation | UnusedObservation)[] {
  if (seen.reference === true) return [];
  const { place = "open" } = seen;
  // Only the same contacts make a ratio.
  const first = all.findLast(
    (one) =>
      one.method === "resistance" &&
      one.reference === true &&
      one.at <= seen.at &&
      (one.place ?? "open") === place,
  );
  if (first?.method !== "resistance") return [{ seen, why: { code: "no-reference" } }];
  const warmth = (one: typeof seen): number => one.shellC ?? airAt(stays, one.at)?.reading.airC ?? 20;
  const [firstC, tempC] = [warmth(first), warmth(seen)];
  if (![seen.ohm, first.ohm].every((ohm) => within(ranges.ohm, ohm)))
    return [{ seen, why: { code: "out-of-range" } }];
  if (!within(filmC, firstC) || !within(filmC, tempC)) return [{ seen, why: { code: "out-of-range" } }];
  const speaks = speaksOf(place, places.named);
  const verdict = resistanceEvidence({ firstOhm: first.ohm, firstC, ohm: seen.ohm, tempC, afterS, speaks });
  if (verdict.kind === "refused") return [{ seen, why: verdict }];
  const { ratio, waterShare, says, evidence } = verdict;
  return [{ seen, said: { by: "resistance", ratio, waterShare, says, place }, evidence }];
}
