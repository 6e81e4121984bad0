import { describe, expect, test } from "vitest";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { alloyContents } from "../../../logbook/pour/meltContents.ts";
import type { Contents } from "../../../physics/metal/scrap.ts";
import { alloys } from "../../../trade/metals/alloys.ts";
import { makeFormat } from "../format/units.ts";
import { contentNotes, hazardLines, type HazardMoment } from "./hazardWords.ts";
import { cautionLines, standingCaution, type CautionStep } from "./cautionWords.ts";
import type { Weights } from "./liftWords.ts";

const format = makeFormat("metric", "en-GB");
const steps: readonly CautionStep[] = ["burnout", "firing", "melt", "pour", "knock-out", "finishing"];
const heavy: Weights = { crucibleKg: 60, shellKg: 30 };
const of = (id: string): Contents => alloyContents(id, builtInShop) ?? {};
const lines = (step: CautionStep, contents: Contents | null, weights: Weights = heavy) =>
  cautionLines({ step, contents, weights }, format);
const text = (step: CautionStep, id: string): string => lines(step, of(id)).join(" ");

const everything: Contents = Object.fromEntries(
  (["cu", "al", "sn", "fe", "zn", "pb", "be", "cd", "mg", "ni", "p", "sb", "ag"] as const).map((e) => [
    e,
    { low: 0, high: 1 },
  ]),
);

test("no page of cautions says a line twice, nor what the standing caution says", () => {
  const metals = [null, everything, ...alloys.map(({ id }) => of(id))];
  for (const step of steps)
    for (const contents of metals) {
      const all = lines(step, contents);
      expect(new Set(all).size).toBe(all.length);
      expect(all).not.toContain(standingCaution);
    }
});

test("no caution of an alloy's own page stands under two moments in the same words", () => {
  const moments: readonly HazardMoment[] = ["melt", "pour", "knock-out", "grinding"];
  for (const contents of [everything, ...alloys.map(({ id }) => of(id))]) {
    const all = moments.flatMap((moment) => hazardLines(contents, moment, format));
    expect(new Set(all).size).toBe(all.length);
  }
});

describe("said at the moment it matters", () => {
  test.each(["c90300", "c90500", "c92200", "c86500", "c87500"])("%s: zinc at melt and pour", (id) => {
    expect(text("melt", id)).toMatch(/zinc/i);
    expect(text("pour", id)).toMatch(/zinc/i);
    expect(text("knock-out", id)).not.toMatch(/zinc/i);
  });

  test("C86500 has its lead at the pour and at the grinding, C90300 has not", () => {
    expect(text("pour", "c86500")).toMatch(/lead:/i);
    expect(text("finishing", "c86500")).toMatch(/lead:.* never grind it dry/i);
    expect(text("pour", "c90300")).not.toMatch(/lead:/i);
  });

  test("only what was alloyed with lead is called leaded; a trace makes no tableware", () => {
    expect(contentNotes(of("c83600"), format).join()).toMatch(/leaded/);
    expect(contentNotes(of("c92200"), format).join()).toMatch(/leaded/);
    expect(contentNotes(of("c90300"), format)).toEqual(["Up to 0.3% lead: no tableware from it."]);
    expect(contentNotes(of("c86500"), format)).toEqual([]);
    for (const id of ["bell-metal", "a514", "c90700"])
      expect(contentNotes(of(id), format).join()).not.toMatch(/leaded/);
    expect(contentNotes(of("c99700"), format)).toEqual(["Up to 2% lead: a leaded metal."]);
    expect(contentNotes(of("c87300"), format)).toEqual([]);
  });

  test("aluminium has rust and damp, iron its glare, pewter and tin that they don't glow", () => {
    expect(text("melt", "a356")).toMatch(/rust or damp/);
    expect(text("pour", "a356")).toMatch(/rust or damp/);
    expect(text("melt", "iron")).toMatch(/white hot/);
    for (const id of ["pewter", "tin"]) expect(text("pour", id)).toMatch(/doesn't glow/);
  });

  test("nickel is said where it is ground, beryllium wherever it may be", () => {
    expect(text("finishing", "c95500")).toMatch(/Nickel dust/);
    expect(text("finishing", "c90300")).not.toMatch(/Nickel/);
    for (const step of ["melt", "pour", "finishing"] as const)
      expect(lines(step, { cu: { low: 0.9, high: 1 }, be: { low: 0, high: 0.001 } }).join(" ")).toMatch(
        /beryllium/i,
      );
  });

  test("manganese is said over white bronze, phosphorus over phosphor bronze, magnesium over aluminium-magnesium", () => {
    expect(text("melt", "c99700")).toMatch(/manganese: its fume harms the nerves/);
    expect(text("melt", "c95500")).not.toMatch(/manganese/i);
    expect(text("melt", "c90700")).toMatch(/Phosphor copper/);
    expect(text("pour", "a514")).toMatch(/Magnesium burns white/);
  });

  test("quench and steam stand at the knock-out, onlookers at pour and knock-out", () => {
    expect(text("knock-out", "c90300")).toMatch(/Never quench/);
    expect(text("knock-out", "c90300")).toMatch(/throws steam/);
    for (const step of ["pour", "knock-out"] as const)
      expect(text(step, "c90300")).toMatch(/clear the area/i);
  });

  test("finishing names silica, H2S and NO2 with their limits, and cyanide never", () => {
    const all = text("finishing", "c90300");
    // 29 CFR 1910.1053: 0.05 mg/m³; 1910.1000 Z-2: H2S ceiling 20 ppm; Z-1: NO2 ceiling 5 ppm.
    for (const said of ["0.05 mg/m³", "20 ppm", "5 ppm", "Cyanide: never"]) expect(all).toContain(said);
  });
});

describe("weight", () => {
  const lift = (step: CautionStep, crucibleKg: number | null, shellKg: number | null) =>
    lines(step, of("c87300"), { crucibleKg, shellKg }).filter((line) => /weigh/.test(line));

  test("a shank above 12 kg, a hoist above 45, said at melt and pour", () => {
    for (const step of ["melt", "pour"] as const) {
      expect(lift(step, 12, null)).toEqual([]);
      expect(lift(step, 12.1, null).join()).toMatch(/two people and a shank/);
      expect(lift(step, 45, null).join()).toMatch(/two people and a shank/);
      expect(lift(step, 45.1, null).join()).toMatch(/hoist/);
    }
  });

  test("a shell above 20 kg is for two, said at pour and knock-out", () => {
    for (const step of ["pour", "knock-out"] as const) {
      expect(lift(step, null, 20)).toEqual([]);
      expect(lift(step, null, 20.1)).toHaveLength(1);
    }
    expect(lift("knock-out", 60, null)).toEqual([]);
  });
});
