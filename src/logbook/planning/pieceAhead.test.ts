import { describe, expect, it } from "vitest";
import { demoAhead } from "../../../tests/demoAhead.ts";
import { givenCoated, givenPiece, type GivenPiece } from "../../../tests/givenPiece.ts";
import type { Standing } from "../piece/standing.ts";
import { pieceAhead, type PieceAhead } from "./pieceAhead.ts";

const { around, memo } = demoAhead().ahead;

/** The look ahead from one standing, in the room it hangs in. */
function aheadOf(standing: Standing, isHeld = false): PieceAhead {
  const { room, readings, recipe } = standing;
  const own = {
    ...around,
    stamps: undefined,
    rooms: new Map(room === null ? [] : [[room.id, room]]),
    readings: new Map(room === null ? [] : [[room.id, readings]]),
    recipes: new Map(recipe === null ? [] : [[recipe.id, recipe]]),
  };
  return pieceAhead(standing, { ahead: { around: own, memo }, hours: null, isHeld });
}

/** Signed over what is open, with a reason, as the log takes it. */
const sign = (piece: GivenPiece, hour: number): string =>
  piece.log(hour, "review-signed", {
    name: "R.",
    verdict: "hold",
    passed: [{ rule: "open-crack", reason: "seen" }],
    safety: 4,
  });

/** A coated shell with a crack, signed over it and taken so far by hour 139. */
const stages: Readonly<Record<string, (piece: GivenPiece) => void>> = {
  reviewed: () => undefined,
  dewaxed: (piece) => void piece.log(123, "dewaxed", { way: "flash", minutes: 15 }),
  "burnt-out": (piece) => {
    piece.log(123, "burnout-started", {});
    piece.log(129, "burnout-ended", { result: "clean" });
  },
  fired: (piece) => void piece.log(130, "shell-fired", { peakC: 900, holdMin: 60, inside: "clean" }),
  preheated: (piece) => void piece.log(130, "shell-preheated", { shellC: 700 }),
};

describe("what stops a piece", () => {
  it.each(Object.keys(stages))("is an open crack, and then its wet patch, of a shell that is %s", (phase) => {
    const piece = givenCoated();
    const crackId = piece.log(121, "crack-found", { kind: "hairline", stage: "coating", where: "ear" });
    sign(piece, 122);
    stages[phase]?.(piece);
    const open = piece.standing(139);
    expect(open.piece.phase).toBe(phase);
    expect(aheadOf(open)).toMatchObject({ stop: { code: "crack" }, dry: null });
    piece.log(140, "crack-patched", { crackId, how: "slurry" });
    expect(piece.standing(141).piece.phase).toBe(phase);
    expect(aheadOf(piece.standing(141))).toMatchObject({ stop: { code: "wet-patch" }, dry: null });
    piece.log(150, "patch-dried", { crackId });
    expect(aheadOf(piece.standing(151)).stop).toBeNull();
  });

  it("is nothing in what is trimmed off before the pour", () => {
    const piece = givenCoated();
    piece.log(121, "crack-found", { kind: "open", stage: "coating", where: "rim", trimmedOff: true });
    sign(piece, 122);
    expect(aheadOf(piece.standing(123)).stop).toBeNull();
  });

  it("is a wet patch with all coats on, but none that the next coat goes over", () => {
    const patched = (piece: GivenPiece, hour: number): Standing => {
      const crackId = piece.log(hour, "crack-found", { kind: "hairline", stage: "coating", where: "ear" });
      piece.log(hour + 1, "crack-patched", { crackId, how: "slurry" });
      return piece.standing(hour + 2);
    };
    expect(aheadOf(patched(givenCoated(), 121)).stop).toEqual({ code: "wet-patch" });
    const coats = givenPiece({ recipeId: "start-general" });
    coats.air(0);
    coats.coats([1]);
    expect(aheadOf(patched(coats, 20)).stop).toBeNull();
  });

  it("is a hold against a further coat, where one is to come", () => {
    const piece = givenPiece({ recipeId: "start-general" });
    piece.air(0);
    piece.coats([1, 1.3]);
    expect(aheadOf(piece.standing(2)).stop).toBeNull();
    expect(aheadOf(piece.standing(2), true)).toMatchObject({ stop: { code: "held" }, dry: null });
    expect(aheadOf(givenCoated().standing(121), true).stop).toBeNull();
  });
});
