import type { Published } from "./published.ts";

const rao = "from memory of P. N. Rao, Manufacturing Technology: Foundry, Forming and Welding, gating";

type Between = Published<{ readonly low: number; readonly likely: number; readonly high: number }>;

/** What a gating lets through of the ideal speed. */
export const dischargeCoefficients = {
  tapered: {
    value: { low: 0.8, likely: 0.88, high: 0.9 },
    source: `${rao}; smooth tapered sprue with a basin`,
  },
  straight: {
    value: { low: 0.5, likely: 0.6, high: 0.7 },
    source: `${rao}; straight sprue, sharp turns, several gates`,
  },
  filter: { value: { low: 0.4, likely: 0.5, high: 0.6 }, source: `${rao}; with a filter` },
} as const satisfies Record<string, Between>;

/** Factor K of t = K·W^⅓ by how the mould is gated or by the metal. */
export const fillFactors = {
  top: { value: 1.3, source: rao },
  bottom: { value: 1.8, source: rao },
  brass: { value: 1.9, source: rao },
  "tin-bronze": { value: 2.8, source: rao },
} as const satisfies Record<string, Published>;

const wallRows: readonly (readonly [toMm: number, factor: number])[] = [
  [2.5, 1.62],
  [3.5, 1.68],
  [8, 1.85],
  [15, 2.2],
];

/** Factor K for intricate work by its wall, 1.5–15 mm; null outside. Mass with gates and risers below 450 kg. */
export function fillFactorOfWall(wallMm: number): Published | null {
  if (!(wallMm > 0)) throw new RangeError(`wallMm must be above 0, found ${wallMm}`);
  const row = wallMm < 1.5 ? undefined : wallRows.find(([toMm]) => wallMm <= toMm);
  return row === undefined ? null : { value: row[1], source: rao };
}

/** What a hand pours from a crucible of 4–6 kg, kg/s. */
export const handPourKgS: Published<{ readonly low: number; readonly high: number }> = {
  value: { low: 0.3, high: 1 },
  source: "common practice, no source",
};

/** Angle of a shell in its sand for the first second, ° from upright, so that metal runs down the sprue's wall. */
export const leanDeg: Published<{ readonly low: number; readonly high: number }> = {
  value: { low: 20, high: 40 },
  source: "common practice, no source",
};
