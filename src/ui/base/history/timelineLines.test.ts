import { expect, test } from "vitest";
import type { Entry, EntryBodies, EntryType } from "../../../logbook/entries/entry.ts";
import { timelineLines } from "./timelineLines.ts";

const line = <T extends EntryType>(id: string, at: number, type: T, body: EntryBodies[T]): Entry =>
  ({ id, stream: "piece/a", type, at, recordedAt: at, zone: "UTC", device: "d", version: 1, body }) as Entry;

const note = (id: string, at: number): Entry => line(id, at, "note-written", { text: id });
const strike = (id: string, at: number, struckId: string): Entry =>
  line(id, at, "entry-struck", { struckId, reason: "slip" });

const told = (entries: readonly Entry[]) =>
  timelineLines(entries).map(({ entry, strike }) => [entry.id, strike?.id ?? null]);

test("the newest line comes first", () => {
  expect(told([note("a", 1), note("b", 2)])).toEqual([
    ["b", null],
    ["a", null],
  ]);
});

test("a struck line stays, with its strike beside it and not as a line of its own", () => {
  expect(told([note("a", 1), note("b", 2), strike("s", 3, "a")])).toEqual([
    ["b", null],
    ["a", "s"],
  ]);
});

test("a line brought back stands again", () => {
  expect(told([note("a", 1), strike("s", 2, "a"), strike("t", 3, "s")])).toEqual([["a", null]]);
});

test("a line struck again after it was brought back tells the second strike", () => {
  const log = [note("a", 1), strike("s", 2, "a"), strike("t", 3, "s"), strike("u", 4, "a")];
  expect(told(log)).toEqual([["a", "u"]]);
});
