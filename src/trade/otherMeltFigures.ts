import type { MeltFigures } from "./meltFigure.ts";

/** Melting, pouring and shrink of aluminium alloys, copper, silver, tin and iron. Every figure names its source. */
export const otherMeltFigures: readonly MeltFigures[] = [
  {
    alloyId: "a356",
    crucibleKgM3: {
      value: 2380,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: {
      value: 151,
      source: "materials database 150, properties page for AA 356.0 167 (T6, chill)",
    },
    roomHeatJKgK: { value: 963, source: "properties page for AA 356.0" },
    solidHeatJKgK: {
      value: 1050,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 1180, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 389000,
      source: "properties page for AA 356.0",
      note: "389 kJ/kg by the properties page; databases that mix by mass print 480–500",
    },
    heavyLowC: { value: 675, source: "common practice, no source" },
    heavyHighC: { value: 730, source: "common practice, no source" },
    shrinkLow: { value: 0.013, source: "materials database (5/32 in/ft)" },
    shrinkHigh: { value: 0.013, source: "materials database (5/32 in/ft)" },
    freezeLow: { value: 0.05, source: "common practice, no source" },
    freezeHigh: { value: 0.06, source: "common practice, no source" },
    behaviour: { value: "oxide film, takes up hydrogen", source: "common practice, no source" },
  },
  {
    alloyId: "a319",
    crucibleKgM3: {
      value: 2450,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 110, source: "materials database" },
    roomHeatJKgK: { value: 922, source: "materials database, 880–963" },
    solidHeatJKgK: {
      value: 1030,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 1180, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 389000,
      source: "from memory of ASM Handbook vol. 2",
      note: "databases that mix by mass print 480",
    },
    heavyLowC: { value: 675, source: "common practice, no source" },
    heavyHighC: { value: 730, source: "common practice, no source" },
    shrinkLow: { value: 0.013, source: "materials database (5/32 in/ft)" },
    shrinkHigh: { value: 0.013, source: "materials database (5/32 in/ft)" },
    freezeLow: { value: 0.05, source: "common practice, no source" },
    freezeHigh: { value: 0.06, source: "common practice, no source" },
    behaviour: { value: "oxide film, takes up hydrogen", source: "common practice, no source" },
  },
  {
    alloyId: "a413",
    crucibleKgM3: {
      value: 2400,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 131, source: "from memory of ASM Handbook vol. 2, 121–142" },
    roomHeatJKgK: { value: 963, source: "from memory of ASM Handbook vol. 2" },
    solidHeatJKgK: {
      value: 1050,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 1180, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: { value: 480000, source: "from memory of ASM Handbook vol. 2", note: "389–560 kJ/kg" },
    heavyLowC: { value: 650, source: "common practice, no source" },
    heavyHighC: { value: 700, source: "common practice, no source" },
    shrinkLow: { value: 0.011, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.013, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: {
      value: 0.038,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (Al 12 Si)",
    },
    freezeHigh: {
      value: 0.038,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (Al 12 Si)",
    },
    behaviour: { value: "flows best of all", source: "common practice, no source" },
  },
  {
    alloyId: "copper",
    crucibleKgM3: {
      value: 8020,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: {
      value: 396,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2, 391–401",
    },
    roomHeatJKgK: {
      value: 385,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidHeatJKgK: {
      value: 430,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 516, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 208700,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    heavyLowC: { value: 1130, source: "common practice, no source" },
    heavyHighC: { value: 1180, source: "common practice, no source" },
    shrinkLow: { value: 0.016, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.021, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: {
      value: 0.049,
      source: "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1",
    },
    freezeHigh: {
      value: 0.049,
      source: "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1",
    },
    behaviour: { value: "gassy; deoxidise it", source: "common practice, no source" },
  },
  {
    alloyId: "sterling",
    crucibleKgM3: {
      value: 9200,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: {
      value: 360,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    roomHeatJKgK: {
      value: 245,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidHeatJKgK: {
      value: 275,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 320, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 112000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 950, source: "common practice, no source" },
    heavyHighC: { value: 980, source: "common practice, no source" },
    shrinkLow: { value: 0.015, source: "common practice, no source" },
    shrinkHigh: { value: 0.02, source: "common practice, no source" },
    freezeLow: { value: 0.05, source: "from memory, no source" },
    freezeHigh: { value: 0.05, source: "from memory, no source" },
    behaviour: { value: "takes up oxygen from the air", source: "common practice, no source" },
  },
  {
    alloyId: "pewter",
    crucibleKgM3: {
      value: 6950,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: {
      value: 50,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    roomHeatJKgK: {
      value: 215,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidHeatJKgK: {
      value: 235,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 250, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 65000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 270, source: "common practice, no source" },
    heavyHighC: { value: 310, source: "common practice, no source" },
    shrinkLow: { value: 0.006, source: "common practice, no source" },
    shrinkHigh: { value: 0.0156, source: "common practice, no source" },
    freezeLow: {
      value: 0.025,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    freezeHigh: {
      value: 0.029,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    behaviour: { value: "quiet", source: "common practice, no source" },
  },
  {
    alloyId: "tin",
    crucibleKgM3: {
      value: 6980,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: {
      value: 67,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    roomHeatJKgK: {
      value: 228,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidHeatJKgK: {
      value: 240,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 248, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 60000,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    heavyLowC: { value: 270, source: "common practice, no source" },
    heavyHighC: { value: 310, source: "common practice, no source" },
    shrinkLow: {
      value: 0.006,
      source: "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI (3/16 in/ft) and common practice",
    },
    shrinkHigh: {
      value: 0.0156,
      source: "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI (3/16 in/ft) and common practice",
    },
    freezeLow: {
      value: 0.025,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    freezeHigh: {
      value: 0.029,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    behaviour: { value: "quiet", source: "common practice, no source" },
  },
  {
    alloyId: "iron",
    crucibleKgM3: {
      value: 6950,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: {
      value: 48,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2, 46–50",
    },
    roomHeatJKgK: {
      value: 500,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidHeatJKgK: {
      value: 690,
      source: "estimate: from memory of NIST-JANAF enthalpies, scaled by composition",
    },
    liquidHeatJKgK: { value: 850, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 240000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1260, source: "common practice, no source" },
    heavyHighC: { value: 1340, source: "common practice, no source" },
    shrinkLow: {
      value: 0.0078,
      source: "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI (3/32–1/8 in/ft)",
    },
    shrinkHigh: {
      value: 0.0104,
      source: "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI (3/32–1/8 in/ft)",
    },
    freezeLow: {
      value: -0.025,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (grey iron swells up to 2.5 %)",
    },
    freezeHigh: {
      value: 0.01,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (grey iron swells up to 2.5 %)",
    },
    behaviour: { value: "flows well; swells as graphite forms", source: "common practice, no source" },
  },
];
