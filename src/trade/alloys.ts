import { coppers } from "./copperAlloys.ts";
import { lightAndOtherMetals } from "./lightAndOtherMetals.ts";
import type { Alloy } from "./alloy.ts";

export const alloys: readonly Alloy[] = [...coppers, ...lightAndOtherMetals];

export function alloyOf(id: string): Alloy | null {
  return alloys.find((alloy) => alloy.id === id) ?? null;
}
