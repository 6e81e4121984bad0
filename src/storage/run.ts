import type { Command, Moment, Refusal } from "../logbook/command.ts";
import { decide } from "../logbook/decide.ts";
import { compareEntries, type Entry } from "../logbook/entry.ts";
import { parseEntry, type Fault } from "./entrySchema.ts";
import { projectionOf, withReading } from "./projection.ts";
import { isOutOfSpace } from "./quota.ts";
import type { ShopDb } from "./shopDb.ts";
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

async function decideAndAppend(db: ShopDb, command: Command, moment: Moment): Promise<Ran> {
  const quick = await readingAtTheEnd(db, command, moment);
  if (quick !== null) return quick;
  const { entries: before } = await readStream(db, command.stream);
  const decision = decide(before, command, moment);
  if (!decision.ok) return decision;
  const refusal = unreadable(decision.entries);
  if (refusal !== null) return { ok: false, refusal };
  await db.entries.bulkAdd(decision.entries);
  const row = projectionOf(command.stream, [...before, ...decision.entries].sort(compareEntries));
  await (row === null ? db.projections.delete(command.stream) : db.projections.put(row));
  return decision;
}

/**
 * A room gathers thousands of readings, and a new one that is also the newest needs none of them: the room's row and
 * the entry that set it stand for the stream. Null when this is no such command; then the whole stream is read.
 */
async function readingAtTheEnd(db: ShopDb, command: Command, moment: Moment): Promise<Ran | null> {
  if (command.do !== "log" || command.type !== "air-read") return null;
  const row = await db.projections.get(command.stream);
  if (row?.kind !== "room") return null;
  const last = await db.entries
    .where("[stream+at]")
    .between([command.stream, -Infinity], [command.stream, Infinity])
    .last();
  if (last === undefined || (command.at ?? moment.now) <= last.at) return null;
  const set = typeof row.setId === "string" ? await db.entries.get(row.setId) : undefined;
  const decision = decide(readStored(set === undefined ? [] : [set]).entries, command, moment);
  const [entry] = decision.ok ? decision.entries : [];
  if (!decision.ok || decision.entries.length !== 1 || entry?.type !== "air-read") return null;
  if (unreadable(decision.entries) !== null) return null;
  await db.entries.add(entry);
  await db.projections.put(withReading(row, { ...entry.body, id: entry.id, at: entry.at }));
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
