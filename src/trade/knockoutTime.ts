import type { Published } from "./published.ts";

/** Small bronzes come out of the sand after about this, min: to be sane against. */
export const usualKnockoutMin: Published = {
  value: 60,
  basis: "practice",
  source: "common practice, no source; process pages of sculpture founders",
};
