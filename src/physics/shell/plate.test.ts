import { describe, expect, test } from "vitest";
import { flatFactor } from "./wall.ts";

const poisson = 0.3;

/** Simply supported rectangle, short span 1, long span `aspect`: Navier's double sine series, Timoshenko & Woinowsky-Krieger eq. 133. */
function supportedFactor(aspect: number): number {
  let sum = 0;
  for (let m = 1; m < 600; m += 2)
    for (let n = 1; n < 600; n += 2) {
      const long = (m / aspect) ** 2;
      const short = n ** 2;
      const sign = ((m + n) / 2) % 2 === 1 ? 1 : -1;
      sum += (sign * (short + poisson * long)) / (m * n * (long + short) ** 2);
    }
  return (6 * 16 * sum) / Math.PI ** 4;
}

type Poly = readonly number[];
const times = (a: Poly, b: Poly): Poly => {
  const out = Array.from({ length: a.length + b.length - 1 }, () => 0);
  for (const [i, x] of a.entries()) for (const [j, y] of b.entries()) out[i + j] = (out[i + j] ?? 0) + x * y;
  return out;
};
const slopeOf = (a: Poly): Poly => a.slice(1).map((x, i) => x * (i + 1));
const integral = (a: Poly): number => a.reduce((sum, x, i) => sum + (i % 2 === 0 ? (2 * x) / (i + 1) : 0), 0);
const at = (a: Poly, x: number): number => a.reduceRight((sum, c) => sum * x + c, 0);

function solve(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const n = rows.length;
  const cell = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(cell(i, k)) > Math.abs(cell(pivot, k))) pivot = i;
    const top = rows[pivot] ?? [];
    rows[pivot] = rows[k] ?? [];
    rows[k] = top;
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const share = cell(i, k) / cell(k, k);
      rows[i] = (rows[i] ?? []).map((x, j) => x - share * (top[j] ?? 0));
    }
  }
  return rows.map((row, k) => (row[n] ?? 0) / (row[k] ?? 1));
}

/** Clamped rectangle, moment in the middle of the long edge: Ritz with (1−x²)²(1−y²)² and even powers; derived here. */
function clampedFactor(aspect: number): number {
  const count = 6;
  const bubble: Poly = [1, 0, -2, 0, 1];
  const base = Array.from({ length: count }, (_, i) =>
    times(bubble, [...Array.from({ length: 2 * i }, () => 0), 1]),
  );
  const curved = base.map((p) => slopeOf(slopeOf(p)));
  const s2 = 1 / aspect ** 2;
  const table = (a: readonly Poly[], b: readonly Poly[]) => a.map((p) => b.map((q) => integral(times(p, q))));
  const flat = table(base, base);
  const bent = table(curved, curved);
  const mixed = table(curved, base);
  const get = (t: readonly (readonly number[])[], i: number, j: number): number => t[i]?.[j] ?? 0;
  const pairs = base.flatMap((_, i) => base.map((__, j) => [i, j] as const));
  const stiffness = pairs.map(([i, j]) =>
    pairs.map(
      ([k, l]) =>
        16 *
        (s2 * s2 * get(bent, i, k) * get(flat, j, l) +
          s2 * (get(mixed, i, k) * get(mixed, l, j) + get(mixed, k, i) * get(mixed, j, l)) +
          get(flat, i, k) * get(bent, j, l)),
    ),
  );
  const load = pairs.map(([i, j]) => integral(base[i] ?? []) * integral(base[j] ?? []));
  const shape = solve(stiffness, load);
  const curvature = pairs.reduce(
    (sum, [i, j], n) => sum + (shape[n] ?? 0) * at(base[i] ?? [], 0) * at(curved[j] ?? [], 1),
    0,
  );
  return 6 * 4 * curvature;
}

describe("the factor of a flat, worked out again from plate theory", () => {
  test("is the greater of the supported and the clamped plate, to 0.0008, where the table stands", () => {
    for (const aspect of [1, 1.2, 1.4, 1.5, 1.6, 1.8, 2, 2.5, 3, 4, 5])
      expect(
        Math.abs(flatFactor(aspect) - Math.max(supportedFactor(aspect), clampedFactor(aspect))),
      ).toBeLessThan(0.0008);
  });

  test("between the table's lines is never off by more than 2.5 %", () => {
    for (let aspect = 1; aspect < 8; aspect += 0.1) {
      const exact = Math.max(supportedFactor(aspect), clampedFactor(aspect));
      expect(flatFactor(aspect) / exact).toBeGreaterThan(0.975);
      expect(flatFactor(aspect) / exact).toBeLessThan(1.025);
    }
  });

  test("starts on the clamped plate and goes over to the supported one between 1.2 and 1.4", () => {
    expect(clampedFactor(1.2)).toBeGreaterThan(supportedFactor(1.2));
    expect(clampedFactor(1.4)).toBeLessThan(supportedFactor(1.4));
  });
});
