import { describe, expect, test } from "vitest";
import type { Contents, Element } from "../../physics/metal/scrap.ts";
import { alloys } from "./alloys.ts";
import { metalContentsOf } from "./contents.ts";
import { hazardAbove, hazardsOf, leadedFrom, type MetalHazard } from "./hazards.ts";

/** Read off the printed limits of each alloy (the row's own composition), upper ends. */
const byComposition: Readonly<Record<string, readonly MetalHazard[]>> = {
  c87300: ["copper-fume"],
  c87500: ["zinc-fume", "copper-fume"], // Zn 12–16, Al up to 0.5, Pb up to 0.09
  c87600: ["zinc-fume", "copper-fume"], // Zn 4–7
  c90300: ["zinc-fume", "copper-fume"], // Zn 3–5, Pb up to 0.3, Ni up to 1
  c90500: ["zinc-fume", "copper-fume"], // Zn 1–3
  c92200: ["lead", "zinc-fume", "copper-fume"], // Pb 1–2, Zn 3–5
  c90700: ["lead", "phosphorus", "copper-fume"], // Pb and Zn up to 0.5, P up to 0.3
  "bell-metal": ["copper-fume"], // P up to 0.05
  c99700: ["lead", "zinc-fume", "nickel", "manganese", "copper-fume", "oxide-film"], // Pb up to 2, Zn 19–25, Ni 4–6, Mn 11–15, Al 0.5–3
  a514: ["magnesium", "rust-and-damp", "no-glow", "oxide-film", "hydrogen"], // Mg 3.5–4.5
  c83600: ["lead", "zinc-fume", "copper-fume"], // Pb 4–6, Zn 4–6
  c84400: ["lead", "zinc-fume", "copper-fume"], // Pb 6–8, Zn 7–10
  c86500: ["lead", "zinc-fume", "copper-fume", "oxide-film"], // Pb up to 0.4, Zn 36–42, Al 0.5–1.5
  c95400: ["nickel", "copper-fume", "oxide-film"], // Ni up to 1.5, Al 10–11.5
  c95500: ["nickel", "copper-fume", "oxide-film"], // Ni 3–5.5, Al 10–11.5
  a356: ["rust-and-damp", "no-glow", "oxide-film", "hydrogen"], // Mg up to 0.45
  a319: ["rust-and-damp", "no-glow", "oxide-film", "hydrogen"], // Zn up to 1, poured below where it boils
  a413: ["rust-and-damp", "no-glow", "oxide-film", "hydrogen"],
  copper: ["copper-fume", "hydrogen", "oxygen-pick-up"],
  sterling: ["oxygen-pick-up"], // Cu up to 7.5
  pewter: ["antimony", "no-glow"], // Sb 1–8, Pb up to 0.05
  tin: ["no-glow"],
  iron: ["glare"],
};

test("every metal's hazards are what its composition says", () => {
  for (const { id } of alloys)
    expect([id, hazardsOf(metalContentsOf(id) ?? {})]).toEqual([id, byComposition[id]]);
});

test("every metal of the table has something to be warned of", () => {
  for (const { id } of alloys) expect(hazardsOf(metalContentsOf(id) ?? {}).length).toBeGreaterThan(0);
});

describe("both sides of each limit", () => {
  const bronze = (of: Partial<Record<Element, number>>): Contents => ({
    cu: { low: 0.8, high: 0.9 },
    ...Object.fromEntries(Object.entries(of).map(([e, high]) => [e, { low: 0, high }])),
  });
  const has = (hazard: MetalHazard, element: Element, high: number): boolean =>
    hazardsOf(bronze({ [element]: high })).includes(hazard);

  test.each([
    ["beryllium", "be", hazardAbove.beryllium.value],
    ["cadmium", "cd", hazardAbove.cadmium.value],
    ["lead", "pb", 0.003],
    ["zinc-fume", "zn", 0.01],
    ["magnesium", "mg", 0.01],
    ["phosphorus", "p", 0.001],
    ["nickel", "ni", 0.01],
    ["antimony", "sb", 0.01],
    ["manganese", "mn", 0.05],
    ["oxide-film", "al", 0.005],
  ] as const)("%s above its share, not on it", (hazard, element, limit) => {
    expect(has(hazard, element, limit)).toBe(false);
    expect(has(hazard, element, limit + 0.0001)).toBe(true);
  });

  test("the most it may hold counts, however little is likely", () => {
    expect(hazardsOf({ cu: { low: 0.5, high: 1 }, pb: { low: 0, high: 0.15 } })).toContain("lead");
  });

  test("half of it makes the base", () => {
    expect(hazardsOf({ al: { low: 0, high: 0.5 } })).toContain("rust-and-damp");
    expect(hazardsOf({ al: { low: 0, high: 0.499 } })).not.toContain("rust-and-damp");
    expect(hazardsOf({ fe: { low: 0, high: 0.499 } })).not.toContain("glare");
    expect(hazardsOf({ cu: { low: 0.989, high: 1 } })).not.toContain("oxygen-pick-up");
    expect(hazardsOf({ cu: { low: 0.99, high: 1 } })).toContain("oxygen-pick-up");
  });

  test("zinc in aluminium is no fume, magnesium in it is", () => {
    const light: Contents = {
      al: { low: 0.8, high: 0.95 },
      zn: { low: 0, high: 0.08 },
      mg: { low: 0, high: 0.1 },
    };
    expect(hazardsOf(light)).not.toContain("zinc-fume");
    expect(hazardsOf(light)).toContain("magnesium");
  });
});

test("what is called leaded at knock-out is what was alloyed with lead", () => {
  for (const alloy of alloys) {
    const isLeaded = (metalContentsOf(alloy.id)?.pb?.high ?? 0) >= leadedFrom.value;
    expect([alloy.id, alloy.knockout.note?.startsWith("Leaded") ?? false]).toEqual([alloy.id, isLeaded]);
  }
});

test("aluminium bronze has one order at break-out: no lower heat than 300 °C is contradicted", () => {
  const c95400 = alloys.find(({ id }) => id === "c95400")!;
  const { value, note } = c95400.knockout;
  expect(value).toBe(300);
  expect(note).not.toMatch(/break out at/i);
  expect(note).toMatch(/thick and buried only/i);
});
