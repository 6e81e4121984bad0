import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { effective, settle } from "./effective.ts";
import type { Entry } from "../entries/entry.ts";

const line = (id: string, at: number, stream = "piece/a") => ({
  id,
  stream,
  at,
  recordedAt: at,
  zone: "UTC",
  device: "d",
  version: 1,
});
const note = (id: string, at = 1, stream?: string): Entry => ({
  ...line(id, at, stream),
  type: "note-written",
  body: { text: id },
});
const strike = (id: string, struckId: string, at = 2, stream?: string, replacedBy?: string): Entry => ({
  ...line(id, at, stream),
  type: "entry-struck",
  body: { struckId, reason: "slip", replacedBy },
});
const ids = (entries: readonly Entry[]): readonly string[] => effective(entries).map(({ id }) => id);

describe("striking", () => {
  test("a struck entry is gone and the others stay in order of when they happened", () => {
    expect(ids([note("b", 2), note("c", 3), note("a", 1), strike("s", "b", 4)])).toEqual(["a", "c"]);
  });

  test("striking the strike brings the entry back, striking that one takes it out again", () => {
    const log = [note("a"), strike("s", "a"), strike("t", "s", 3)];
    expect(ids(log)).toEqual(["a"]);
    expect(ids([...log, strike("u", "t", 4)])).toEqual([]);
  });

  test("a strike only counts in its own stream", () => {
    expect(ids([note("a"), strike("s", "a", 2, "piece/b")])).toEqual(["a"]);
  });

  test("two strikes on one entry need both to be struck before it comes back", () => {
    const log = [note("a"), strike("s", "a"), strike("t", "a", 3), strike("u", "s", 4)];
    expect(ids(log)).toEqual([]);
    expect(ids([...log, strike("v", "t", 5)])).toEqual(["a"]);
  });

  test("strikes that strike each other in a ring, or themselves, count for nothing", () => {
    expect(ids([note("a"), strike("s", "t"), strike("t", "s")])).toEqual(["a"]);
    expect(ids([note("a"), strike("s", "s")])).toEqual(["a"]);
    expect(ids([note("a"), strike("s", "t"), strike("t", "u"), strike("u", "s")])).toEqual(["a"]);
  });

  test("a strike on a ring's way does not reach past it", () => {
    const ring = [note("a"), strike("s", "t"), strike("t", "s"), strike("u", "a", 3)];
    expect(ids(ring)).toEqual([]);
  });

  test("an entry twice in the list counts once, and an unknown type not at all", () => {
    const later = { ...note("z"), type: "from-a-newer-version" } as unknown as Entry;
    expect(ids([note("a"), note("a"), later])).toEqual(["a"]);
  });

  test("what spoke of a corrected entry speaks of its replacement, through several corrections", () => {
    const { follow } = settle([
      note("a"),
      note("b"),
      note("c"),
      strike("s", "a", 2, undefined, "b"),
      strike("t", "b", 3, undefined, "c"),
    ]);
    expect(follow("a")).toBe("c");
    expect(follow("c")).toBe("c");
    expect(follow("never seen")).toBe("never seen");
  });

  test("replacements that name each other end somewhere", () => {
    const { follow } = settle([
      note("a"),
      note("b"),
      strike("s", "a", 2, undefined, "b"),
      strike("t", "b", 3, undefined, "a"),
    ]);
    expect(["a", "b"]).toContain(follow("a"));
  });
});

describe("laws", () => {
  const names = ["a", "b", "c", "s", "t", "u", "v"] as const;
  const anyLog = fc.uniqueArray(
    fc.record({
      id: fc.constantFrom(...names),
      at: fc.integer({ min: 0, max: 5 }),
      target: fc.option(fc.constantFrom(...names), { nil: null }),
    }),
    { selector: ({ id }) => id },
  );
  const built = anyLog.map((rows) =>
    rows.map(({ id, at, target }) => (target === null ? note(id, at) : strike(id, target, at))),
  );

  test("what stands does not depend on the order the entries came in", () =>
    fc.assert(
      fc.property(
        built.chain((log) => fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length }))),
        ([log, shuffled]) => {
          expect(ids(shuffled)).toEqual(ids(log));
        },
      ),
    ));

  test("a fresh strike on what stands takes out that entry and no other; striking it gives all back", () =>
    fc.assert(
      fc.property(built, (log) => {
        const before = ids(log);
        const target = before[0];
        fc.pre(target !== undefined);
        const struck = [...log, strike("y", target ?? "", 9)];
        expect(ids(struck)).toEqual(before.slice(1));
        expect(ids([...struck, strike("z", "y", 10)])).toEqual(before);
      }),
    ));
});
