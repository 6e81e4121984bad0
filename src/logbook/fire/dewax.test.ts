import { describe, expect, test } from "vitest";
import { givenCoated, givenPiece, type GivenPiece } from "../../../tests/givenPiece.ts";
import { factsTogether, fireFacts, mayEnter } from "./fireFacts.ts";

const sign = (piece: GivenPiece, hour: number) =>
  piece.log(hour, "review-signed", { name: "Ada", verdict: "clear", passed: [], safety: null });
const reviewed = (plan: Parameters<typeof givenCoated>[0] = {}): GivenPiece => {
  const piece = givenCoated(plan);
  sign(piece, 120);
  return piece;
};
const nextAt = (piece: GivenPiece, hour: number) => piece.standing(hour).action.kind;
const factsAt = (piece: GivenPiece, hour: number) => fireFacts(piece.standing(hour), "fused-silica");

describe("a wax piece from its review on", () => {
  test("dewax, burn out, fire, preheat, pour, each asked for in its turn", () => {
    const piece = reviewed();
    expect(nextAt(piece, 121)).toBe("dewax");
    piece.log(122, "dewaxed", { way: "steam", minutes: 20, waxBackG: 410 });
    expect(piece.standing(123).piece.phase).toBe("dewaxed");
    expect(nextAt(piece, 123)).toBe("burn-out");
    piece.log(124, "burnout-started", {});
    piece.log(130, "burnout-ended", { result: "clean" });
    expect(nextAt(piece, 131)).toBe("fire");
    piece.log(132, "shell-fired", { peakC: 860, holdMin: 60 });
    expect(nextAt(piece, 133)).toBe("preheat");
    piece.log(134, "shell-preheated", { shellC: 600 });
    expect(nextAt(piece, 135)).toBe("pour");
  });

  test("a printed one, and one of a pattern nobody named, is burnt out as before", () => {
    expect(nextAt(reviewed({ material: "pla" }), 121)).toBe("burn-out");
    expect(nextAt(reviewed({ material: undefined }), 121)).toBe("burn-out");
  });

  test("with its pattern inside it is never sent to the preheat or the pour", () => {
    const piece = reviewed();
    piece.log(121, "shell-preheated", { shellC: 600 });
    expect(nextAt(piece, 122)).toBe("dewax");
    piece.log(123, "dewaxed", { way: "hot-water", minutes: null });
    expect(nextAt(piece, 124)).toBe("burn-out");
    const print = reviewed({ material: "pla" });
    print.log(121, "shell-preheated", { shellC: 600 });
    expect(nextAt(print, 122)).toBe("burn-out");
  });

  test("preheated with residue it is fired again; rinsed or long cold it is heated again", () => {
    const piece = reviewed();
    piece.log(121, "burnout-started", {});
    piece.log(125, "burnout-ended", { result: "residue" });
    expect(nextAt(piece, 126)).toBe("fire");
    piece.log(126, "shell-preheated", { shellC: 600 });
    expect(nextAt(piece, 127)).toBe("fire");
    piece.log(128, "shell-inspected", { inside: "clean" });
    expect(nextAt(piece, 129)).toBe("pour");
    piece.log(130, "shell-rinsed", {});
    expect(nextAt(piece, 131)).toBe("preheat");
    piece.log(132, "shell-preheated", { shellC: 600 });
    expect(nextAt(piece, 156)).toBe("pour");
    expect(nextAt(piece, 156.1)).toBe("preheat");
  });
});

describe("the log of a dewax", () => {
  test("in a running burnout it stays in burnout, and a burnout stopped after it leaves a dewaxed shell", () => {
    const piece = reviewed();
    piece.log(121, "burnout-started", { runId: "r1" });
    piece.log(122, "dewaxed", { way: "staged", minutes: 35, runId: "r1" });
    expect(piece.standing(122.5).piece).toMatchObject({
      phase: "burnout",
      runIds: ["r1"],
      dewaxes: [{ way: "staged", minutes: 35, waxBackG: null, rinsed: false, runId: "r1" }],
    });
    piece.log(123, "burnout-ended", { result: "stopped" });
    expect(piece.standing(124).piece.phase).toBe("dewaxed");
  });

  test("it can't be logged of a shell that is burnt out, fired or poured; a rinse and a look inside can't before their time", () => {
    const piece = reviewed();
    piece.log(121, "burnout-started", {});
    piece.log(125, "burnout-ended", { result: "clean" });
    const dewax = (hour: number) => () => piece.log(hour, "dewaxed", { way: "steam", minutes: 10 });
    expect(dewax(126)).toThrow(/wrong-phase/);
    piece.log(127, "shell-fired", { peakC: 860, holdMin: 60 });
    expect(dewax(128)).toThrow(/wrong-phase/);
    piece.log(129, "metal-poured", { metalC: 1150, shellC: 500, massKg: 2, outOfKilnMin: 2 });
    expect(dewax(130)).toThrow(/wrong-phase/);
    expect(() => piece.log(131, "shell-rinsed", {})).toThrow(/wrong-phase/);
    expect(() => piece.log(131, "shell-inspected", { inside: "clean" })).toThrow(/wrong-phase/);
  });

  test.each([
    [{ minutes: 2880 }, true],
    [{ minutes: 2881 }, false],
    [{ minutes: -1 }, false],
    [{ minutes: 20, waxBackG: 0.1 }, true],
    [{ minutes: 20, waxBackG: 0.09 }, false],
  ])("figures %j: taken %s", (body, isTaken) => {
    const log = () => reviewed().log(121, "dewaxed", { way: "flash", ...body });
    if (isTaken) expect(log).not.toThrow();
    else expect(log).toThrow(/out-of-range/);
  });

  test("a coat after it has no pattern behind it, and the piece is reviewed and burnt out after", () => {
    const piece = reviewed();
    piece.log(121, "dewaxed", { way: "flash", minutes: 15 });
    piece.coat(122);
    const { coats, phase } = piece.standing(123).piece;
    expect(coats.at(-1)?.afterBurnout).toBe(true);
    expect(phase).toBe("coating");
    sign(piece, 170);
    expect(nextAt(piece, 171)).toBe("burn-out");
  });
});

describe("what the kiln plan is told", () => {
  test("a dewaxed shell goes into a burnout with a film: pattern less what was weighed back, else a tenth", () => {
    const film = (weighedG: number | null, waxBackG?: number) => {
      const piece = givenPiece({ material: "wax", ...(weighedG === null ? {} : { metalLitre: 1 }) });
      if (weighedG !== null && weighedG > 0) piece.log(1, "piece-weighed", { massG: weighedG });
      piece.coat(2);
      piece.log(60, "dewaxed", {
        way: "steam",
        minutes: 20,
        ...(waxBackG === undefined ? {} : { waxBackG }),
      });
      return factsAt(piece, 61).pattern?.massKg ?? null;
    };
    expect(film(500, 480)).toBeCloseTo(0.02, 9);
    expect(film(500)).toBeCloseTo(0.05, 9);
    // More than went in: the balance or the tree is wrong, the tenth stands.
    expect(film(500, 501)).toBeCloseTo(0.05, 9);
    expect(film(0, 450)).toBeCloseTo(0.093, 9);
    expect(film(null, 450)).toBeCloseTo(0.05, 9);
    expect(film(null)).toBeNull();
  });

  test("it may enter a burnout, not a firing or a preheat; together only films are films", () => {
    const piece = reviewed();
    const whole = factsAt(piece, 121);
    piece.log(121, "dewaxed", { way: "flash", minutes: 15 });
    const enters = (["burnout", "firing", "preheat"] as const).filter((one) =>
      mayEnter(one, piece.standing(122)),
    );
    expect(enters).toEqual(["burnout"]);
    const film = factsAt(piece, 122);
    expect(film).toMatchObject({ hasPattern: true, isFilm: true });
    expect(factsTogether([film])?.isFilm).toBe(true);
    expect(factsTogether([film, whole])?.isFilm).toBe(false);
    expect(factsTogether([{ ...film, hasPattern: false, isFilm: false }])?.isFilm).toBe(false);
  });

  test("a fired shell is dry, one rinsed since is wet, one long cold is not sure to be dry", () => {
    const piece = reviewed();
    piece.log(121, "burnout-started", {});
    piece.log(125, "burnout-ended", { result: "clean" });
    expect(factsAt(piece, 126).damp).toEqual({ state: "dry", source: "fired" });
    expect(factsAt(piece, 149.1).damp).toEqual({ state: "damp", source: "cold" });
    piece.log(150, "shell-rinsed", {});
    expect(factsAt(piece, 151).damp).toEqual({ state: "patched-wet", source: "rinsed" });
    piece.log(152, "shell-preheated", { shellC: 200 });
    expect(factsAt(piece, 153).damp).toEqual({ state: "dry", source: "fired" });
  });
});
