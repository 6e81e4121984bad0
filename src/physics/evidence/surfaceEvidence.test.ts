import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/dryEvidence.json" with { type: "json" };
import { bagEvidence } from "./bagEvidence.ts";
import { evaporativeDropK, wetSurfaceC } from "../air/film.ts";
import { resistanceEvidence } from "./resistanceEvidence.ts";
import { skinEvidence } from "./skinEvidence.ts";
import { indexAtShare, judgeSurface, surfaceEvidence, waitAfterChangeS } from "./surfaceEvidence.ts";

const shop = { tempC: 22, rh: 0.5, pressurePa: 101_325, filmWM2K: 15 };
const coat = { criticalShare: 0.6, depthM: 0.0035, readyShare: 0.03, pocketSM: 0 };
const absolute = (surfaceC: number, sensorK = 0.3) => ({ method: "absolute", surfaceC, sensorK }) as const;

describe("a surface reading", () => {
  test("of 20.9 °C at 22 °C, 50 % and a fan is 0.82: nearly, not dry", () => {
    const said = judgeSurface(shop, absolute(20.9), coat);
    if (said.kind === "refused") throw new Error(said.code);
    expect(Math.abs(wetSurfaceC(shop) - 15.74)).toBeLessThan(0.05);
    expect(Math.abs(said.index - 0.82)).toBeLessThan(0.02);
    expect(Math.abs(said.endIndex - 0.81)).toBeLessThan(0.01);
    expect(said.says).toBe("nearly");
  });

  test("goes from wet over nearly to dry as the face warms", () => {
    const says = [16, 20, 21, 21.8].map((surfaceC) => {
      const said = judgeSurface(shop, absolute(surfaceC), coat);
      return said.kind === "index" ? said.says : said.code;
    });
    expect(says).toEqual(["wet", "wet", "nearly", "dry"]);
  });

  test("is refused above 80 % and where the error spans a fifth of wet to dry", () => {
    expect(judgeSurface({ ...shop, rh: 0.85 }, absolute(21), coat)).toEqual({
      kind: "refused",
      code: "air-too-damp",
      rh: 0.85,
      mostRh: 0.8,
    });
    const still = { ...shop, filmWM2K: 4 };
    expect(judgeSurface({ ...still, rh: 0.8 }, absolute(21), coat)).toMatchObject({
      code: "signal-too-small",
    });
    expect(judgeSurface({ ...still, rh: 0.7 }, absolute(21), coat).kind).toBe("index");
    const poor = judgeSurface(still, absolute(20, 1.5), coat);
    expect(poor).toMatchObject({ code: "signal-too-small", mostSd: 0.2 });
    expect(poor).toHaveProperty("dropK", expect.closeTo(4.83, 1));
  });

  test("by the difference to a dry shell loses the thermometer's and the room's offset", () => {
    const wrong = 1.4;
    const difference = {
      method: "difference",
      surfaceC: 19 + wrong,
      drySurfaceC: 22 + wrong,
      sensorK: 0.3,
    } as const;
    const said = judgeSurface(shop, difference, coat);
    const plain = judgeSurface(shop, absolute(19), coat);
    if (said.kind === "refused" || plain.kind === "refused") throw new Error("refused");
    expect(said.index).toBeCloseTo(plain.index, 9);
    expect(said.indexSd).toBeLessThan(plain.indexSd);
    const dry = judgeSurface(shop, { ...difference, surfaceC: 22 + wrong }, coat);
    if (dry.kind === "refused") throw new Error("refused");
    expect(dry.indexSd).toBeCloseTo(0.3 / evaporativeDropK(shop), 9);
    expect(Math.abs(dry.indexSd - 0.05)).toBeLessThan(0.003);
  });
});

describe("the index as evidence", () => {
  test("half an index is not half dry: 0.5 stands for 0.8 mm of 3.5 under a fan", () => {
    const share = 0.6 * (1 - 0.8 / 3.5);
    expect(Math.abs(indexAtShare(shop, share, coat) - 0.5)).toBeLessThan(0.02);
  });

  test("never falls as the coat dries, from 0 wet to 1 with nothing left", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 3, max: 40, noNaN: true }),
        (a, b, filmWM2K) => {
          const at = (share: number) => indexAtShare({ ...shop, filmWM2K }, share, coat);
          expect(at(Math.min(a, b))).toBeGreaterThanOrEqual(at(Math.max(a, b)) - 1e-12);
          expect(at(0)).toBeCloseTo(1, 12);
          expect(at(1)).toBe(0);
        },
      ),
      { numRuns: 50 },
    ));

  const of = (surfaceC: number, pocketSM = 0) => {
    const there = { ...coat, pocketSM };
    const said = surfaceEvidence(judgeSurface(shop, absolute(surfaceC), there), {
      air: shop,
      coat: there,
      afterS: 0,
    });
    return said?.logLikelihood ?? (() => NaN);
  };

  test("tells a wet coat from a dry one", () => {
    expect(of(15.8)(0.8, 0)).toBeGreaterThan(of(15.8)(0.1, 0) + 3);
    expect(of(21.9)(0, 0)).toBeGreaterThan(of(21.9)(0.3, 0) + 3);
  });

  test("on a piece with a pocket a dry face leaves the pocket open, a wet face does not", () => {
    expect(of(21.9, 1800)(0.5, 0)).toBeCloseTo(0, 9);
    expect(of(15.8, 1800)(0.05, 0)).toBeLessThan(-3);
    const said = judgeSurface(shop, absolute(21.9), { ...coat, pocketSM: 1800 });
    expect(said).toMatchObject({ says: "dry", outerFaceOnly: true });
  });

  test("a refused reading is no evidence", () => {
    const said = judgeSurface({ ...shop, rh: 0.9 }, absolute(21), coat);
    expect(surfaceEvidence(said, { air: shop, coat, afterS: 0 })).toBeNull();
  });
});

describe("the wait after a change of air", () => {
  const halved = (halfMm: number, filmWM2K: number) =>
    waitAfterChangeS({ halfM: halfMm / 1000, filmWM2K }) / 60 / 2;

  test.each(truth.rewarming.rows)(
    "$halfMm mm of wax: what the film alone takes, and the wax on top",
    (row) => {
      for (const [film, minutes] of [
        [4, row.stillMin],
        [15, row.fanMin],
      ] as const) {
        const inWax = (2.3e6 * (row.halfMm / 1000) ** 2 * 4) / Math.PI ** 2 / 0.25 / 60;
        expect(Math.abs(halved(row.halfMm, film) - inWax - minutes)).toBeLessThan(0.6);
      }
    },
  );

  test("is within 6 % of the slab's exact slowest mode, ζ·tan ζ = hL/k", () => {
    for (const halfMm of [1, 3, 5, 10, 15, 30])
      for (const filmWM2K of [4, 10, 15, 40]) {
        const halfM = halfMm / 1000;
        const biot = ((filmWM2K + 5.25) * halfM) / 0.25;
        let low = 0;
        let high = Math.PI / 2;
        for (let i = 0; i < 60; i++) {
          const middle = (low + high) / 2;
          if (middle * Math.tan(middle) < biot) low = middle;
          else high = middle;
        }
        const tauMin = (halfM ** 2 * 2.3e6) / 0.25 / low ** 2 / 60;
        expect(Math.abs(halved(halfMm, filmWM2K) / tauMin - 1)).toBeLessThan(0.06);
      }
  });
});

describe("hands, bags and pins", () => {
  test("a dry touch says the front has started, not that it has arrived", () => {
    const dry = skinEvidence({ source: "touch", saw: "dry", afterS: 0, coat });
    expect(dry.weight).toBe(0.3);
    expect(dry.logLikelihood(0.3, 0)).toBeCloseTo(dry.logLikelihood(0.02, 0), 1);
    expect(dry.logLikelihood(0.9, 0)).toBeLessThan(dry.logLikelihood(0.2, 0) - 1.5);
  });

  test("and nothing at all of a pocket, where a wet one does", () => {
    const pocket = { ...coat, pocketSM: 1800 };
    const dry = skinEvidence({ source: "colour", saw: "dry", afterS: 0, coat: pocket });
    expect(dry.logLikelihood(0.9, 0)).toBeCloseTo(dry.logLikelihood(0.3, 0), 1);
    const wet = skinEvidence({ source: "colour", saw: "wet", afterS: 0, coat: pocket });
    expect(wet.logLikelihood(0.9, 0)).toBeGreaterThan(wet.logLikelihood(0.1, 0) + 1.5);
  });

  test("a bag is wet from 95 %, losing from 80 %, dry within 5 % of the room", () => {
    const bag = { roomRh: 0.5, baggedS: 1500, afterS: 0, coat };
    const says = [0.97, 0.85, 0.7, 0.54].map((bagRh) => {
      const heard = bagEvidence({ ...bag, bagRh });
      return heard.kind === "heard" ? heard.says : heard.code;
    });
    expect(says).toEqual(["wet", "losing", "between", "dry"]);
    expect(bagEvidence({ ...bag, bagRh: 0.5, baggedS: 600 })).toMatchObject({
      code: "too-soon",
      leastS: 1200,
    });
    expect(bagEvidence({ ...bag, bagRh: 0.8, roomRh: 0.78 })).toMatchObject({
      code: "air-too-damp",
      mostRh: 0.75,
    });
  });

  test.each(truth.archie.rows)(
    "a resistance $ratio times the first leaves $waterShare",
    ({ ratio, waterShare }) => {
      const heard = resistanceEvidence({ firstOhm: 1e4, firstC: 22, ohm: ratio * 1e4, tempC: 22, afterS: 0 });
      if (heard.kind === "refused") throw new Error(heard.code);
      expect(Math.abs(heard.waterShare - waterShare)).toBeLessThan(0.005);
      expect(heard.says).toBe(ratio >= 100 ? "dry" : "wet");
      expect(heard.evidence.logLikelihood(waterShare, 0)).toBeGreaterThan(
        heard.evidence.logLikelihood(0.9, 0) + 1,
      );
    },
  );

  test("a warmer coat conducts better by 2 % a kelvin, which is taken out", () => {
    const at = (ohm: number, tempC: number) =>
      resistanceEvidence({ firstOhm: 1e4, firstC: 20, ohm, tempC, afterS: 0 });
    const cool = at(1e5, 20);
    const warm = at(1e5 / 1.1, 25);
    expect(warm).toHaveProperty("ratio", expect.closeTo(cool.kind === "heard" ? cool.ratio : NaN, 9));
    expect(at(2e3, 20)).toMatchObject({ kind: "refused", code: "below-start", leastRatio: 0.5 });
  });
});
