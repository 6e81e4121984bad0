import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { ranges, within } from "../entries/ranges.ts";
import type { Piece } from "../piece/piece.ts";
import type { Run } from "./fireStates.ts";
import { energyKWhOf } from "./runBasis.ts";
import { bandMinutes } from "../../physics/heat/bandMinutes.ts";
import { readSegments } from "./readSegments.ts";
import { soundRun } from "./soundRun.ts";
import type { KilnReading } from "../../physics/heat/runPosition.ts";

/** A reading this near the top still counts as held: judgement. */
const nearTopK = 15;

/** How hot, °C, and for how many minutes within 15 K of it. */
export type RunHeat = { readonly peakC: number; readonly holdMin: number };

/** The hottest reading, and the minutes within 15 K of it, ways up and down by their share; null without a reading. */
export function peakAndHold(readings: readonly KilnReading[]): RunHeat | null {
  if (readings.length === 0) return null;
  const peakC = hottest(readings);
  return { peakC, holdMin: minutesWithin(readings, { lowC: peakC - nearTopK, highC: Infinity }) };
}

/** A spread call would overflow on a long file. */
const hottest = (readings: readonly KilnReading[]): number =>
  readings.reduce((most, { kilnC }) => Math.max(most, kilnC), -Infinity);

/** Minutes the readings lie between two temperatures, °C, straight lines between them. Any order. */
export function minutesWithin(
  readings: readonly KilnReading[],
  band: { readonly lowC: number; readonly highC: number },
): number {
  const ordered = readings.toSorted((a, b) => a.at - b.at);
  const [first] = ordered;
  if (first === undefined) return 0;
  const minuteOf = ({ at }: KilnReading): number => (at - first.at) / minuteMs;
  const curve = ordered.slice(1).map((to, i) => {
    const from = ordered[i] ?? first;
    return { startMin: minuteOf(from), endMin: minuteOf(to), fromC: from.kilnC, toC: to.kilnC };
  });
  return bandMinutes(curve, band);
}

/** Hottest and hold as the end's form is filled in from readings: to the degree and the minute. */
export function heatFilledIn(readings: readonly KilnReading[]): RunHeat | null {
  const held = peakAndHold(readings);
  return held && { peakC: Math.round(held.peakC), holdMin: Math.round(held.holdMin) };
}

/** Readings that were written down by the run's end, and those that came in after it, a logger's file mostly. */
function inTimeAndLate({ readings, lateIds = [] }: Run): {
  readonly inTime: Run["readings"];
  readonly late: Run["readings"];
} {
  const ids = new Set(lateIds);
  const isLate = ({ id }: { readonly id: string }): boolean => ids.has(id.split("#")[0] ?? id);
  return { inTime: readings.filter((one) => !isLate(one)), late: readings.filter(isLate) };
}

/**
 * How hot a run was, and for how long: every screen that says so reads it here. `given` is what was written at its end
 * (`shell-fired`), null where nothing was. What was given stands for the readings of that time, a typed figure in their
 * place. Readings that come in after the end are put beside it: the hotter of the two is the hottest, and the hold is
 * theirs where they were that hot. Null where nothing was read or given.
 */
export function runHeat(whole: Run, given: RunHeat | null): RunHeat | null {
  const run = soundRun(whole);
  const isGiven =
    given !== null && within(ranges.peakC, given.peakC) && within(ranges.holdMin, given.holdMin);
  if (!isGiven) return peakAndHold(run.readings);
  const { inTime, late } = inTimeAndLate(run);
  if (late.length === 0) return { peakC: given.peakC, holdMin: given.holdMin };
  const filled = heatFilledIn(inTime);
  const isTyped = filled?.peakC !== given.peakC;
  const peakC = isTyped ? Math.max(given.peakC, hottest(late)) : hottest(run.readings);
  const wasNear = run.readings.some(({ kilnC }) => kilnC >= peakC - nearTopK);
  const holdMin = wasNear
    ? minutesWithin(run.readings, { lowC: peakC - nearTopK, highC: Infinity })
    : given.holdMin;
  return { peakC, holdMin };
}

/** What the pieces' logs hold of a run's end; null where no shell of it was logged as fired. */
export const heatGiven = (
  { id }: Pick<Run, "id">,
  pieces: readonly Pick<Piece, "firings">[],
): RunHeat | null =>
  pieces.flatMap(({ firings }) => firings.filter(({ runId }) => runId === id)).at(-1) ?? null;

/** The piece with its firings as hot and as long as their runs were by all that is known now. */
export function withRunHeat(piece: Piece, runs: readonly Run[]): Piece {
  const firings = piece.firings.map((firing) => {
    const run = runs.find(({ id }) => id === firing.runId);
    const heat = run === undefined || (run.lateIds ?? []).length === 0 ? null : runHeat(run, firing);
    return heat === null ? firing : { ...firing, ...heat };
  });
  return firings.every((firing, i) => firing === piece.firings[i]) ? piece : { ...piece, firings };
}

export type RunEnergy = {
  readonly energyKWh: number;
  /** `given`: written at the end by a person, a meter's perhaps; else an estimate from the readings. */
  readonly basis: "given" | "estimate";
};

/** To a tenth, as the end's form is filled in. */
export const energyFilledIn = (energyKWh: number): number => Math.round(energyKWh * 10) / 10;

/**
 * Energy a run took. A figure written at the end stands where a person gave it; one that was only filled in from the
 * readings of that time gives way to the readings there are now. Null where neither readings nor the plan's kiln tell.
 */
export function runEnergy(whole: Run): RunEnergy | null {
  const run = soundRun(whole);
  const given = run.ended?.energyKWh;
  const now = energyOf(run, run.readings);
  if (!within(ranges.energyKWh, given)) return now === null ? null : { energyKWh: now, basis: "estimate" };
  const { inTime, late } = inTimeAndLate(run);
  const then = late.length === 0 ? now : energyOf(run, inTime);
  if (then === null || now === null || energyFilledIn(then) !== given)
    return { energyKWh: given, basis: "given" };
  return { energyKWh: now, basis: "estimate" };
}

function energyOf({ plan, startedAt, startedC }: Run, readings: readonly KilnReading[]): number | null {
  if (plan.basis === undefined || startedAt === null) return null;
  const startC = startedC ?? plan.startC;
  const segments = readSegments(readings, { startedAt, startC });
  return segments.length === 0 ? null : energyKWhOf(plan.basis, { segments, startC });
}
