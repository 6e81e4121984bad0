import type { DryStep } from "../physics/dryStep.ts";
import { geometryClasses } from "../trade/geometryClasses.ts";
import type { AirReading, Piece } from "./piece.ts";
import { countUpTo } from "./airLine.ts";
import type { AirMemory, RoomAir } from "./roomAir.ts";
import { roomAir } from "./roomAir.ts";
import type { Surroundings } from "./standing.ts";

/** One stay in a room, epoch ms; `air` is null where the room has no readings. */
export type Stay = { readonly from: number; readonly to: number; readonly air: RoomAir | null };

/**
 * The rooms a piece hung in, in order, from long before its start to the end of time. `lines` are the rooms' last
 * lines of air, for a room that has since been read again.
 */
export function staysOf(
  { rooms, plan }: Piece,
  surroundings: Surroundings,
  lines: AirMemory | null = null,
): readonly Stay[] {
  const { pocketSM } = geometryClasses[plan.geometry ?? "open"] ?? geometryClasses.open;
  return rooms.map(({ roomId, from }, i) => {
    const readings = surroundings.readings.get(roomId);
    const altitudeM = surroundings.rooms.get(roomId)?.altitudeM ?? 0;
    return {
      from: i === 0 ? -Infinity : from,
      to: rooms[i + 1]?.from ?? Infinity,
      air: readings
        ? roomAir(readings, { altitudeM, pocketSM, kept: lines ? { roomId, lines } : undefined })
        : null,
    };
  });
}

/** Everything the drying of a piece rests on besides its own log, by identity. */
export function airSources({ rooms }: Piece, surroundings: Surroundings): readonly unknown[] {
  return rooms.flatMap(({ roomId }) => [
    surroundings.readings.get(roomId),
    surroundings.rooms.get(roomId)?.altitudeM,
  ]);
}

/** Goes through the air a piece hung in, stretch by stretch, until `visit` says it has seen enough. */
export function walkAir(
  stays: readonly Stay[],
  { from, to }: { from: number; to: number },
  visit: (step: DryStep, startAt: number) => boolean,
): void {
  for (const stay of stays) {
    if (stay.air === null) continue;
    let at = Math.max(from, stay.from, stay.air.startsAt);
    const end = Math.min(to, stay.to);
    for (let i = stay.air.indexAt(at); at < end; i++) {
      const stretch = stay.air.stretch(i);
      if (stretch === null) break;
      const until = Math.min(end, stretch.to);
      if (until <= at) continue;
      const whole = at === stretch.from && until === stretch.to;
      if (!visit(whole ? stretch.step : { ...stretch.step, durationS: (until - at) / 1000 }, at)) return;
      at = until;
    }
  }
}

/** The room's air at a time, where there was a reading to know it by. */
export function airAt(stays: readonly Stay[], at: number): { air: RoomAir; reading: AirReading } | null {
  const air = stays.find((stay) => at >= stay.from && at < stay.to)?.air ?? null;
  return air === null || at < air.startsAt ? null : { air, reading: air.readingAt(at) };
}

export type AirBasis = { readonly readings: number; readonly longestGapMs: number };

/** How well the air between two times was read: how many readings, and the longest time without one. */
export function airBasis(stays: readonly Stay[], { from, to }: { from: number; to: number }): AirBasis {
  let readings = 0;
  let longestGapMs = 0;
  for (const stay of stays) {
    const begin = Math.max(from, stay.from);
    const end = Math.min(to, stay.to);
    if (end < begin || (end === begin && to > from)) continue;
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
  return { readings, longestGapMs };
}
