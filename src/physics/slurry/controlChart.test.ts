import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/controlChart.json" with { type: "json" };
import type { ChartOptions, IndividualsChart } from "./controlChart.ts";
import { individualsChart } from "./controlChart.ts";

const chartOf = (values: readonly number[], options?: ChartOptions): IndividualsChart => {
  const chart = individualsChart(values, options);
  if (chart === null) throw new Error("no chart");
  return chart;
};
const rulesAt = ({ signals }: IndividualsChart, index: number): readonly number[] =>
  signals.filter((signal) => signal.index === index).map(({ rule }) => rule);
const unit = { centre: 0, sigma: 1 };
const fired = (values: readonly number[], options: ChartOptions = {}): readonly string[] =>
  chartOf(values, { frozen: unit, ...options }).signals.map(
    ({ rule, index, side }) => `${rule}@${index} ${side}`,
  );

describe("published charts", () => {
  test("ten batches of flow rate: centre, limits and ranges to the last printed digit, and no signal", () => {
    const { flow } = truth;
    for (const dropWideRanges of [false, true]) {
      const chart = chartOf(flow.values, { dropWideRanges });
      expect(Math.abs(chart.centre - flow.centre)).toBeLessThan(5e-5);
      expect(Math.abs(chart.meanRange - flow.meanRange)).toBeLessThan(5e-5);
      expect(Math.abs(chart.limits.upper - flow.upper)).toBeLessThan(5e-5);
      expect(Math.abs(chart.limits.lower - flow.lower)).toBeLessThan(5e-5);
      expect(Math.abs(chart.sigma - flow.sigma)).toBeLessThan(5e-5);
      expect(Math.abs(chart.rangeLimit - flow.rangeLimit)).toBeLessThan(5e-4);
      expect(chart.movingRanges[0]).toBeNull();
      for (const [i, range] of flow.movingRanges.entries())
        expect(chart.movingRanges[i + 1]).toBeCloseTo(range, 9);
      expect(chart).toMatchObject({ signals: [], wideRanges: [], droppedRanges: [], basis: "provisional" });
    }
  });

  test("the limit of a moving range is the published D4 of two times the mean range, as two normal values give it", () => {
    const { rangeConstants, flow } = truth;
    const chart = chartOf(flow.values);
    expect(chart.rangeLimit / chart.meanRange).toBeCloseTo(rangeConstants.D4, 9);
    // Independent of the table: the range of two normal values has this mean and spread.
    const d2 = 2 / Math.sqrt(Math.PI);
    const d3 = Math.sqrt(2 - 4 / Math.PI);
    expect(Math.abs(d2 - rangeConstants.d2)).toBeLessThan(5e-4);
    expect(Math.abs(d3 - rangeConstants.d3)).toBeLessThan(5e-4);
    expect(Math.abs(1 + (3 * d3) / d2 - rangeConstants.D4)).toBeLessThan(1e-3);
    expect(Math.max(0, 1 - (3 * d3) / d2)).toBe(rangeConstants.D3);
  });

  test("a cup that creeps up: two rules at reading 14, the limit itself only at 15", () => {
    const { cup } = truth;
    const chart = chartOf([...cup.baseline, ...cup.new], { baseline: cup.baseline.length });
    expect(Math.abs(chart.centre - cup.centre)).toBeLessThan(0.001);
    expect(Math.abs(chart.limits.upper - cup.upper)).toBeLessThan(0.001);
    expect(Math.abs(chart.limits.lower - cup.lower)).toBeLessThan(0.001);
    expect(Math.abs(chart.sigma - cup.sigma)).toBeLessThan(5e-5);
    expect(Math.abs(chart.rangeLimit - cup.rangeLimit)).toBeLessThan(0.001);
    expect(chart.basis).toBe("frozen");
    expect((chart.signals[0]?.index ?? 0) + 1).toBe(cup.firstSignalReading);
    expect(rulesAt(chart, cup.firstSignalReading - 1)).toEqual(cup.firstRules);
    const breach = chart.signals.find(({ rule }) => rule === 1);
    expect((breach?.index ?? 0) + 1).toBe(cup.firstLimitBreach);
    expect(chart.signals.every(({ side }) => side === "above")).toBe(true);
  });

  test("false alarms come as seldom as theory says: one in 370 by the limits, one in 92 by four rules", () => {
    const random = normals(20_261_125);
    const first = (rules: readonly number[], length: number): number => {
      const values = Array.from({ length }, random);
      const { signals } = chartOf(values, { frozen: unit });
      return (signals.find(({ rule }) => rules.includes(rule))?.index ?? length) + 1;
    };
    const mean = (rules: readonly number[], length: number, runs: number): number =>
      Array.from({ length: runs }, () => first(rules, length)).reduce((sum, n) => sum + n, 0) / runs;
    // 900 runs: the standard error is 3.3 % of the mean; three of it.
    const four = mean([1, 2, 3, 4], 800, 900);
    expect(Math.abs(four / truth.runLengths.rulesOneToFour - 1)).toBeLessThan(0.1);
    const one = mean([1], 2500, 300);
    expect(Math.abs(one / truth.runLengths.ruleOne - 1)).toBeLessThan(0.18);
  });
});

describe("each rule by itself, both sides", () => {
  test("one beyond three sigma, and not one on the line", () => {
    expect(fired([0, 3.01])).toEqual(["1@1 above"]);
    expect(fired([0, -3.01])).toEqual(["1@1 below"]);
    expect(fired([0, 3])).toEqual([]);
  });

  test("two of three beyond two sigma on the same side", () => {
    expect(fired([2.1, 0, 2.1])).toEqual(["2@2 above"]);
    expect(fired([-2.1, 0, -2.1])).toEqual(["2@2 below"]);
    expect(fired([2.1, 0, -2.1])).toEqual([]);
    expect(fired([2.1, 0, 0, 2.1])).toEqual([]);
    expect(fired([2.1, 2.1, 0])).toEqual(["2@1 above"]);
  });

  test("four of five beyond one sigma on the same side", () => {
    expect(fired([1.1, 1.1, 0, 1.1, 1.1])).toEqual(["3@4 above"]);
    expect(fired([-1.1, -1.1, 0, -1.1, -1.1])).toEqual(["3@4 below"]);
    expect(fired([1.1, 1.1, 0, 0, 1.1, 1.1])).toEqual([]);
    expect(fired([1.1, -1.1, 1.1, -1.1, 1.1])).toEqual([]);
  });

  test("eight on one side, not seven, and a value on the centre ends the run", () => {
    const low = [-0.3, -0.1, -0.4, -0.2, -0.3, -0.1, -0.2, -0.3];
    expect(fired(low)).toEqual(["4@7 below"]);
    expect(fired(low.slice(1))).toEqual([]);
    expect(fired(low.map((value) => -value))).toEqual(["4@7 above"]);
    expect(fired([...low.slice(0, 7), 0, -0.3])).toEqual([]);
  });

  test("six rising or falling, not five, and a standstill ends the trend", () => {
    expect(fired([-0.5, -0.3, -0.1, 0.1, 0.3, 0.5])).toEqual(["5@5 rising"]);
    expect(fired([0.5, 0.3, 0.1, -0.1, -0.3, -0.5])).toEqual(["5@5 falling"]);
    expect(fired([-0.3, -0.1, 0.1, 0.3, 0.5])).toEqual([]);
    expect(fired([-0.5, -0.3, -0.1, -0.1, 0.1, 0.3, 0.5])).toEqual([]);
  });

  test("a correction ends a trend, not a run on one side", () => {
    expect(fired([-0.5, -0.3, -0.1, 0.1, 0.3, 0.5], { correctedBefore: [3] })).toEqual([]);
    expect(fired([2.1, 0, 2.1], { correctedBefore: [2] })).toEqual(["2@2 above"]);
  });
});

describe("limits", () => {
  const ten = truth.cup.baseline;

  test("nine readings show no signal, ten are provisional, twenty freeze", () => {
    expect(chartOf([...ten.slice(0, 8), 20])).toMatchObject({ basis: "too-few", signals: [] });
    expect(chartOf(ten).basis).toBe("provisional");
    const twenty = [...ten, ...ten];
    expect(chartOf(twenty).basis).toBe("frozen");
    const later = chartOf([...twenty, 14, 15, 16]);
    expect(later.limits).toEqual(chartOf(twenty).limits);
    expect(later.signals.some(({ rule, index }) => rule === 1 && index === 20)).toBe(true);
  });

  test("the range across a correction is void and widens nothing", () => {
    const jumped = [...ten.slice(0, 5), ...ten.slice(5).map((value) => value - 3)];
    const joined = chartOf(jumped);
    const cut = chartOf(jumped, { correctedBefore: [5] });
    expect(cut.movingRanges[5]).toBeNull();
    expect(cut.meanRange).toBeLessThan(joined.meanRange);
    expect(cut.meanRange).toBeCloseTo((0.3 + 0.2 + 0.4 + 0.3 + 0.5 + 0.3 + 0.1 + 0.2) / 8, 9);
  });

  test("one wild range can be left out of the mean, and is told", () => {
    const wild = [10, 10.1, 10, 10.1, 10, 10.1, 10, 14, 14.1, 14, 14.1];
    const kept = chartOf(wild);
    const dropped = chartOf(wild, { dropWideRanges: true });
    expect(kept.droppedRanges).toEqual([]);
    expect(dropped.droppedRanges).toEqual([7]);
    expect(dropped.meanRange).toBeCloseTo(0.1, 9);
    expect(dropped.wideRanges).toEqual([7]);
  });

  test("readings that never differ have no limits to break", () =>
    expect(chartOf(Array.from({ length: 12 }, () => 12.1))).toMatchObject({ sigma: 0, signals: [] }));

  test("no range, no chart; a NaN is refused", () => {
    expect(individualsChart([])).toBeNull();
    expect(individualsChart([12])).toBeNull();
    expect(individualsChart([12, 13], { correctedBefore: [1] })).toBeNull();
    expect(individualsChart([12], { frozen: unit })?.limits).toEqual({ upper: 3, lower: -3 });
    expect(() => individualsChart([12, NaN])).toThrow(RangeError);
    expect(() => individualsChart([12, 13], { baseline: 1 })).toThrow(RangeError);
  });
});

test("shifting or stretching all readings moves the limits with them and changes no signal", () =>
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 8, max: 20, noNaN: true }), { minLength: 12, maxLength: 30 }),
      fc.double({ min: -5, max: 50, noNaN: true }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      (values, shift, stretch) => {
        const one = chartOf(values);
        fc.pre(one.sigma > 0.01);
        const other = chartOf(values.map((value) => value * stretch + shift));
        expect(other.centre).toBeCloseTo(one.centre * stretch + shift, 6);
        expect(other.sigma).toBeCloseTo(one.sigma * stretch, 6);
        expect(other.signals).toEqual(one.signals);
        const mirrored = chartOf(values.map((value) => -value));
        expect(mirrored.signals.map(({ rule, index }) => [rule, index])).toEqual(
          one.signals.map(({ rule, index }) => [rule, index]),
        );
      },
    ),
    { numRuns: 150 },
  ));

/** Standard normal numbers by Box and Muller from a fixed seed (mulberry32). */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
