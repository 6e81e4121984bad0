import { describe, expect, test } from "vitest";
import { givenCoated, givenPiece } from "../../../tests/givenPiece.ts";
import { factsTogether, fireFacts, mayEnter } from "./fireFacts.ts";

const factsAt = (piece: ReturnType<typeof givenPiece>, hour: number) =>
  fireFacts(piece.standing(hour), "fused-silica");

const measured = {
  patternId: "p",
  fileName: "ball.stl",
  sumsVersion: 1,
  triangles: 100,
  watertight: true,
  mmPerUnit: 1,
  boxMm: [120, 120, 120],
  up: [0, 0, 1],
  headM: 0.2,
  tips: 1,
  vents: 1,
  drains: 0,
  trappedMl: 0,
  gatingMm3: null,
  thinnestMm: null,
  thickestMm: null,
} as const;

describe("what a piece's log says of its fire", () => {
  test("a weighed pattern goes before its volume; the volume is taken as solid; else nothing is known", () => {
    const piece = givenPiece({ material: "pla", metalLitre: 0.5 });
    expect(factsAt(piece, 1).pattern).toEqual({ massKg: 0.62, source: "metal-volume" });
    piece.log(2, "piece-weighed", { massG: 310 });
    expect(factsAt(piece, 3).pattern).toEqual({ massKg: 0.31, source: "weighed" });
    expect(factsAt(givenPiece({ metalLitre: 0.5 }), 1).pattern).toBeNull();
    expect(factsAt(givenPiece({ material: "other", metalLitre: 0.5 }), 1).pattern).toBeNull();
  });

  test("a shell long dry is dry, one just dipped is damp, one patched after fire is wet", () => {
    const piece = givenCoated();
    expect(factsAt(piece, 85).damp).toEqual({ state: "damp", source: "drying" });
    expect(factsAt(piece, 121).damp).toEqual({ state: "dry", source: "drying" });
    piece.log(121, "burnout-started", {});
    piece.log(125, "burnout-ended", { result: "clean" });
    expect(factsAt(piece, 126).damp).toEqual({ state: "dry", source: "fired" });
    const crackId = piece.log(127, "crack-found", { kind: "open", stage: "burnout", where: "rim" });
    expect(factsAt(piece, 128).damp.state).toBe("dry");
    piece.log(129, "crack-patched", { crackId, how: "slurry" });
    expect(factsAt(piece, 140).damp).toEqual({ state: "patched-wet", source: "patched" });
    piece.log(150, "shell-fired", { peakC: 850, holdMin: 60 });
    expect(factsAt(piece, 151).damp).toEqual({ state: "dry", source: "fired" });
  });

  test("fired before and hotter than 1100 come from the firings", () => {
    const piece = givenCoated();
    expect(factsAt(piece, 121)).toMatchObject({ firedBefore: false, seenAbove1100: false, hasPattern: true });
    piece.log(122, "shell-fired", { peakC: 1100, holdMin: 60 });
    expect(factsAt(piece, 123)).toMatchObject({ firedBefore: true, seenAbove1100: false, hasPattern: false });
    piece.log(124, "shell-fired", { peakC: 1101, holdMin: 60 });
    expect(factsAt(piece, 125).seenAbove1100).toBe(true);
  });

  test("a shell's mass is its area and wall, or the starting value", () => {
    const piece = givenCoated({ areaM2: 0.2 });
    const { wallMm, shell } = factsAt(piece, 121);
    expect(shell.source).toBe("area");
    expect(shell.massKg).toBeCloseTo(0.2 * wallMm * 1.7, 6);
    expect(factsAt(givenCoated(), 121).shell).toEqual({ massKg: 3, source: "starting" });
  });

  test("measured on a mesh, the shell stands on piece and tree, and the wax is never that of a void", () => {
    const piece = givenCoated({ material: "wax" });
    // A ball of 60 mm with a void of 55 mm that will be metal, and 0.02 m² of tree.
    const ball = (r: number): number => (4 / 3) * Math.PI * r ** 3;
    piece.log(1, "pattern-measured", {
      ...measured,
      volumeMm3: ball(60),
      patternMm3: ball(60) - ball(55),
      hollows: "metal",
      areaMm2: 4 * Math.PI * 60 ** 2,
      gatingAreaMm2: 20_000,
    });
    const { wallMm, shell, pattern } = factsAt(piece, 121);
    expect(shell.source).toBe("mesh-area");
    expect(shell.massKg).toBeCloseTo((0.045239 + 0.02) * wallMm * 1.7, 4);
    expect(pattern?.massKg).toBeCloseTo(((ball(60) - ball(55)) / 1e9) * 930, 6);
  });
});

test("a burnout takes shells with a pattern inside, fire and preheat those without, none in a kiln or poured", () => {
  const piece = givenCoated();
  const may = (hour: number) =>
    (["burnout", "firing", "preheat"] as const).filter((purpose) => mayEnter(purpose, piece.standing(hour)));
  expect(mayEnter("burnout", givenPiece().standing(1))).toBe(false);
  expect(may(121)).toEqual(["burnout"]);
  piece.log(122, "burnout-started", {});
  expect(may(122.5)).toEqual([]);
  piece.log(123, "burnout-ended", { result: "stopped" });
  expect(may(123.5)).toEqual(["burnout"]);
  piece.log(124, "burnout-started", {});
  piece.log(125, "burnout-ended", { result: "residue" });
  expect(may(125.5)).toEqual(["firing", "preheat"]);
  piece.log(126, "metal-poured", { metalC: 1150, shellC: 500, massKg: 2, outOfKilnMin: 2 });
  expect(may(126.5)).toEqual([]);
});

test("together the thickest wall, the dampest shell and the frailest past govern, and the masses add up", () => {
  const heron = factsAt(givenCoated({ material: "wax", metalLitre: 1 }), 121);
  const crane = { ...heron, pieceId: "crane", name: "Crane", wallMm: 20, firedBefore: true };
  const wren = { ...heron, name: "Wren", damp: { state: "damp", source: "drying" } as const };
  expect(factsTogether([heron, crane, wren])).toMatchObject({
    material: "wax",
    wallMm: 20,
    thickest: "Crane",
    damp: "damp",
    dampest: "Wren",
    firedBefore: false,
    shellKg: 9,
  });
  expect(factsTogether([heron, crane])?.patternKg).toBeCloseTo(1.86, 9);
  expect(factsTogether([heron, { ...crane, material: "pla" }])).toMatchObject({
    material: null,
    materials: ["wax", "pla"],
  });
  expect(factsTogether([heron, { ...crane, pattern: null }])?.patternKg).toBeNull();
  expect(factsTogether([])).toBeNull();
});
