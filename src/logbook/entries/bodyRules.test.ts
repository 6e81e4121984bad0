import { expect, test } from "vitest";
import { bodyFault } from "./checkBody.ts";
import type { EntryBodies, EntryType } from "./entry.ts";

const outside = (field: string, found: number, low: number, high: number) => ({
  code: "out-of-range",
  field,
  found,
  low,
  high,
});
const bucket = { name: "Prime", use: "prime", slurry: "" };
const alloy = { alloyId: "own", copiedFrom: null, name: "Own" };
const mesh = {
  patternId: "p",
  fileName: "wing.stl",
  sumsVersion: 1,
  triangles: 12,
  watertight: true,
  mmPerUnit: 1,
  volumeMm3: 1000,
  areaMm2: 600,
  boxMm: [10, 10, 10],
  up: [0, 0, 1],
  headM: 0,
  tips: 0,
  vents: 0,
  drains: 0,
  trappedMl: 0,
  gatingMm3: 0,
  thinnestMm: 10,
  thickestMm: 10,
};

/** What hangs on another figure of the same body, and names that are not the key's own, by hand from the log's rules. */
const cases: readonly (readonly [string, EntryType, object, object | null])[] = [
  ["less slurry kept than fits", "bucket-set", { ...bucket, fullL: 20, leastL: 12 }, null],
  [
    "more slurry kept than fits",
    "bucket-set",
    { ...bucket, fullL: 20, leastL: 25 },
    outside("leastL", 25, 0, 20),
  ],
  ["a band upside down", "bucket-set", { ...bucket, lowS: 20, highS: 15 }, outside("highS", 15, 20, 600)],
  [
    "liquid below solid",
    "alloy-set",
    { ...alloy, solidusC: 900, liquidusC: 800 },
    outside("liquidusC", 800, 900, 2200),
  ],
  [
    "a casting that grew",
    "shrink-measured",
    { alloyId: "own", patternMm: 100, castingMm: 110, held: "free" },
    outside("castingMm", 110, 90, 102),
  ],
  [
    "metal from a plan put away",
    "melt-ended",
    { pouredKg: 1, piggedKg: 0, dropped: true },
    outside("pouredKg", 1, 0, 0),
  ],
  ["metal from a melt", "melt-ended", { pouredKg: 1, piggedKg: 0 }, null],
  [
    "a mix of nothing",
    "bucket-mixed",
    { flourKg: 0, solKg: 0, waterKg: 0 },
    { code: "missing", field: "makings" },
  ],
  ["a direction", "pattern-measured", mesh, null],
  ["a long direction", "pattern-measured", { ...mesh, up: [0, 0, 1.02] }, outside("up", 1.02, 0.99, 1.01)],
  ["a photo without words", "note-written", { text: "", photos: ["f1"] }, null],
  [
    "left out without a reason",
    "drying-pair-judged",
    { coatId: "c", leftOut: true, reason: " " },
    { code: "missing", field: "reason" },
  ],
  ["one cup time of three", "bucket-read", { dipsS: [20, 900, 21] }, outside("dipsS", 900, 1, 600)],
  ["eleven dips", "bucket-read", { dipsS: Array(11).fill(20) }, outside("dips", 11, 1, 10)],
  [
    "an impossible stock",
    "stock-moved",
    { materialId: "m", how: "counted", massKg: 2e6 },
    outside("stockKg", 2e6, 0, 1_000_000),
  ],
  [
    "one kind of coat",
    "shop-figures-set",
    { leastDryH: { prime: 2, backup: 400 } },
    outside("leastDryH", 400, 0.1, 336),
  ],
];

test.each(cases)("%s", (_, type, body, fault) => {
  expect(bodyFault(type, body as EntryBodies[EntryType])).toEqual(fault);
});
