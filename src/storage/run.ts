import { linesOfAct, markedAsAct } from "../logbook/acts/actMark.ts";
import { takeBack } from "../logbook/acts/takeBack.ts";
import { readingsOf } from "../logbook/air/airLog.ts";
import type { Entry } from "../logbook/entries/entry.ts";
import type { Command, Moment, Refusal } from "../logbook/log/command.ts";
import { decide, decideOn } from "../logbook/log/decide.ts";
import { settledLog, withEntry, type SettledLog } from "../logbook/log/settledLog.ts";
import { parseEntry, type ParseFault } from "./entrySchema.ts";
import { rowOf, withReading } from "./projection.ts";
import { isOutOfSpace } from "./quota.ts";
import type { ShopDb } from "./rows.ts";
import { readStored, readStream } from "./streams.ts";

export type Ran =
  | { readonly ok: true; readonly entries: readonly Entry[] }
  /** `stream` is that of the command that was refused, where there were commands on several. */
  | { readonly ok: false; readonly refusal: Refusal; readonly stream?: string | undefined }
  | { readonly ok: false; readonly failure: "out-of-space" };

/**
 * Decides on a command and appends what it comes to, with the stream's row, in one strict transaction. It resolves
 * only after that transaction is complete, so two tabs or two taps can't both do it and "done" means done.
 */
export const runCommand = (db: ShopDb, command: Command, moment: Moment): Promise<Ran> =>
  inOneTransaction(
    db,
    async () =>
      (await readingAtTheEnd(db, command, moment)) ?? (await decideAndAppend(db, [command], { moment })),
  );

/**
 * The commands of one act, on as many streams as it touches, in one transaction: all are done, or the first refusal
 * is given back and none is. Each is decided on the log with those before it.
 */
export const runCommands = (db: ShopDb, commands: readonly Command[], moment: Moment): Promise<Ran> =>
  inOneTransaction(db, () => decideAndAppend(db, commands, { moment }));

/** Strikes a line with all that the same tap wrote, in one transaction; a line of no act alone, as in every old log. */
export const runTakeBack = (
  db: ShopDb,
  { entryId, reason }: { readonly entryId: string; readonly reason: string },
  moment: Moment,
): Promise<Ran> =>
  inOneTransaction(db, async () => {
    const lines = await readAct(db, entryId);
    const logs = await Promise.all(
      [...new Set(lines.map(({ stream }) => stream))].map((one) => readLog(db, one)),
    );
    const commands = takeBack(
      lines.map(({ id }) => id),
      { logs, reason },
    );
    if (commands.length === 0)
      return { ok: false, refusal: { code: lines.length === 0 ? "not-found" : "already-struck", entryId } };
    return decideAndAppend(db, commands, { moment, logs });
  });

/** All lines that the same tap wrote as this one, in the order it wrote them; only itself where it stands alone. */
export async function readAct(db: ShopDb, entryId: string): Promise<readonly Entry[]> {
  const [entry] = await linesById(db, [entryId]);
  if (entry === undefined) return [];
  const [first] = entry.act === undefined ? [] : await linesById(db, [entry.act.id]);
  return linesById(db, linesOfAct(entry, first ?? null));
}

async function linesById(db: ShopDb, ids: readonly string[]): Promise<readonly Entry[]> {
  const rows = await db.entries.bulkGet([...ids]);
  return rows.flatMap((row) => (row === undefined ? [] : readStored([row]).entries));
}

async function inOneTransaction(db: ShopDb, run: () => Promise<Ran>): Promise<Ran> {
  try {
    // An `async` arrow, or Dexie does not follow the native awaits inside and the transaction ends at the first.
    return await db.transaction("rw", db.entries, db.projections, async () => run());
  } catch (error) {
    if (isOutOfSpace(error)) return { ok: false, failure: "out-of-space" };
    throw error;
  }
}

const readLog = async (db: ShopDb, stream: string): Promise<SettledLog> =>
  settledLog(stream, (await readStream(db, stream)).entries);

/** Each stream is read, settled and folded once, however many commands are on it. Nothing is written until all are decided. */
async function decideAndAppend(
  db: ShopDb,
  commands: readonly Command[],
  { moment, logs: read = [] }: { readonly moment: Moment; readonly logs?: readonly SettledLog[] },
): Promise<Ran> {
  const logs = new Map(read.map((log) => [log.stream, log]));
  const isOne = new Set(commands.map(({ stream }) => stream)).size === 1;
  const refused = (refusal: Refusal, { stream }: { readonly stream: string }): Ran =>
    isOne ? { ok: false, refusal } : { ok: false, refusal, stream };
  const decided: Entry[] = [];
  for (const command of commands) {
    const log = logs.get(command.stream) ?? (await readLog(db, command.stream));
    const decision = decideOn(log, command, moment);
    if (!decision.ok) return refused(decision.refusal, command);
    decided.push(...decision.entries);
    logs.set(command.stream, decision.entries.reduce(withEntry, log));
  }
  const added = markedAsAct(decided);
  for (const entry of added) {
    const refusal = unreadable(entry);
    if (refusal !== null) return refused(refusal, entry);
  }
  await db.entries.bulkAdd(added);
  const changed = [...logs.values()].filter(({ stream }) =>
    commands.some((command) => command.stream === stream),
  );
  const rows = changed.map((log) => ({ stream: log.stream, row: rowOf(log) }));
  await db.projections.bulkDelete(rows.flatMap(({ stream, row }) => (row === null ? [stream] : [])));
  await db.projections.bulkPut(rows.flatMap(({ row }) => row ?? []));
  return { ok: true, entries: added };
}

/**
 * A room gathers thousands of readings, and what is newer than all of them needs none: the room's row and the entry
 * that set it stand for the stream. Null when this is no such command; then the whole stream is read.
 */
async function readingAtTheEnd(db: ShopDb, command: Command, moment: Moment): Promise<Ran | null> {
  if (command.do !== "log" || (command.type !== "air-read" && command.type !== "air-logged")) return null;
  const row = await db.projections.get(command.stream);
  // A row without its air movements was written before there were any blocks of readings: it is made anew.
  if (row?.kind !== "room" || row.airMoves === undefined) return null;
  const last = await db.entries
    .where("[stream+at]")
    .between([command.stream, -Infinity], [command.stream, Infinity])
    .last();
  const at = command.at ?? moment.now;
  // The last line's block may reach past its own time.
  if (last === undefined || at <= last.at || at <= (row.state.last?.at ?? -Infinity)) return null;
  const set = typeof row.setId === "string" ? await db.entries.get(row.setId) : undefined;
  const decision = decide(readStored(set === undefined ? [] : [set]).entries, command, moment);
  const [entry] = decision.ok ? decision.entries : [];
  if (!decision.ok || decision.entries.length !== 1 || entry === undefined) return null;
  if (unreadable(entry) !== null) return null;
  const reading = readingsOf([entry], { moves: row.airMoves }).at(-1);
  if (reading === undefined) return null;
  await db.entries.add(entry);
  await db.projections.put(withReading(row, entry, reading));
  return decision;
}

/** Nothing is written that could not be read back: the gate of reading is tried before the line is in the log. */
function unreadable(entry: Entry): Refusal | null {
  const parsed = parseEntry(entry);
  return parsed.ok ? null : refusalFor(parsed.fault);
}

const refusalFor = ({ field, limits }: ParseFault): Refusal =>
  limits === undefined
    ? { code: "missing", field: field.replace(/^body\./, "") }
    : { code: "out-of-range", field: field.replace(/^body\./, ""), ...limits };
