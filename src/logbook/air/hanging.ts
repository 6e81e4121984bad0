import type { DryStep } from "../../physics/drying/dryStep.ts";
import { geometryClasses } from "../../trade/geometryClasses.ts";
import { ordinaryRoom } from "../../trade/ordinaryRoom.ts";
import type { AirReading, Piece } from "../piece/piece.ts";
import { countUpTo } from "./airLine.ts";
import { streamOf } from "../entries/entry.ts";
import type { Memo } from "../log/memo.ts";
import type { RoomAir } from "./roomAir.ts";
import { roomAir } from "./roomAir.ts";
import type { Surroundings } from "../piece/surroundings.ts";

/** One stay in a room, epoch ms; `air` is null where the room has no readings. */
export type Stay = {
  readonly from: number;
  readonly to: number;
  readonly air: RoomAir | null;
  /** What it is taken to hang in where the room was not read: an ordinary room. */
  readonly ordinary: RoomAir;
};

/** One reading from before any log, held ever since. */
const ordinaryReadings: readonly AirReading[] = [{ id: "ordinary", at: 0, ...ordinaryRoom.value }];

function ordinaryAir(altitudeM: number, pocketSM: number): RoomAir {
  const air = roomAir(ordinaryReadings, { altitudeM, pocketSM });
  if (air === null) throw new RangeError("the ordinary room must have air that can be used");
  return air;
}

/**
 * The rooms a piece hung in, in order, from long before its start to the end of time. With a memo, a room that has since
 * been read again costs no more than its new readings.
 */
export function staysOf(
  { rooms, plan }: Piece,
  surroundings: Surroundings,
  memo: Memo | null = null,
): readonly Stay[] {
  const { pocketSM } = geometryClasses[plan.geometry ?? "open"] ?? geometryClasses.open;
  const noRoom: Stay = { from: -Infinity, to: Infinity, air: null, ordinary: ordinaryAir(0, pocketSM) };
  if (rooms.length === 0) return [noRoom];
  return rooms.map(({ roomId, from }, i) => {
    const readings = surroundings.readings.get(roomId);
    const altitudeM = surroundings.rooms.get(roomId)?.altitudeM ?? 0;
    return {
      from: i === 0 ? -Infinity : from,
      to: rooms[i + 1]?.from ?? Infinity,
      air: readings
        ? roomAir(readings, {
            altitudeM,
            pocketSM,
            kept: memo
              ? { roomId, memo, mark: surroundings.stamps?.get(streamOf("room", roomId)) ?? readings }
              : undefined,
          })
        : null,
      ordinary: ordinaryAir(altitudeM, pocketSM),
    };
  });
}

type Visit = (step: DryStep, startAt: number) => boolean;

/**
 * Goes through the air a piece hung in, stretch by stretch, until `visit` says it has seen enough: the air as read,
 * and an ordinary room where it was not.
 */
export function walkAir(
  stays: readonly Stay[],
  { from, to }: { from: number; to: number },
  visit: Visit,
): void {
  for (const stay of stays) {
    const begin = Math.max(from, stay.from);
    const end = Math.min(to, stay.to);
    const readFrom = Math.min(end, Math.max(begin, stay.air?.startsAt ?? Infinity));
    if (!walkOne(stay.ordinary, { from: begin, to: readFrom }, visit)) return;
    if (stay.air !== null && !walkOne(stay.air, { from: readFrom, to: end }, visit)) return;
  }
}

/** False once `visit` has seen enough. */
function walkOne(air: RoomAir, { from, to }: { from: number; to: number }, visit: Visit): boolean {
  let at = from;
  for (let i = air.indexAt(at); at < to; i++) {
    const stretch = air.stretch(i);
    if (stretch === null) break;
    const until = Math.min(to, stretch.to);
    if (until <= at) continue;
    const whole = at === stretch.from && until === stretch.to;
    if (!visit(whole ? stretch.step : { ...stretch.step, durationS: (until - at) / 1000 }, at)) return false;
    at = until;
  }
  return true;
}

/** The room's air at a time as it was read; null where it was not. */
export function airAt(stays: readonly Stay[], at: number): { air: RoomAir; reading: AirReading } | null {
  const air = stays.find((stay) => at >= stay.from && at < stay.to)?.air ?? null;
  return air === null || at < air.startsAt ? null : { air, reading: air.readingAt(at) };
}

export type AirBasis = {
  readonly readings: number;
  readonly longestGapMs: number;
  /** Some of it was never read: an ordinary room stands for it. */
  readonly assumed: boolean;
};

/** How well the air between two times was read: how many readings, and the longest time without one. */
export function airBasis(stays: readonly Stay[], { from, to }: { from: number; to: number }): AirBasis {
  let readings = 0;
  let longestGapMs = 0;
  let assumed = false;
  for (const stay of stays) {
    const begin = Math.max(from, stay.from);
    const end = Math.min(to, stay.to);
    if (end < begin || (end === begin && to > from)) continue;
    assumed ||= begin < (stay.air?.startsAt ?? Infinity);
    if (stay.air === null) {
      if (end < to) longestGapMs = Math.max(longestGapMs, end - begin);
      continue;
    }
    const all = stay.air.readings;
    const before = countUpTo(all, begin);
    const after = countUpTo(all, end);
    readings += after - Math.max(0, before - 1);
    let lastAt = all[before - 1]?.at ?? begin;
    for (const { at } of all.slice(before, after)) {
      longestGapMs = Math.max(longestGapMs, at - lastAt);
      lastAt = at;
    }
    // Between two readings the air is drawn straight, so a gap counts whole even where the stay ends in it. Past the last
    // reading the air is a forecast that does not change as the clock goes on: no gap grows there.
    longestGapMs = Math.max(longestGapMs, (all[after]?.at ?? (end < to ? end : lastAt)) - lastAt);
  }
  return { readings, longestGapMs, assumed };
}
