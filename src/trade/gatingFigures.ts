import type { Published } from "./published.ts";

const rao = "from memory of P. N. Rao, Manufacturing Technology: Foundry, Forming and Welding, gating";

type Between = Published<{ readonly low: number; readonly likely: number; readonly high: number }>;

/** What a gating lets through of the ideal speed. */
export const dischargeCoefficients = {
  tapered: {
    value: { low: 0.8, likely: 0.88, high: 0.9 },
    basis: "published",
    source: `${rao}; smooth tapered sprue with a basin`,
  },
  straight: {
    value: { low: 0.5, likely: 0.6, high: 0.7 },
    basis: "published",
    source: `${rao}; straight sprue, sharp turns, several gates`,
  },
  filter: {
    value: { low: 0.4, likely: 0.5, high: 0.6 },
    basis: "published",
    source: `${rao}; with a filter`,
  },
} as const satisfies Record<string, Between>;

/** Factor K of t = K·W^⅓ by how the mould is gated or by the metal. */
export const fillFactors = {
  top: { value: 1.3, basis: "published", source: rao },
  bottom: { value: 1.8, basis: "published", source: rao },
  brass: { value: 1.9, basis: "published", source: rao },
  "tin-bronze": { value: 2.8, basis: "published", source: rao },
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
  return row === undefined ? null : { value: row[1], basis: "published", source: rao };
}

/** How metal gets into the cup. */
export type PourWay = "ladle" | "shank" | "hoist";

/** Most metal that is poured from a hand ladle or by one person from a crucible, kg; above it two hold a shank. */
export const ladleUpToKg: Published = { value: 6, basis: "practice", source: "common practice, no source" };

/** What each way of pouring gives, kg/s; the likely one is what a plan counts with. */
export const pourRateKgS = {
  ladle: {
    value: { low: 0.3, likely: 0.55, high: 1 },
    basis: "practice",
    source: "common practice, no source; a crucible of 4 to 6 kg",
  },
  shank: {
    value: { low: 1, likely: 2, high: 3 },
    basis: "practice",
    source: "common practice, no source; a bell of 12 kg is filled in 6 to 10 s",
  },
  hoist: {
    value: { low: 2, likely: 3.2, high: 5 },
    basis: "practice",
    source: "common practice, no source; 45 kg of relief through two cups take 12 to 20 s",
  },
} as const satisfies Record<PourWay, Between>;

/** Angle of a shell in its sand for the first second, ° from upright, so that metal runs down the sprue's wall. */
export const leanDeg: Published<{ readonly low: number; readonly high: number }> = {
  value: { low: 20, high: 40 },
  basis: "practice",
  source: "common practice, no source",
};
