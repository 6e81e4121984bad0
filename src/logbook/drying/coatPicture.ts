import { millisecondsInHour as hourMs } from "date-fns/constants";
import { factorCurves } from "../../physics/evidence/factorCurves.ts";
import { readyWaterKgM2 } from "../../physics/drying/coat.ts";
import type { CoatTrack } from "../../physics/drying/coatTrack.ts";
import type { NextWeighing } from "../../physics/evidence/nextWeighing.ts";
import { nextWeighing } from "../../physics/evidence/nextWeighing.ts";
import { indexedCoat } from "../../physics/evidence/surfaceEvidence.ts";
import type { WaterBand } from "../../physics/evidence/waterPosterior.ts";
import { beliefAfter, waterPosterior } from "../../physics/evidence/waterPosterior.ts";
import { stepsSince, type SpanBelief } from "./coatBelief.ts";
import type { CoatCase } from "./coatDrying.ts";
import { coatUpTo, groundsOf, spanOf } from "./coatDrying.ts";
import type { Said } from "./coatSaid.ts";
import type { CoatSpan } from "./coatSpan.ts";
import type { Watch } from "./coatTrack.ts";
import { dryTo } from "./coatTrack.ts";
import { chainOf, waterOf } from "./coatWeights.ts";
import { airAt } from "../air/hanging.ts";
import type { Piece } from "../piece/piece.ts";
import { coatCaseOf, type DryingFrom } from "./shellDrying.ts";

/** How far ahead the picture looks. */
const aheadMs = 72 * hourMs;
/** As many points as a screen can show. */
const mostPoints = 200;

/** Water at a time, kg/m²: one in ten is drier than `low`, one in ten wetter than `high`. */
export type PicturePoint = {
  readonly at: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
};

/** A coat's whole way as a picture: water against time with its band, what was seen, and the air beneath. */
export type CoatPicture = {
  readonly from: number;
  /** Up to here it has been; from here it is a forecast. */
  readonly judgedAt: number;
  readonly isOuter: boolean;
  readonly startKgM2: number;
  readonly readyKgM2: number;
  readonly points: readonly PicturePoint[];
  readonly air: readonly { readonly at: number; readonly airC: number; readonly rh: number }[];
  /** What each observation does to the belief at the time of judgement; shares of the water it went on with. */
  readonly pulls: readonly Pulled[];
  /** The belief at that time by the sum alone, and with all that was seen. */
  readonly model: WaterBand | null;
  readonly all: WaterBand | null;
  /** Null once it is dry, and where the air is not known. */
  readonly next: (NextWeighing & { readonly from: number }) | null;
};

export type Pulled = {
  readonly seenId: string;
  readonly at: number;
  readonly said: Said;
  /** What would be believed without this one. */
  readonly without: WaterBand;
  readonly apart: number;
};

/** Null when the piece has no such coat. Costs some 10 to 30 ms: for the page of one coat, not for a rack. */
export function coatPicture(piece: Piece, coatId: string, from: DryingFrom): CoatPicture | null {
  const of = coatCaseOf(piece, coatId, from);
  if (of === null) return null;
  const { judgedAt, isOuter, wet, coat } = of;
  const { spread } = groundsOf(of);
  const points = gather(of.coat.dippedAt);
  const { track, belief } = coatUpTo(judgedAt, of, { spread, watch: points.watch });
  points.watch(judgedAt, track);
  const span = spanOf(of, { span: coat.redips.length, wet: track.coat });
  const known = reckon(span, { of, belief, isReady: isReady(track, judgedAt) });
  const startKgM2 = track.coat.waterKgM2;
  if (isOuter) dryTo(track, of.stays, { to: judgedAt + aheadMs, stopWhenReady: true, watch: points.watch });
  const shown = thinned(points.all);
  return {
    from: coat.dippedAt,
    judgedAt,
    isOuter,
    startKgM2,
    readyKgM2: readyWaterKgM2(wet),
    points: [{ at: coat.dippedAt, low: wet.waterKgM2, median: wet.waterKgM2, high: wet.waterKgM2 }, ...shown],
    air: airOf(of, shown.at(-1)?.at ?? judgedAt),
    pulls: known?.pulls ?? [],
    model: known?.model ?? null,
    all: known?.all ?? null,
    next: known?.next ?? null,
  };
}

const isReady = ({ late }: CoatTrack, at: number): boolean => late.readyAt !== null && late.readyAt <= at;

function gather(from: number): {
  readonly all: PicturePoint[];
  readonly watch: Watch;
} {
  const all: PicturePoint[] = [];
  return {
    all,
    watch: (at, { early, likely, late }) => {
      if (at < from) return;
      all.push({ at, low: early.waterKgM2, median: likely.waterKgM2, high: late.waterKgM2 });
    },
  };
}

/** Every so many of them, and wherever the water jumps, as at a further dip. */
function thinned(points: readonly PicturePoint[]): readonly PicturePoint[] {
  const every = Math.ceil(points.length / mostPoints);
  return points.filter(
    ({ at }, i) =>
      i % every === 0 || i === points.length - 1 || points[i + 1]?.at === at || points[i - 1]?.at === at,
  );
}

function reckon(
  span: CoatSpan,
  { of, belief, isReady: isDry }: { of: CoatCase; belief: SpanBelief | null; isReady: boolean },
): Pick<CoatPicture, "pulls" | "model" | "all" | "next"> | null {
  const horizonMs = of.isOuter && !isDry ? aheadMs / 2 : 0;
  const until = of.judgedAt + horizonMs;
  const steps = stepsSince(span, until);
  if (steps === null) return null;
  const heard = belief?.heard ?? [];
  const evidence = heard.map((one) => one.evidence);
  const nowS = (of.judgedAt - span.from) / 1000;
  const aheadS = Array.from({ length: 24 }, (_, i) => nowS + (horizonMs / 1000) * ((i + 1) / 24) ** 2);
  const seenS = evidence.flatMap(({ afterS, sinceS }) => (sinceS === null ? [afterS] : [afterS, sinceS]));
  const timesS = [nowS, ...seenS, ...(horizonMs > 0 ? aheadS : [])];
  const curves = factorCurves({ coat: span.wet, steps, timesS, spread: groundsOf(of).spread });
  const { readyShare } = indexedCoat(span.wet, 0);
  const all = waterPosterior({ curves, evidence, nowS, readyShare });
  const chain = chainOf(span.seen, span.weights);
  const waterG = waterOf(chain, span.weights);
  const balanceShare = waterG === null ? usualBalanceShare : Math.min(10, chain.balanceG / waterG);
  const next =
    horizonMs > 0
      ? nextWeighing({ curves, belief: beliefAfter(curves, evidence), nowS, balanceShare })
      : null;
  return {
    pulls: all.pulls.flatMap(({ without, apart }, i) => {
      const one = heard[i];
      return one === undefined
        ? []
        : [{ seenId: one.seen.id, at: one.seen.at, said: one.said, without, apart }];
    }),
    model: all.model,
    all,
    next: next && { ...next, from: span.from },
  };
}

/** A balance that tells a twentieth of the coat's water, where that is not known in grams. */
const usualBalanceShare = 1 / 20;

/** The room's readings about the coat, with the one that held when it was dipped, and the last one held to the end. */
function airOf({ stays, coat, judgedAt }: CoatCase, to: number): CoatPicture["air"] {
  const air: { at: number; airC: number; rh: number }[] = [];
  const held = (at: number): void => {
    const there = airAt(stays, at)?.reading;
    if (there !== undefined) air.push({ at, airC: there.airC, rh: there.rh });
  };
  held(coat.dippedAt);
  for (const stay of stays) {
    if (stay.air === null || stay.to < coat.dippedAt || stay.from > to) continue;
    for (const { at, airC, rh } of stay.air.readings)
      if (at > Math.max(coat.dippedAt, stay.from) && at <= Math.min(to, stay.to)) air.push({ at, airC, rh });
  }
  if (judgedAt > (air.at(-1)?.at ?? Infinity)) held(judgedAt);
  return air;
}
