import { describe, expect, test } from "vitest";
import { givenCoated, type GivenPiece } from "../../../tests/givenPiece.ts";
import type { Run } from "./fireStates.ts";
import { lastDryHeat } from "../drying/dryHeat.ts";
import { metalReady } from "./metalReady.ts";

const barsAt = (piece: GivenPiece, hour: number) => piece.standing(hour).metalBars.map(({ code }) => code);

describe("the pattern", () => {
  test("stands in the way until it was dewaxed, burnt out or fired", () => {
    const piece = givenCoated();
    expect(barsAt(piece, 121)).toEqual(["pattern-inside"]);
    piece.log(122, "burnout-started", {});
    expect(barsAt(piece, 123)).toEqual(["pattern-inside"]);
    piece.log(124, "burnout-ended", { result: "stopped" });
    expect(barsAt(piece, 125)).toEqual(["pattern-inside"]);
    piece.log(126, "burnout-started", {});
    piece.log(130, "burnout-ended", { result: "clean" });
    expect(barsAt(piece, 131)).toEqual([]);
  });

  test.each([
    [699, ["wax-film"]],
    [700, []],
  ])(
    "a dewax leaves a film that a preheat of %d °C leaves as %j; wax burns clean from 700",
    (shellC, left) => {
      const piece = givenCoated();
      piece.log(121, "dewaxed", { way: "flash", minutes: 15 });
      expect(barsAt(piece, 122)).toEqual(["wax-film"]);
      piece.log(123, "shell-preheated", { shellC });
      expect(barsAt(piece, 124)).toEqual(left);
    },
  );

  test("an old log with a firing alone counts as empty", () => {
    const piece = givenCoated();
    piece.log(121, "shell-fired", { peakC: 850, holdMin: 60 });
    expect(barsAt(piece, 122)).toEqual([]);
  });
});

describe("residue", () => {
  const sooty = (): GivenPiece => {
    const piece = givenCoated();
    piece.log(121, "burnout-started", {});
    piece.log(125, "burnout-ended", { result: "residue" });
    return piece;
  };

  test("stands until someone looks in and finds it clean; seen again, it stands again", () => {
    const piece = sooty();
    expect(barsAt(piece, 126)).toEqual(["residue"]);
    piece.log(127, "shell-inspected", { inside: "clean" });
    expect(barsAt(piece, 128)).toEqual([]);
    piece.log(129, "shell-inspected", { inside: "residue" });
    expect(barsAt(piece, 130)).toEqual(["residue"]);
  });

  test("a second burnout that ends clean takes it away, one that ends with residue does not", () => {
    const piece = sooty();
    piece.log(126, "burnout-started", {});
    piece.log(129, "burnout-ended", { result: "residue" });
    expect(barsAt(piece, 130)).toEqual(["residue"]);
    piece.log(131, "burnout-started", {});
    piece.log(135, "burnout-ended", { result: "clean" });
    expect(barsAt(piece, 136)).toEqual([]);
  });

  test.each([
    // Wax: 700 °C for 45 min is where its carbon is gone (common practice, no source).
    [700, 45, undefined, []],
    [699, 45, undefined, ["residue"]],
    [700, 44, undefined, ["residue"]],
    [870, 90, "residue", ["residue"]],
    [650, 10, "clean", []],
  ] as const)("fired again to %d °C for %d min, inside %s: %j", (peakC, holdMin, inside, left) => {
    const piece = sooty();
    piece.log(128, "shell-fired", { peakC, holdMin, ...(inside === undefined ? {} : { inside }) });
    expect(barsAt(piece, 129)).toEqual(left);
  });

  test("the same heat logged as a firing after the look is no second firing", () => {
    const piece = sooty();
    piece.log(125.1, "shell-fired", { peakC: 870, holdMin: 60 });
    expect(barsAt(piece, 126)).toEqual(["residue"]);
    piece.log(126.1, "shell-fired", { peakC: 870, holdMin: 60 });
    expect(barsAt(piece, 127)).toEqual([]);
  });
});

describe("water in a fired shell", () => {
  const fired = (): GivenPiece => {
    const piece = givenCoated();
    piece.log(121, "burnout-started", {});
    piece.log(125, "burnout-ended", { result: "clean" });
    piece.log(126, "shell-fired", { peakC: 860, holdMin: 60 });
    return piece;
  };

  test("cold for a day it is still dry, for longer it is not", () => {
    const piece = fired();
    expect(barsAt(piece, 150)).toEqual([]);
    expect(piece.standing(150.01).metalBars).toMatchObject([{ code: "cold", entries: [expect.any(String)] }]);
  });

  test("rinsed, it is wet at once, until heat dried it", () => {
    const piece = fired();
    piece.log(127, "shell-rinsed", {});
    expect(barsAt(piece, 127.1)).toEqual(["rinsed"]);
    piece.log(129, "shell-preheated", { shellC: 500 });
    expect(barsAt(piece, 129.1)).toEqual([]);
  });

  test.each([
    [110, 60, []],
    [110, 59, ["rinsed"]],
    [109, 60, ["rinsed"]],
    [149, undefined, ["rinsed"]],
    [150, undefined, []],
  ] as const)("rinsed, then preheated to %d °C and held %s min: %j", (shellC, heldMin, left) => {
    const piece = fired();
    piece.log(127, "shell-rinsed", {});
    piece.log(129, "shell-preheated", { shellC, ...(heldMin === undefined ? {} : { heldMin }) });
    expect(barsAt(piece, 129.1)).toEqual(left);
  });

  test("a firing before the rinse does not dry it", () => {
    const piece = fired();
    piece.log(126.5, "shell-fired", { peakC: 860, holdMin: 30 });
    piece.log(127, "shell-rinsed", {});
    expect(barsAt(piece, 128)).toEqual(["rinsed"]);
  });

  test("a dewax with steam, hot water or a rinse wets it, and the burnout dries it", () => {
    for (const body of [{ way: "steam" }, { way: "hot-water" }, { way: "flash", rinsed: true }] as const) {
      const piece = givenCoated();
      piece.log(121, "dewaxed", { minutes: 20, ...body });
      expect(barsAt(piece, 122)).toEqual(["wax-film", "rinsed"]);
      piece.log(123, "burnout-started", {});
      piece.log(130, "burnout-ended", { result: "clean" });
      expect(barsAt(piece, 131)).toEqual([]);
    }
  });

  test("a coat that went on since speaks for its own water", () => {
    const piece = fired();
    piece.coat(130);
    expect(barsAt(piece, 160)).toEqual([]);
  });

  const runRead = (...readings: readonly (readonly [hour: number, kilnC: number])[]): Run =>
    ({
      readings: readings.map(([hour, kilnC]) => ({ id: "r", at: atHour(hour), kilnC })),
    }) as unknown as Run;
  const atHour = (hour: number): number => fired().standing(hour).now;

  test.each([
    [
      [
        [150, 110],
        [151, 110],
      ],
      151,
    ],
    [
      [
        [150, 110],
        [150.98, 130],
      ],
      null,
    ],
    [
      [
        [150, 109],
        [152, 109],
      ],
      null,
    ],
    [
      [
        [150, 120],
        [150.5, 90],
        [151, 120],
        [151.4, 120],
      ],
      null,
    ],
    [
      [
        [150, 120],
        [150.5, 120],
        [150.7, 90],
        [151, 120],
        [151.5, 120],
      ],
      151.5,
    ],
  ] as const)("kiln readings %j show an hour at 110 °C as of hour %s", (readings, hour) => {
    const piece = fired().standing(149).piece;
    const heat = lastDryHeat(piece, [runRead(...readings)], atHour(140));
    expect(heat?.at ?? null).toBe(hour === null ? null : atHour(hour));
  });

  test("those readings clear a cold shell and a rinsed one, and nothing is held once the metal is in", () => {
    const piece = fired();
    const readings = runRead([160, 120], [161.2, 130]);
    const of = { runs: [readings], now: atHour(162) };
    expect(metalReady(piece.standing(162).piece, { ...of, runs: [] })).toHaveLength(1);
    expect(metalReady(piece.standing(162).piece, of)).toEqual([]);
    piece.log(162, "metal-poured", { metalC: 720, shellC: 20, massKg: 1, outOfKilnMin: null });
    expect(barsAt(piece, 300)).toEqual([]);
  });
});
