import type { MeltFigures } from "./meltFigure.ts";

/** Melting, pouring and shrink of brasses and aluminium bronzes. Every figure names its source; those from memory say so. */
export const brassMeltFigures: readonly MeltFigures[] = [
  {
    alloyId: "c83600",
    crucibleKgM3: {
      value: 7970,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 72, source: "data sheet for UNS C83600 (41.6 Btu/ft·h·°F)" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C83600" },
    solidHeatJKgK: {
      value: 420,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 480, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 187000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1065, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1175, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.0156, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.018, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: { value: 0.045, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: {
      value: "low dross, some gas, flows well; leaks least",
      source: "common practice, no source",
    },
  },
  {
    alloyId: "c84400",
    crucibleKgM3: {
      value: 7970,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
    },
    conductivityWMK: { value: 72.5, source: "data sheet for UNS C84400 (41.9 Btu/ft·h·°F)" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C84400" },
    solidHeatJKgK: {
      value: 415,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 475, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 182000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1065, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1175, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.0156, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.018, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: { value: 0.045, source: "common practice, no source" },
    freezeHigh: { value: 0.05, source: "common practice, no source" },
    behaviour: {
      value: "low dross, some gas, flows well; leaks least",
      source: "common practice, no source",
    },
  },
  {
    alloyId: "c86500",
    crucibleKgM3: {
      value: 7200,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
      note: "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.",
    },
    conductivityWMK: { value: 85.8, source: "data sheet for UNS C86500" },
    roomHeatJKgK: { value: 377, source: "data sheet for UNS C86500" },
    solidHeatJKgK: {
      value: 430,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 480, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 169000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
      note: "165–173 kJ/kg",
    },
    heavyLowC: { value: 980, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1040, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: {
      value: 0.018,
      source:
        "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI (yellow brass 7/32 in/ft) and from memory",
    },
    shrinkHigh: {
      value: 0.021,
      source:
        "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI (yellow brass 7/32 in/ft) and from memory",
    },
    freezeLow: {
      value: 0.045,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (70 Cu 30 Zn)",
    },
    freezeHigh: {
      value: 0.045,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (70 Cu 30 Zn)",
    },
    behaviour: {
      value: "much dross, zinc flares; liquidus below the boiling of zinc, pour as cool as the walls allow",
      source: "common practice, no source",
    },
  },
  {
    alloyId: "c95400",
    crucibleKgM3: {
      value: 6400,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
      note: "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.",
    },
    conductivityWMK: { value: 58.7, source: "data sheet for UNS C95400" },
    roomHeatJKgK: { value: 419, source: "data sheet for UNS C95400" },
    solidHeatJKgK: {
      value: 480,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 520, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 230000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1090, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1175, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.016, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.021, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: {
      value: 0.04,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (90 Cu 10 Al)",
    },
    freezeHigh: {
      value: 0.04,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (90 Cu 10 Al)",
    },
    behaviour: { value: "much oxide film; no turbulence", source: "common practice, no source" },
  },
  {
    alloyId: "c95500",
    crucibleKgM3: {
      value: 6400,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass",
      note: "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.",
    },
    conductivityWMK: { value: 41.9, source: "from memory of copper-alloy data sheets" },
    roomHeatJKgK: { value: 419, source: "from memory of copper-alloy data sheets" },
    solidHeatJKgK: {
      value: 480,
      source: "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition",
    },
    liquidHeatJKgK: { value: 520, source: "estimate: from memory of Iida & Guthrie, mixed by mass" },
    latentJKg: {
      value: 235000,
      source:
        "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)",
    },
    heavyLowC: { value: 1090, source: "from memory of ASM Handbook vol. 15" },
    heavyHighC: { value: 1175, source: "from memory of ASM Handbook vol. 15" },
    shrinkLow: { value: 0.016, source: "from memory of ASM Handbook vol. 2" },
    shrinkHigh: { value: 0.021, source: "from memory of ASM Handbook vol. 2" },
    freezeLow: {
      value: 0.04,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (90 Cu 10 Al)",
    },
    freezeHigh: {
      value: 0.04,
      source:
        "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1 (90 Cu 10 Al)",
    },
    behaviour: { value: "much oxide film; no turbulence", source: "common practice, no source" },
  },
];
