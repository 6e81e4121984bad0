import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { monday, steadyAir, testShop } from "../../../tests/logs/testLog.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { firstRoomId } from "../piece/builtIns.ts";
import { parseEntry } from "../../storage/entrySchema.ts";
import { decide } from "../log/decide.ts";
import { foldPiece } from "../log/fold.ts";
import { builtInRecipe } from "../piece/builtIns.ts";
import { standingOf } from "../piece/buildStanding.ts";
import type { Entry } from "../entries/entry.ts";
import { startPiece, usualKinds } from "./startPiece.ts";

const recipe = builtInRecipe("start-general");
const lastAt = monday - 20 * hourMs;

/** Started at noon on Monday with its coats on, each line through the same door as the app. */
function started(
  kinds: readonly CoatKind[],
  { of = recipe, startedAt = null }: { of?: typeof recipe; startedAt?: number | null } = {},
): readonly Entry[] {
  const plan = { name: "Boot scraper", ...(of === null ? {} : { recipeId: of.id }) };
  const asked = { id: "p1", plan, roomId: firstRoomId, recipe: of, startedAt, on: { kinds, lastAt } };
  let made = 0;
  const moment = {
    now: monday,
    zone: "Europe/Lisbon",
    device: "phone",
    newId: () => `e${String(++made).padStart(4, "0")}`,
  };
  return startPiece(asked).reduce<readonly Entry[]>((entries, command) => {
    const decision = decide(entries, command, moment);
    if (!decision.ok) throw new Error(JSON.stringify(decision.refusal));
    return [...entries, ...decision.entries];
  }, []);
}

test("six coats that were on are six entries in order, the last at its time, all marked and readable", () => {
  const entries = started(usualKinds(6, recipe));
  expect(entries.map((entry) => parseEntry(entry).ok)).toEqual(entries.map(() => true));
  const piece = foldPiece("p1", entries.toReversed());
  expect(piece?.coats.map(({ number, step, kind, beforeLog }) => [number, step, kind, beforeLog])).toEqual([
    [1, 0, "prime", "undated"],
    [2, 1, "prime", "undated"],
    [3, 2, "intermediate", "undated"],
    [4, 3, "backup", "undated"],
    [5, 4, "backup", "undated"],
    [6, 5, "backup", "dated"],
  ]);
  expect(piece?.coats.at(-1)?.dippedAt).toBe(lastAt);
  expect(piece?.startedAt).toBeLessThan(lastAt);
  expect(piece?.coats.every(({ bucketId }) => bucketId === null)).toBe(true);
});

test("a day in the past is the start, and one after the coats gives way to them", () => {
  const weekAgo = monday - 170 * hourMs;
  expect(foldPiece("p1", started(["prime"], { startedAt: weekAgo }))?.startedAt).toBe(weekAgo);
  expect(foldPiece("p1", started(["prime"], { startedAt: monday }))?.startedAt).toBeLessThan(lastAt);
  const bare = startPiece({
    id: "p1",
    plan: { name: "Plaque" },
    roomId: firstRoomId,
    recipe: null,
    startedAt: weekAgo,
  });
  expect(bare).toEqual([expect.objectContaining({ type: "piece-started", at: weekAgo })]);
});

test("a coat of another kind than its step has no stucco, and one beyond the recipe no step", () => {
  const kinds = [...usualKinds(9, recipe), "backup"] as const;
  const piece = foldPiece("p1", started(["prime", "backup", ...kinds.slice(2)]));
  expect(piece?.coats[1]).toMatchObject({ step: 1, kind: "backup", stuccoId: null });
  expect(piece?.coats[0]?.stuccoId).toBe(recipe?.coats[0]?.stuccoId);
  expect(piece?.coats[9]).toMatchObject({ step: null, kind: "backup", stuccoId: null });
  expect(piece?.coats[9]?.beforeLog).toBe("dated");
});

test("the shell's thickness counts them: by the recipe, and by the kind where there is none", () => {
  const shop = testShop(steadyAir({ from: monday, hours: 5 }));
  const wallOf = (of: typeof recipe): readonly number[] => {
    const piece = foldPiece("p1", started(usualKinds(4, of), { of }));
    return piece === null ? [] : standingOf(piece, shop, monday + hourMs).wall.perCoatMm;
  };
  // The kinds of the general recipe, so each coat counts what that recipe's coat does.
  expect(wallOf(recipe)).toHaveLength(4);
  expect(wallOf(null)).toEqual(wallOf(recipe));
  expect(Math.min(...wallOf(null))).toBeGreaterThan(0.2);
});

test("how they dried is not judged: no verdict, no time, no water; the last one dries in the air of now", () => {
  const shop = testShop(steadyAir({ from: monday, hours: 5 }));
  const piece = foldPiece("p1", started(usualKinds(4, recipe)));
  const standing = piece && standingOf(piece, shop, monday + hourMs);
  const beneath = standing?.drying.slice(0, -1) ?? [];
  expect(beneath).toHaveLength(3);
  for (const one of beneath) {
    expect(one).toMatchObject({ reason: "before-log", verdict: "unknown", leftShare: null, evidence: null });
    expect(one.readyAt.likely).toBeNull();
  }
  expect(standing?.outer?.reason).toBeNull();
  expect(standing?.cover?.coat.number).toBe(4);
  expect(standing?.next).toMatchObject({ number: 5, step: 4 });
});
