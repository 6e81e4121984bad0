import type { MeltFigures } from "./meltFigure.ts";

/** Melting, pouring and shrink of silicon and tin bronzes. Every figure names its source; those from memory say so. */
export const bronzeMeltFigures: readonly MeltFigures[] = [
  {
    alloyId: "c87300",
    crucibleKgM3: {
      value: 7400,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
      note: "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.",
    },
    conductivityWMK: { value: 28.4, source: "data sheet for UNS C87200" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C87200" },
    solidHeatJKgK: {
      value: 440,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 500, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 230000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
      note: "210–270 kJ/kg; the rule overstates silicon; published values for such alloys spread",
    },
    heavyLowC: { value: 1010, source: "ingot data, weak source (1850–1950 °F)" },
    heavyHighC: { value: 1066, source: "ingot data, weak source (1850–1950 °F)" },
    shrinkLow: { value: 0.0208, source: "data sheet for UNS C87200 (1/4 in/ft)" },
    shrinkHigh: { value: 0.0208, source: "data sheet for UNS C87200 (1/4 in/ft)" },
    freezeLow: { value: 0.04, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: { value: "low dross, much gas, flows well", source: "data sheet for UNS C87200" },
  },
  {
    alloyId: "c87500",
    crucibleKgM3: {
      value: 7200,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
      note: "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.",
    },
    conductivityWMK: { value: 27.7, source: "data sheet for UNS C87500 (16 Btu/ft·h·°F)" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C87500" },
    solidHeatJKgK: {
      value: 430,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 490, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 220000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
      note: "200–258 kJ/kg; the rule overstates silicon; published values for such alloys spread",
    },
    heavyLowC: { value: 982, source: "data sheet for UNS C87500 (1800–1900 °F)" },
    heavyHighC: { value: 1038, source: "data sheet for UNS C87500 (1800–1900 °F)" },
    shrinkLow: { value: 0.0195, source: "data sheet for UNS C87500 (15/64 in/ft)" },
    shrinkHigh: { value: 0.0195, source: "data sheet for UNS C87500 (15/64 in/ft)" },
    freezeLow: { value: 0.04, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: { value: "low dross, some gas, flows well", source: "data sheet for UNS C87500" },
  },
  {
    alloyId: "c87600",
    crucibleKgM3: {
      value: 7200,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
      note: "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.",
    },
    conductivityWMK: { value: 28.4, source: "from memory of copper-alloy data sheets" },
    roomHeatJKgK: { value: 377, source: "from memory of copper-alloy data sheets" },
    solidHeatJKgK: {
      value: 440,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 500, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 230000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
      note: "210–274 kJ/kg; the rule overstates silicon; published values for such alloys spread",
    },
    heavyLowC: { value: 1000, source: "common practice, no source" },
    heavyHighC: { value: 1060, source: "common practice, no source" },
    shrinkLow: { value: 0.02, source: "common practice, no source" },
    shrinkHigh: { value: 0.02, source: "common practice, no source" },
    freezeLow: { value: 0.04, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: { value: "low dross, some gas, flows well", source: "common practice, no source" },
  },
  {
    alloyId: "c90300",
    crucibleKgM3: {
      value: 7860,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 74.8, source: "data sheet for UNS C90300 (43.2 Btu/ft·h·°F)" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C90300" },
    solidHeatJKgK: {
      value: 430,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 490, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 195000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1050, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.0156, source: "from memory of ASM Handbook vol. 2 (3/16 in/ft)" },
    shrinkHigh: { value: 0.0156, source: "from memory of ASM Handbook vol. 2 (3/16 in/ft)" },
    freezeLow: { value: 0.045, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: { value: "low dross, some gas, flows fairly", source: "common practice, no source" },
  },
  {
    alloyId: "c90500",
    crucibleKgM3: {
      value: 7870,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 74.8, source: "from memory of copper-alloy data sheets" },
    roomHeatJKgK: { value: 377, source: "from memory of copper-alloy data sheets" },
    solidHeatJKgK: {
      value: 430,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 490, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 192000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1050, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.0156, source: "from memory of ASM Handbook vol. 2 (3/16 in/ft)" },
    shrinkHigh: { value: 0.0156, source: "from memory of ASM Handbook vol. 2 (3/16 in/ft)" },
    freezeLow: { value: 0.045, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: { value: "low dross, some gas, flows fairly", source: "common practice, no source" },
  },
  {
    alloyId: "c92200",
    crucibleKgM3: {
      value: 7900,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 69.6, source: "data sheet for UNS C92200 (40.2 Btu/ft·h·°F)" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C92200 (0.09 Btu/lb·°F)" },
    solidHeatJKgK: {
      value: 425,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 485, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 190000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1040, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.0156, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.0156, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: { value: 0.045, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: {
      value: "low dross, some gas, flows well; leaks least",
      source: "common practice, no source",
    },
  },
];
