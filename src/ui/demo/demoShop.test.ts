import { expect, test } from "vitest";
import { standingOf } from "../../logbook/buildStanding.ts";
import { readingsOf, foldPiece, foldRoom, foldShop } from "../../logbook/fold.ts";
import { builtInRecipe } from "../../logbook/builtIns.ts";
import type { Entry } from "../../logbook/entry.ts";
import type { Surroundings } from "../../logbook/standing.ts";
import { findingsFor } from "../../rules/all.ts";
import { startingRecipes } from "../../trade/startingRecipes.ts";
import { parseEntry } from "../../storage/entrySchema.ts";
import { demoEntries } from "./demoShop.ts";

const now = Date.UTC(2026, 5, 18, 10);
const entries = demoEntries(now, "Europe/Berlin");
const of = (stream: string): readonly Entry[] => entries.filter((entry) => entry.stream === stream);
const pieceIds = [...new Set(entries.map(({ stream }) => stream))]
  .filter((stream) => stream.startsWith("piece/"))
  .map((stream) => stream.slice("piece/".length));

const room = foldRoom("demo-room", of("room/demo-room"));
const surroundings: Surroundings = {
  rooms: new Map(room === null ? [] : [[room.id, room]]),
  readings: new Map([["demo-room", readingsOf(of("room/demo-room"))]]),
  recipes: new Map(
    startingRecipes.flatMap(({ id }) => {
      const recipe = builtInRecipe(id);
      return recipe === null ? [] : [[id, recipe] as const];
    }),
  ),
  shop: foldShop([]),
};
const standings = pieceIds.map((id) => {
  const piece = foldPiece(id, of(`piece/${id}`));
  if (piece === null) throw new Error(`${id} did not start`);
  return standingOf(piece, surroundings, now);
});

test("eight pieces, each in a stream of the demo and named as one", () => {
  expect(pieceIds).toHaveLength(8);
  for (const { stream } of entries) expect(stream).toMatch(/^(piece|room|bucket)\/demo-/);
  for (const { piece } of standings) expect(piece.plan.name).toMatch(/^Demo: /);
});

test("the demo passes the gate of a real log and lies wholly in the past", () => {
  for (const entry of entries) {
    expect(parseEntry(entry).ok).toBe(true);
    expect(entry.at).toBeLessThan(now);
  }
  expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
});

test("the same moment gives the same demo", () => expect(demoEntries(now, "Europe/Berlin")).toEqual(entries));

test("no two pieces have the same thing to do next, or nearly", () => {
  const actions = standings.map(({ action }) => action.kind);
  expect(new Set(actions).size).toBeGreaterThanOrEqual(5);
});

test("the rules find something of every weight in it", () => {
  const levels = new Set(standings.flatMap((standing) => findingsFor(standing)).map(({ level }) => level));
  expect([...levels].sort()).toEqual(["hold", "note", "watch"]);
});
