import type { Published } from "./published.ts";

export type AlloyFamily = "bronze" | "brass" | "aluminium" | "other";

/** One metal of the table. Designations are those of open standards (UNS, AA); temperatures °C. */
export type Alloy = {
  readonly id: string;
  readonly name: string;
  readonly family: AlloyFamily;
  /** For the pressure on a wall: the upper end of what is known, so the head is never under-reckoned. */
  readonly liquidKgM3: Published;
  readonly solidKgM3: Published;
  readonly solidusC: Published;
  readonly liquidusC: Published;
  /** Usual pouring range for light, thin work. */
  readonly pourLowC: Published;
  readonly pourHighC: Published;
};
