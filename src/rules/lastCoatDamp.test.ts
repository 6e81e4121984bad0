import { expect, test } from "vitest";
import { dayOne, givenCoated, givenPiece, knownPlan, told, unhurried } from "../../tests/givenPiece.ts";
import { lastCoatDamp } from "./lastCoatDamp.ts";

const { readyAt } = givenCoated().standing(84.1).outer ?? { readyAt: { early: null, late: null } };
const hourOf = (at: number | null): number => ((at ?? NaN) - dayOne) / 3_600_000;
const earlyH = hourOf(readyAt.early);
const lateH = hourOf(readyAt.late);

/** All coats on and no reading of the room, ever. */
function silent() {
  const piece = givenPiece(knownPlan);
  piece.coats(unhurried);
  return piece;
}

test("an open shell is held to the minute for twelve hours after its last dip", () => {
  const piece = givenCoated();
  expect(lateH).toBeLessThan(95);
  for (const hour of [84.1, earlyH + 0.1, lateH + 1, 95.99])
    expect(told(lastCoatDamp(piece.standing(hour)))).toEqual(["hold hours"]);
  expect(lastCoatDamp(piece.standing(96))).toEqual([]);
  const [found] = lastCoatDamp(piece.standing(90));
  expect(found?.figures["dryAt"]?.value).toBe(dayOne + 96 * 3_600_000);
});

test("while coats are to come, a damp one is no last one", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  piece.coat(1);
  expect(lastCoatDamp(piece.standing(1.1))).toEqual([]);
});

test("with nothing logged of the air or the coat, its dryness is unknown and holds", () => {
  expect(told(lastCoatDamp(silent().standing(300)))).toEqual(["hold unknown"]);
});

test("felt dry a day later, a shell in an unread room is still held: a hand feels the outer film", () => {
  const piece = silent();
  piece.feel(110, "dry");
  const [found] = lastCoatDamp(piece.standing(111));
  expect(found).toMatchObject({ level: "hold", variant: "unknown", texts: { touched: "yes" } });
});

test("felt damp, it holds whatever the sum says", () => {
  const piece = givenCoated();
  piece.feel(110, "damp");
  expect(told(lastCoatDamp(piece.standing(110.1)))).toEqual(["hold air"]);
});

test("a touch never lets it go: neither minutes after the dip nor when the air has nearly dried it", () => {
  for (const hour of [84.3, earlyH + 0.2, 95.9]) {
    const piece = givenCoated();
    piece.feel(hour, "dry");
    expect(told(lastCoatDamp(piece.standing(hour + 0.05)))).toEqual(["hold hours"]);
    expect(lastCoatDamp(piece.standing(96))).toEqual([]);
  }
});

test("a burnout begun on a damp shell is a hold while it runs and one to watch after", () => {
  const piece = givenCoated();
  piece.log(84.5, "burnout-started", {});
  expect(told(lastCoatDamp(piece.standing(84.6)))).toEqual(["hold burnout-damp"]);
  piece.log(87, "burnout-ended", { result: "clean" });
  expect(told(lastCoatDamp(piece.standing(87.1)))).toEqual(["watch burnout-damp"]);
  piece.log(88, "shell-fired", { peakC: 850, holdMin: 60 });
  expect(lastCoatDamp(piece.standing(88.1))).toEqual([]);
});

test("a burnout begun on a dry shell is nothing to speak of", () => {
  const piece = givenCoated();
  piece.log(100, "burnout-started", {});
  expect(lastCoatDamp(piece.standing(101))).toEqual([]);
  piece.log(104, "burnout-ended", { result: "clean" });
  expect(lastCoatDamp(piece.standing(105))).toEqual([]);
});

test("a burnout begun on a shell of which nothing is known is one to watch, also when it has ended", () => {
  const piece = silent();
  piece.log(120, "burnout-started", {});
  expect(told(lastCoatDamp(piece.standing(121)))).toEqual(["watch burnout-unknown"]);
  piece.log(124, "burnout-ended", { result: "clean" });
  expect(told(lastCoatDamp(piece.standing(125)))).toEqual(["watch burnout-unknown"]);
});

test("a burnout begun four hours after the last dip began on a damp shell, dry by the air or not", () => {
  const piece = givenCoated();
  piece.log(lateH + 1, "burnout-started", {});
  expect(told(lastCoatDamp(piece.standing(lateH + 1.5)))).toEqual(["hold burnout-damp"]);
});

test("with a recess it is held for a day, and longer where the recess dries later by the air", () => {
  const piece = givenCoated({ pockets: ["recess"] });
  expect(piece.standing(lateH + 1).outer?.verdict).toBe("dry");
  const { dryAt, by } = piece.standing(90).forFire ?? { dryAt: null, by: null };
  const dryH = hourOf(dryAt);
  expect(dryH).toBeGreaterThanOrEqual(84 + 24);
  expect(told(lastCoatDamp(piece.standing(dryH - 0.1)))).toEqual([`hold ${by}`]);
  expect(lastCoatDamp(piece.standing(dryH + 0.01))).toEqual([]);
});
