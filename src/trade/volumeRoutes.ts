import type { VolumeRoute } from "../physics/metal/patternVolume.ts";
import type { Published } from "./published.ts";

/** How far a volume by each route may be off, a share of itself. */
export const volumeRouteError: Readonly<Record<VolumeRoute, Published>> = {
  mesh: {
    value: 0.005,
    basis: "judgement",
    source: "judgement: a closed mesh is exact, the print or wax is not",
  },
  hydrostatic: { value: 0.01, basis: "practice", source: "common practice, no source; 1–2 %" },
  displacement: { value: 0.02, basis: "practice", source: "common practice, no source; 1–2 %" },
  slicer: { value: 0.02, basis: "judgement", source: "judgement: filament density as printed on the spool" },
  "pattern-weight": {
    value: 0.04,
    basis: "judgement",
    source: "derived: casting waxes weigh 900–970 kg/m³; less where the shop has measured its own",
  },
};

/** Share added to a charge by how well the volume is known. */
export const marginOf = {
  measured: { value: 0.05, basis: "practice", source: "common practice, no source" },
  weighed: { value: 0.1, basis: "practice", source: "common practice, no source" },
  guessed: { value: 0.2, basis: "practice", source: "common practice, no source; 15–20 %" },
} as const satisfies Record<string, Published>;

/** Linear shrinks before the metal's own, shares, that multiply with it. */
export const otherShrinks = {
  "rubber-mould": { value: 0.0035, basis: "practice", source: "common practice, no source; 0.2–0.5 %" },
  wax: { value: 0.007, basis: "practice", source: "common practice, no source; 0.4–1 %" },
  "printed-plastic": { value: 0.0025, basis: "practice", source: "common practice, no source; 0.2–0.3 %" },
  "shell-firing": { value: 0, basis: "practice", source: "common practice, no source; ± 0.3 %" },
} as const satisfies Record<string, Published>;

/** Ten of bronze to one of wax is said in studios: 6–11 % high, a margin nobody sees. */
export const studioWaxRatio: Published = {
  value: 10,
  basis: "practice",
  source: "common practice, no source",
};
