import { expect, test } from "vitest";
import { standingOf } from "../../../logbook/piece/buildStanding.ts";
import { foldPiece } from "../../../logbook/log/fold.ts";
import { bucketStandingOf } from "../../../logbook/bucket/bucketStanding.ts";
import { findingsFor, reviewFindingsFor } from "../../../rules/all.ts";
import { parseEntry } from "../../../storage/entrySchema.ts";
import { idsOf, entriesOf, surroundingsOf } from "../../../../tests/readDemo.ts";
import { demoPhotoId } from "./demoIds.ts";
import { demoEntries } from "./demoShop.ts";

const now = Date.UTC(2026, 5, 18, 10);
const entries = demoEntries(now, "Europe/Berlin");
const surroundings = surroundingsOf(entries);
const pieceIds = idsOf(entries, "piece");
const standings = pieceIds.map((id) => {
  const piece = foldPiece(id, entriesOf(entries, "piece", id));
  if (piece === null) throw new Error(`${id} did not start`);
  return standingOf(piece, surroundings, now);
});

test("eight pieces in work and five that are through, each in a stream of the demo and named as one", () => {
  expect(pieceIds).toHaveLength(13);
  const through = standings.filter(({ action }) => action.kind === "none").map(({ piece }) => piece.id);
  expect(through.toSorted()).toEqual([
    "demo-cleat",
    "demo-gnomon",
    "demo-hooks",
    "demo-lantern",
    "demo-scraper",
  ]);
  for (const { stream } of entries)
    expect(stream).toMatch(/^(piece|room|bucket|run|melt|pour)\/demo-|^shop\/own$/);
  for (const { piece } of standings) expect(piece.plan.name).toMatch(/^Demo: /);
});

test("the demo passes the gate of a real log and lies wholly in the past", () => {
  for (const entry of entries) {
    expect(parseEntry(entry).ok).toBe(true);
    expect(entry.at).toBeLessThan(now);
  }
  expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
});

test("it tells the good and the bad: sold, flawed with a photo and its cause, scrapped, hollow on a core", () => {
  const of = (id: string) => {
    const found = standings.find(({ piece }) => piece.id === id);
    if (found === undefined) throw new Error(`no ${id}`);
    return found.piece;
  };
  expect(of("demo-hooks")).toMatchObject({ phase: "finished", outcome: { result: "sound" } });
  expect(of("demo-gnomon")).toMatchObject({
    phase: "finished",
    outcome: { result: "flawed", defects: ["misrun"], photos: [demoPhotoId] },
  });
  expect(of("demo-gnomon").outcome?.note).toMatch(/Cause: /);
  expect(of("demo-cleat").phase).toBe("scrapped");
  expect(of("demo-lantern").plan.core?.litre).toBeGreaterThan(0);
  expect(of("demo-dancer").plan.alloyId).toBe("a356");
});

test("the same moment gives the same demo", () => expect(demoEntries(now, "Europe/Berlin")).toEqual(entries));

test("no two pieces have the same thing to do next, or nearly", () => {
  const actions = standings.map(({ action }) => action.kind);
  expect(new Set(actions).size).toBeGreaterThanOrEqual(5);
});

test("the rules find something of every weight in it", () => {
  const found = standings.flatMap((one) => [...findingsFor(one), ...reviewFindingsFor(one)]);
  const levels = new Set(found.map(({ level }) => level));
  expect([...levels].sort()).toEqual(["hold", "note", "watch"]);
});

test("two of its buckets may be dipped from, the third gels and may not", () => {
  const levels = [...surroundings.buckets.values()].map((bucket) => {
    const { health } = bucketStandingOf(bucket, surroundings.shop, now);
    return [bucket.name, health.level, ...health.reasons.map(({ code }) => code)];
  });
  expect(levels).toEqual([
    ["Demo: prime", "fit"],
    ["Demo: backup", "fit"],
    expect.arrayContaining([
      "Demo: old backup",
      "do-not-dip",
      "gels-early",
      "seconds-out-of-band",
      "looks-wrong",
    ]),
  ]);
});

test("no demo coat came from a bucket that nobody had read", () => {
  const found = standings.flatMap((standing) => reviewFindingsFor(standing));
  const ofBuckets = found.filter(({ rule }) => rule === "dipped-from-unfit-bucket");
  expect(ofBuckets.filter(({ variant }) => variant !== "watched")).toEqual([]);
});
