import type { Basis } from "./published.ts";

export type GeometryClass = "open" | "corner" | "recess" | "blind";

/** How hard it is for damp air to leave the part that dries last: added resistance, s/m. */
export type Geometry = {
  readonly label: string;
  readonly pocketSM: number;
  readonly basis: Basis;
  readonly source: string;
};

const source =
  "derived: diffusion through still air in a pocket, eased for real mixing; an estimate within a factor of 3";

export const geometryClasses: Readonly<Record<GeometryClass, Geometry>> = {
  open: { label: "Open all round", pocketSM: 0, basis: "judgement", source },
  corner: { label: "Corners and undercuts", pocketSM: 300, basis: "judgement", source },
  recess: { label: "Hollow or deep recess", pocketSM: 1800, basis: "judgement", source },
  blind: { label: "Blind core", pocketSM: 6000, basis: "judgement", source },
};
