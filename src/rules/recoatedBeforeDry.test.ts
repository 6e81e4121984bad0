import { expect, test } from "vitest";
import { dayOne, givenPiece, knownPlan, told } from "../../tests/givenPiece.ts";
import { recoatedBeforeDry } from "./recoatedBeforeDry.ts";

/** A first prime dipped at hour 1 in steady, known air. */
function givenPrime() {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  const prime = piece.coat(1);
  const { early, late } = piece.standing(1.01).outer?.readyAt ?? { early: null, late: null };
  const hourOf = (at: number | null): number => ((at ?? NaN) - dayOne) / 3_600_000;
  return { piece, prime, earlyH: hourOf(early), lateH: hourOf(late) };
}

test("a coat put on before even the early time is a hold, with both entries and the water left", () => {
  const { piece, prime, earlyH } = givenPrime();
  const second = piece.coat(earlyH - 0.05);
  const [found] = recoatedBeforeDry(piece.standing(earlyH));
  expect(found).toMatchObject({ level: "hold", variant: "wet" });
  expect(found?.entries).toEqual([prime, second]);
  expect(found?.figures["leftShare"]?.value).toBeGreaterThan(0.3);
  const likelyH = ((givenPrime().piece.standing(1.01).outer?.readyAt.likely ?? NaN) - dayOne) / 3_600_000 - 1;
  expect(Math.abs((found?.figures["neededH"]?.value ?? NaN) / likelyH - 1)).toBeLessThan(0.02);
  expect(found?.figures["stoodH"]?.value).toBeCloseTo(earlyH - 1.05, 6);
});

test("a coat put on between early and late is one to watch", () => {
  const { piece, earlyH } = givenPrime();
  piece.coat(earlyH + 0.02);
  expect(told(recoatedBeforeDry(piece.standing(earlyH + 0.03)))).toEqual(["watch maybe"]);
});

test("a coat put on after the late time is nothing to speak of", () => {
  const { piece, lateH } = givenPrime();
  piece.coat(lateH + 0.01);
  expect(recoatedBeforeDry(piece.standing(lateH + 0.02))).toEqual([]);
});

test("accepting the damp coat with the tap keeps the finding", () => {
  const { piece, prime } = givenPrime();
  piece.coat(1.2, { acceptedDamp: { coatId: prime, leftShare: 0.8 } });
  expect(told(recoatedBeforeDry(piece.standing(1.3)))).toEqual(["hold wet"]);
  expect(recoatedBeforeDry(piece.standing(1.3))[0]?.texts["accepted"]).toBe("1");
});

test("a coat that was felt damp counts as wet, however long it hung", () => {
  const { piece } = givenPrime();
  piece.feel(9, "wet");
  piece.coat(9.1);
  expect(told(recoatedBeforeDry(piece.standing(9.2)))).toEqual(["hold wet"]);
});

test("once the shell has dried through, the damp coat is only told", () => {
  const { piece } = givenPrime();
  piece.coat(1.2);
  expect(told(recoatedBeforeDry(piece.standing(1.3)))).toEqual(["hold wet"]);
  expect(told(recoatedBeforeDry(piece.standing(20)))).toEqual(["note dried-since"]);
});

test("fired before it had dried, the shell has a weak seam to watch", () => {
  const { piece } = givenPrime();
  piece.coat(1.2);
  piece.log(1.5, "shell-fired", { peakC: 850, holdMin: 60 });
  expect(told(recoatedBeforeDry(piece.standing(2)))).toEqual(["watch weak"]);
});

test("a burnout that was stopped cold drives no water out", () => {
  const { piece } = givenPrime();
  piece.coat(1.2);
  piece.log(1.3, "burnout-started", {});
  piece.log(1.31, "burnout-read", { kilnC: 60 });
  piece.log(1.32, "burnout-ended", { result: "stopped" });
  expect(told(recoatedBeforeDry(piece.standing(1.35)))).toEqual(["hold wet"]);
});

test("a coat over one that the fire had dried is no damp recoat", () => {
  const { piece } = givenPrime();
  piece.log(1.2, "shell-fired", { peakC: 850, holdMin: 60 });
  piece.coat(1.3);
  expect(recoatedBeforeDry(piece.standing(1.4))).toEqual([]);
});

test("with no room reading only what is wet at the dry end of an ordinary room holds", () => {
  for (const [hours, says] of [
    [0.5, ["hold wet"]],
    [2, ["watch maybe"]],
    [24, []],
  ] as const) {
    const piece = givenPiece(knownPlan);
    piece.coats([1, 1 + hours]);
    expect(told(recoatedBeforeDry(piece.standing(1.2 + hours)))).toEqual(says);
  }
});

test("felt wet two hours after the dip, in a room nobody reads, and covered a day or a week later, it is no hold", () => {
  for (const hours of [24, 44, 168]) {
    const piece = givenPiece(knownPlan);
    piece.coat(1);
    piece.feel(3, "wet");
    piece.coat(1 + hours);
    const standing = piece.standing(2 + hours);
    expect(told(recoatedBeforeDry(standing)).filter((one) => one.startsWith("hold"))).toEqual([]);
    expect(standing.drying[0]?.leftShare ?? NaN).toBeLessThan(0.2);
    expect(standing.wall.judged?.loadShare).toBe(1);
  }
});

test("without readings, a coat felt dry after one hour is perhaps dry", () => {
  const piece = givenPiece(knownPlan);
  piece.coat(1);
  piece.feel(2, "dry");
  piece.coat(2.1);
  expect(recoatedBeforeDry(piece.standing(2.2))).toMatchObject([
    { level: "watch", variant: "maybe", texts: { which: "1" } },
  ]);
});

test("a single coat has nothing over it", () => {
  const { piece } = givenPrime();
  expect(recoatedBeforeDry(piece.standing(1.1))).toEqual([]);
});

test("several coats that say the same are one finding, with all of them and all their entries", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  const ids = [piece.coat(1), piece.coat(1.2), piece.coat(1.5)];
  const found = recoatedBeforeDry(piece.standing(1.6));
  expect(told(found)).toEqual(["hold wet"]);
  expect(found[0]?.texts["which"]).toBe("1, 2");
  expect(new Set(found[0]?.entries)).toEqual(new Set(ids));
});

test("coats that stand differently are told apart, the worse first", () => {
  const { piece, earlyH } = givenPrime();
  piece.coat(earlyH + 0.02);
  piece.coat(earlyH + 0.04);
  expect(told(recoatedBeforeDry(piece.standing(earlyH + 0.05)))).toEqual(["hold wet", "watch maybe"]);
});

test("what has dried since is past", () => {
  const { piece } = givenPrime();
  piece.coat(1.2);
  expect(recoatedBeforeDry(piece.standing(1.3))[0]?.past).toBeUndefined();
  expect(recoatedBeforeDry(piece.standing(20))[0]?.past).toBe(true);
});

test("what was said at the dip is what the finding says, whatever is read of the air after it", () => {
  const piece = givenPiece();
  piece.air(0, { airC: 20, rh: 0.55, air: "still" });
  piece.coat(1);
  const said = piece.standing(1.7).saying;
  piece.coat(1.7, { said: said ?? undefined });
  const figuresAt = (hour: number) => recoatedBeforeDry(piece.standing(hour))[0]?.figures;
  const then = figuresAt(1.71);
  expect(then?.["leftShare"]?.value).toBe(said?.leftShare);
  expect(then?.["neededH"]?.value).toBe(said?.neededH);
  piece.air(1.75, { airC: 30, rh: 0.2, air: "strong" });
  expect(figuresAt(1.8)).toEqual(then);
  const [found] = recoatedBeforeDry(piece.standing(1.8));
  expect(found?.said?.kept).toMatchObject({ leftShare: said?.leftShare, anew: null });
});
