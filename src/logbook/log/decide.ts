import { bodyFault } from "../entries/checkBody.ts";
import type { Command, Decision, LogCommand, Moment, Refusal } from "./command.ts";
import { decideCorrection } from "./decideCorrection.ts";
import { decideStrike } from "./decideStrike.ts";
import { compareEntries, type Entry, type EntryType } from "../entries/entry.ts";
import { kindOfType, parseStream, startOfKind } from "../entries/entryKinds.ts";
import { fireFault } from "./fireGuard.ts";
import { hasRoom } from "./fold.ts";
import { hasBucket } from "../bucket/foldBucket.ts";
import { newEntry } from "./newEntry.ts";
import { untilOf } from "../entries/packed.ts";
import { pieceFault } from "./pieceGuard.ts";
import { settledLog, type SettledLog } from "./settledLog.ts";
import { timeFault } from "./timeGuard.ts";

/**
 * What a command adds to the log, or why it is refused. `entries` are all of the command's stream, struck ones
 * and strikes too, as they stand in the same transaction that will append what comes back.
 */
export function decide(entries: readonly Entry[], command: Command, moment: Moment): Decision {
  const own = entries.filter(({ stream }) => stream === command.stream).sort(compareEntries);
  return decideOn(settledLog(command.stream, own), command, moment);
}

/** The same on a log that is settled already; the command is on its stream. */
export function decideOn(own: SettledLog, command: Command, moment: Moment): Decision {
  switch (command.do) {
    case "log":
      return command.type === "entry-struck"
        ? decideStrike(
            own,
            { ...command, entryId: command.body.struckId, reason: command.body.reason },
            moment,
          )
        : decideLog(own, command, moment);
    case "strike":
      return decideStrike(own, command, moment);
    case "correct":
      return decideCorrection(own, command, moment);
  }
}

function decideLog(own: SettledLog, command: LogCommand<EntryType>, moment: Moment): Decision {
  const { stream, type, body, at = moment.now } = command;
  const refusal =
    streamFault(own, command) ??
    bodyFault(type, body) ??
    timeFault(at, moment) ??
    timeFault(untilOf({ at, body }), moment) ??
    pieceFault(own, { stream, type, body, at }) ??
    fireFault(own, { stream, type, body, at });
  if (refusal) return { ok: false, refusal };
  return { ok: true, entries: [newEntry({ stream, type, body, at }, moment)] };
}

/** Whether the stream is of this type's kind, and there at all. */
function streamFault(
  { settled: { standing } }: SettledLog,
  { stream, type }: { stream: string; type: EntryType },
): Refusal | null {
  const missing: Refusal = { code: "no-such-stream", stream };
  const parsed = parseStream(stream);
  if (parsed?.kind !== kindOfType[type]) return missing;
  const { kind, id } = parsed;
  switch (kind) {
    case "piece":
    case "run":
    case "melt":
    case "pour": {
      const start = startOfKind[kind];
      const started = standing.some((entry) => entry.type === start);
      if (type === start) return started ? { code: "already-started", stream } : null;
      return started ? null : missing;
    }
    case "room":
      return type === "room-set" || hasRoom(id, standing) ? null : missing;
    case "bucket":
      return type === "bucket-set" || hasBucket(id, standing) ? null : missing;
    case "recipe":
    case "shop":
      return null;
  }
}
