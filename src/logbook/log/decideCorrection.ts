import { lackingKey } from "../entries/bodyShape.ts";
import { bodyFault } from "../entries/checkBody.ts";
import type { CorrectCommand, Decision, Moment, Refusal } from "./command.ts";
import { settle } from "./effective.ts";
import type { Entry, EntryBodies, EntryType } from "../entries/entry.ts";
import { parseStream } from "../entries/entryKinds.ts";
import { fireFault } from "./fireGuard.ts";
import { foldPiece } from "./fold.ts";
import { newEntry } from "./newEntry.ts";
import { untilOf } from "../entries/packed.ts";
import type { Asked } from "./pieceGuard.ts";
import { pieceFault } from "./pieceGuard.ts";
import { timeFault } from "./timeGuard.ts";

/** Strikes an entry and writes the right one. It must be of the same type, and a coat keeps its place among coats. */
export function decideCorrection(
  own: readonly Entry[],
  { stream, entryId, at, body, reason }: CorrectCommand,
  moment: Moment,
): Decision {
  const entry = own.find(({ id }) => id === entryId);
  const refuse = (refusal: Refusal): Decision => ({ ok: false, refusal });
  if (entry === undefined) return refuse({ code: "not-found", entryId });
  if (entry.type === "entry-struck") return refuse({ code: "not-replaceable", entryId });
  const { standing, strikes } = settle(own);
  if (strikes.has(entryId)) return refuse({ code: "already-struck", entryId });
  if (!standing.includes(entry)) return refuse({ code: "not-replaceable", entryId });
  const wanted = body ?? entry.body;
  const lacks = lackingKey(entry.type, wanted);
  if (lacks !== null) return refuse({ code: "missing", field: lacks });
  const asked: Asked = { stream, type: entry.type, at: at ?? entry.at, body: numbered(own, entry, wanted) };
  const fault = bodyFault(asked.type, asked.body) ?? placeFault({ own, standing, entry }, asked, moment);
  if (fault) return refuse(fault);
  const id = moment.newId();
  const replacement = newEntry({ id, ...asked }, moment);
  const struck = { struckId: entryId, reason, replacedBy: id };
  return {
    ok: true,
    entries: [replacement, newEntry({ stream, type: "entry-struck", body: struck, at: moment.now }, moment)],
  };
}

/** A corrected coat keeps the number it has now; strikes beneath it may have moved it since it was written. */
function numbered(own: readonly Entry[], entry: Entry, body: EntryBodies[EntryType]): EntryBodies[EntryType] {
  const coat = coatsOf(own, entry.stream).find(({ id }) => id === entry.id);
  return coat && "number" in body ? { ...body, number: coat.number } : body;
}

function placeFault(
  { own, standing, entry }: { own: readonly Entry[]; standing: readonly Entry[]; entry: Entry },
  asked: Asked,
  moment: Moment,
): Refusal | null {
  const { at } = asked;
  const others = own.filter((other) => other !== entry);
  // A logger's block can reach further without being moved.
  if (at === entry.at && untilOf(asked) === untilOf(entry)) return fireFault(others, asked);
  const late = timeFault(at, moment) ?? timeFault(untilOf(asked), moment) ?? fireFault(others, asked);
  if (late) return late;
  if (entry.type === "piece-started") {
    const first = standing.find((other) => other !== entry && other.type !== "piece-started");
    return first && at > first.at ? { code: "out-of-order", at, after: null, before: first.at } : null;
  }
  if (entry.type !== "coat-dipped") return pieceFault(others, asked);
  const coats = coatsOf(own, entry.stream);
  const place = coats.findIndex(({ id }) => id === entry.id);
  const after = coats[place - 1]?.dippedAt ?? null;
  const before = coats[place + 1]?.dippedAt ?? null;
  if ((after !== null && at < after) || (before !== null && at >= before))
    return { code: "out-of-order", at, after, before };
  // Its own number would find itself; asked as one coat more, only its time and the phase then are judged.
  return pieceFault(others, renumbered(asked, coats.length));
}

const renumbered = (asked: Asked, number: number): Asked =>
  "number" in asked.body ? { ...asked, body: { ...asked.body, number } } : asked;

function coatsOf(own: readonly Entry[], stream: string) {
  return foldPiece(parseStream(stream)?.id ?? stream, own)?.coats ?? [];
}
