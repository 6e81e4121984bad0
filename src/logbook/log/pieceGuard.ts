import type { Refusal } from "./command.ts";
import type { Entry, EntryBodies, EntryType } from "../entries/entry.ts";
import { phasesInstead } from "./phaseGuard.ts";
import type { Piece } from "../piece/piece.ts";
import { settledLog, type SettledLog } from "./settledLog.ts";

export type ProposedEntry = {
  readonly stream: string;
  readonly type: EntryType;
  readonly body: EntryBodies[EntryType];
  readonly at: number;
};

/**
 * Why this entry can't be in a piece's log, judged where its time puts it: a coat of yesterday is asked of the
 * piece as it stood yesterday. Null for what fits, and for other streams.
 */
export function pieceFault(own: SettledLog, asked: ProposedEntry): Refusal | null {
  const { type, at } = asked;
  const piece = own.piece();
  if (piece === null || type === "piece-started") return null;
  const turn = type === "coat-dipped" ? turnFault(piece, asked) : null;
  if (turn) return turn;
  if (at < piece.startedAt) return { code: "before-start", at, startedAt: piece.startedAt };
  const asOf = asOfThen(own, at).piece() ?? piece;
  const { follow } = own.settled;
  return (
    phaseFault(asOf, asked) ?? referenceFault({ piece, asOf, follow }, asked) ?? orderFault(piece, asked)
  );
}

/** The log as it stood at that time: nearly always the whole, which then needs no second look. */
function asOfThen(own: SettledLog, at: number): SettledLog {
  const then = own.entries.filter((entry) => entry.at <= at || isAlways(entry));
  return then.length === own.entries.length ? own : settledLog(own.stream, then);
}

/** A strike undoes its mark for all of time, and a piece has always been started. */
const isAlways = ({ type }: Entry): boolean => type === "entry-struck" || type === "piece-started";

/** Two taps on the same coat, in one tab or two, give the same number: only the first may count. */
function turnFault({ coats }: Piece, { body }: ProposedEntry): Refusal | null {
  if (!("number" in body)) return null;
  const expected = coats.length + 1;
  if (body.number === expected) return null;
  const there = coats[body.number - 1];
  if (there === undefined) return { code: "coat-out-of-turn", found: body.number, expected };
  return { code: "already-logged", entryId: there.id, at: there.dippedAt, number: there.number };
}

function phaseFault({ phase, burnouts }: Piece, { type }: ProposedEntry): Refusal | null {
  const allowed = phasesInstead(type, phase);
  if (allowed) return { code: "wrong-phase", phase, allowed };
  const running = burnouts.at(-1)?.ended === null;
  const needsRun = type === "burnout-read" || type === "burnout-ended";
  if (needsRun && !running) return { code: "wrong-phase", phase, allowed: ["burnout"] };
  if (type === "burnout-started" && running)
    return { code: "wrong-phase", phase, allowed: ["reviewed", "coating"] };
  return null;
}

const needsCoats: readonly EntryType[] = ["shell-out-of-kiln", "pour-begun", "metal-poured"];

/** An entry that speaks of another must find it; only the outer coat can be dipped again. */
function referenceFault(
  { piece, asOf, follow }: { piece: Piece; asOf: Piece; follow: (id: string) => string },
  { type, body }: ProposedEntry,
): Refusal | null {
  if ("coatId" in body) {
    const coatId = follow(body.coatId);
    const found =
      type === "coat-redipped"
        ? asOf.coats.at(-1)?.id === coatId
        : piece.coats.some(({ id }) => id === coatId);
    if (!found) return { code: "not-found", entryId: body.coatId };
  }
  if ("crackId" in body) {
    const crackId = follow(body.crackId);
    if (!piece.cracks.some(({ id }) => id === crackId)) return { code: "not-found", entryId: body.crackId };
  }
  return needsCoats.includes(type) && piece.coats.length === 0 ? { code: "missing", field: "coats" } : null;
}

/** Metal comes after the last coat, and so does giving up. */
function orderFault({ coats }: Piece, { type, at }: ProposedEntry): Refusal | null {
  const last = coats.at(-1);
  const closes = type === "pour-begun" || type === "metal-poured" || type === "piece-scrapped";
  if (!closes || last === undefined || at >= last.dippedAt) return null;
  return { code: "out-of-order", at, after: last.dippedAt, before: null };
}
