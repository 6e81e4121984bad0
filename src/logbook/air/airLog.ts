import type { AirClass } from "../../trade/airClasses.ts";
import { effective } from "../log/effective.ts";
import type { Entry, EntryOf } from "../entries/entry.ts";
import type { AirReading } from "../piece/piece.ts";

/** From this time on, epoch ms, the air of a room moved so. */
export type AirSince = { readonly at: number; readonly air: AirClass };

type Block = EntryOf<"air-logged">;
export type Unpack = (block: Block, moves: readonly AirSince[]) => readonly AirReading[];

/** The air a logger's reading is taken in where nobody ever said how it moves. */
const unsaid: AirClass = "still";

/** When the air movement last logged changed, oldest first; entries that stand, in order. */
export function airMovesOf(standing: readonly Entry[]): readonly AirSince[] {
  const moves: AirSince[] = [];
  for (const entry of standing) {
    if (entry.type !== "air-read" && entry.type !== "air-logged") continue;
    const { air } = entry.body;
    if (air !== null && air !== moves.at(-1)?.air) moves.push({ at: entry.at, air });
  }
  return moves;
}

/** The movements a block's readings fall under, the one in force at its start first. */
export function movesWithin({ at, body }: Block, moves: readonly AirSince[]): readonly AirSince[] {
  if (body.air !== null) return [{ at, air: body.air }];
  const until = at + (body.afterS.at(-1) ?? 0) * 1000;
  const before = moves.findLast((move) => move.at <= at) ?? { at, air: unsaid };
  return [before, ...moves.filter((move) => move.at > at && move.at <= until)];
}

/**
 * The readings packed in a logger's block, each under an id of its own, `<entry>#<place>`. `moves` are those of
 * `movesWithin`. Lists of unequal length give as many readings as the shortest.
 */
export function unpackAir({ id, at, body }: Block, moves: readonly AirSince[]): readonly AirReading[] {
  const { source, afterS, airC, rh, pressurePa } = body;
  const count = countOf(body);
  const readings: AirReading[] = [];
  let next = 1;
  let air = moves[0]?.air ?? unsaid;
  for (let i = 0; i < count; i++) {
    const when = at + (afterS[i] ?? 0) * 1000;
    for (let move = moves[next]; move !== undefined && move.at <= when; move = moves[next]) {
      air = move.air;
      next += 1;
    }
    const reading = {
      id: `${id}#${i}`,
      at: when,
      airC: airC[i] ?? NaN,
      rh: rh[i] ?? NaN,
      air,
      sensor: source,
    };
    readings.push(pressurePa === undefined ? reading : { ...reading, pressurePa: pressurePa[i] });
  }
  return readings;
}

/**
 * All readings that stand, oldest first, a logger's unpacked. `moves` are given where the entries are only a part of
 * the room's log, and `unpack` where what was unpacked before is kept.
 */
export function readingsOf(
  entries: readonly Entry[],
  {
    moves,
    unpack = unpackAir,
  }: { readonly moves?: readonly AirSince[] | undefined; readonly unpack?: Unpack | undefined } = {},
): readonly AirReading[] {
  const standing = effective(entries);
  const known = moves ?? airMovesOf(standing);
  const readings: AirReading[] = [];
  for (const entry of standing) {
    if (entry.type === "air-read") readings.push({ ...entry.body, id: entry.id, at: entry.at });
    else if (entry.type === "air-logged")
      for (const reading of unpack(entry, movesWithin(entry, known))) readings.push(reading);
  }
  const rising = readings.every(({ at }, i) => i === 0 || at >= (readings[i - 1]?.at ?? at));
  return rising ? readings : readings.sort((a, b) => a.at - b.at);
}

/** The newest reading that stands; no other block is unpacked for it. */
export function lastReadingOf(standing: readonly Entry[]): AirReading | null {
  let newest: { readonly entry: Entry; readonly until: number } | null = null;
  for (const entry of standing) {
    const until = readsUntil(entry);
    if (until !== null && (newest === null || until >= newest.until)) newest = { entry, until };
  }
  const entry = newest?.entry;
  if (entry?.type === "air-read") return { ...entry.body, id: entry.id, at: entry.at };
  if (entry?.type !== "air-logged") return null;
  return unpackAir(entry, movesWithin(entry, airMovesOf(standing))).at(-1) ?? null;
}

function readsUntil({ type, at, body }: Entry): number | null {
  if (type === "air-read") return at;
  if (type !== "air-logged") return null;
  const last = body.afterS[countOf(body) - 1];
  return last === undefined ? null : at + last * 1000;
}

const countOf = ({ afterS, airC, rh, pressurePa }: Block["body"]): number =>
  Math.min(afterS.length, airC.length, rh.length, pressurePa?.length ?? Infinity);
