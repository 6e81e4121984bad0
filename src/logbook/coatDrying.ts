import type { Coat as WetCoat } from "../physics/coat.ts";
import { readyWaterKgM2 } from "../physics/coat.ts";
import { readySpread } from "../physics/spread.ts";
import type { CoatTrack } from "./coatTrack.ts";
import { doseLeft, dryTo, redip, seenDry, seenWet, startTrack } from "./coatTrack.ts";
import type { DryEvidence } from "./dryEvidence.ts";
import { readEvidence } from "./dryEvidence.ts";
import type { Stay } from "./hanging.ts";
import { airAt, airBasis } from "./hanging.ts";
import type { Coat, DrynessSeen } from "./piece.ts";
import type { CoatDrying, NoReadyReason } from "./standing.ts";

const dayMs = 86_400_000;
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
  readonly ownFactor: number | null;
  readonly areaM2: number | undefined;
};

type Happening =
  | { readonly kind: "redip"; readonly at: number }
  | { readonly kind: "fire"; readonly at: number }
  | { readonly kind: "seen"; readonly at: number; readonly said: DryEvidence };

/**
 * How one coat dried, or will dry: the sum over the room's air, put right by whatever was seen on the way.
 * `leftKgM2` is what a next coat finds in it.
 */
export function dryCoat(of: CoatCase): { readonly drying: CoatDrying; readonly leftKgM2: number } {
  const { coat, wet, stays, judgedAt, isOuter, ownFactor } = of;
  const from = coat.dippedAt;
  const basis = airBasis(stays, { from, to: judgedAt });
  const spread = readySpread({ factor: ownFactor ?? 1, gapS: basis.longestGapMs / 1000 });
  const track = startTrack(wet, { at: from, spread });
  track.knowsAir = airAt(stays, from) !== null;
  const evidence = live(track, of);
  dryTo(track, stays, { to: judgedAt });
  const { waterKgM2, readyAt } = track.likely;
  const supplied = shownDose(track.dose);
  const left = readyAt === null ? doseLeft(track) : 0;
  const { condensed } = track;
  track.lastStep = isOuter ? null : track.lastStep;
  if (isOuter && judgedAt >= from) dryTo(track, stays, { to: judgedAt + forecastMs, stopWhenReady: true });
  const there = airAt(stays, judgedAt);
  const known = track.knowsAir || evidence !== null || readyAt !== null;
  const readyKgM2 = readyWaterKgM2(wet);
  const startKgM2 = track.coat.waterKgM2;
  const toGo = startKgM2 > readyKgM2 ? (waterKgM2 - readyKgM2) / (startKgM2 - readyKgM2) : 0;
  const lastAt = there && there.reading.at <= judgedAt ? there.reading.at : null;
  const drying: CoatDrying = {
    coat,
    targetDryness: wet.dryFraction,
    leftShare: known ? Math.min(1, Math.max(0, toGo)) : null,
    waterKgM2: known ? waterKgM2 : null,
    startKgM2,
    carriedKgM2: of.carriedKgM2,
    depthM: wet.depthM,
    readyAt: { early: track.early.readyAt, likely: track.likely.readyAt, late: track.late.readyAt },
    reason: reasonOf(track, of),
    basis: {
      ...basis,
      lastReadingAgeMs: lastAt === null ? null : judgedAt - lastAt,
      forecast: isOuter ? (there?.air.forecast ?? null) : null,
      ownFactor,
      air: there?.reading.air ?? null,
    },
    doseNeededGHM3: left === null ? null : supplied + shownDose(left),
    doseSuppliedGHM3: supplied,
    condensed,
    evidence,
    verdict: verdictOf(track, { judgedAt, known: there !== null || evidence?.says === "wet" }),
    curve: track.points.filter(({ at }) => at <= judgedAt + drawnMs),
  };
  const isDry = readyAt !== null || waterKgM2 <= readyWaterKgM2(track.coat);
  return { drying, leftKgM2: isDry || !known ? 0 : waterKgM2 };
}

const shownDose = (dose: number): number => (dose * 1000) / 3600;

/** Takes the coat through all that happened to it up to the judgement; gives the evidence that had the last word. */
function live(track: CoatTrack, of: CoatCase): CoatDrying["evidence"] {
  let evidence: CoatDrying["evidence"] = null;
  for (const happening of happeningsOf(of)) {
    dryTo(track, of.stays, { to: happening.at });
    switch (happening.kind) {
      case "redip":
        redip(track, of.dipKgM2);
        evidence = null;
        break;
      case "fire":
        seenDry(track, { at: happening.at, leftKgM2: 0 });
        break;
      case "seen": {
        const { said } = happening;
        evidence = { says: said.says, seen: said.seen };
        if (said.says === "dry") seenDry(track, { at: happening.at });
        else seenWet(track, said.wetShare);
        break;
      }
    }
  }
  return evidence;
}

function happeningsOf(of: CoatCase): readonly Happening[] {
  const { coat, stays, seen, fires, judgedAt, areaM2, wet, dipKgM2 } = of;
  const isIn = (at: number): boolean => at >= coat.dippedAt && at <= judgedAt;
  const redips = coat.redips.map(({ at }) => Math.max(at, coat.dippedAt)).filter(isIn);
  // Weighings on both sides of a re-dip don't compare, so each dip's observations are read by themselves.
  const dips = [-Infinity, ...redips, Infinity];
  const own = seen.filter(({ at }) => isIn(at));
  const evidence = dips.flatMap((from, i) =>
    readEvidence(
      own.filter(({ at }) => at >= from && at < (dips[i + 1] ?? from)),
      { stays, depthM: wet.depthM, waterKgM2: dipKgM2, areaM2 },
    ),
  );
  const all: readonly Happening[] = [
    ...redips.map((at) => ({ kind: "redip", at }) as const),
    ...fires.filter(isIn).map((at) => ({ kind: "fire", at }) as const),
    ...evidence.map((said) => ({ kind: "seen", at: said.seen.at, said }) as const),
  ];
  return all.toSorted((a, b) => a.at - b.at);
}

function verdictOf(
  { early, late }: CoatTrack,
  { judgedAt, known }: { judgedAt: number; known: boolean },
): CoatDrying["verdict"] {
  if (late.readyAt !== null && late.readyAt <= judgedAt) return "dry";
  if (!known) return "unknown";
  return early.readyAt !== null && early.readyAt <= judgedAt ? "maybe" : "wet";
}

function reasonOf({ likely, knowsAir, lastStep }: CoatTrack, { isOuter }: CoatCase): NoReadyReason | null {
  if (likely.readyAt !== null) return null;
  if (!knowsAir || (isOuter && lastStep === null)) return "no-readings";
  if (lastStep !== null && lastStep.says !== "drying") return lastStep.says;
  return isOuter ? "beyond-forecast" : null;
}
