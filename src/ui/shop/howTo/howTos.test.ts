import { describe, expect, test } from "vitest";
import { howToNames, type HowToId } from "../../base/format/howToNames.ts";
import { makeFormat } from "../../base/format/units.ts";
import { howToOf } from "./howTos.ts";

const ids = Object.keys(howToNames) as HowToId[];
const formats = (["metric", "us", "mixed"] as const).map((units) => makeFormat(units, "en-GB"));
const pages = formats.flatMap((format) => ids.map((id) => ({ id, format, page: howToOf(id, format) })));
const wordsIn = (text: string): readonly string[] =>
  text.split(/[\s\u00a0]+/).filter((word) => /\w/.test(word));
const sentencesIn = (text: string): readonly string[] => text.split(/(?<=[.!?:])\s+/);

describe.each(pages)("$id in $format.units units", ({ page }) => {
  test("has at most eight steps, none over twelve words", () => {
    expect(page.steps.length).toBeGreaterThanOrEqual(4);
    expect(page.steps.length).toBeLessThanOrEqual(8);
    expect(page.steps.filter((step) => wordsIn(step).length > 12)).toEqual([]);
  });

  test("says why in one sentence and what goes wrong in short ones", () => {
    expect(sentencesIn(page.why)).toHaveLength(1);
    expect(page.goesWrong.length).toBeGreaterThanOrEqual(2);
    const long = [page.why, page.sum ?? "", ...page.goesWrong]
      .flatMap(sentencesIn)
      .filter((sentence) => wordsIn(sentence).length > 22);
    expect(long).toEqual([]);
  });

  test("names its sources at the foot, and no standard anywhere else", () => {
    expect(page.sources.length).toBeGreaterThanOrEqual(1);
    const said = [page.why, page.sum ?? "", ...page.steps, ...page.goesWrong].join(" ");
    expect(said).not.toMatch(/ASTM|ISO|\bEN \d|source|memory|practice/);
  });
});

test("nobody in US units is given a metric length, and the other way round", () => {
  for (const { format, page } of pages) {
    const said = [page.sum ?? "", ...page.steps].join(" ");
    if (format.units === "us") expect(said).not.toMatch(/\d\s(mm|cm)\b|newton|MPa/);
    else expect(said).not.toMatch(/\d\sin\b|pound|psi/);
  }
});
