import type { Alloy } from "./alloy.ts";
import type { Published } from "./published.ts";

/** Core heat below which a casting may be broken out, °C, and what to know before. */
const copperBase: Published = { value: 300, source: "common practice, no source" };

const special: Readonly<Record<string, Published>> = {
  c95400: {
    value: 300,
    source:
      "common practice, no source; slow cooling: from memory of copper-alloy data sheets and ASM Handbook vol. 15",
    note: "Thin shell work cools fast enough. Thick and buried only: cooled slowly through 565 °C it turns brittle, so once it is frozen two people lift it out of the sand in its shell and let it cool in air. C95500 doesn't turn brittle.",
  },
  c86500: {
    value: 300,
    source: "common practice, no source",
    note: "Tears if it is pulled about while hot.",
  },
  c92200: {
    value: 300,
    source: "common practice, no source",
    note: "Leaded: tears if it is pulled about while hot.",
  },
  c83600: {
    value: 300,
    source: "common practice, no source",
    note: "Leaded: tears if it is pulled about while hot.",
  },
  c84400: {
    value: 300,
    source: "common practice, no source",
    note: "Leaded: tears if it is pulled about while hot.",
  },
  copper: copperBase,
  sterling: copperBase,
  pewter: { value: 100, source: "judgement, no source" },
  tin: { value: 100, source: "judgement, no source" },
  iron: { value: 400, source: "judgement, no source", note: "Colder is safer: chilled iron cracks." },
};

/** Half of the solidus on the absolute scale is the same idea; these are what is worked to. */
export function knockoutHeatOf({ id, family }: Alloy): Published {
  const own = special[id];
  if (own !== undefined) return own;
  return family === "aluminium"
    ? { value: 150, source: "common practice, no source; 150–200 °C" }
    : copperBase;
}

/** Small bronzes come out of the sand after about this, min: to be sane against. */
export const usualKnockoutMin: Published = {
  value: 60,
  source: "common practice, no source; process pages of sculpture founders",
};
