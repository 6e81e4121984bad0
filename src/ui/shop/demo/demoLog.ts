import { TZDate } from "@date-fns/tz";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { v7 } from "uuid";
import { decide } from "../../../logbook/log/decide.ts";
import type { Command } from "../../../logbook/log/command.ts";
import {
  type Entry,
  type EntryBodies,
  type EntryType,
  type StreamKind,
  streamOf,
} from "../../../logbook/entries/entry.ts";
import { untilOf } from "../../../logbook/entries/packed.ts";

type Write = <T extends EntryType>(
  kind: StreamKind,
  id: string,
  type: T,
  hoursAgo: number,
  body: EntryBodies[T],
) => string;

/** Writes an invented log through the same door as a real one. */
export type DemoLog = {
  readonly now: number;
  /** What people did. Its hours are those of `startWorkDay`: nobody of the demo works at night. */
  readonly log: Write;
  /** What an instrument wrote, day and night: hours before now. */
  readonly logged: Write;
  /** Hours before now of something people did. */
  readonly agoAt: (hoursAgo: number) => number;
  /** The hour of the day so long ago, 0–24, by the clock on the wall now: a change of clocks in between is left out. */
  readonly hourOfDay: (hoursAgo: number) => number;
  readonly entries: () => readonly Entry[];
};

export function startDemoLog(now: number, zone: string): DemoLog {
  const streams = new Map<string, Entry[]>();
  const hourNow = hourIn(zone, now);
  const agoAt = startWorkDay(hourNow);
  let count = 0;
  const logged: Write = (kind, id, type, hoursAgo, body) => {
    const stream = streamOf(kind, id);
    const at = now - Math.round(hoursAgo * hourMs);
    const before = streams.get(stream) ?? [];
    const newId = () => {
      count += 1;
      return demoId(at, count);
    };
    const command = { do: "log", stream, type, body, at } as unknown as Command;
    const written = { now: untilOf({ at, body }), zone, device: "demo", newId };
    const decided = decide(before, command, written);
    if (!decided.ok)
      throw new RangeError(
        `demo ${stream} ${type}: expected to be logged, found ${JSON.stringify(decided.refusal)}`,
      );
    streams.set(stream, [...before, ...decided.entries]);
    return decided.entries[0]?.id ?? "";
  };
  return {
    now,
    logged,
    log: (kind, id, type, hoursAgo, body) => logged(kind, id, type, agoAt(hoursAgo), body),
    agoAt,
    hourOfDay: (hoursAgo) => (((hourNow - hoursAgo) % 24) + 24) % 24,
    entries: () => [...streams.values()].flat(),
  };
}

/** From when to when the demo's people are at work, and when a day's work has got so far as to be shown: clock hours. */
const opensH = 7;
const shownFromH = 9;
const closesH = 20;
/** Hours below this are of the day at work, those above of the days before it. */
const todayH = 8;
/** The clock hour from which the days before count back. */
const middayH = 14;

/**
 * Hours of the demo to hours before now. The last working day goes on while it is day, and ended at eight in the evening
 * by night; what was done on it counts back from its last moment, closer together in a morning that has just begun.
 * What was done before counts back from two in the afternoon of that day, so that it keeps its clock hours.
 */
function startWorkDay(hourNow: number): (hoursAgo: number) => number {
  const isDay = hourNow >= shownFromH && hourNow < closesH;
  const lastH = isDay ? hourNow : closesH;
  const sinceH = isDay ? 0 : (hourNow - closesH + 24) % 24;
  const share = Math.min(1, (lastH - opensH) / (middayH - opensH));
  return (hoursAgo) => (hoursAgo < todayH ? sinceH + hoursAgo * share : sinceH + lastH - middayH + hoursAgo);
}

function hourIn(zone: string, at: number): number {
  const clock = new TZDate(at, zone);
  return clock.getHours() + clock.getMinutes() / 60;
}

/** The same each time for the same moment, so that loading twice is loading once. */
function demoId(at: number, count: number): string {
  const random = new Uint8Array(16);
  new DataView(random.buffer).setUint32(12, count);
  return v7({ msecs: at, seq: count, random });
}
