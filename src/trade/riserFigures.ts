import type { CaineConstants } from "../physics/metal/riserSanity.ts";
import type { Published } from "./published.ts";

const caine = "J. B. Caine, Trans. AFS 57 (1949), by way of P. N. Rao; from memory";

/** Constants of Caine's curve. */
export const caineConstants = {
  steel: { value: { a: 0.1, b: 0.03, c: 1 }, basis: "published", source: caine },
  "grey-iron": { value: { a: 0.33, b: 0.03, c: 1 }, basis: "published", source: caine },
  brass: { value: { a: 0.04, b: 0.017, c: 1 }, basis: "published", source: caine },
  aluminium: { value: { a: 0.1, b: 0.06, c: 1.08 }, basis: "published", source: caine },
  "aluminium-or-silicon-bronze": {
    value: { a: 0.24, b: 0.017, c: 1 },
    basis: "published",
    source: caine,
    note: "Uncertain.",
  },
} as const satisfies Record<string, Published<CaineConstants>>;

const campbell = "from memory of J. Campbell, Castings";

/** Share of its own volume a riser can give. */
export const riserGives = {
  plain: { value: 0.14, basis: "published", source: `${campbell}; height 1–1.5 diameters` },
  domed: { value: 0.2, basis: "published", source: campbell },
  insulated: { value: 0.3, basis: "published", source: `${campbell}; 0.30–0.40` },
} as const satisfies Record<string, Published>;
