import { coatBuildMm } from "../physics/shell/wall.ts";
import type { SieveMesh } from "./meshes.ts";
import { sieveOpeningMm } from "./meshes.ts";
import type { Basis } from "./published.ts";

/** A cut of sand, named by the sieves it passes and stays on. `order` runs from the finest, 0. */
export type Stucco = {
  readonly id: string;
  readonly label: string;
  readonly fineMm: number;
  readonly coarseMm: number;
  readonly order: number;
  /** Wall one coat of slurry and this stucco gives; `low` and `high` are what to allow for. */
  readonly mmPerCoat: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly basis: Basis;
    readonly source: string;
  };
};

const buildSource =
  "estimate: slurry film and 1.1 of the mean grain, ± 25 %; range: common practice, no source; grain: ASTM E11 / ISO 565 (from memory)";

type Cut = {
  readonly coarse: SieveMesh;
  readonly fine: SieveMesh;
  /** Slurry left on the wall after draining, mm: common practice, no source. */
  readonly filmMm: number;
  readonly low: number;
  readonly high: number;
};

const cuts: readonly Cut[] = [
  { coarse: 80, fine: 120, filmMm: 0.15, low: 0.25, high: 0.45 },
  { coarse: 50, fine: 100, filmMm: 0.15, low: 0.3, high: 0.6 },
  { coarse: 30, fine: 80, filmMm: 0.2, low: 0.5, high: 0.8 },
  { coarse: 30, fine: 50, filmMm: 0.25, low: 0.6, high: 1.0 },
  { coarse: 20, fine: 40, filmMm: 0.25, low: 0.8, high: 1.25 },
  { coarse: 16, fine: 30, filmMm: 0.25, low: 1.0, high: 1.6 },
  { coarse: 10, fine: 20, filmMm: 0.25, low: 1.4, high: 2.2 },
];

export const stuccos: readonly Stucco[] = cuts.map(({ coarse, fine, filmMm, low, high }, order) => {
  const coarseMm = sieveOpeningMm[coarse];
  const fineMm = sieveOpeningMm[fine];
  const value = coatBuildMm({ coarseMm, fineMm, filmMm });
  return {
    id: `${coarse}-${fine}`,
    label: `${coarse}–${fine} mesh`,
    fineMm,
    coarseMm,
    order,
    mmPerCoat: { value, low, high, basis: "judgement", source: buildSource },
  };
});

export function stuccoOf(id: string): Stucco | null {
  return stuccos.find((stucco) => stucco.id === id) ?? null;
}

/** Wall a seal dip gives, mm: slurry alone. */
export const sealMm = {
  value: 0.25,
  low: 0.15,
  high: 0.35,
  basis: "practice",
  source: "common practice, no source",
} as const;
