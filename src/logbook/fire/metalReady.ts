import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import { patternBurnout } from "../../trade/patternBurnout.ts";
import { practice } from "../../trade/practice.ts";
import { lastDryHeat } from "../drying/dryHeat.ts";
import { isPastPour } from "../piece/evolvePiece.ts";
import type { Run } from "./fireStates.ts";
import { patternState } from "../piece/patternState.ts";
import type { Piece } from "../piece/piece.ts";

/** One thing that stands between a shell and metal, the entries it rests on, and since when, epoch ms. */
export type MetalBar = {
  readonly code: "pattern-inside" | "wax-film" | "residue" | "rinsed" | "cold";
  readonly entries: readonly string[];
  /** For `cold`: when it was last hot. Null for a pattern that was never taken out. */
  readonly at: number | null;
};

/**
 * What the log says still stands between this shell and metal at `now`, epoch ms: its pattern, carbon or ash, water.
 * Empty where it knows of nothing, which is no promise; a poured shell has nothing left to hold.
 */
export function metalReady(
  piece: Piece,
  { runs, now }: { readonly runs: readonly Run[]; readonly now: number },
): readonly MetalBar[] {
  if (isPastPour(piece.phase)) return [];
  const pattern = patternState(piece);
  if (pattern === "inside") return [{ code: "pattern-inside", entries: [], at: null }];
  return [...filmBar(piece), ...residueBar(piece), ...waterBar(piece, { runs, now })];
}

/** A film of wax is gone where wax burns clean; a preheat that hot does it as well. */
function filmBar(piece: Piece): readonly MetalBar[] {
  if (patternState(piece) !== "film") return [];
  const cleanC = patternBurnout.wax?.finishC.value ?? practice.bondC.value;
  const last = piece.dewaxes.at(-1);
  if (last === undefined || piece.preheats.some(({ at, shellC }) => at > last.at && shellC >= cleanC))
    return [];
  return [{ code: "wax-film", entries: [last.id], at: last.at }];
}

type Look = { readonly id: string; readonly at: number; readonly isClean: boolean };

/**
 * The last word on the inside of the shell. A firing nobody looked into after counts as clean where all of it came
 * after the residue was seen, and it was hot and long enough to burn this pattern's carbon.
 */
export function residueBar({ burnouts, firings, inspections, plan }: Piece): readonly MetalBar[] {
  const seen: readonly Look[] = [
    ...burnouts.flatMap(({ ended }) =>
      ended === null || ended.result === "stopped" ? [] : [{ ...ended, isClean: ended.result === "clean" }],
    ),
    ...inspections.map((one) => ({ ...one, isClean: one.inside === "clean" })),
    ...firings.flatMap((one) => (one.inside === null ? [] : [{ ...one, isClean: one.inside === "clean" }])),
  ];
  const last = seen.toSorted((a, b) => a.at - b.at).at(-1);
  if (last === undefined || last.isClean) return [];
  const { finishC, finishMin } = patternBurnout[plan.material ?? "other"] ?? unknownFinish;
  const isBurntOff = firings.some(
    ({ at, peakC, holdMin, inside }) =>
      inside === null &&
      at - holdMin * minuteMs >= last.at &&
      peakC >= finishC.value &&
      holdMin >= finishMin.value,
  );
  return isBurntOff ? [] : [{ code: "residue", entries: [last.id], at: last.at }];
}

/** A pattern nobody named burns clean where the hardest of them do. */
const unknownFinish = { finishC: { value: 800 }, finishMin: { value: 60 } } as const;

function waterBar(
  piece: Piece,
  { runs, now }: { readonly runs: readonly Run[]; readonly now: number },
): readonly MetalBar[] {
  const wetted = lastRinse(piece);
  if (wetted !== null && lastDryHeat(piece, runs, wetted.at) === null)
    return [{ code: "rinsed", entries: [wetted.id], at: wetted.at }];
  const heat = lastDryHeat(piece, runs);
  if (heat === null || now - heat.at <= practice.coldShellH.value * hourMs) return [];
  // A coat or patch since is new water, and the drying of a last coat speaks of that.
  const isCovered =
    piece.coats.some(({ dippedAt }) => dippedAt > heat.at) ||
    piece.cracks.some(({ patched }) => patched !== null && patched.at > heat.at);
  if (isCovered) return [];
  return [{ code: "cold", entries: heat.entryId === null ? [] : [heat.entryId], at: heat.at }];
}

/** When water last went through the shell: rinsed, or dewaxed by steam or hot water. Null for never. */
export function lastRinse({
  rinses,
  dewaxes,
}: Pick<Piece, "rinses" | "dewaxes">): { readonly id: string; readonly at: number } | null {
  const wet = dewaxes.filter(({ way, rinsed }) => rinsed || way === "steam" || way === "hot-water");
  return [...rinses, ...wet].toSorted((a, b) => a.at - b.at).at(-1) ?? null;
}
