import { millisecondsInDay as dayMs } from "date-fns/constants";
import { shareToGo } from "./waterToGo.ts";
import type { WetLayer as WetCoat } from "../../physics/drying/coat.ts";
import { readyWaterKgM2 } from "../../physics/drying/coat.ts";
import type { CoatTrack } from "../../physics/drying/coatTrack.ts";
import { dosesOf, startTrack, whyNotReady } from "../../physics/drying/coatTrack.ts";
import type { ReadySpread } from "../../physics/stats/spread.ts";
import { tenthQuantile } from "../../physics/stats/normal.ts";
import { readySpread } from "../../physics/stats/spread.ts";
import { ordinaryRoomTimes } from "../../trade/ordinaryRoom.ts";
import type { SpanBelief } from "./coatBelief.ts";
import { spanBelief, stepsSince } from "./coatBelief.ts";
import type { CoatSpan, CoatWeights } from "./coatSpan.ts";
import { takeSaid } from "./coatSeen.ts";
import type { Watch } from "./coatTrack.ts";
import { copyTrack, dryTo, redip, seenDry, takeSpread } from "./coatTrack.ts";
import { readObservations } from "./coatShares.ts";
import { beliefShown, checksShown, verdictOf } from "./coatVerdict.ts";
import type { DryEvidence } from "./dryEvidence.ts";
import { readEvidence } from "./dryEvidence.ts";
import type { CoatFactor } from "./dryingFactor.ts";
import type { DryingMemory } from "./dryingMemory.ts";
import type { AirBasis, Stay } from "../air/hanging.ts";
import { airAt, airBasis } from "../air/hanging.ts";
import type { Coat, DrynessSeen } from "../piece/piece.ts";
import type { SlowPlaces } from "./slowPlace.ts";
import type { CoatDrying, NoReadyReason } from "../piece/standing.ts";
import { weighToTell } from "./weighToTell.ts";

const forecastMs = 14 * dayMs;
/** How far ahead the picture shows water; the forecast itself goes further. */
const drawnMs = 3 * dayMs;

/** One coat as the sum meets it. `judgedAt` is the next dip, or now for the outer one. */
export type CoatCase = {
  readonly coat: Coat;
  readonly wet: WetCoat;
  /** Water of one dip of this coat alone, kg/m². */
  readonly dipKgM2: number;
  readonly carriedKgM2: number;
  readonly stays: readonly Stay[];
  readonly seen: readonly DrynessSeen[];
  /** When fire dried it through. */
  readonly fires: readonly number[];
  readonly judgedAt: number;
  readonly isOuter: boolean;
  readonly factor: CoatFactor;
  readonly weights: CoatWeights;
  readonly places: SlowPlaces;
  /** What is kept of this coat, and what it is known by there; null where nothing is. */
  readonly memory: (DryingMemory & { readonly id: string }) | null;
};

type Happening =
  | { readonly kind: "redip"; readonly at: number; readonly span: number }
  | { readonly kind: "fire"; readonly at: number }
  | { readonly kind: "seen"; readonly at: number; readonly said: DryEvidence };

/** A coat on its way, at a time that lies behind it for good: nothing in it may be changed. */
export type CoatSoFar = {
  readonly at: number;
  readonly track: CoatTrack;
  readonly evidence: CoatDrying["evidence"];
  readonly belief: SpanBelief | null;
};

/** The air and the guesses a coat is judged by. */
export type CoatGrounds = { readonly basis: AirBasis; readonly spread: ReadySpread };

/** Spread of ln t in a room that was never read. */
const ordinarySigma = Math.log(ordinaryRoomTimes.value) / tenthQuantile;

export function groundsOf({ coat, stays, judgedAt, factor }: CoatCase): CoatGrounds {
  const basis = airBasis(stays, { from: coat.dippedAt, to: judgedAt });
  const { value, sigmaLn } = factor;
  const read = readySpread({ factor: value, sigmaLn, gapS: basis.longestGapMs / 1000 });
  // A room read long ago is no less known than one never read; one never read is no better known than this.
  const most = Math.max(sigmaLn, ordinarySigma);
  const isOrdinary = basis.assumed || read.sigmaLn > most;
  return { basis, spread: isOrdinary ? readySpread({ factor: value, sigmaLn: most }) : read };
}

/** Takes a coat from its dip, or from `soFar`, to a time not after its judgement. */
export function coatUpTo(
  at: number,
  of: CoatCase,
  {
    spread,
    soFar = null,
    watch,
  }: { spread: ReadySpread; soFar?: CoatSoFar | null; watch?: Watch | undefined },
): CoatSoFar {
  const from = of.coat.dippedAt;
  // After a further dip of which nothing was seen there is none: what was seen before it no longer counts.
  const belief = soFar ? soFar.belief : beliefIn(of, { span: 0, wet: of.wet, spread });
  const track = soFar
    ? copyTrack(soFar.track)
    : startTrack(of.wet, { at: from, spread: belief?.spread ?? spread });
  const happenings = happeningsOf(of).filter(
    (happening) => happening.at <= at && (soFar === null || happening.at > soFar.at),
  );
  const last = { evidence: soFar?.evidence ?? null, belief };
  const lived = live(track, { of, happenings, last, spread, watch });
  dryTo(track, of.stays, { to: at, watch });
  return { at, track, ...lived };
}

/**
 * How one coat dried, or will dry: the sum over the room's air, put right by whatever was seen on the way.
 * `leftKgM2` is what a next coat finds in it. `soFar` is the same coat on its way: only the rest is reckoned.
 */
export function dryCoat(
  of: CoatCase,
  { basis, spread }: CoatGrounds = groundsOf(of),
  soFar: CoatSoFar | null = null,
): { readonly drying: CoatDrying; readonly leftKgM2: number } {
  const { coat, wet, stays, judgedAt, isOuter, factor } = of;
  const from = coat.dippedAt;
  const { track, evidence, belief } = coatUpTo(judgedAt, of, { spread, soFar });
  const band = { low: track.early.waterKgM2, median: track.likely.waterKgM2, high: track.late.waterKgM2 };
  const { waterKgM2, readyAt } = track.likely;
  const { suppliedGHM3, neededGHM3 } = dosesOf(track);
  const { condensed } = track;
  track.lastStep = isOuter ? null : track.lastStep;
  const there = airAt(stays, judgedAt);
  // As far ahead of the last reading, whatever the clock says: time alone must not bring a time forth.
  const aheadFrom = Math.min(judgedAt, Math.max(from, there?.reading.at ?? from));
  if (isOuter && judgedAt >= from) dryTo(track, stays, { to: aheadFrom + forecastMs, stopWhenReady: true });
  const readyKgM2 = readyWaterKgM2(wet);
  const startKgM2 = track.coat.waterKgM2;
  const way = { startKgM2, readyKgM2 };
  const lastAt = there && there.reading.at <= judgedAt ? there.reading.at : null;
  const drying: CoatDrying = {
    coat,
    targetDryness: wet.dryFraction,
    leftShare: shareToGo(waterKgM2, way),
    leftLow: shareToGo(band.low, way),
    leftHigh: shareToGo(band.high, way),
    waterKgM2,
    startKgM2,
    readyKgM2,
    carriedKgM2: of.carriedKgM2,
    depthM: wet.depthM,
    readyAt: { early: track.early.readyAt, likely: track.likely.readyAt, late: track.late.readyAt },
    reason: reasonOf(track, of),
    basis: {
      ...basis,
      lastReadingAgeMs: lastAt === null ? null : judgedAt - lastAt,
      forecast: isOuter ? (there?.air.forecast ?? null) : null,
      ownFactor: factor.from === "own" ? factor.value : null,
      learned: factor.from === "learned" ? factor.learned : null,
      air: there?.reading.air ?? null,
    },
    doseNeededGHM3: neededGHM3,
    doseSuppliedGHM3: suppliedGHM3,
    condensed,
    frozen: track.frozen,
    evidence,
    toTell: isOuter && judgedAt >= from ? toTellOf(of, { track, evidence }) : null,
    belief: belief && beliefShown(belief, { band, track, judgedAt, from: startOf(of) }),
    saidAlone: belief === null ? saidAloneOf(of, track.coat) : null,
    verdict: verdictOf(track, { judgedAt, evidence }),
    curve: track.points.filter(({ at }) => at <= judgedAt + drawnMs),
  };
  const isDry = readyAt !== null || waterKgM2 <= readyWaterKgM2(track.coat);
  return { drying, leftKgM2: isDry ? 0 : waterKgM2 };
}

/** Nothing more is to be weighed once the whole shell was measured dry. */
function toTellOf(
  of: CoatCase,
  { track, evidence }: { track: CoatTrack; evidence: CoatDrying["evidence"] },
): CoatDrying["toTell"] {
  if (evidence?.says === "dry" && evidence.whole) return null;
  return weighToTell(spanOf(of, { span: spanStarts(of).length - 1, wet: track.coat }), of.judgedAt);
}

type Lived = { readonly evidence: CoatDrying["evidence"]; readonly belief: SpanBelief | null };

/** Takes the coat through what happened to it, in order; gives the evidence that had the last word. */
function live(
  track: CoatTrack,
  from: {
    readonly of: CoatCase;
    readonly happenings: readonly Happening[];
    readonly last: Lived;
    readonly spread: ReadySpread;
    readonly watch: Watch | undefined;
  },
): Lived {
  const { of, happenings, spread, watch } = from;
  let { evidence, belief } = from.last;
  for (const happening of happenings) {
    const { at } = happening;
    dryTo(track, of.stays, { to: at, watch });
    switch (happening.kind) {
      case "redip":
        redip(track, of.dipKgM2);
        evidence = null;
        belief = beliefIn(of, { span: happening.span, wet: track.coat, spread });
        takeSpread(track, belief?.spread ?? spread);
        break;
      case "fire":
        seenDry(track, { at, leftKgM2: 0 });
        break;
      case "seen":
        evidence = takeSaid(track, happening.said, {
          before: evidence,
          stepsTo: (to) => stepsSince({ stays: of.stays, from: startBefore(of, to) }, to),
        });
        break;
    }
    watch?.(at, track);
  }
  return { evidence, belief };
}

/** When each span of a coat began: its dip, and every further one. */
function spanStarts({ coat, judgedAt }: CoatCase): readonly number[] {
  const redips = coat.redips.map(({ at }) => Math.max(at, coat.dippedAt)).filter((at) => at <= judgedAt);
  return [coat.dippedAt, ...redips.toSorted((a, b) => a - b)];
}

function saidAloneOf(of: CoatCase, wet: WetCoat): CoatDrying["saidAlone"] {
  const { seen, ...span } = spanOf(of, { span: spanStarts(of).length - 1, wet });
  const before = seen.filter(isBeforeFire(of, span.from));
  if (before.length === 0) return null;
  const { heard, unheard } = readObservations({ ...span, seen: before });
  // What a hand or an eye says is plain: it is told as evidence.
  const others = heard.filter(({ said }) => said.by !== "touch" && said.by !== "colour");
  return others.length + unheard.length === 0 ? null : checksShown({ heard: others, unheard });
}

/** What is seen after a fire is the fire's doing. */
function isBeforeFire({ fires }: CoatCase, from: number): (seen: DrynessSeen) => boolean {
  const fireAt = Math.min(...fires.filter((at) => at >= from));
  return ({ at }) => at < fireAt;
}

/** When the slurry that is on at a time went on. */
const startBefore = (of: CoatCase, to: number): number =>
  spanStarts(of).findLast((at) => at <= to) ?? of.coat.dippedAt;

const startOf = (of: CoatCase): number => spanStarts(of).at(-1) ?? of.coat.dippedAt;

/** A span of the coat with what was seen in it: weighings on both sides of a further dip don't compare. */
export function spanOf(of: CoatCase, { span, wet }: { span: number; wet: WetCoat }): CoatSpan {
  const starts = spanStarts(of);
  const from = starts[span] ?? of.coat.dippedAt;
  const to = starts[span + 1] ?? Infinity;
  const seen = of.seen.filter(({ at }) => at >= from && at < to && at <= of.judgedAt);
  // Three weighings hold for the first dip alone: before a further one it was not weighed dry.
  const weights = span === 0 ? of.weights : { ...of.weights, dryG: null };
  const slowFactor = readySpread({ factor: of.factor.value, sigmaLn: of.factor.sigmaLn }).late;
  return { wet, from, stays: of.stays, seen, weights, places: of.places, slowFactor };
}

function beliefIn(
  of: CoatCase,
  { span, wet, spread }: { span: number; wet: WetCoat; spread: ReadySpread },
): SpanBelief | null {
  const whole = spanOf(of, { span, wet });
  const seen = whole.seen.filter(isBeforeFire(of, whole.from));
  const id = `${of.memory?.id ?? ""} ${span}`;
  return spanBelief({ ...whole, seen }, { prior: spread, id, memory: of.memory });
}

function happeningsOf(of: CoatCase): readonly Happening[] {
  const { fires, judgedAt, coat } = of;
  const isIn = (at: number): boolean => at >= coat.dippedAt && at <= judgedAt;
  const starts = spanStarts(of);
  const evidence = starts.flatMap((_, span) => readEvidence(spanOf(of, { span, wet: of.wet })));
  const all: readonly Happening[] = [
    ...starts.slice(1).map((at, i) => ({ kind: "redip", at, span: i + 1 }) as const),
    ...fires.filter(isIn).map((at) => ({ kind: "fire", at }) as const),
    ...evidence.map((said) => ({ kind: "seen", at: said.seen.at, said }) as const),
  ];
  return all.toSorted((a, b) => a.at - b.at);
}

function reasonOf(track: CoatTrack, { isOuter }: CoatCase): NoReadyReason | null {
  const reason = whyNotReady(track);
  if (reason !== "history-ends") return reason;
  return isOuter ? "beyond-forecast" : null;
}
