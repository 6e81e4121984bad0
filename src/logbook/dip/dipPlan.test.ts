import { expect, test } from "vitest";
import { builtInBucket, firstBackupBucketId, firstPrimeBucketId, unusedBucket } from "../piece/builtIns.ts";
import type { Bucket } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import { findingsFor } from "../../rules/all.ts";
import { givenPiece } from "../../../tests/givenPiece.ts";
import { actionWords } from "../../ui/base/format/actionWords.ts";
import { dryingLead } from "../../ui/base/format/coverWords.ts";
import { soonTime } from "../../ui/base/format/time.ts";
import { bucketFor, canTakeCoat, kindsOf, wantedDips } from "./dipPlan.ts";
import { dipWishes } from "./dipWishes.ts";
import { coatGiven, startSession, stillOn } from "./dipSession.ts";
import { tileOf } from "../../ui/making/dip/dipTile.ts";
import {
  coatTitle,
  lastWords,
  planTitle,
  beyondRecipeWords,
  wantedWords,
} from "../../ui/making/dip/dipWords.ts";

const buckets = [builtInBucket(firstPrimeBucketId), builtInBucket(firstBackupBucketId)].flatMap((bucket) =>
  bucket === null ? [] : [bucket],
);
const bucketOf = (id: string, use: Bucket["use"], retired = false): Bucket => ({
  ...unusedBucket,
  id,
  name: id,
  use,
  slurry: "silica",
  retired,
});

/** A piece with `coats` coats a day apart, seen `hours` after the last one. */
function after(coats: number, hours: number, id?: string): Standing {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0);
  given.coats(Array.from({ length: coats }, (_, i) => 1 + i * 24));
  const standing = given.standing(1 + (coats - 1) * 24 + hours);
  return id === undefined ? standing : { ...standing, piece: { ...standing.piece, id } };
}
const itemOf = (standing: Standing) => ({ standing, findings: findingsFor(standing) });
const backup = { bucketId: firstBackupBucketId, kind: "backup" } as const;
const visit = { dipId: "dip", now: 0, prewet: false };

test("the bucket used last is reached for again, if it serves the coat and is in use", () => {
  const all = [...buckets, bucketOf("tall", "backup"), bucketOf("old", "backup", true)];
  expect(bucketFor("backup", all, "tall")?.id).toBe("tall");
  expect(bucketFor("prime", all, "tall")?.id).toBe(firstPrimeBucketId);
  expect(bucketFor("backup", all, "old")?.id).toBe(firstBackupBucketId);
  expect(bucketFor("backup", [bucketOf("p", "prime")], null)).toBeNull();
});

test("one slurry for all gives every coat, a prime bucket no backup", () => {
  expect(kindsOf({ use: "single" })).toEqual(["prime", "intermediate", "backup", "seal"]);
  expect(kindsOf({ use: "prime" })).not.toContain("backup");
  expect(kindsOf({ use: "seal" })).toEqual(["seal"]);
});

test("the dip that serves most pieces now is offered first, the wet ones counted apart", () => {
  const wanted = wantedDips([after(0, 30), after(3, 40), after(4, 40), after(4, 0.5)], buckets);
  expect(wanted).toEqual([
    { ...backup, ready: 2, drying: 1, held: 0 },
    { bucketId: firstPrimeBucketId, kind: "prime", ready: 1, drying: 0, held: 0 },
  ]);
  expect(wanted.map(wantedWords)).toEqual(["2 pieces ready, 1 still drying", "1 piece ready"]);
  const rack = [after(3, 40), after(4, 40)];
  const [held] = wantedDips(rack, buckets, new Set(rack.slice(0, 1)));
  expect(held).toEqual({ ...backup, ready: 1, drying: 0, held: 1 });
  expect(held === undefined ? "" : wantedWords(held)).toBe("1 piece ready, 1 on hold");
});

test("dip menu and timeline name the same bucket for the same dip: the one the newest coat came from", () => {
  const tall = bucketOf("tall", "backup");
  const from = (standing: Standing, bucketId: string): Standing => ({
    ...standing,
    piece: { ...standing.piece, coats: standing.piece.coats.map((coat) => ({ ...coat, bucketId })) },
  });
  for (const bucketId of [firstBackupBucketId, "tall"]) {
    const rack = [from(after(3, 60, "old"), firstBackupBucketId), from(after(4, 40, "new"), bucketId)];
    const all = [...buckets, tall];
    const menu = wantedDips(rack, all).map((dip) => `${dip.kind} ${dip.bucketId}`);
    const timeline = dipWishes(rack, all, rack[0]?.now ?? 0).wanted.map(({ wish }) => wish.group);
    expect(menu).toEqual([`backup ${bucketId}`]);
    expect([...new Set(timeline)]).toEqual(menu);
  }
});

test("a shop with no bucket for a coat is offered no dip of it", () => {
  expect(wantedDips([after(3, 40)], [bucketOf("p", "prime")])).toEqual([]);
});

test("pieces that want the coat come first, then the others, each in rack order", () => {
  const plain = after(3, 40);
  const bare: Standing = { ...after(1, 40, "no-recipe"), recipe: null, next: null };
  const all = [after(1, 40, "prime"), bare, after(4, 40, "b"), after(3, 40, "a")];
  expect(startSession(all, backup, visit).order.map(({ pieceId }) => pieceId)).toEqual([
    "b",
    "a",
    "no-recipe",
    "prime",
  ]);
  expect(canTakeCoat({ ...plain, piece: { ...plain.piece, phase: "burnout" } })).toBe(false);
  expect(canTakeCoat({ ...plain, piece: { ...plain.piece, archived: true } })).toBe(false);
});

test("a piece is done in a visit once its log holds more coats than when the visit began", () => {
  const { piece } = after(3, 40);
  expect(coatGiven(piece, 3)).toBeNull();
  expect(coatGiven(piece, 2)?.number).toBe(3);
});

test("a visit is taken up again within half an hour of its last coat, and not after", () => {
  const [one, two] = [after(3, 40, "one"), after(3, 40, "two")];
  const begun = one.piece.coats[2]?.dippedAt ?? 0;
  const session = startSession([one, two], backup, { ...visit, now: begun - 60_000 });
  const withOpen = {
    ...session,
    order: session.order.map((entry) => (entry.pieceId === "one" ? { ...entry, coats: 2 } : entry)),
  };
  const pieces = new Map([one, two].map(({ piece }) => [piece.id, piece]));
  expect(stillOn(withOpen, pieces, begun + 29 * 60_000)).toBe(true);
  expect(stillOn(withOpen, pieces, begun + 31 * 60_000)).toBe(false);
  expect(stillOn({ ...withOpen, order: [] }, pieces, begun)).toBe(false);
  const allDone = { ...withOpen, leftOut: ["two"] };
  expect(stillOn(allDone, pieces, begun + 60_000)).toBe(true);
  expect(stillOn(allDone, pieces, begun + 3 * 60_000)).toBe(false);
});

test("a dry piece's tile says what the tap logs, and nothing is accepted damp", () => {
  const standing = after(3, 60);
  const tile = tileOf(itemOf(standing), startSession([standing], backup, visit), 3);
  expect(coatTitle(tile)).toBe("Coat 4 · backup · 16–30");
  expect(tile.coat).toEqual({ number: 4, step: 3, kind: "backup", stuccoId: "16-30" });
  expect(tile.damp).toBeNull();
  expect(beyondRecipeWords(tile)).toBeNull();
  expect(lastWords(tile, standing.now, "en-GB")).toBe("Coat 3 is dry");
});

test("a wet one says so plainly with the water still in it, and takes that into the log with the tap", () => {
  const standing = after(4, 0.5);
  const tile = tileOf(itemOf(standing), startSession([standing], backup, visit), 4);
  const words = lastWords(tile, standing.now, "en-GB");
  expect(words).toMatch(/^Coat 4 NOT DRY – about \d+\s% of its water left$/);
  const now = standing.now;
  const lead = tile.cover === null ? null : dryingLead(tile.cover, { now, locale: "en-GB", isDeep: false });
  expect(lead).toBe(`Drying: check by touch from ${soonTime(tile.cover?.checkAt ?? 0, now, "en-GB")}`);
  expect(tile.damp).toEqual({ coatId: standing.outer?.coat.id, leftShare: standing.outer?.leftShare });
});

test("felt damp is said as felt, whatever the sums think", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0);
  given.coats([1, 25, 49]);
  given.feel(110, "damp");
  const { outer, cover, now } = given.standing(110);
  expect(lastWords({ last: outer, cover }, now, "en-GB")).toMatch(/^Coat 3 NOT DRY – felt damp/);
});

test("with no reading of the air the tile says that average air is assumed", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.coats([1]);
  const standing = given.standing(30);
  const tile = tileOf(itemOf(standing), startSession([standing], backup, visit), 1);
  expect(lastWords(tile, standing.now, "en-GB")).toBe("Coat 1 is dry (room not logged: average air assumed)");
});

test("where the recipe wants another kind the tap logs what was dipped, beside the recipe", () => {
  const standing = after(1, 60);
  const tile = tileOf(itemOf(standing), startSession([standing], backup, visit), 1);
  expect(beyondRecipeWords(tile)).toBe("Recipe: prime");
  expect(tile.coat).toEqual({ number: 2, step: null, kind: "backup", stuccoId: "16-30" });
});

test("a bucket called like its coat is not named twice", () => {
  expect(planTitle(backup, buckets)).toBe("Backup");
  expect(planTitle({ bucketId: firstBackupBucketId, kind: "seal" }, buckets)).toBe("Seal from “Backup”");
});

test("before the minimum is over the tile says how long it runs, though the air has dried it", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0, { airC: 25, rh: 0.3, air: "strong" });
  given.coats([1]);
  const at = (hour: number) => tileOf(itemOf(given.standing(hour)), startSession([], backup, visit), 1);
  const before = at(2.9);
  expect(before.last?.verdict).toBe("dry");
  const now = given.standing(2.9).now;
  expect(lastWords(before, now, "en-GB")).toBe("Coat 1 is dry by the air, too soon to cover");
  const lead =
    before.cover === null ? null : dryingLead(before.cover, { now, locale: "en-GB", isDeep: false });
  expect(lead).toMatch(/^Drying: the usual minimum runs to \d\d:\d\d$/);
  expect(before.damp).not.toBeNull();
  expect(lastWords(at(3), given.standing(3).now, "en-GB")).toBe("Coat 1 is dry");
});

test("a hold on a wet recoat is on the tile and takes the piece out of the rack's hands", () => {
  const given = givenPiece({ recipeId: "start-general" });
  given.air(0);
  given.coats([1, 1.2]);
  const item = itemOf(given.standing(1.3));
  expect(tileOf(item, startSession([], backup, visit), 2).hold?.rule).toBe("recoated-before-dry");
  expect(actionWords(item, item.standing.now, "en-GB")).toMatchObject({
    verb: "Hold: no further coat yet",
    turn: "drying",
  });
});
