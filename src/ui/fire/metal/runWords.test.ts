import { describe, expect, test } from "vitest";
import { runFull } from "../../../logbook/casting/runSum.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import { makeFormat } from "../../base/format/units.ts";
import { runBecause, runStepWords, runVerdicts } from "./runWords.ts";

const format = makeFormat("metric", "en-GB");
const us = makeFormat("us", "en-GB");

/** What a page says of a section; heats as a maker would have them. */
function said(of: {
  alloyId: string;
  wallMm: number;
  wayMm: number;
  widthMm?: number;
  massKg: number;
  metalC: number;
  shellC: number;
}) {
  const alloy = alloyOf(of.alloyId)!;
  const advice = runFull({
    alloy,
    figures: alloy,
    hot: { metalC: of.metalC, shellC: of.shellC, wallMm: of.wallMm },
    massKg: of.massKg,
    wayMm: of.wayMm,
    widthMm: of.widthMm ?? null,
    gate: "bottom",
    fillS: null,
  });
  const words = (inUnits: typeof format): string =>
    [
      runVerdicts[advice.verdict].says,
      runBecause(advice, inUnits),
      ...advice.steps.map((step) => runStepWords(step, inUnits)),
    ].join(" ");
  return { advice, words: words(format), usWords: words(us) };
}

const bronze = { alloyId: "c87300", metalC: 1100 };

describe("what a maker is told", () => {
  test.each([0.6, 1, 3, 10, 45])(
    "3 mm of bronze over 300 mm into a cold shell does not run full, %s kg",
    (massKg) => {
      for (const widthMm of [undefined, 20, 60, 300])
        expect(
          said({
            ...bronze,
            wallMm: 3,
            wayMm: 300,
            massKg,
            shellC: 20,
            ...(widthMm === undefined ? {} : { widthMm }),
          }).advice.verdict,
        ).not.toBe("runs");
    },
  );

  test("4 mm over 500 mm may stop: a relief of 45 kg at its usual shell heat, a panel of 8 kg and its gates at 600 °C", () => {
    const relief = said({ ...bronze, wallMm: 4, wayMm: 500, massKg: 45, shellC: 710 });
    expect(relief.advice.verdict).toBe("may-stop");
    const panel = { ...bronze, wallMm: 4, wayMm: 500, widthMm: 400, massKg: 13, shellC: 600 };
    expect(said(panel).advice.verdict).toBe("may-stop");
    // The same panel in a shell of its usual heat runs, by its times: practice heats thin work more for that.
    expect(said({ ...panel, shellC: 710 }).advice.verdict).toBe("runs");
  });

  test("an 8 mm bell runs, and is told its times, no metres", () => {
    const bell = { alloyId: "c90500", wallMm: 8, wayMm: 250, massKg: 16, metalC: 1089, shellC: 600 };
    const { words, usWords } = said(bell);
    expect(words.replaceAll("\u00a0", " ")).toBe(
      "It runs full. The front moves at 0.03 m/s and takes 8 s. This section allows at least 8.4 s, at best 27 s.",
    );
    expect(usWords).not.toMatch(/\d (in|ft)\b/);
  });

  test("no page promises a length beyond the way that was asked", () => {
    for (const wallMm of [1, 3, 8, 20])
      for (const shellC of [20, 600, 900])
        for (const massKg of [0.5, 8, 100]) {
          const { advice, words } = said({ ...bronze, wallMm, wayMm: 300, massKg, shellC });
          for (const step of advice.steps)
            if (step.do === "add-gate-or-thicken") expect(step.mostWayMm).toBeLessThan(300);
          expect(words).not.toMatch(/\d\.?\d* m\b(?!\/)/);
        }
  });
});
