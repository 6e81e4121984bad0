import type { Composition } from "./compositionRow.ts";
import { copperWithNickel, limitsFrom, namedAtLeast, type Printed } from "./compositionRow.ts";

const b584 = "trade magazine's table of ASTM B584-14 limits (September 2016, p. 36)";
const inferred = "The table's columns were inferred: check lead against ASTM B584 itself.";
const poisons = { al: 0.005, si: 0.005 } as const;

const c87300: Printed = { cu: [94, null], pb: 0.09, zn: 0.25, fe: 0.2, si: [3.5, 4.5], mn: [0.8, 1.5] };
const c87500: Printed = { cu: [79, null], pb: 0.09, zn: [12, 16], al: 0.5, si: [3, 5] };
const c87600: Printed = { cu: [88, null], pb: 0.09, zn: [4, 7], fe: 0.2, si: [3.5, 5.5], mn: 0.25 };
const c90300: Printed = {
  sn: [7.5, 9],
  pb: 0.3,
  zn: [3, 5],
  fe: 0.2,
  ni: 1,
  ...poisons,
  sb: 0.2,
  s: 0.05,
  p: 0.05,
};
const c90500: Printed = { sn: [9, 11], pb: 0.3, zn: [1, 3], fe: 0.2, ni: 1, ...poisons, sb: 0.2 };
const c92200: Printed = {
  sn: [5.5, 6.5],
  pb: [1, 2],
  zn: [3, 5],
  fe: 0.25,
  ni: 1,
  ...poisons,
  sb: 0.25,
  s: 0.05,
  p: 0.05,
};
const c83600: Printed = {
  sn: [4, 6],
  pb: [4, 6],
  zn: [4, 6],
  fe: 0.3,
  ni: 1,
  ...poisons,
  sb: 0.25,
  s: 0.08,
  p: 0.05,
};
const c84400: Printed = {
  sn: [2.3, 3.5],
  pb: [6, 8],
  zn: [7, 10],
  fe: 0.4,
  ni: 1,
  ...poisons,
  s: 0.08,
  p: 0.02,
};
const c86500: Printed = {
  cu: [55, 60],
  sn: 1,
  pb: 0.4,
  zn: [36, 42],
  fe: [0.4, 2],
  ni: 1,
  al: [0.5, 1.5],
  mn: [0.1, 1.5],
};
const c95400: Printed = { cu: [83, null], fe: [3, 5], ni: 1.5, al: [10, 11.5], mn: 0.5 };
const c95500: Printed = { cu: [78, null], fe: [3, 5], ni: [3, 5.5], al: [10, 11.5], mn: 3.5 };

/** Limits of bronzes and brasses. In tin bronzes and red brasses copper may count nickel (data sheet for UNS C90300). */
export const copperLimits: readonly Composition[] = [
  {
    alloyId: "c87300",
    source: `data sheet for UNS C87300; lead: ${b584}`,
    edition: "2006; lead 2014",
    note: `Lead was 0.20 % in 2006. ${inferred}`,
    limits: [...limitsFrom(c87300), namedAtLeast(99.5, c87300)],
  },
  {
    alloyId: "c87500",
    source: `data sheet for UNS C87500; lead: ${b584}`,
    edition: "lead 2014",
    note: `Lead was 0.50 % before. ${inferred}`,
    limits: [...limitsFrom(c87500), namedAtLeast(99.5, c87500)],
  },
  {
    alloyId: "c87600",
    source: b584,
    edition: "ASTM B584-14",
    note: inferred,
    limits: [...limitsFrom(c87600), namedAtLeast(99.5, c87600)],
  },
  {
    alloyId: "c90300",
    source: "data sheet for UNS C90300",
    edition: "not printed",
    limits: [copperWithNickel(86, 89), ...limitsFrom(c90300), namedAtLeast(99.4, c90300, ["cu"])],
  },
  {
    alloyId: "c90500",
    source: "table of foundry alloy limits",
    edition: "not printed",
    limits: [copperWithNickel(86, 89), ...limitsFrom(c90500)],
  },
  {
    alloyId: "c92200",
    source: "data sheet for UNS C92200, and a table of foundry alloy limits",
    edition: "ASTM B505-18",
    limits: [copperWithNickel(86, 90), ...limitsFrom(c92200), namedAtLeast(99.3, c92200, ["cu"])],
  },
  {
    alloyId: "c83600",
    source: "data sheet for UNS C83600",
    edition: "not printed",
    limits: [copperWithNickel(84, 86), ...limitsFrom(c83600)],
  },
  {
    alloyId: "c84400",
    source: "data sheet for UNS C84400",
    edition: "not printed",
    limits: [copperWithNickel(78, 82), ...limitsFrom(c84400)],
  },
  {
    alloyId: "c86500",
    source: "data sheet for UNS C86500",
    edition: "ASTM B505-18",
    limits: [...limitsFrom(c86500), namedAtLeast(99, c86500)],
  },
  {
    alloyId: "c95400",
    source: "data sheet for UNS C95400",
    edition: "ASTM B505-08",
    limits: limitsFrom(c95400),
  },
  {
    alloyId: "c95500",
    source: "data sheet for UNS C95500",
    edition: "not printed",
    limits: [...limitsFrom(c95500), namedAtLeast(99.5, c95500)],
  },
];
