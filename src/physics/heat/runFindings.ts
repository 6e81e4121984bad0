import type { FiringLimits, RateLimit } from "./firingLimits.ts";
import { speaksOn } from "./firingRamps.ts";
import type { ReasonCode, Segment } from "./firingSegments.ts";
import { requireEveryFigure, requireMoment, requireWhole, requireWithin } from "../stats/range.ts";
import type { KilnReading, Ticked } from "./runPosition.ts";
import { hourMs, minuteMs } from "../stats/time.ts";

export type RunFinding = {
  readonly code:
    "too-fast" | "hold-short" | "drain-missed" | "vents-unticked" | "tray-in-too-hot" | "over-kiln";
  readonly level: "hold" | "watch";
  readonly limit: ReasonCode | null;
  /** When it showed, epoch ms: the reading it rests on. */
  readonly at: number;
  readonly figures: Readonly<Record<string, number>>;
};

/** Readings are told apart over at least this rise, K, and believed to half of `noiseK`: judgement. */
const leastRiseK = 20;
const noiseK = 6;
/** A tenth faster is a wobble of the hand and the clock. */
const slack = 1.1;

type Watched = {
  readonly segments: readonly Segment[];
  readonly limits: FiringLimits;
  /** In time. */
  readonly readings: readonly KilnReading[];
  readonly ticked: readonly Ticked[];
  /** The run's start, taken for a reading where time is counted: what came before the first one counts too. */
  readonly start: KilnReading;
};

/**
 * What a run did to the shell, said only where no course between the readings could excuse it. Where the shell
 * goes into a hot kiln nothing concerns it before it was ticked as put in.
 */
export function runFindings(run: Watched): readonly RunFinding[] {
  const { limits, readings } = run;
  requireEveryFigure("limits", limits);
  for (const { rateKPerH } of limits.rates)
    requireWithin("rateKPerH", rateKPerH, { low: 1e-3, high: 1e15, unit: "K/h" });
  for (const { at, kilnC } of [...readings, run.start]) {
    requireMoment("at of a reading", at);
    requireWithin("kilnC", kilnC, { low: -273, high: 4000, unit: "°C" });
  }
  for (const { at, segment } of run.ticked) {
    requireMoment("at of a tick", at);
    requireWhole("segment", segment, { low: 0, high: 1e6 });
  }
  const loaded = sinceLoaded(run);
  const counted = loaded === null ? [] : [loaded.start, ...loaded.readings];
  return [
    ...tooFast(loaded?.readings ?? [], limits),
    ...steamShort(counted, limits),
    ...drainMissed(counted, run),
    ...finishShort(counted, limits),
    ...trayTooHot(readings, run),
    ...overKiln(readings, limits),
  ];
}

/** Null while nothing is in the kiln. A hot load is taken to have met a hot kiln, whatever was read first after it. */
function sinceLoaded({
  limits,
  readings,
  start,
  ...of
}: Watched): Pick<Watched, "readings" | "start"> | null {
  if (!limits.loadsHot) return { readings, start };
  const at = tickOf("load-hot", of);
  const since = readings.filter((reading) => at !== null && reading.at >= at);
  const [first] = since;
  return at === null || first === undefined
    ? null
    : { readings: since, start: { at, kilnC: Math.max(first.kilnC, limits.drain?.fromC ?? 0) } };
}

function tickOf(
  code: string,
  { segments, ticked }: { segments: readonly Segment[]; ticked: readonly Ticked[] },
): number | null {
  const done = ticked.find(({ segment }) => {
    const part = segments[segment];
    return part?.kind === "instruction" && part.code === code;
  });
  return done?.at ?? null;
}

/** The worst passing of each limit: a stretch between two readings taken in less than the limits allow in all. */
function tooFast(readings: readonly KilnReading[], { rates }: FiringLimits): readonly RunFinding[] {
  const worst = new Map<ReasonCode, RunFinding>();
  for (const [i, from] of readings.entries()) {
    const to = readings.slice(i + 1).find(({ kilnC }) => Math.abs(kilnC - from.kilnC) >= leastRiseK);
    if (to === undefined) continue;
    const trim = (Math.sign(to.kilnC - from.kilnC) * noiseK) / 2;
    const path = { fromC: from.kilnC + trim, toC: to.kilnC - trim };
    const tookH = (to.at - from.at) / hourMs;
    for (const limit of rates) {
      const neededH = hoursWithin(limit, path);
      if (neededH === 0 || tookH * slack >= neededH) continue;
      // Two readings of one minute tell no rate: the minute is taken for their time.
      const saidH = Math.max(tookH, 1 / 60);
      const rateKPerH = (neededH * limit.rateKPerH) / saidH;
      const before = worst.get(limit.code)?.figures["rateKPerH"] ?? 0;
      if (rateKPerH <= before) continue;
      worst.set(limit.code, {
        code: "too-fast",
        level: "hold",
        limit: limit.code,
        at: to.at,
        figures: {
          rateKPerH,
          limitKPerH: limit.rateKPerH,
          timesLimit: neededH / saidH,
          fromC: limit.fromC,
          toC: limit.toC,
        },
      });
    }
  }
  return [...worst.values()];
}

/** Hours a limit asks for its share of a path. */
function hoursWithin(limit: RateLimit, path: { fromC: number; toC: number }): number {
  if (path.fromC === path.toC || !speaksOn(limit, path)) return 0;
  const low = Math.max(limit.fromC, Math.min(path.fromC, path.toC));
  const high = Math.min(limit.toC, Math.max(path.fromC, path.toC));
  return (high - low) / limit.rateKPerH;
}

/** The most minutes the kiln can have been within a band: every stretch between readings that touches it. */
function mostMinutes(
  readings: readonly KilnReading[],
  { lowC, highC }: { lowC: number; highC: number },
): number {
  return readings.reduce((sum, { at, kilnC }, i) => {
    const before = readings[i - 1];
    if (before === undefined) return 0;
    const touches = Math.max(kilnC, before.kilnC) >= lowC && Math.min(kilnC, before.kilnC) <= highC;
    return touches ? sum + (at - before.at) / minuteMs : sum;
  }, 0);
}

/** The reading at which the kiln is surely past a temperature, and those up to it. */
function upTo(readings: readonly KilnReading[], pastC: number): readonly KilnReading[] | null {
  const past = readings.findIndex(({ kilnC }) => kilnC > pastC);
  return past === -1 ? null : readings.slice(0, past + 1);
}

function steamShort(readings: readonly KilnReading[], { steamHold }: FiringLimits): readonly RunFinding[] {
  if (steamHold === null) return [];
  const { fromC, toC, minutes } = steamHold;
  const seen = upTo(readings, toC + noiseK);
  const mostMin = mostMinutes(seen ?? [], { lowC: fromC - noiseK, highC: toC + noiseK });
  if (seen === null || mostMin >= minutes / slack) return [];
  const at = seen.at(-1)?.at ?? 0;
  return [
    {
      code: "hold-short",
      level: "hold",
      limit: "steam",
      at,
      figures: { heldMin: mostMin, neededMin: minutes, fromC, toC },
    },
  ];
}

function drainMissed(
  readings: readonly KilnReading[],
  {
    segments,
    limits,
    ticked,
  }: { segments: readonly Segment[]; limits: FiringLimits; ticked: readonly Ticked[] },
): readonly RunFinding[] {
  const { drain, pattern, loadsHot } = limits;
  if (pattern === null) return [];
  const found: RunFinding[] = [];
  const smoking = loadsHot ? readings.slice(0, 1) : upTo(readings, pattern.burnFromC + noiseK);
  const smokesAt = smoking?.at(-1)?.at ?? null;
  const figures = { fromC: pattern.burnFromC, toC: pattern.burnToC };
  if (smokesAt !== null) {
    const openedAt = tickOf("vents-open", { segments, ticked });
    if (openedAt === null || openedAt > smokesAt)
      found.push({ code: "vents-unticked", level: "watch", limit: "decomposition", at: smokesAt, figures });
  }
  if (drain === null || smokesAt === null) return found;
  const { fromC, toC, minutes } = drain;
  const seen = loadsHot ? readings : (smoking ?? []);
  const heldMin = mostMinutes(seen, { lowC: fromC - noiseK, highC: toC + noiseK });
  // A hot load drains while the kiln is only read later: too little is known until the drain's time is over.
  const isOver = !loadsHot || (readings.at(-1)?.at ?? 0) - smokesAt >= minutes * minuteMs;
  if (isOver && heldMin < minutes / slack)
    found.push({
      code: "drain-missed",
      level: pattern.isWax ? "hold" : "watch",
      limit: "drain-window",
      at: seen.at(-1)?.at ?? smokesAt,
      figures: { heldMin, neededMin: minutes, fromC, toC },
    });
  return found;
}

/** Known short only once the kiln has surely come down again. */
function finishShort(readings: readonly KilnReading[], { finish }: FiringLimits): readonly RunFinding[] {
  if (finish === null) return [];
  const { atLeastC, minutes, code } = finish;
  const reached = readings.findLastIndex(({ kilnC }) => kilnC >= atLeastC - noiseK);
  const after = readings.slice(reached + 1).find(({ kilnC }) => kilnC < atLeastC - leastRiseK * 2);
  const heldMin = mostMinutes(readings, { lowC: atLeastC - noiseK, highC: Infinity });
  if (reached === -1 || after === undefined || heldMin >= minutes / slack) return [];
  return [
    {
      code: "hold-short",
      level: "watch",
      limit: code,
      at: after.at,
      figures: { heldMin, neededMin: minutes, atLeastC },
    },
  ];
}

function overKiln(readings: readonly KilnReading[], { kiln }: FiringLimits): readonly RunFinding[] {
  const over = readings.find(({ kilnC }) => kilnC > kiln.maxC + noiseK);
  if (over === undefined) return [];
  const figures = { kilnC: over.kilnC, maxC: kiln.maxC };
  return [{ code: "over-kiln", level: "hold", limit: null, at: over.at, figures }];
}

/** The tray was not ticked as taken out before the kiln was read hotter than wax on it may be. */
function trayTooHot(
  readings: readonly KilnReading[],
  { limits: { tray }, ...of }: Watched,
): readonly RunFinding[] {
  if (tray === null) return [];
  const outAt = tickOf("tray-out", of) ?? Infinity;
  const hot = readings.find(({ at, kilnC }) => at < outAt && kilnC > tray.mostC);
  if (hot === undefined) return [];
  const { at, kilnC } = hot;
  const figures = { kilnC, mostC: tray.mostC };
  return [{ code: "tray-in-too-hot", level: "hold", limit: "wax-flash-point", at, figures }];
}
