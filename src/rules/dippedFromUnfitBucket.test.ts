import { describe, expect, test } from "vitest";
import { givenPiece, knownPlan, told, type GivenPiece } from "../../tests/givenPiece.ts";
import { dippedFromUnfitBucket } from "./dippedFromUnfitBucket.ts";

const aims = {
  name: "Backup",
  use: "backup",
  slurry: "fused silica",
  flourId: "fused-silica",
  cupId: "zahn-4",
  lowS: 12,
  highS: 16,
  slurryC: 22,
} as const;
const coatFrom = (piece: GivenPiece, hour: number): string =>
  piece.coat(hour, { kind: "backup", stuccoId: "16-30", step: null, bucketId: "first-backup" });
const found = (piece: GivenPiece, hour: number) => dippedFromUnfitBucket(piece.standing(hour));

/** A piece, and a bucket that is set up and has been read at hour 1. */
function given(cupS: number): GivenPiece {
  const piece = givenPiece(knownPlan);
  piece.bucket(0.5, "bucket-set", aims);
  piece.bucket(1, "bucket-read", { cupId: "zahn-4", cupS, slurryC: 22 });
  return piece;
}

describe("a coat from a bucket", () => {
  test("read within its band says nothing, on either edge of the band", () => {
    for (const cupS of [12, 14, 16]) {
      const piece = given(cupS);
      coatFrom(piece, 2);
      expect(found(piece, 3)).toEqual([]);
    }
  });

  test("out of its band on either side is one to watch, with what was wrong and the coats it touches", () => {
    for (const cupS of [11.9, 16.1]) {
      const piece = given(cupS);
      const ids = [coatFrom(piece, 2), coatFrom(piece, 8)];
      const [finding] = found(piece, 9);
      expect(told(found(piece, 9))).toEqual(["watch unfit"]);
      expect(finding?.texts).toEqual({ bucket: "Backup", which: "1, 2", codes: "seconds-out-of-band" });
      expect(finding?.entries).toEqual(ids);
    }
  });

  test("a reason written at the bucket stands beside it", () => {
    const piece = given(18);
    piece.bucket(1.5, "bucket-passed", { verdict: "do-not-dip", reason: "last coat, thick wanted" });
    coatFrom(piece, 2);
    expect(told(found(piece, 3))).toEqual(["watch unfit-accepted"]);
    expect(found(piece, 3)[0]?.texts["reason"]).toBe("last coat, thick wanted");
  });

  test("to be watched is only told", () => {
    const piece = given(14);
    piece.bucket(1.5, "bucket-read", { skin: true });
    coatFrom(piece, 2);
    expect(told(found(piece, 3))).toEqual(["note watched"]);
  });

  test("read twelve hours before the dip counts as checked, later it does not", () => {
    const [inTime, late] = [12.9, 13.3].map((hour) => {
      const piece = given(14);
      coatFrom(piece, hour);
      return told(found(piece, hour + 1));
    });
    expect(inTime).toEqual([]);
    expect(late).toEqual(["note not-checked"]);
  });

  test("a slurry slightly warm or cold is no finding by itself; further off, or with something else, it is", () => {
    const dippedAt = (slurryC: number, more: { readonly skin?: true } = {}) => {
      const piece = givenPiece(knownPlan);
      piece.bucket(0.5, "bucket-set", aims);
      piece.bucket(1, "bucket-read", { cupId: "zahn-4", cupS: 14, slurryC, ...more });
      coatFrom(piece, 2);
      return told(found(piece, 3));
    };
    expect(dippedAt(19)).toEqual([]);
    expect(dippedAt(25.9)).toEqual([]);
    expect(dippedAt(17)).toEqual(["note watched"]);
    expect(dippedAt(28)).toEqual(["note watched"]);
    expect(dippedAt(19, { skin: true })).toEqual(["note watched"]);
  });

  test("notes are told while the coat is the outer one, then they are past", () => {
    const piece = given(14);
    coatFrom(piece, 14);
    expect(found(piece, 15)[0]?.past).toBeUndefined();
    piece.bucket(20, "bucket-read", { cupId: "zahn-4", cupS: 14, slurryC: 22 });
    coatFrom(piece, 21);
    expect(found(piece, 22)).toMatchObject([{ variant: "not-checked", past: true, texts: { which: "1" } }]);
  });

  test("an unfit slurry is to be watched until the shell was measured", () => {
    const piece = given(18);
    coatFrom(piece, 2);
    piece.coat(20, { bucketId: null });
    expect(told(found(piece, 21))).toEqual(["watch unfit"]);
    piece.log(22, "wall-measured", { wallMm: 2 });
    expect(found(piece, 23)).toMatchObject([{ level: "note", past: true }]);
  });

  test("what was read after the dip changes nothing", () => {
    const piece = given(14);
    coatFrom(piece, 2);
    piece.bucket(3, "bucket-read", { cupId: "zahn-4", cupS: 25, slurryC: 22 });
    expect(found(piece, 4)).toEqual([]);
  });
});

describe("a bucket that nobody ever read", () => {
  test("is a note, one for all the buckets of that kind", () => {
    const piece = givenPiece(knownPlan);
    piece.coat(1, { bucketId: "first-prime" });
    coatFrom(piece, 2);
    expect(told(found(piece, 3))).toEqual(["note not-checked"]);
    expect(found(piece, 3)[0]?.texts).toMatchObject({ which: "1, 2", bucket: "Prime, Backup" });
  });

  test("is to be watched at the dip that makes it three days, once, and then a note", () => {
    const dippedUntil = (...hours: readonly number[]): GivenPiece => {
      const piece = givenPiece(knownPlan);
      for (const hour of [2, ...hours]) coatFrom(piece, hour);
      return piece;
    };
    const days = 3 * 24;
    expect(told(found(dippedUntil(2 + days - 1), 2 + days))).toEqual(["note not-checked"]);
    const longer = dippedUntil(2 + days);
    expect(told(found(longer, 3 + days))).toEqual(["watch never-read"]);
    expect(told(found(longer, 3.1 + days))).toEqual(["note never-read"]);
    // It has been said: the next dip does not say it anew.
    expect(told(found(dippedUntil(2 + days, 20 + days), 20.5 + days))).toEqual(["note never-read"]);
  });

  test("one reading before the last dip, and it is a bucket like any other", () => {
    const piece = givenPiece(knownPlan);
    coatFrom(piece, 2);
    piece.bucket(100, "bucket-read", { cupId: "zahn-4", cupS: 14, slurryC: 22 });
    coatFrom(piece, 2 + 9 * 24);
    expect(told(found(piece, 3 + 9 * 24))).toEqual(["note not-checked"]);
  });
});

describe("a bucket nobody checked weighs more than one a degree off", () => {
  /** Dipped at hour 2, and again the day after from the same bucket, read by then or not. */
  function dippedTwice({ slurryC }: { readonly slurryC: number | null }): GivenPiece {
    const piece = given(14);
    coatFrom(piece, 2);
    if (slurryC !== null) piece.bucket(30, "bucket-read", { cupId: "zahn-4", cupS: 14, slurryC });
    coatFrom(piece, 31);
    return piece;
  }

  test("not checked that day is a line on the dip", () => {
    expect(told(found(dippedTwice({ slurryC: null }), 31.5))).toEqual(["note not-checked"]);
  });

  test("read and a degree off says nothing, four degrees off is a note", () => {
    expect(told(found(dippedTwice({ slurryC: 21 }), 31.5))).toEqual([]);
    expect(told(found(dippedTwice({ slurryC: 19 }), 31.5))).toEqual([]);
    expect(told(found(dippedTwice({ slurryC: 17.5 }), 31.5))).toEqual(["note watched"]);
  });

  test("on the first day it is one quiet line, however many coats and buckets", () => {
    const piece = givenPiece(knownPlan);
    piece.coat(1, { bucketId: "first-prime" });
    for (const hour of [6, 12, 20]) coatFrom(piece, hour);
    expect(told(found(piece, 20.2))).toEqual(["note not-checked"]);
  });
});

describe("silence", () => {
  test("a coat without a bucket, or from one nobody knows, says nothing", () => {
    const piece = given(18);
    piece.coat(2, { bucketId: null });
    piece.coat(3, { bucketId: "gone" });
    expect(found(piece, 4)).toEqual([]);
  });
});
