import type { Composition } from "./compositionRow.ts";
import { limitsFrom } from "./compositionRow.ts";

/** Limits of aluminium alloys, copper, silver and pewter. The base metal is the rest. */
export const aluminiumAndOtherLimits: readonly Composition[] = [
  {
    alloyId: "a356",
    source: "ingot sheet for AA A356.0",
    edition: "not printed",
    limits: limitsFrom({
      al: [null, null],
      cu: 0.2,
      zn: 0.1,
      fe: 0.2,
      si: [6.5, 7.5],
      mn: 0.1,
      mg: [0.25, 0.45],
      ti: 0.2,
    }),
  },
  {
    alloyId: "a319",
    source: "materials database and ingot sheet for AA 319.0; zinc from memory of the Aluminum Association",
    edition: "not printed",
    limits: limitsFrom({
      al: [null, null],
      cu: [3, 4],
      zn: 1,
      fe: 1,
      ni: 0.35,
      si: [5.5, 6.5],
      mn: 0.5,
      mg: 0.1,
      ti: 0.25,
    }),
  },
  {
    alloyId: "a413",
    source: "from memory of the Aluminum Association's limits",
    edition: "not known",
    limits: limitsFrom({
      al: [null, null],
      cu: 1,
      sn: 0.15,
      zn: 0.5,
      fe: 2,
      ni: 0.5,
      si: [11, 13],
      mn: 0.35,
      mg: 0.1,
    }),
  },
  {
    alloyId: "copper",
    source: "from memory of UNS C81100",
    edition: "not known",
    limits: limitsFrom({ cu: [99.7, null], other: 0.3 }),
  },
  {
    alloyId: "sterling",
    source: "meaning of the mark 925; the rest copper",
    edition: "not printed",
    limits: limitsFrom({ ag: [92.5, null], cu: [null, 7.5] }),
  },
  {
    alloyId: "pewter",
    source: "abstract of ASTM B560-00(2014); lead from memory",
    edition: "ASTM B560-00(2014)",
    limits: limitsFrom({ sn: [90, 98], sb: [1, 8], cu: [0.25, 3], pb: 0.05 }),
  },
];
