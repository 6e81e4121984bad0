import type { Published } from "./published.ts";

const campbell = "from memory of J. Campbell, Castings";

/** Share of its own volume a riser can give. */
export const riserGives = {
  plain: { value: 0.14, basis: "published", source: `${campbell}; height 1–1.5 diameters` },
  domed: { value: 0.2, basis: "published", source: campbell },
  insulated: { value: 0.3, basis: "published", source: `${campbell}; 0.30–0.40` },
} as const satisfies Record<string, Published>;
