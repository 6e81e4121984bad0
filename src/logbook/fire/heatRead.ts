import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { pourGo } from "../../trade/pourGo.ts";
import type { Melt, Pour, Run } from "./fireStates.ts";
import type { Piece } from "../piece/piece.ts";

export type HeatRead = { readonly id: string; readonly at: number; readonly c: number };

/** What the log has measured of one shell's heat for a pour. */
export type ShellHeat = {
  /** Since when the preheat is under way; null while it has not begun. */
  readonly begunAt: number | null;
  readonly last: HeatRead | null;
  /** Minutes the readings show it at its heat without a break, up to the last; null where the shell's own heat was logged, soak and all. */
  readonly soakedMin: number | null;
};

/** The kiln's readings of the run that is named, and the shell's own in the piece's log; the newest speaks. */
export function shellHeat(
  piece: Piece,
  { pour, run, now }: { readonly pour: Pour; readonly run: Run | null; readonly now: number },
): ShellHeat {
  const isIn = run !== null && run.startedAt !== null && run.startedAt <= now;
  const kiln: readonly HeatRead[] = isIn
    ? run.readings.filter(({ at }) => at <= now).map(({ id, at, kilnC }) => ({ id, at, c: kilnC }))
    : [];
  const own = piece.preheats.findLast(({ at }) => at <= now) ?? null;
  const recent = own !== null && now - own.at < pourGo.preheatBegunMin.value * minuteMs ? own : null;
  const marked = pour.marks.filter(({ step, at }) => step === "shell-preheated" && at <= now);
  const begun = [...(isIn ? [run.startedAt ?? now] : []), ...(recent === null ? [] : [recent.at])];
  const times = [...begun, ...marked.map(({ at }) => at)];
  const lastKiln = kiln.at(-1) ?? null;
  const isOwn = recent !== null && (lastKiln === null || recent.at >= lastKiln.at);
  return {
    begunAt: times.length === 0 ? null : Math.min(...times),
    last: isOwn ? { id: recent.id, at: recent.at, c: recent.shellC } : lastKiln,
    soakedMin: isOwn || lastKiln === null ? null : soakedMin(kiln, pour.plan.shellC),
  };
}

/** Minutes up to the last reading that no reading was under the heat. */
function soakedMin(readings: readonly HeatRead[], heatC: number): number {
  const last = readings.at(-1);
  const under = readings.findLastIndex(({ c }) => c < heatC - pourGo.nearHeatK.value);
  const first = readings[under + 1];
  return last === undefined || first === undefined ? 0 : (last.at - first.at) / minuteMs;
}

/** What the log has measured of the metal's heat. */
export type MeltHeatRead = {
  /** Since when metal is on the fire; null while it is not. */
  readonly begunAt: number | null;
  readonly last: HeatRead | null;
};

export function meltHeatRead(pour: Pour, melt: Melt | null, now: number): MeltHeatRead {
  const marked = pour.marks.filter(
    ({ step, at }) => (step === "metal-melted" || step === "metal-skimmed") && at <= now,
  );
  const isLit = melt !== null && melt.startedAt !== null && melt.startedAt <= now;
  const times = [...(isLit ? [melt.startedAt ?? now] : []), ...marked.map(({ at }) => at)];
  const last = isLit ? (melt.readings.findLast(({ at }) => at <= now) ?? null) : null;
  return {
    begunAt: times.length === 0 ? null : Math.min(...times),
    last: last === null ? null : { id: last.id, at: last.at, c: last.metalC },
  };
}
