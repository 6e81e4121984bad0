import type { Published } from "../published.ts";

/** Width of the freezing range in three groups (from memory of ASM Handbook vol. 15, Copper and copper alloys). */
export type FreezingGroup = "skin" | "between" | "pasty";

/** Up to 50 K a skin grows inwards and pipes deep; above 110 K the whole is pasty and feeds a short way. */
export function freezingGroup({
  solidusC,
  liquidusC,
}: {
  solidusC: number;
  liquidusC: number;
}): FreezingGroup {
  const rangeK = liquidusC - solidusC;
  return rangeK <= 50 ? "skin" : rangeK <= 110 ? "between" : "pasty";
}

/** How far metal feeds along a wall, in walls. */
export const feedingWalls: Readonly<Record<FreezingGroup, Published>> = {
  skin: {
    value: 4,
    basis: "published",
    source: "from memory of Pellini, steel plate 4–4.5 walls; taken for skin-freezing alloys",
  },
  between: { value: 3, basis: "practice", source: "common practice, no source" },
  pasty: {
    value: 2,
    basis: "practice",
    source: "common practice, no source; 2–3 walls",
    note: "Beyond it fine, spread porosity has to be accepted.",
  },
};
