import type { Basis, Published } from "./published.ts";

/** Starting mixes: kg of flour per kg of 30 % sol, and the seconds they should read. */
export type SlurryStart = {
  readonly id: string;
  readonly label: string;
  readonly flourId: string;
  readonly ratio: Published;
  readonly use: "prime" | "backup" | "both";
};

const practice = "common practice, no source; starting value";

export const slurryStarts: readonly SlurryStart[] = [
  start("fused-silica-prime", "Fused silica prime", "fused-silica", 1.7, "prime"),
  start("fused-silica-backup", "Fused silica backup", "fused-silica", 1.5, "backup"),
  start("zircon-prime", "Zircon prime", "zircon", 3.6, "prime"),
  start("zircon-fused-silica-prime", "Zircon and fused silica prime", "zircon-fused-silica", 2.65, "prime"),
  start("alumino-silicate-prime", "Alumino-silicate prime", "alumino-silicate", 1.9, "prime"),
  start("alumino-silicate-backup", "Alumino-silicate backup", "alumino-silicate", 1.6, "backup"),
];

/** Share of the slurry's volume that is flour, for a flour nobody has a recipe of. */
export const flourVolumeFractions = {
  prime: {
    value: 0.48,
    basis: "judgement",
    source: "derived: usual primes lie at 0.46–0.49 whatever the flour",
  },
  backup: { value: 0.435, basis: "judgement", source: "derived: usual backups lie at 0.42–0.45" },
} as const satisfies Record<string, Published>;

export type SecondsTarget = {
  readonly id: "prime-heavy" | "prime-light" | "one-bucket" | "backup" | "seal";
  readonly label: string;
  /** By cup id; null where the cup is no good for it. */
  readonly zahn4S: { readonly low: number; readonly high: number };
  readonly zahn5S: { readonly low: number; readonly high: number } | null;
  readonly basis: Basis;
  readonly source: string;
};

/** Below 20 s a Zahn cup stands outside its standard: compare only with seconds of the same cup. */
export const secondsTargets: readonly SecondsTarget[] = [
  {
    id: "prime-heavy",
    label: "Prime of zircon, or zircon and fused silica",
    zahn4S: { low: 25, high: 45 },
    zahn5S: { low: 13, high: 22 },
    basis: "practice",
    source: practice,
  },
  {
    id: "prime-light",
    label: "Prime of fused silica or alumino-silicate",
    zahn4S: { low: 18, high: 30 },
    zahn5S: { low: 9, high: 15 },
    basis: "published",
    source: "US patents 6,000,457 and 6,257,316 (from memory): 18–30 s Zahn 4",
  },
  {
    id: "one-bucket",
    label: "One bucket for all coats",
    zahn4S: { low: 12, high: 20 },
    zahn5S: { low: 7, high: 12 },
    basis: "practice",
    source: practice,
  },
  {
    id: "backup",
    label: "Backup",
    zahn4S: { low: 10, high: 18 },
    zahn5S: null,
    basis: "published",
    source: "US patents 6,000,457 and 6,257,316 (from memory): 10–18 s Zahn 4",
  },
  {
    id: "seal",
    label: "Seal",
    zahn4S: { low: 8, high: 12 },
    zahn5S: null,
    basis: "practice",
    source: practice,
  },
];

function start(
  id: string,
  label: string,
  flourId: string,
  ratio: number,
  use: SlurryStart["use"],
): SlurryStart {
  return { id, label, flourId, ratio: { value: ratio, basis: "practice", source: practice }, use };
}
