import type { CoatMemory } from "./coatMemory.ts";
import type { AirMemory } from "../air/roomAir.ts";

/**
 * What drying was reckoned before, for the next time it is asked. Whoever asks again and again holds one and hands
 * it in; answers are the same with or without it.
 */
export type DryingMemory = { readonly lines: AirMemory; readonly coats: CoatMemory };

export function makeDryingMemory(): DryingMemory {
  return { lines: new Map(), coats: { covered: new Map(), open: new Map(), beliefs: new Map() } };
}
