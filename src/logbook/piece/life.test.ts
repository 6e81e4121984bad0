import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "./buildStanding.ts";
import { builtInRecipe } from "./builtIns.ts";
import { rackOrder } from "./rackOrder.ts";
import type { NextAction } from "./action.ts";
import type { Standing } from "./standing.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const shop = testShop(steadyAir({ from: monday, hours: 400 }));
const recipe = builtInRecipe("start-general");
const coats = recipe?.coats ?? [];

const standing = (log: TestLog, hours: number): Standing => standingOf(log.piece(), shop, at(hours));
const action = (log: TestLog, hours: number): NextAction => standing(log, hours).action;

/** A gate finial of 4 kg: eight stuccoed coats and a seal, half a day each. */
function sealedPiece(): TestLog {
  const log = testLog({
    material: "pla",
    alloyId: "c87300",
    metalKg: 4,
    headM: 0.35,
    part: { kind: "round", diameterMm: 120 },
    recipeId: "start-general",
  });
  for (const [i, { kind, stuccoId }] of coats.entries()) {
    const { next } = standing(log, 12 * i);
    expect(next).toMatchObject({ step: i, number: i + 1, kind, stuccoId });
    log.coat(at(12 * i), { kind, stuccoId });
  }
  return log;
}

describe("a gate finial that cracks in burnout and comes out sound", () => {
  test("each step asks for the next, the crack holds it until mended, covered, dried and signed again", () => {
    const log = sealedPiece();
    const end = 12 * 8;
    expect(action(log, end + 0.2)).toMatchObject({ kind: "final-dry" });
    // The sum has the last coat dry within hours; an open shell hangs for half a day all the same.
    expect(standing(log, end + 0.2).outer?.readyAt.late).toBeLessThan(at(end + 12));
    expect(action(log, end + 0.2)).toEqual({ kind: "final-dry", at: at(end + 12) });
    expect(action(log, end + 11.9)).toMatchObject({ kind: "final-dry" });
    expect(action(log, end + 20)).toEqual({ kind: "review" });
    const sign = (hours: number): string =>
      log.tell("review-signed", { name: "Ines", verdict: "clear", passed: [], safety: 3 }, at(hours));
    sign(120);
    expect(action(log, 120)).toEqual({ kind: "burn-out" });
    log.tell("burnout-started", {}, at(121));
    log.tell("burnout-read", { kilnC: 265 }, at(123));
    expect(action(log, 123)).toEqual({ kind: "end-burnout" });

    const crackId = log.tell("crack-found", { kind: "open", stage: "burnout", where: "shoulder" }, at(124));
    expect(standing(log, 124)).toMatchObject({ piece: { phase: "coating" }, action: { kind: "mend" } });
    log.tell("crack-patched", { crackId, how: "slurry and sand" }, at(126));
    log.tell("wire-wrapped", { note: "three turns" }, at(126.5));
    expect(action(log, 127)).toEqual({ kind: "dip", readiness: "ready", at: expect.any(Number) });
    const outside = { step: null, kind: "backup", stuccoId: "16-30" } as const;
    for (const hours of [127, 139, 151]) log.coat(at(hours), outside);
    expect(log.piece().coats.filter(({ afterBurnout }) => afterBurnout)).toHaveLength(3);
    expect(standing(log, 151.5)).toMatchObject({ next: null, action: { kind: "final-dry" } });
    expect(action(log, 170)).toEqual({ kind: "review" });
    sign(171);
    expect(log.piece().reviews.map(({ coats: count }) => count)).toEqual([9, 12]);
    expect(action(log, 171)).toEqual({ kind: "burn-out" });

    log.tell("burnout-started", {}, at(172));
    log.tell("burnout-ended", { result: "clean" }, at(176));
    expect(action(log, 176)).toEqual({ kind: "fire" });
    log.tell("shell-fired", { peakC: 800, holdMin: 180 }, at(180));
    expect(action(log, 180)).toEqual({ kind: "preheat" });
    log.tell("shell-preheated", { shellC: 500 }, at(200));
    expect(action(log, 200)).toEqual({ kind: "pour" });
    const { wall, drying } = standing(log, 200);
    expect(wall.judged).toMatchObject({ word: "carries", loadShare: 1 });
    expect(drying.every(({ verdict }) => verdict === "dry")).toBe(true);

    log.tell("metal-poured", { metalC: 1150, shellC: 490, massKg: 4.2, outOfKilnMin: 2 }, at(201));
    expect(action(log, 201)).toEqual({ kind: "knock-out" });
    log.tell("shell-knocked-out", {}, at(202));
    expect(action(log, 202)).toEqual({ kind: "tell-outcome" });
    log.tell("outcome-told", { result: "sound", defects: [] }, at(203));
    expect(action(log, 203)).toEqual({ kind: "finish" });
    log.tell("piece-finished", { note: "liver of sulphur" }, at(260));
    expect(action(log, 260)).toEqual({ kind: "none" });
    expect(log.piece()).toMatchObject({
      phase: "finished",
      burnouts: [{}, {}],
      outcome: { result: "sound" },
    });
  });

  test("a shell mended after its pattern is gone goes to the fire, not to burnout", () => {
    const log = sealedPiece();
    log.tell("burnout-started", {}, at(121));
    log.tell("burnout-ended", { result: "clean" }, at(125));
    const crackId = log.tell("crack-found", { kind: "hairline", stage: "firing", where: "cup" }, at(126));
    log.tell("crack-patched", { crackId, how: "slurry" }, at(127));
    log.coat(at(128), { step: null });
    log.tell("review-signed", { name: "I", verdict: "watch", passed: [], safety: 3 }, at(150));
    expect(action(log, 150)).toEqual({ kind: "fire" });
  });

  test("a shell that ran out has nothing more to be done to it", () => {
    const log = sealedPiece();
    log.tell("metal-poured", { metalC: 1150, shellC: null, massKg: null, outOfKilnMin: null }, at(120));
    log.tell("outcome-told", { result: "lost", defects: ["run-out"] }, at(121));
    expect(action(log, 121)).toEqual({ kind: "none" });
  });
});

describe("the next coat", () => {
  test("follows the furthest step dipped; a skipped one is passed over, a struck one not asked for again", () => {
    const log = testLog({ recipeId: "start-general" });
    log.coat(at(0), { step: 0 });
    log.coat(at(12), { step: 1 });
    log.tell("coat-skipped", { step: 2, reason: "small piece" }, at(20));
    expect(standing(log, 24).next).toMatchObject({ step: 3, number: 3, kind: "backup" });
    log.coat(at(24), { step: 3 });
    log.run(
      { do: "strike", stream: "piece/heron", entryId: log.piece().coats[0]?.id ?? "", reason: "" },
      at(25),
    );
    expect(standing(log, 26).next).toMatchObject({ step: 4, number: 3 });
  });

  test("a skip far ahead leaves the steps before it to be done", () => {
    const log = testLog({ recipeId: "start-general" });
    log.tell("coat-skipped", { step: 8, reason: "no seal" }, at(1));
    expect(standing(log, 2).next).toMatchObject({ step: 0 });
  });

  test("without a recipe a piece is dipped as long as its maker likes", () => {
    const log = testLog();
    expect(standing(log, 0)).toMatchObject({
      next: null,
      coatsPlanned: null,
      action: { kind: "dip", readiness: "ready", at: null },
    });
    log.coat(at(0));
    expect(action(log, 0.1)).toMatchObject({ kind: "dip", readiness: "drying" });
    expect(action(log, 24)).toMatchObject({ kind: "dip", readiness: "ready" });
  });
});

describe("the rack", () => {
  const named = (name: string, build: (log: TestLog) => void, start = monday): Standing => {
    const log = testLog({ name, recipeId: "start-general" }, start);
    build(log);
    return standing(log, 120);
  };
  const dipped = (hours: number) => (log: TestLog) => void log.coat(at(hours), { step: 0 });

  test("what needs hands comes first: hot shells, ready coats, mends, reviews; then what dries; then the done", () => {
    const pieces = [
      named("scrapped", (log) => void log.tell("piece-scrapped", { reason: "fell" }, at(50))),
      named("drying", dipped(119.9)),
      named("cracked", (log) => {
        log.coat(at(10), { step: 0 });
        log.tell("crack-found", { kind: "open", stage: "coating", where: "foot" }, at(20));
      }),
      named("ready since Thursday", dipped(80)),
      named("ready since Wednesday", dipped(50)),
      named("in the kiln", (log) => {
        log.coat(at(10), { step: 0 });
        log.tell("burnout-started", {}, at(100));
      }),
      named("hot", (log) => {
        log.coat(at(10), { step: 0 });
        log.tell("shell-fired", { peakC: 860, holdMin: 60 }, at(110));
        log.tell("shell-preheated", { shellC: 500 }, at(119));
      }),
      named("nobody reads its room", (log) => void log.coat(at(50), { step: 0, roomId: "attic" })),
    ];
    const order = pieces.toSorted(rackOrder).map(({ piece }) => piece.plan.name);
    expect(order).toEqual([
      "hot",
      "ready since Wednesday",
      "nobody reads its room",
      "ready since Thursday",
      "cracked",
      "in the kiln",
      "drying",
      "scrapped",
    ]);
    expect(
      pieces
        .toReversed()
        .toSorted(rackOrder)
        .map(({ piece }) => piece.plan.name),
    ).toEqual(order);
  });
});
