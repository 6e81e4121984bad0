import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { effective } from "../logbook/log/effective.ts";
import { streamOf, type EntryOf, type EntryType } from "../logbook/entries/entry.ts";
import type { GoBound } from "../logbook/entries/fireBodies.ts";
import type { Pour } from "../logbook/fire/fireStates.ts";
import { isWrong, type SheetLine } from "../logbook/pour/pourSheet.ts";
import type { Why } from "../logbook/pour/pourSheetWhys.ts";
import { pourGo } from "../trade/pourGo.ts";
import type { Finding } from "./finding.ts";
import { pourKnownAt, type PourKnown, type PourLog } from "./pourLog.ts";

/** What of the plan moved under a go. */
export type PlanPart = "pour-time" | "pieces" | "metal" | "metal-heat" | "shell-heat";

export type LapseReason =
  | { readonly kind: "plan-moved"; readonly part: PlanPart; readonly entry: string }
  | {
      readonly kind: "stop-warning";
      readonly pieceId: string;
      readonly name: string;
      readonly finding: Finding;
    }
  | { readonly kind: "line"; readonly item: string; readonly why: readonly Why[] }
  | { readonly kind: "tick-withdrawn"; readonly item: string; readonly entry: string }
  | { readonly kind: "too-early"; readonly opensAt: number }
  | { readonly kind: "too-long-ago"; readonly minutes: number }
  | { readonly kind: "pour-late"; readonly minutes: number };

export type Lapse = { readonly at: number; readonly because: readonly LapseReason[] };

/** One decision and what became of it. */
export type DecisionPast = {
  readonly decided: NonNullable<Pour["decided"]>;
  /** Null for a no-go, and for a go that held until the pour, the next decision or now. */
  readonly lapse: Lapse | null;
};

/** Warnings that come with time alone are looked for this often. */
const lookMs = 5 * minuteMs;
const opensMs = pourGo.opensMin.value * minuteMs;
const holdsMs = pourGo.holdsMin.value * minuteMs;
const lateMs = pourGo.lateMin.value * minuteMs;

export const goWindow = (plan: Pick<Pour["plan"], "pourAt">): { opensAt: number; closesAt: number } => ({
  opensAt: plan.pourAt - opensMs,
  closesAt: plan.pourAt + lateMs,
});

/** What a go given on this is bound to; it goes into the log with it. */
export function goBound({ pour, lines, holds, supply }: PourKnown): GoBound {
  const { pourAt, shellC, metalC, meltId = null } = pour.plan;
  return {
    pourAt,
    pieceIds: pour.pieceIds,
    shellC,
    metalC,
    alloyId: supply.alloy?.id ?? null,
    meltId,
    holds: holds.map(({ pieceId, finding: { rule, variant, entries } }) => ({
      pieceId,
      rule,
      variant,
      entries,
    })),
    open: lines
      .filter(({ state }) => state !== "ok")
      .map(({ id, why }) => ({ item: id, why: [...new Set(why.map(({ code }) => code))] })),
    ticks: lines.flatMap(({ state, isTickable, check }) =>
      state === "ok" && isTickable && check !== null ? [check.id] : [],
    ),
  };
}

/** Every decision of a pour and why each go lapsed, oldest first, from the log alone. */
export function goHistory(log: PourLog, now: number): readonly DecisionPast[] {
  const own = log.entries.filter(
    ({ stream, recordedAt }) => stream === streamOf("pour", log.id) && recordedAt <= now,
  );
  const decisions = effective(own).filter(
    (entry): entry is EntryOf<"pour-decided"> => entry.type === "pour-decided",
  );
  return decisions.map(({ id, at, recordedAt, body }, place) => {
    const decided = { ...body, id, at };
    if (!body.go) return { decided, lapse: null };
    const next = decisions.slice(place + 1).map((later) => later.recordedAt);
    return { decided, lapse: lapseOf(log, { decided, recordedAt, until: Math.min(now, ...next) }) };
  });
}

/** The first time at which a go no longer held; null while it holds, and once the first shell is out of the kiln. */
function lapseOf(
  log: PourLog,
  {
    decided,
    recordedAt,
    until,
  }: {
    readonly decided: NonNullable<Pour["decided"]>;
    readonly recordedAt: number;
    readonly until: number;
  },
): Lapse | null {
  const given = pastAt(log, recordedAt);
  if (given === null) return null;
  // A log without it: bound to the state at its own time.
  const bound = decided.bound ?? goBound(given);
  const timesOf = (isOf: (type: EntryType) => boolean): readonly number[] =>
    [...new Set(log.entries.filter(({ type }) => isOf(type)).map((entry) => entry.recordedAt))]
      .filter((at) => at > recordedAt && at <= until)
      .sort((a, b) => a - b);
  const written = timesOf(() => true);
  // Once a shell is out only a tap that is taken back brings the go back to be looked at.
  const struck = timesOf((type) => type === "entry-struck");
  for (let at = recordedAt; ;) {
    const known = at === until ? pourKnownAt(log, at) : pastAt(log, at);
    if (known === null) return null;
    const isBegun = known.begunAt !== null;
    const because = isBegun ? [] : lapseReasons(log, { bound, decided, known });
    if (because.length > 0) return { at, because };
    const from = at;
    const ends = isBegun
      ? struck
      : [
          ...written,
          decided.at + holdsMs,
          goWindow(known.pour.plan).closesAt,
          ...known.lines.map((line) => line.until ?? Infinity),
          from + lookMs,
        ];
    const next = Math.min(...ends.filter((end) => end > from));
    if (at >= until || (isBegun && next > until)) return null;
    at = Math.min(until, next);
  }
}

function lapseReasons(
  { id, entries }: PourLog,
  {
    bound,
    decided,
    known,
  }: {
    readonly bound: GoBound;
    readonly decided: NonNullable<Pour["decided"]>;
    readonly known: PourKnown;
  },
): readonly LapseReason[] {
  const { pour, holds, lines, at } = known;
  const { opensAt, closesAt } = goWindow(pour.plan);
  const warnings = holds
    .filter((hold) => !bound.holds.some((was) => isSameHold(was, hold)))
    .map((hold): LapseReason => ({ kind: "stop-warning", ...hold }));
  const fresh = new Set(
    effective(entries.filter((entry) => entry.stream === streamOf("pour", id) && entry.recordedAt <= at)).map(
      (entry) => entry.id,
    ),
  );
  const gone = lines.flatMap((line): readonly LapseReason[] => {
    const why = newlyAgainst(line, bound);
    if (why === null || (warnings.length > 0 && isTheSame(why, warnings))) return [];
    const tick = entries.find(
      (entry) =>
        bound.ticks.includes(entry.id) &&
        entry.type === "pour-item-checked" &&
        entry.body.item === line.id &&
        !fresh.has(entry.id),
    );
    return tick === undefined
      ? [{ kind: "line", item: line.id, why }]
      : [{ kind: "tick-withdrawn", item: line.id, entry: tick.id }];
  });
  return [
    ...warnings,
    ...movedParts(bound, known).map((part): LapseReason => ({
      kind: "plan-moved",
      part,
      entry: pour.plan.id,
    })),
    ...gone,
    ...(decided.at < opensAt ? [{ kind: "too-early" as const, opensAt }] : []),
    ...(at >= decided.at + holdsMs
      ? [{ kind: "too-long-ago" as const, minutes: pourGo.holdsMin.value }]
      : []),
    ...(at >= closesAt ? [{ kind: "pour-late" as const, minutes: pourGo.lateMin.value }] : []),
  ];
}

/** A warning that was there and passed speaks anew when it rests on something that came later. */
const isSameHold = (was: GoBound["holds"][number], { pieceId, finding }: PourKnown["holds"][number]) =>
  was.pieceId === pieceId &&
  was.rule === finding.rule &&
  was.variant === finding.variant &&
  finding.entries.every((entry) => was.entries.includes(entry));

/** What stands against a line that did not when the go was given; null while it is as good as then. */
function newlyAgainst(line: SheetLine, { open }: GoBound): readonly Why[] | null {
  if (line.state === "ok") return null;
  const was = open.find(({ item }) => item === line.id);
  if (was === undefined) return line.id.startsWith("hold:") ? null : line.why;
  // What was passed as unknown may stay so or become known; it may not turn out wrong.
  const worse = line.why.filter(({ code }) => isWrong(code) && !was.why.includes(code));
  return worse.length === 0 ? null : worse;
}

/** A line that only says again what a new warning says. */
const isTheSame = (why: readonly Why[], warnings: readonly LapseReason[]): boolean =>
  why.every(
    ({ code, pieceId }) =>
      (code === "stop-warning" || code === "open-crack" || code === "patch-not-dry") &&
      warnings.some((one) => one.kind === "stop-warning" && one.pieceId === pieceId),
  );

function movedParts(bound: GoBound, { pour, supply }: PourKnown): readonly PlanPart[] {
  const { plan, pieceIds } = pour;
  const isMetal = (supply.alloy?.id ?? null) !== bound.alloyId || (plan.meltId ?? null) !== bound.meltId;
  return [
    ...(plan.pourAt === bound.pourAt ? [] : ["pour-time" as const]),
    ...(pieceIds.join() === bound.pieceIds.join() ? [] : ["pieces" as const]),
    ...(isMetal ? ["metal" as const] : []),
    ...(plan.metalC === bound.metalC ? [] : ["metal-heat" as const]),
    ...(plan.shellC === bound.shellC ? [] : ["shell-heat" as const]),
  ];
}

/** What a time that is over was like does not change until something more is written: then it is another log. */
const pasts = new WeakMap<PourLog, Map<number, PourKnown | null>>();

function pastAt(log: PourLog, at: number): PourKnown | null {
  const kept = pasts.get(log) ?? new Map<number, PourKnown | null>();
  pasts.set(log, kept);
  const past = kept.get(at);
  if (past !== undefined) return past;
  const known = pourKnownAt(log, at);
  kept.set(at, known);
  return known;
}

export type GoState = "none" | "not-open" | "open" | "go" | "lapsed" | "no-go" | "under-way";

export type GoStanding = {
  readonly state: GoState;
  /** Since when it is so; null for `none`, `not-open` and `open`. */
  readonly since: number | null;
  readonly lapsedBecause: readonly LapseReason[];
  /** From when to when a go may be given. */
  readonly opensAt: number;
  readonly closesAt: number;
  /** The newest decision, standing or lapsed. */
  readonly decided: Pour["decided"];
  /** When a go that stands will lapse if nothing more is read or ticked; null for all else. */
  readonly holdsUntil: number | null;
  /** Under way only: whether a go stood when the first shell came out. */
  readonly wasGo: boolean;
  readonly known: PourKnown;
};

/**
 * Where the go of a pour stands at `now`, epoch ms. Null for a pour that is not in the log. `open`: in its time, with
 * every line OK; `none`: in its time, with lines to settle. From the first shell out of the kiln on nothing lapses.
 */
export function goStanding(log: PourLog, now: number): GoStanding | null {
  const known = pourKnownAt(log, now);
  if (known === null) return null;
  const { pour, lines, begunAt } = known;
  const window = goWindow(pour.plan);
  const last = goHistory(log, now).at(-1) ?? null;
  const isLive = last !== null && last.decided.go && last.lapse === null;
  const base = {
    ...window,
    since: null,
    lapsedBecause: [],
    decided: last?.decided ?? null,
    holdsUntil: null,
    wasGo: false,
    known,
  };
  if (begunAt !== null) return { ...base, state: "under-way", since: begunAt, wasGo: isLive };
  if (last !== null && !last.decided.go) return { ...base, state: "no-go", since: last.decided.at };
  if (last !== null && last.lapse !== null)
    return { ...base, state: "lapsed", since: last.lapse.at, lapsedBecause: last.lapse.because };
  if (last !== null) {
    const ends = [
      last.decided.at + holdsMs,
      window.closesAt,
      ...lines.flatMap(({ state, until }) => (state === "ok" && until !== null ? [until] : [])),
    ];
    return { ...base, state: "go", since: last.decided.at, holdsUntil: Math.min(...ends) };
  }
  if (now < window.opensAt || now >= window.closesAt) return { ...base, state: "not-open" };
  return { ...base, state: lines.every(({ state }) => state === "ok") ? "open" : "none" };
}
