import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/heat.json" with { type: "json" };
import type { WallCoolingFor } from "./heat.ts";
import { rampLimitKPerH, rampStress, wallCooling } from "./heat.ts";
import {
  contactC,
  effusivity,
  firstTerm,
  lumpedC,
  oneTermShare,
  radiationAndFilmC,
  radiationS,
} from "../../../tests/sums/heatClosedForms.ts";
import { zeroCK } from "./heatSolver.ts";

const { wall } = truth;
const shell = {
  conductivityWMK: wall.conductivityWMK,
  densityKgM3: wall.densityKgM3,
  heatJKgK: wall.heatJKgK,
  emissivity: wall.emissivity,
  filmWM2K: wall.filmWM2K,
  airC: wall.airC,
};
const at = (of: Partial<WallCoolingFor> & { minute: number }) => {
  const { minute, ...rest } = of;
  const rows = wallCooling({ ...shell, wallMm: 10, startC: 540, outside: "air", minutes: minute, ...rest });
  const row = rows.at(-1);
  if (row === undefined) throw new Error("no row");
  return row;
};
/** A shell so thin to heat, or so good a conductor, that it has one temperature. */
const lumped = { conductivityWMK: 400, storageShare: [1, 1], conductivityShare: [1, 1] } as const;

describe("closed forms against print", () => {
  test.each(truth.radiation.rows)(
    "by radiation alone from 540 °C to $toC °C takes $seconds s",
    ({ toC, seconds }) => {
      const { startC: fromC, airC, emissivity, storageJM2K, withinS } = truth.radiation;
      expect(Math.abs(radiationS({ fromC, toC, airC, emissivity, storageJM2K }) - seconds)).toBeLessThan(
        withinS,
      );
    },
  );

  test("radiation and a film of 10 to nothing leave 619.95 K after three minutes", () => {
    const { kelvin, withinK, source: _, ...of } = truth.radiationAndFilm;
    expect(Math.abs(radiationAndFilmC(of) + zeroCK - kelvin)).toBeLessThan(withinK);
  });

  test("a film of 50 alone leaves 335.4 °C", () => {
    const { atC, withinK, source: _, ...of } = truth.film;
    expect(Math.abs(lumpedC(of) - atC)).toBeLessThan(withinK);
  });

  test.each(truth.oneTerm.roots)("at Biot $biot the first root is $zeta and its factor $factor", (row) => {
    const { zeta, factor } = firstTerm(row.biot);
    expect(Math.abs(zeta - row.zeta)).toBeLessThan(0.0001);
    expect(Math.abs(factor - row.factor)).toBeLessThan(0.0001);
  });

  test("at Biot 1 and Fourier 0.5 a slab's middle is at 421.9 °C by one term", () => {
    const { startC, airC, oneTermC, withinK, ...of } = truth.oneTerm.slab;
    expect(Math.abs(airC + (startC - airC) * oneTermShare(of) - oneTermC)).toBeLessThan(withinK);
  });

  test.each(truth.sandContact.rows)(
    "a shell of 540 °C and sand of $sandC °C touch at $contactC °C",
    (row) => {
      const { shellEffusivity, sandEffusivity, withinK } = truth.sandContact;
      const touch = contactC(
        { atC: 540, effusivity: shellEffusivity },
        { atC: row.sandC, effusivity: sandEffusivity },
      );
      expect(Math.abs(touch - row.contactC)).toBeLessThan(withinK);
      expect(effusivity(shell)).toBeCloseTo(shellEffusivity, 1);
    },
  );
});

describe("the solver against closed forms", () => {
  test.each(truth.radiation.rows)(
    "a wall that conducts well radiates to $toC °C in $seconds s",
    ({ toC, seconds }) => {
      const { outerC } = at({ ...lumped, filmWM2K: 0, minute: seconds / 60, everyMin: 60 });
      expect(Math.abs(outerC - toC)).toBeLessThan(0.5);
    },
  );

  test("a wall that conducts well cools as one body under a film", () => {
    const { atC, filmWM2K, seconds } = truth.film;
    const { meanC } = at({ ...lumped, emissivity: 0, filmWM2K, minute: seconds / 60 });
    expect(Math.abs(meanC - atC)).toBeLessThan(0.3);
  });

  test("a slab at Biot 1 and Fourier 0.5 comes to the full series' 421.7 °C", () => {
    const { fullC } = truth.oneTerm.slab;
    // Bi 1 over 10 mm wants h = k/t = 70; Fo 0.5 wants t²/(2a).
    const minute = (0.5 * 0.01 ** 2) / (0.7 / 1.8e6) / 60;
    const { cavityFaceC } = at({ emissivity: 0, filmWM2K: 70, minute, everyMin: minute });
    expect(Math.abs(cavityFaceC - fullC)).toBeLessThan(0.1);
  });

  test("a wall cooled from both sides is half of it with an insulated middle", () => {
    const both = at({ wallMm: 20, inside: "symmetric", minute: 3 });
    const half = at({ wallMm: 10, minute: 3 });
    expect(both.outerC).toBeCloseTo(half.outerC, 9);
    expect(both.cavityFaceC).toBe(both.outerC);
  });

  test.each(truth.sandContact.rows)("sand of $sandC °C meets a shell of 540 °C at $contactC °C", (row) => {
    const { wallMm, minute } = truth.sandContact;
    const { outerC, meanC } = at({ wallMm, minute, outside: "hot-sand", sandC: row.sandC });
    expect(Math.abs(outerC - row.contactC)).toBeLessThan(1);
    const lost = (540 - meanC) * 1.8e6 * (wallMm / 1000);
    expect(Math.abs(lost / row.lostJM2 - 1)).toBeLessThan(0.01);
  });
});

describe("a wall out of the kiln", () => {
  test.each(wall.rows)("$wallMm mm from $startC °C after $minute min: cavity face $innerC °C", (row) => {
    const { wallMm, startC, minute } = row;
    const found = at({ wallMm, startC, minute });
    expect(Math.abs(found.cavityFaceC - row.innerC)).toBeLessThan(wall.withinK);
    if (row.meanC !== undefined) expect(Math.abs(found.meanC - row.meanC)).toBeLessThan(wall.withinK);
    if (row.outerC !== undefined) expect(Math.abs(found.outerC - row.outerC)).toBeLessThan(wall.withinK);
  });

  test("cold sand chills the wall more than air for the first minutes, and keeps it warmer after ten", () => {
    const mean = (outside: "air" | "cold-sand", minute: number) => at({ outside, minute }).meanC;
    expect(mean("cold-sand", 1)).toBeLessThan(mean("air", 1) - 30);
    expect(mean("cold-sand", 5)).toBeLessThan(mean("air", 5));
    expect(mean("cold-sand", 10)).toBeGreaterThan(mean("air", 10));
  });

  test("hot sand at the practice's 315 °C keeps the cavity face above 400 °C for ten minutes", () => {
    expect(at({ outside: "hot-sand", minute: 10 }).cavityFaceC).toBeGreaterThan(400);
    expect(at({ outside: "air", minute: 10 }).cavityFaceC).toBeLessThan(300);
  });

  test("a blanket slows the first five minutes' fall threefold", () => {
    const fall = (outside: "air" | "blanket") => 540 - at({ outside, minute: 5 }).meanC;
    expect(fall("air") / fall("blanket")).toBeGreaterThan(3);
  });

  test("a shell and surroundings left out are fused silica in air, unknown ones are refused", () => {
    const said = { wallMm: 10, startC: 540, airC: 20, minutes: 5 } as const;
    expect(Math.abs(wallCooling(said).at(-1)!.cavityFaceC - 368.4)).toBeLessThan(wall.withinK);
    expect(() => wallCooling({ ...said, outside: "snow" as never })).toThrow(/found snow/);
  });

  test("sand packed in the cavity takes heat from the cavity face", () => {
    const open = at({ minute: 3 });
    expect(at({ inside: "sand-backed", sandC: 20, minute: 3 }).cavityFaceC).toBeLessThan(
      open.cavityFaceC - 50,
    );
  });

  test("a conductivity in rows of one value is that value, and a rising one lies between its ends", () => {
    const flat = at({
      conductivityWMK: [
        [0, 0.7],
        [1000, 0.7],
      ],
      heatJKgK: [
        [0, 1000],
        [1000, 1000],
      ],
      minute: 3,
    });
    expect(flat.cavityFaceC).toBeCloseTo(at({ minute: 3 }).cavityFaceC, 5);
    const rising = at({
      heatJKgK: [
        [20, 750],
        [1000, 1150],
      ],
      minute: 3,
    }).meanC;
    expect(rising).toBeGreaterThan(at({ heatJKgK: 750, minute: 3 }).meanC);
    expect(rising).toBeLessThan(at({ heatJKgK: 1150, minute: 3 }).meanC);
  });

  test.each([
    ["a wall in metres", { wallMm: 0.01 }, /wallMm must be 0.5–100 mm/],
    ["a density in g/cm³", { densityKgM3: 1.8 }, /densityKgM3/],
    ["a heat in kJ", { heatJKgK: 1 }, /heatJKgK/],
    ["no temperature", { startC: NaN }, /startC must be .* found NaN/],
  ] as const)("%s is refused", (_, wrong, message) => {
    expect(() => at({ ...wrong, minute: 1 })).toThrow(message);
  });
});

describe("the ramp a wall bears", () => {
  test("15 mm of aluminosilicate at 300 K/h: 17.8 K, 0.445 MPa, and 808 K/h at the most", () => {
    const { differenceK, stressMPa, limitKPerH, within, ...of } = truth.ramp;
    const found = rampStress(of);
    expect(Math.abs(found.differenceK / differenceK - 1)).toBeLessThan(within);
    expect(Math.abs(found.stressMPa / stressMPa - 1)).toBeLessThan(within);
    expect(Math.abs(rampLimitKPerH(of) / limitKPerH - 1)).toBeLessThan(within);
  });

  test.each(truth.rampLimits.rows)("$wallMm mm of $shell bears $limitKPerH K/h", ({ limitKPerH, ...of }) => {
    expect(Math.abs(rampLimitKPerH(of) / limitKPerH - 1)).toBeLessThan(truth.rampLimits.within);
    expect(rampLimitKPerH({ ...of, heated: "both-sides" }) / rampLimitKPerH(of)).toBeCloseTo(4, 9);
  });

  // By hand: θ = x² across the wall, flat at the inside; its mean is 1/3, so the outside is 2/3 away from it.
  test("on cooling the outside takes two thirds of E·α·ΔT/(1 − ν), found by adding up the curve", () => {
    const { modulusGPa, expansionPerK, poisson } = truth.ramp;
    const { differenceK, stressMPa } = rampStress({ ...truth.ramp, way: "cooling" });
    const steps = 10_000;
    const squares = Array.from({ length: steps }, (_, i) => ((i + 0.5) / steps) ** 2);
    const mean = squares.reduce((a, b) => a + b) / steps;
    const wholeMPa = (modulusGPa * 1000 * expansionPerK * differenceK) / (1 - poisson);
    expect(stressMPa / wholeMPa).toBeCloseTo(1 - mean, 6);
  });

  test("15 mm of aluminosilicate bears 606 K/h on cooling, three quarters of its 808 on heating", () => {
    const { limitKPerH, within, ...of } = truth.ramp;
    expect(Math.abs(rampLimitKPerH({ ...of, way: "cooling" }) / 606 - 1)).toBeLessThan(within);
    expect(Math.abs(rampLimitKPerH({ ...of, way: "heating" }) / limitKPerH - 1)).toBeLessThan(within);
  });
});
