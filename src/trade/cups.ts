import type { CupId } from "../physics/slurry/viscosityCups.ts";
import { viscosityCups } from "../physics/slurry/viscosityCups.ts";
import type { Published } from "./published.ts";

/** A kind of flow cup. The cup in the hand is a thing of its own: two of one kind never share a chart. */
export type CupKind = {
  readonly id: CupId;
  readonly label: string;
  readonly orificeMm: Published;
  /** ν in mm²/s from t in s, as it is written. */
  readonly formula: Published<string>;
  readonly seconds: Published<{ readonly low: number; readonly high: number }>;
  readonly referenceC: Published;
};

const zahn = "ASTM D4212, appendix X3 and table X3.1";
const ford = "ASTM D1200";
const iso = "ISO 2431, annex on kinematic viscosity (coefficients from memory)";
const fordLow = `${ford}, § 11.2; better 30–100 s`;

type Row = readonly [
  id: CupId,
  label: string,
  orificeMm: number,
  formula: string,
  formulaSource: string,
  rangeSource: string,
];

const rows: readonly Row[] = [
  ["zahn-1", "Zahn 1", 2.0, "1.1 (t − 29)", zahn, zahn],
  ["zahn-2", "Zahn 2", 2.7, "3.5 (t − 14)", zahn, zahn],
  ["zahn-3", "Zahn 3", 3.8, "11.7 (t − 7.5)", zahn, zahn],
  ["zahn-4", "Zahn 4", 4.3, "14.8 (t − 5)", zahn, zahn],
  ["zahn-5", "Zahn 5", 5.3, "23 t", zahn, zahn],
  ["ford-1", "Ford 1", 1.9, "0.49 (t − 35.0)", ford, `${ford}, § 11.2`],
  ["ford-2", "Ford 2", 2.53, "1.44 (t − 18.0)", ford, `${ford}, § 11.2`],
  ["ford-3", "Ford 3", 3.4, "2.31 (t − 6.58)", ford, fordLow],
  ["ford-4", "Ford 4", 4.12, "3.85 (t − 4.49)", ford, fordLow],
  ["ford-5", "Ford 5", 5.2, "12.1 (t − 2.00)", ford, fordLow],
  ["iso-3", "ISO 3 mm", 3, "0.443 t − 200/t", iso, iso],
  ["iso-4", "ISO 4 mm", 4, "1.37 t − 200/t", iso, iso],
  ["iso-5", "ISO 5 mm", 5, "3.28 t − 220/t", iso, iso],
  ["iso-6", "ISO 6 mm", 6, "6.90 t − 570/t", iso, iso],
];

const standardOf = (id: CupId): string =>
  id.startsWith("zahn") ? "ASTM D4212" : id.startsWith("ford") ? ford : "ISO 2431";

export const cups: readonly CupKind[] = rows.map(
  ([id, label, orifice, formula, formulaSource, rangeSource]) => {
    const { lowS, highS, referenceC } = viscosityCups[id];
    return {
      id,
      label,
      orificeMm: { value: orifice, basis: "published", source: `${standardOf(id)}, nominal` },
      formula: { value: `ν = ${formula}`, basis: "published", source: formulaSource },
      seconds: { value: { low: lowS, high: highS }, basis: "published", source: rangeSource },
      referenceC: { value: referenceC, basis: "published", source: standardOf(id) },
    };
  },
);

export const cupOf = (id: string): CupKind | null => cups.find((cup) => cup.id === id) ?? null;

/** Coefficient of variation of one cup in one workshop, and of cups between workshops, as fractions. */
export const cupRepeatability = {
  within: { value: 0.037, basis: "published", source: "ASTM D4212, § 13.1.1" },
  between: { value: 0.115, basis: "published", source: "ASTM D4212, § 13.1.1" },
  /** Two means by one person further apart than this share are suspect. */
  suspect: { value: 0.11, basis: "published", source: "ASTM D4212, § 13.1.1" },
  /** Seconds are reported to this step. */
  stepS: { value: 0.2, basis: "published", source: "ASTM D4212, § 12.1" },
} as const satisfies Record<string, Published>;
