import type { Alloy } from "./alloy.ts";

/** Aluminium alloys, copper, silver, tin and iron. Every figure names its source; those from memory say so. */
export const lightAndOtherMetals: readonly Alloy[] = [
  {
    id: "a356",
    name: "A356.0 aluminium-silicon",
    family: "aluminium",
    liquidKgM3: {
      value: 2400,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 2680, source: "properties page for AA 356.0" },
    solidusC: { value: 557, source: "properties page for AA 356.0" },
    liquidusC: { value: 613, source: "properties page for AA 356.0" },
    pourLowC: { value: 720, source: "from memory of ASM Handbook vol. 2" },
    pourHighC: { value: 790, source: "from memory of ASM Handbook vol. 2" },
  },
  {
    id: "a319",
    name: "319.0 aluminium-silicon-copper",
    family: "aluminium",
    liquidKgM3: {
      value: 2450,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 2790, source: "materials database, AA typical" },
    solidusC: { value: 516, source: "from memory of ASM Handbook vol. 2", note: "Other lists print 540." },
    liquidusC: { value: 604, source: "from memory of ASM Handbook vol. 2" },
    pourLowC: { value: 720, source: "from memory of ASM Handbook vol. 2" },
    pourHighC: { value: 790, source: "from memory of ASM Handbook vol. 2" },
  },
  {
    id: "a413",
    name: "413.0 aluminium-12 silicon",
    family: "aluminium",
    liquidKgM3: {
      value: 2400,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: { value: 2660, source: "from memory of ASM Handbook vol. 2" },
    solidusC: { value: 574, source: "from memory of ASM Handbook vol. 2" },
    liquidusC: { value: 582, source: "from memory of ASM Handbook vol. 2" },
    pourLowC: { value: 690, source: "from memory of ASM Handbook vol. 2" },
    pourHighC: { value: 760, source: "from memory of ASM Handbook vol. 2" },
  },
  {
    id: "copper",
    name: "Copper C81100",
    family: "other",
    liquidKgM3: {
      value: 8020,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: {
      value: 8940,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidusC: {
      value: 1084.6,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    liquidusC: {
      value: 1084.6,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    pourLowC: { value: 1180, source: "common practice, no source" },
    pourHighC: { value: 1250, source: "common practice, no source" },
  },
  {
    id: "sterling",
    name: "Sterling silver 925",
    family: "other",
    liquidKgM3: {
      value: 9200,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: {
      value: 10360,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidusC: {
      value: 802,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    liquidusC: {
      value: 893,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    pourLowC: { value: 980, source: "common practice, no source" },
    pourHighC: { value: 1010, source: "common practice, no source" },
  },
  {
    id: "pewter",
    name: "Pewter 92 tin",
    family: "other",
    liquidKgM3: {
      value: 6950,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: {
      value: 7280,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidusC: {
      value: 241,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    liquidusC: {
      value: 295,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    pourLowC: { value: 300, source: "common practice, no source" },
    pourHighC: { value: 340, source: "common practice, no source" },
  },
  {
    id: "tin",
    name: "Tin",
    family: "other",
    liquidKgM3: {
      value: 6980,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: {
      value: 7290,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidusC: {
      value: 231.9,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    liquidusC: {
      value: 231.9,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    pourLowC: { value: 300, source: "common practice, no source" },
    pourHighC: { value: 340, source: "common practice, no source" },
  },
  {
    id: "iron",
    name: "Grey iron",
    family: "other",
    liquidKgM3: {
      value: 6950,
      source:
        "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up",
    },
    solidKgM3: {
      value: 7150,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    solidusC: {
      value: 1145,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    liquidusC: {
      value: 1180,
      source: "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2",
    },
    pourLowC: { value: 1340, source: "common practice, no source" },
    pourHighC: { value: 1450, source: "common practice, no source" },
  },
];
