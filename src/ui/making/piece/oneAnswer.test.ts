import { millisecondsInHour as hourMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { dayOne, givenCoated, givenPiece } from "../../../../tests/givenPiece.ts";
import { fireFacts } from "../../../logbook/fire/fireFacts.ts";
import { soundWhy } from "../../../logbook/pour/pourSheetWhys.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { findingsFor, reviewFindingsFor, reviewVerdict } from "../../../rules/all.ts";
import { dipWishes } from "../../../logbook/dip/dipWishes.ts";
import { tileOf } from "../dip/dipTile.ts";
import { lastState } from "../dip/dipWords.ts";
import { heldStandings } from "../../../rules/coverHold.ts";
import { dueTimeWords, dueWords } from "../due/dueWords.ts";
import { duesOf } from "../due/duesOf.ts";
import { rowWords } from "../timeline/timelineWords.ts";
import { dueTimes } from "../../base/alarm/dueTimes.ts";
import { eventOf } from "../../base/alarm/dueCalendar.ts";
import { coatRing } from "../due/coatRings.ts";
import { leastWords } from "../finalDry/finalDryWords.ts";
import { actionWords } from "../../base/format/actionWords.ts";
import { coverLine } from "../../base/format/coverWords.ts";
import { clockTime, soonTime } from "../../base/format/time.ts";
import { dampUnder } from "../log/coatDipped.ts";
import { roomRows } from "../timeline/timelineRows.ts";

const itemOf = (standing: Standing) => ({ standing, findings: findingsFor(standing) });
const bucket = { bucketId: "first-backup", kind: "backup" } as const;
const session = { ...bucket, dipId: "dip", startedAt: 0, prewet: false, order: [], leftOut: [] };
const rowOf = (standing: Standing) =>
  roomRows([standing], { from: standing.now, to: standing.now + 48 * hourMs })[0]?.rows[0];

const slowAir = { airC: 18, rh: 0.6, air: "still" } as const;
const quickAir = { airC: 30, rh: 0.25, air: "tunnel" } as const;

/** Four coats a day apart: in slow air drying, then to check, then dry; in quick air its minimum alone speaks. */
function coatedIn(air: typeof slowAir | typeof quickAir) {
  const piece = givenPiece({ recipeId: "start-general" });
  piece.air(0, air);
  piece.coats([1, 25, 49, 73]);
  return piece;
}

test.each([
  { air: slowAir, through: ["drying", "check", "dry"] },
  { air: quickAir, through: ["drying", "dry"] },
])(
  "a coat between coats: tile, rack, piece, due, timeline and dip plan give one state and one time an hour",
  ({ air, through }) => {
    const piece = coatedIn(air);
    const states = new Set<string>();
    for (let hour = 73.1; hour < 110; hour += 0.5) {
      const standing = piece.standing(hour);
      const { cover, now, action } = standing;
      if (cover === null) throw new Error("no coat");
      states.add(cover.state);
      const tile = tileOf(itemOf(standing), session, 4);
      const [due] = dueTimes([standing]);
      const row = rowOf(standing);
      const [wanted] = dipWishes([standing], [], now).wanted;
      const { turn, verb, when } = actionWords(itemOf(standing), now, "en-GB");
      const say = (at: number | null): string => (at === null ? "no time" : soonTime(at, now, "en-GB"));
      const isDry = cover.state === "dry";
      expect(lastState(tile.cover)).toBe(
        { dry: "dry", check: "maybe", drying: "wet", unknown: "unknown" }[cover.state],
      );
      expect(tile.damp === null).toBe(isDry);
      expect(dampUnder(standing) === null).toBe(isDry);
      expect(action).toMatchObject({
        readiness: { dry: "ready", check: "maybe", drying: "drying", unknown: "unknown" }[cover.state],
        at: isDry ? cover.dryAt : cover.checkAt,
      });
      expect(turn).toBe(cover.state === "drying" ? "drying" : "hands");
      expect(due?.dueMs).toBe(cover.checkAt);
      expect(row).toMatchObject({ isReady: isDry, window: { from: cover.checkAt, late: cover.dryAt } });
      expect(wanted?.wish).toMatchObject(
        isDry ? { likely: now, late: now } : { likely: cover.checkAt, late: cover.dryAt },
      );
      expect(`${verb}; ${when}`).toContain(say(isDry ? cover.dryAt : cover.checkAt));
      expect(coverLine(cover, now, "en-GB")).toContain(clockTime(cover.dryAt ?? 0, "en-GB"));
    }
    expect([...states]).toEqual(through);
  },
);

test("the timeline follows what was measured: a coat weighed dry is ready there since that weighing", () => {
  const piece = coatedIn(slowAir);
  const coatId = piece.standing(74).outer?.coat.id ?? "";
  for (const [hour, massG] of [
    [75, 1240.1],
    [76.1, 1240],
  ] as const)
    piece.log(hour, "dryness-seen", { method: "weight", massG, coatId });
  const standing = piece.standing(76.2);
  expect(rowOf(standing)).toMatchObject({ isReady: true, window: { late: dayOne + 76.1 * hourMs } });
  expect(dueTimes([standing])[0]?.dueMs).toBe(dayOne + 76.1 * hourMs);
  expect(standing.action).toEqual({ kind: "dip", readiness: "ready", at: dayOne + 76.1 * hourMs });
});

test("a finished shell: review, finding, kiln plan, final dry, due, calendar and timeline give one moment", () => {
  for (const tapH of [null, 85, 90, 95.5]) {
    const piece = givenCoated();
    if (tapH !== null) piece.feel(tapH, "dry");
    for (let hour = 84.2; hour < 100; hour += 0.7) {
      if (tapH !== null && hour < tapH) continue;
      const standing = piece.standing(hour);
      const { forFire, now, action } = standing;
      if (forFire === null) throw new Error("no coat");
      const isDry = hour >= 96;
      expect(forFire).toMatchObject({ state: isDry ? "dry" : "drying", dryAt: dayOne + 96 * hourMs });
      const found = reviewFindingsFor(standing).filter(({ rule }) => rule === "last-coat-damp");
      expect(found.map(({ level }) => level)).toEqual(isDry ? [] : ["hold"]);
      if (!isDry) expect(found[0]?.figures["dryAt"]?.value).toBe(forFire.dryAt);
      expect(reviewVerdict(reviewFindingsFor(standing)) === "hold").toBe(!isDry);
      expect(fireFacts(standing, "fused-silica").damp.state).toBe(isDry ? "dry" : "damp");
      expect(action).toEqual(isDry ? { kind: "review" } : { kind: "final-dry", at: forFire.dryAt });
      const [due] = dueTimes([standing]);
      expect(due).toMatchObject({ allows: "review", dueMs: forFire.dryAt });
      expect(due && eventOf(coatRing(due), 1, () => "X").summary).toBe(
        "Heron: final dry, review not before X",
      );
      expect(rowOf(standing)).toMatchObject({
        wants: "review",
        isReady: isDry,
        window: { late: forFire.dryAt },
      });
      expect(leastWords(forFire, now, "en-GB")).toBe(
        `${isDry ? "over since" : "review not before"} ${soonTime(dayOne + 96 * hourMs, now, "en-GB")}`,
      );
    }
  }
});

test("a coat put on a wet one: rack, due list, alarm, timeline and dip plan all say that it is held", () => {
  const piece = givenPiece({ recipeId: "start-general" });
  piece.air(0, slowAir);
  piece.coats([1, 1.3]);
  const standing = piece.standing(2);
  const item = { ...itemOf(standing), worst: "hold" } as const;
  expect(actionWords(item, standing.now, "en-GB").verb).toBe("Hold: no further coat yet");
  const held = heldStandings([item]);
  expect([...held]).toEqual([standing]);
  const [due] = duesOf([item]);
  if (due === undefined) throw new Error("no due time");
  expect(dueWords(due)).toBe("Heron: check coat 2 – hold: no further coat yet");
  expect(dueTimeWords(due, standing.now, "en-GB")).toMatch(/; hold: no further coat yet$/);
  expect(eventOf(coatRing(due), 1, () => "X").description).toContain("Hold: no further coat yet.");
  const row = roomRows([standing], { from: standing.now, to: standing.now + 48 * hourMs }, held)[0]?.rows[0];
  expect(row).toMatchObject({ isHeld: true, isReady: false });
  expect(row && rowWords(row, "en-GB")).toMatch(/^hold, no further coat; /);
  expect(dipWishes([standing], [], standing.now, held)).toMatchObject({ wanted: [], held: [standing] });
  expect(tileOf(item, session, 2).hold).not.toBeNull();
});

test("a wet patch: page, review, kiln plan and sheet say the same of it, and its own word ends it in all", () => {
  const piece = givenCoated();
  const crackId = piece.log(121, "crack-found", { kind: "hairline", stage: "coating", where: "ear" });
  piece.log(122, "crack-patched", { crackId, how: "slurry" });
  piece.feel(123, "dry");
  const wet = piece.standing(130);
  const words = (standing: Standing) => actionWords(itemOf(standing), standing.now, "en-GB").when;
  expect(words(wet)).toBe("1 crack, repaired, not yet dry");
  expect(reviewVerdict(reviewFindingsFor(wet))).toBe("hold");
  expect(fireFacts(wet, "fused-silica").damp).toEqual({ state: "patched-wet", source: "patched" });
  expect(soundWhy(itemOf(wet)).why).toEqual([{ shell: null, code: "patch-not-dry" }]);
  piece.log(131, "patch-dried", { crackId });
  const dry = piece.standing(132);
  expect(words(dry)).toBeNull();
  expect(reviewVerdict(reviewFindingsFor(dry))).toBe("clear");
  expect(fireFacts(dry, "fused-silica").damp.state).toBe("dry");
  expect(soundWhy(itemOf(dry)).why).toMatchObject([{ code: "look-for-cracks" }]);
});
