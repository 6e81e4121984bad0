import type { Command, Moment, Refusal } from "../logbook/log/command.ts";
import { readingsOf } from "../logbook/air/airLog.ts";
import { decide } from "../logbook/log/decide.ts";
import { compareEntries, type Entry } from "../logbook/entries/entry.ts";
import { parseEntry, type Fault } from "./entrySchema.ts";
import { projectionOf, withReading } from "./projection.ts";
import { isOutOfSpace } from "./quota.ts";
import type { ShopDb } from "./rows.ts";
import { readStored, readStream } from "./streams.ts";

export type Ran =
  | { readonly ok: true; readonly entries: readonly Entry[] }
  | { readonly ok: false; readonly refusal: Refusal }
  | { readonly ok: false; readonly failure: "out-of-space" };

/**
 * Decides on a command and appends what it comes to, with the stream's row, in one strict transaction. It resolves
 * only after that transaction is complete, so two tabs or two taps can't both do it and "done" means done.
 */
export async function runCommand(db: ShopDb, command: Command, moment: Moment): Promise<Ran> {
  try {
    // An `async` arrow, or Dexie does not follow the native awaits inside and the transaction ends at the first.
    return await db.transaction("rw", db.entries, db.projections, async () =>
      decideAndAppend(db, command, moment),
    );
  } catch (error) {
    if (isOutOfSpace(error)) return { ok: false, failure: "out-of-space" };
    throw error;
  }
}

/**
 * Many commands on one stream, as a logger's file makes, in one transaction: all are done, or the first refusal is
 * told and none is. Refuses commands on streams of their own with a RangeError.
 */
export async function runCommands(db: ShopDb, commands: readonly Command[], moment: Moment): Promise<Ran> {
  const [first] = commands;
  if (first === undefined) return { ok: true, entries: [] };
  const { stream } = first;
  const stray = commands.find((command) => command.stream !== stream);
  if (stray) throw new RangeError(`expected commands on ${stream} alone, got one on ${stray.stream}`);
  try {
    return await db.transaction("rw", db.entries, db.projections, async () => {
      const { entries: before } = await readStream(db, stream);
      const all = [...before];
      for (const command of commands) {
        const decision = decide(all, command, moment);
        if (!decision.ok) return decision;
        all.push(...decision.entries);
      }
      return append(db, { stream, before, added: all.slice(before.length) });
    });
  } catch (error) {
    if (isOutOfSpace(error)) return { ok: false, failure: "out-of-space" };
    throw error;
  }
}

async function decideAndAppend(db: ShopDb, command: Command, moment: Moment): Promise<Ran> {
  const quick = await readingAtTheEnd(db, command, moment);
  if (quick !== null) return quick;
  const { entries: before } = await readStream(db, command.stream);
  const decision = decide(before, command, moment);
  return decision.ok ? append(db, { stream: command.stream, before, added: decision.entries }) : decision;
}

async function append(
  db: ShopDb,
  {
    stream,
    before,
    added,
  }: { readonly stream: string; readonly before: readonly Entry[]; readonly added: readonly Entry[] },
): Promise<Ran> {
  const refusal = unreadable(added);
  if (refusal !== null) return { ok: false, refusal };
  await db.entries.bulkAdd(added);
  const row = projectionOf(stream, [...before, ...added].sort(compareEntries));
  await (row === null ? db.projections.delete(stream) : db.projections.put(row));
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
  if (unreadable(decision.entries) !== null) return null;
  const reading = readingsOf([entry], { moves: row.airMoves }).at(-1);
  if (reading === undefined) return null;
  await db.entries.add(entry);
  await db.projections.put(withReading(row, entry, reading));
  return decision;
}

/** Nothing is written that could not be read back: the gate of reading is tried before the line is in the log. */
function unreadable(entries: readonly Entry[]): Refusal | null {
  for (const entry of entries) {
    const parsed = parseEntry(entry);
    if (!parsed.ok) return refusalFor(parsed.fault);
  }
  return null;
}

const refusalFor = ({ field, limits }: Fault): Refusal =>
  limits === undefined
    ? { code: "missing", field: field.replace(/^body\./, "") }
    : { code: "out-of-range", field: field.replace(/^body\./, ""), ...limits };
