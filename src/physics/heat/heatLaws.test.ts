import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Outside, WallCoolingFor } from "./heat.ts";
import { wallCooling } from "./heat.ts";
import { evenCellsMm, growingCellsMm, march } from "./heatMarch.ts";
import type { Layer, Outer } from "./heatSolver.ts";
import { startConduction } from "./heatSolver.ts";

const shell = {
  conductivityWMK: 0.7,
  densityKgM3: 1800,
  heatJKgK: 1000,
  emissivity: 0.85,
  airC: 20,
} as const;
const plain = { ...shell, conductivityShare: [1, 1], storageShare: [1, 1], emissivityShare: [1, 1] } as const;
const outsides: readonly Outside[] = ["air", "cold-sand", "hot-sand", "blanket"];
const outside = fc.constantFrom(...outsides);
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const wallFor = fc.record({
  wallMm: within(3, 20),
  startC: within(330, 1000),
  conductivityWMK: within(0.3, 2),
  densityKgM3: within(1400, 2900),
  emissivity: within(0.5, 1),
  outside,
});
const faceAt = (of: Partial<WallCoolingFor>): number =>
  wallCooling({ ...plain, wallMm: 10, startC: 540, outside: "air", minutes: 5, ...of }).at(-1)?.cavityFaceC ??
  NaN;

describe("mesh", () => {
  test("halving the cells again and again closes in on one answer, four times nearer each time", () => {
    const fine = faceAt({ cells: 192 });
    const errors = [6, 12, 24].map((cells) => Math.abs(faceAt({ cells }) - fine));
    const [coarse = 0, middle = 0, used = 0] = errors;
    expect(coarse / middle).toBeGreaterThan(3);
    expect(middle / used).toBeGreaterThan(3);
    expect(used).toBeLessThan(0.1);
  });

  test("twenty-four cells are within 1.5 K of ninety-six for any wall and surroundings", () =>
    fc.assert(
      fc.property(
        wallFor,
        (of) => Math.abs(faceAt({ ...of, cells: 24 }) - faceAt({ ...of, cells: 96 })) < 1.5,
      ),
      { numRuns: 40 },
    ));

  test("cells fill their layer, whatever their growth", () =>
    fc.assert(
      fc.property(
        within(1, 300),
        within(0.05, 5),
        fc.integer({ min: 4, max: 60 }),
        (thicknessMm, firstMm, cells) => {
          const mm = growingCellsMm({ thicknessMm, firstMm, cells });
          return (
            Math.abs(mm.reduce((sum, one) => sum + one, 0) / thicknessMm - 1) < 1e-9 && mm.length === cells
          );
        },
      ),
      { numRuns: 100 },
    ));
});

describe("heat is neither made nor lost", () => {
  const rows = fc.tuple(within(600, 900), within(1000, 1300)).map(
    ([a, b]) =>
      [
        [0, a],
        [800, b],
      ] as const,
  );
  const heat = fc.oneof(within(600, 1300), rows);
  const conductivity = fc.oneof(
    within(0.3, 2),
    rows.map((r) => r.map(([c, v]) => [c, v / 1000] as const)),
  );
  const layer = (cellsMm: readonly number[]) =>
    fc.record({
      cellsMm: fc.constant(cellsMm),
      conductivityWMK: conductivity,
      densityKgM3: within(500, 3000),
      heatJKgK: heat,
      startC: within(20, 900),
    });
  const layers = fc.tuple(
    layer(evenCellsMm({ thicknessMm: 8, cells: 8 })),
    layer(growingCellsMm({ thicknessMm: 60, firstMm: 1, cells: 12 })),
  );
  const outer: fc.Arbitrary<Outer> = fc.oneof(
    fc.record({
      kind: fc.constant("open" as const),
      airC: within(-20, 40),
      filmWM2K: within(0, 60),
      emissivity: within(0, 1),
    }),
    fc.constant({ kind: "insulated" as const }),
  );
  const balance = (of: { layers: readonly Layer[]; outer: Outer; poured: boolean; implicit: number }) => {
    const conduction = startConduction({
      layers: of.layers,
      outer: of.outer,
      melt: of.poured
        ? {
            kgM2: 25,
            contactWM2K: 1500,
            startC: 1150,
            held: [
              [0, -367e3],
              [854, 0],
              [1000, 195e3],
              [2000, 685e3],
            ],
          }
        : undefined,
    });
    march({
      conduction,
      marksS: [60, 600],
      firstS: 0.1,
      longestS: 10,
      implicit: of.implicit,
      onMark: () => "go-on",
    });
    return { off: conduction.gainedJM2() + conduction.lostJM2(), conduction };
  };
  const setup = fc.record({
    layers,
    outer,
    poured: fc.boolean(),
    implicit: fc.constantFrom(0.5, 1),
  });

  test("what the wall and the metal lose is what left the face, to a millionth", () =>
    fc.assert(
      fc.property(setup, (of) => Math.abs(balance(of).off) < 1e-6 * 30e6),
      { numRuns: 60 },
    ));

  test("an insulated wall loses nothing and comes to one temperature", () => {
    const mixed = startConduction({
      layers: [800, 100].map((startC) => ({
        ...shell,
        cellsMm: evenCellsMm({ thicknessMm: 5, cells: 10 }),
        startC,
      })),
      outer: { kind: "insulated" },
    });
    march({ conduction: mixed, marksS: [3600], firstS: 0.1, longestS: 10, onMark: () => "go-on" });
    for (const c of mixed.cellC) expect(c).toBeCloseTo(450, 3);
    expect(mixed.lostJM2()).toBe(0);
  });
});

test("a jump between two bodies dies down without ringing, even at long steps", () => {
  const slabs = startConduction({
    layers: [800, 100].map((startC) => ({
      ...shell,
      cellsMm: evenCellsMm({ thicknessMm: 20, cells: 40 }),
      startC,
    })),
    outer: { kind: "insulated" },
  });
  march({
    conduction: slabs,
    marksS: [40],
    firstS: 5,
    growth: 1,
    longestS: 5,
    onMark: () => "go-on",
  });
  const falls = Array.from(slabs.cellC, (c, i) => (slabs.cellC[i - 1] ?? 800) - c);
  expect(Math.min(...falls)).toBeGreaterThan(-1e-6);
});

describe("laws of cooling", () => {
  test("no face passes its start or its surroundings, and none warms again in air", () =>
    fc.assert(
      fc.property(wallFor, (of) => {
        const rows = wallCooling({ ...plain, ...of, minutes: 20, everyMin: 1 });
        const lowest = Math.min(20, of.outside === "hot-sand" ? 315 : 20) - 0.01;
        return rows.every(
          ({ cavityFaceC, meanC, outerC }, i) =>
            [cavityFaceC, meanC, outerC].every((c) => c <= of.startC + 0.01 && c >= lowest) &&
            (of.outside !== "air" || cavityFaceC <= (rows[i - 1]?.cavityFaceC ?? Infinity) + 1e-6),
        );
      }),
      { numRuns: 60 },
    ));

  test("a thicker wall keeps its cavity face hotter", () =>
    fc.assert(
      fc.property(wallFor, (of) => faceAt({ ...of, wallMm: of.wallMm + 1 }) > faceAt(of)),
      { numRuns: 60 },
    ));

  test("the band holds every corner of what is not known, and the likely face", () =>
    fc.assert(
      fc.property(outside, fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()), (where, [k, s, e]) => {
        const of = { ...shell, wallMm: 10, startC: 540, outside: where, minutes: 8 } as const;
        const row = wallCooling(of).at(-1);
        const corner = faceAt({
          outside: where,
          minutes: 8,
          conductivityWMK: shell.conductivityWMK * (k ? 0.71 : 1.43),
          densityKgM3: shell.densityKgM3 * (s ? 0.83 : 1.17),
          emissivity: shell.emissivity * (e ? 0.88 : 1.06),
        });
        const { cavityFaceLowC = 0, cavityFaceHighC = 0, cavityFaceC = 0 } = row ?? {};
        return (
          corner >= cavityFaceLowC - 0.2 &&
          corner <= cavityFaceHighC + 0.2 &&
          cavityFaceC >= cavityFaceLowC &&
          cavityFaceC <= cavityFaceHighC
        );
      }),
      { numRuns: 40 },
    ));
});
