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

/** Writes an invented log through the same door as a real one; hours count back from now. */
export type DemoLog = {
  readonly now: number;
  readonly log: <T extends EntryType>(
    kind: StreamKind,
    id: string,
    type: T,
    hoursAgo: number,
    body: EntryBodies[T],
  ) => string;
  /** The hour of the day so long ago, 0–24, by the clock on the wall now: a change of clocks in between is left out. */
  readonly hourOfDay: (hoursAgo: number) => number;
  readonly entries: () => readonly Entry[];
};

export function startDemoLog(now: number, zone: string): DemoLog {
  const streams = new Map<string, Entry[]>();
  const hourNow = hourIn(zone, now);
  let count = 0;
  return {
    now,
    hourOfDay: (hoursAgo) => (((hourNow - hoursAgo) % 24) + 24) % 24,
    log: (kind, id, type, hoursAgo, body) => {
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
    },
    entries: () => [...streams.values()].flat(),
  };
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
