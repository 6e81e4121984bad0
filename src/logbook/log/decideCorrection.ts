import { lackingKey } from "../entries/bodyShape.ts";
import { bodyFault } from "../entries/checkBody.ts";
import type { CorrectCommand, Decision, Moment, Refusal } from "./command.ts";
import type { Entry, EntryBodies, EntryType } from "../entries/entry.ts";
import { fireFault } from "./fireGuard.ts";
import { newEntry } from "./newEntry.ts";
import { untilOf } from "../entries/packed.ts";
import type { Coat } from "../piece/piece.ts";
import type { ProposedEntry } from "./pieceGuard.ts";
import { pieceFault } from "./pieceGuard.ts";
import { settledLog, type SettledLog } from "./settledLog.ts";
import { timeFault } from "./timeGuard.ts";

/** Strikes an entry and writes the right one. It must be of the same type, and a coat keeps its place among coats. */
export function decideCorrection(
  own: SettledLog,
  { stream, entryId, at, body, reason }: CorrectCommand,
  moment: Moment,
): Decision {
  const entry = own.entries.find(({ id }) => id === entryId);
  const refuse = (refusal: Refusal): Decision => ({ ok: false, refusal });
  if (entry === undefined) return refuse({ code: "not-found", entryId });
  if (entry.type === "entry-struck") return refuse({ code: "not-replaceable", entryId });
  const { standing, strikes } = own.settled;
  if (strikes.has(entryId)) return refuse({ code: "already-struck", entryId });
  if (!standing.includes(entry)) return refuse({ code: "not-replaceable", entryId });
  const wanted = body ?? entry.body;
  const lacks = lackingKey(entry.type, wanted);
  if (lacks !== null) return refuse({ code: "missing", field: lacks });
  const asked: ProposedEntry = {
    stream,
    type: entry.type,
    at: at ?? entry.at,
    body: numbered(own, entry, wanted),
  };
  const fault = bodyFault(asked.type, asked.body) ?? placeFault(own, { entry, asked, moment });
  if (fault) return refuse(fault);
  const id = moment.newId();
  const act = entry.act && { id: entry.act.id };
  const replacement = newEntry({ id, ...asked, act }, moment);
  const struck = { struckId: entryId, reason, replacedBy: id };
  return {
    ok: true,
    entries: [replacement, newEntry({ stream, type: "entry-struck", body: struck, at: moment.now }, moment)],
  };
}

/** A corrected coat keeps the number it has now; strikes beneath it may have moved it since it was written. */
function numbered(own: SettledLog, entry: Entry, body: EntryBodies[EntryType]): EntryBodies[EntryType] {
  const coat = coatsOf(own).find(({ id }) => id === entry.id);
  return coat && "number" in body ? { ...body, number: coat.number } : body;
}

function placeFault(
  own: SettledLog,
  { entry, asked, moment }: { readonly entry: Entry; readonly asked: ProposedEntry; readonly moment: Moment },
): Refusal | null {
  const { at } = asked;
  const others = settledLog(
    own.stream,
    own.entries.filter((other) => other !== entry),
  );
  // A logger's block can reach further without being moved.
  if (at === entry.at && untilOf(asked) === untilOf(entry)) return fireFault(others, asked);
  const late = timeFault(at, moment) ?? timeFault(untilOf(asked), moment) ?? fireFault(others, asked);
  if (late) return late;
  if (entry.type === "piece-started") {
    const first = own.settled.standing.find((other) => other !== entry && other.type !== "piece-started");
    return first && at > first.at ? { code: "out-of-order", at, after: null, before: first.at } : null;
  }
  if (entry.type !== "coat-dipped") return pieceFault(others, asked);
  const coats = coatsOf(own);
  const place = coats.findIndex(({ id }) => id === entry.id);
  const after = coats[place - 1]?.dippedAt ?? null;
  const before = coats[place + 1]?.dippedAt ?? null;
  if ((after !== null && at < after) || (before !== null && at >= before))
    return { code: "out-of-order", at, after, before };
  // Its own number would find itself; asked as one coat more, only its time and the phase then are judged.
  return pieceFault(others, renumbered(asked, coats.length));
}

const renumbered = (asked: ProposedEntry, number: number): ProposedEntry =>
  "number" in asked.body ? { ...asked, body: { ...asked.body, number } } : asked;

const coatsOf = (own: SettledLog): readonly Coat[] => own.piece()?.coats ?? [];
