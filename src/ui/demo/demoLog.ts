import { v7 } from "uuid";
import { decide } from "../../logbook/decide.ts";
import type { Command } from "../../logbook/command.ts";
import type { Entry, EntryBodies, EntryType, StreamKind } from "../../logbook/entry.ts";
import { streamOf } from "../../logbook/entry.ts";

const hourMs = 3_600_000;

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
  readonly entries: () => readonly Entry[];
};

export function startDemoLog(now: number, zone: string): DemoLog {
  const streams = new Map<string, Entry[]>();
  let written = 0;
  return {
    now,
    log: (kind, id, type, hoursAgo, body) => {
      const stream = streamOf(kind, id);
      const at = now - Math.round(hoursAgo * hourMs);
      const before = streams.get(stream) ?? [];
      const newId = () => {
        written += 1;
        return demoId(at, written);
      };
      const command = { do: "log", stream, type, body, at } as unknown as Command;
      const decided = decide(before, command, { now: at, zone, device: "demo", newId });
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

/** The same each time for the same moment, so that loading twice is loading once. */
function demoId(at: number, count: number): string {
  const random = new Uint8Array(16);
  new DataView(random.buffer).setUint32(12, count);
  return v7({ msecs: at, seq: count, random });
}
