import type { CompositionLimit } from "../../physics/metal/chargeVerdict.ts";
import type { Contents } from "../../physics/metal/scrap.ts";
import type { fillFactors } from "../gatingFigures.ts";
import type { Published } from "../published.ts";
import type { PreheatMetal } from "../shellPreheat.ts";
import type { LossRow } from "./losses.ts";
import type { Stream } from "./streams.ts";

export type AlloyFamily = "bronze" | "brass" | "aluminium" | "other";

/** What an alloy may hold, with who printed it and when: limits change from edition to edition. Fractions. */
type Composition = {
  readonly source: string;
  readonly edition: string;
  readonly note?: string | undefined;
  readonly limits: readonly CompositionLimit[];
};

/** What melting and freezing sums need of a metal. Shares are fractions; J/kg, J/kg·K; temperatures °C. */
export type MeltFigures = {
  /** For a crucible's volume and a stream: the lower end of what is known. */
  readonly crucibleKgM3: Published;
  readonly conductivityWMK: Published;
  /** Heat of the solid at room temperature. */
  readonly roomHeatJKgK: Published;
  /** Mean heat of the solid from room to liquidus: the one for energy. */
  readonly solidHeatJKgK: Published;
  readonly liquidHeatJKgK: Published;
  readonly latentJKg: Published;
  /** Pouring range for heavy work; thin work is `pourLowC` to `pourHighC`. */
  readonly heavyLowC: Published;
  readonly heavyHighC: Published;
  /** Pattern maker's shrink, by the rule: a share of the casting. */
  readonly shrinkLow: Published;
  readonly shrinkHigh: Published;
  /** Loss of volume on freezing; below zero it swells. */
  readonly freezeLow: Published;
  readonly freezeHigh: Published;
  /** Dross, gas and flow, in words of the data sheets. */
  readonly behaviour: Published<string>;
};

/**
 * All that is known of one metal: one row, read by all. Designations are those of open standards (UNS, AA);
 * temperatures °C. Its hazards follow from what it may hold.
 */
export type Alloy = MeltFigures & {
  readonly id: string;
  readonly name: string;
  readonly family: AlloyFamily;
  /** Near designations of other standards and old trade names, to find it by; never equal in every limit. */
  readonly otherNames: Published<readonly string[]>;
  /** Limits as a sheet prints them; null where none here does, and then `unprinted` says what it may hold. */
  readonly composition: Composition | null;
  /** What it may hold by judgement, where no sheet here prints it. */
  readonly unprinted: Contents | null;
  /** For the pressure on a wall: the upper end of what is known, so that the head is never taken too low. */
  readonly liquidKgM3: Published;
  readonly solidKgM3: Published;
  readonly solidusC: Published;
  readonly liquidusC: Published;
  /** Usual pouring range for light, thin work. */
  readonly pourLowC: Published;
  readonly pourHighC: Published;
  /** Share of a charge that burns, boils or is skimmed off; null where it isn't known. */
  readonly loss: LossRow | null;
  readonly stream: Stream;
  /**
   * Core heat below which a casting may be broken out, °C, and what to know before. Half of the solidus on the
   * absolute scale is the same idea; these are what is worked to.
   */
  readonly knockout: Published;
  /** The practice its shell is preheated by. */
  readonly preheat: PreheatMetal;
  /** The fill factor its metal has of its own; null where none is published. */
  readonly fill: Extract<keyof typeof fillFactors, "brass" | "tin-bronze"> | null;
};
