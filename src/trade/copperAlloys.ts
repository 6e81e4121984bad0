import type { Alloy } from "./alloy.ts";

/** Bronzes and brasses. Every figure names its source; those from memory say so. */
export const coppers: readonly Alloy[] = [
  {
    id: "c87300",
    name: "C87300 silicon bronze",
    family: "bronze",
    liquidKgM3: {
      value: 7800,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
      note: "Silicon melts contract on mixing: the mixture rule gives 7200–7400, real melts are heavier; use the lower figure for a crucible's volume.",
    },
    solidKgM3: { value: 8360, source: "data sheet for UNS C87300 (0.302 lb/in³), 2006" },
    solidusC: {
      value: 821,
      source: "data sheet for UNS C87300 (1510 °F), 2006",
      note: "Other sheets print 860–866.",
    },
    liquidusC: { value: 971, source: "data sheet for UNS C87300 (1780 °F), 2006" },
    pourLowC: { value: 1093, source: "ingot data, weak source (2000 °F)" },
    pourHighC: { value: 1177, source: "ingot data, weak source (2150 °F)" },
  },
  {
    id: "c87500",
    name: "C87500 silicon brass",
    family: "brass",
    liquidKgM3: {
      value: 7800,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
      note: "Silicon melts contract on mixing: the mixture rule gives 7200–7400, real melts are heavier; use the lower figure for a crucible's volume.",
    },
    solidKgM3: { value: 8280, source: "data sheet for UNS C87500 (0.299 lb/in³)" },
    solidusC: { value: 821, source: "data sheet for UNS C87500" },
    liquidusC: { value: 917, source: "data sheet for UNS C87500" },
    pourLowC: { value: 1038, source: "data sheet for UNS C87500 (1900 °F)" },
    pourHighC: { value: 1093, source: "data sheet for UNS C87500 (2000 °F)" },
  },
  {
    id: "c87600",
    name: "C87600 silicon bronze",
    family: "bronze",
    liquidKgM3: {
      value: 7800,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
      note: "Silicon melts contract on mixing: the mixture rule gives 7200–7400, real melts are heavier; use the lower figure for a crucible's volume.",
    },
    solidKgM3: { value: 8300, source: "from memory of copper-alloy data sheets" },
    solidusC: { value: 860, source: "from memory of copper-alloy data sheets" },
    liquidusC: { value: 971, source: "from memory of copper-alloy data sheets" },
    pourLowC: { value: 1060, source: "common practice, no source" },
    pourHighC: { value: 1150, source: "common practice, no source" },
  },
  {
    id: "c90300",
    name: "C90300 tin bronze",
    family: "bronze",
    liquidKgM3: {
      value: 8000,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 8800, source: "data sheet for UNS C90300 (0.318 lb/in³)" },
    solidusC: { value: 854, source: "data sheet for UNS C90300 (1570 °F)" },
    liquidusC: { value: 1000, source: "data sheet for UNS C90300 (1832 °F)" },
    pourLowC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1260, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c90500",
    name: "C90500 tin bronze",
    family: "bronze",
    liquidKgM3: {
      value: 8000,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 8720, source: "from memory of copper-alloy data sheets (0.315 lb/in³)" },
    solidusC: { value: 854, source: "from memory of copper-alloy data sheets" },
    liquidusC: { value: 999, source: "from memory of copper-alloy data sheets" },
    pourLowC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1260, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c92200",
    name: "C92200 leaded tin bronze",
    family: "bronze",
    liquidKgM3: {
      value: 8000,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 8640, source: "data sheet for UNS C92200 (0.312 lb/in³)" },
    solidusC: { value: 826, source: "data sheet for UNS C92200 (1518 °F)" },
    liquidusC: { value: 988, source: "data sheet for UNS C92200 (1810 °F)" },
    pourLowC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1260, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c83600",
    name: "C83600 red brass 85-5-5-5",
    family: "brass",
    liquidKgM3: {
      value: 8000,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 8810, source: "data sheet for UNS C83600 (0.318 lb/in³)" },
    solidusC: { value: 854, source: "from memory of copper-alloy data sheets (1570 °F)" },
    liquidusC: { value: 1010, source: "from memory of copper-alloy data sheets (1850 °F)" },
    pourLowC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1290, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c84400",
    name: "C84400 semi-red brass 81-3-7-9",
    family: "brass",
    liquidKgM3: {
      value: 8000,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 8690, source: "data sheet for UNS C84400 (0.314 lb/in³)" },
    solidusC: { value: 843, source: "from memory of copper-alloy data sheets (1549 °F)" },
    liquidusC: { value: 1004, source: "from memory of copper-alloy data sheets (1840 °F)" },
    pourLowC: { value: 1150, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1290, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c86500",
    name: "C86500 high-strength yellow brass",
    family: "brass",
    liquidKgM3: {
      value: 7900,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
      note: "The mixture rule gives 7200.",
    },
    solidKgM3: { value: 8330, source: "data sheet for UNS C86500" },
    solidusC: { value: 862, source: "data sheet for UNS C86500" },
    liquidusC: { value: 880, source: "data sheet for UNS C86500" },
    pourLowC: { value: 1040, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1120, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c95400",
    name: "C95400 aluminium bronze",
    family: "bronze",
    liquidKgM3: {
      value: 6800,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
      note: "The mixture rule gives 6400; melts of copper and aluminium contract on mixing by perhaps 3–6 %.",
    },
    solidKgM3: { value: 7450, source: "data sheet for UNS C95400" },
    solidusC: { value: 1027, source: "data sheet for UNS C95400" },
    liquidusC: { value: 1038, source: "data sheet for UNS C95400" },
    pourLowC: { value: 1175, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1230, source: "from memory of ASM Handbook vol. 15" },
  },
  {
    id: "c95500",
    name: "C95500 nickel-aluminium bronze",
    family: "bronze",
    liquidKgM3: {
      value: 6800,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
      note: "The mixture rule gives 6400; melts of copper and aluminium contract on mixing by perhaps 3–6 %.",
    },
    solidKgM3: { value: 7530, source: "from memory of copper-alloy data sheets (0.272 lb/in³)" },
    solidusC: { value: 1038, source: "from memory of copper-alloy data sheets (1900 °F)" },
    liquidusC: { value: 1054, source: "from memory of copper-alloy data sheets (1930 °F)" },
    pourLowC: { value: 1175, source: "from memory of ASM Handbook vol. 15" },
    pourHighC: { value: 1230, source: "from memory of ASM Handbook vol. 15" },
  },
];
