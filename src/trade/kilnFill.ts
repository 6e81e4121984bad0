import type { Published } from "./published.ts";

/** Share of a kiln's room that shells, each counted as the box round it, may take. */
export const kilnFillShare: Published = {
  value: 0.6,
  basis: "judgement",
  source: "judgement, no source: shells stand side by side, clear of walls and elements, and are not stacked",
};
