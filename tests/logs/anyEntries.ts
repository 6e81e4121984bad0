import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { bodiesByKind } from "../../src/logbook/entries/allBodies.ts";
import type { Entry, EntryType } from "../../src/logbook/entries/entry.ts";
import { anyBody, ids } from "./anyBody.ts";
import { monday, testStream } from "./testLog.ts";

/** For tests only: logs with well-shaped bodies in any order, most of them making little sense. */
const linesOf = (...kinds: readonly (keyof typeof bodiesByKind)[]): fc.Arbitrary<Omit<Entry, "id">> =>
  fc.oneof(
    ...kinds.flatMap((kind) =>
      (Object.keys(bodiesByKind[kind]) as EntryType[]).map((type) =>
        fc
          .tuple(fc.integer({ min: -4, max: 40 }), anyBody(type))
          .map(([hours, body]) => envelope(type, monday + hours * hourMs, body)),
      ),
    ),
  );

function envelope(type: string, at: number, body: object): Omit<Entry, "id"> {
  const line = { stream: testStream, type, at, recordedAt: at, zone: "UTC", device: "d", version: 1, body };
  return line as unknown as Omit<Entry, "id">;
}

const anyLine = fc.oneof(
  { weight: 4, arbitrary: linesOf("piece") },
  { weight: 2, arbitrary: linesOf("room", "bucket", "recipe", "shop") },
  { weight: 2, arbitrary: linesOf("run", "melt", "pour") },
  { weight: 1, arbitrary: linesOf("any") },
);

/** What a piece, a run, a melt and a pour begin with, so that the rest falls on something. */
const starts = fc
  .tuple(
    anyBody("piece-started").map((body) => envelope("piece-started", monday, { ...body, roomId: "first" })),
    ...(["run-planned", "melt-planned", "pour-planned"] as const).map((type) =>
      anyBody(type).map((body) => envelope(type, monday, body)),
    ),
  )
  .map((lines) => lines.map((line, i) => ({ ...line, id: i === 0 ? "id0" : `plan${i}` }) as Entry));

/** Most start something. */
export const anyEntries: fc.Arbitrary<readonly Entry[]> = fc
  .tuple(fc.array(anyLine, { maxLength: 14 }), starts, fc.boolean())
  .map(([lines, begun, isBegun]) => {
    const own = lines.map((line, i) => ({ ...line, id: ids[i + 1] ?? `more${i}` }) as Entry);
    return isBegun ? [...begun, ...own] : own;
  });
