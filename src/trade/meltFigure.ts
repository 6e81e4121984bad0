import type { Published } from "./published.ts";

/** What melting and freezing sums need of a metal beside its `Alloy`. Shares are fractions; J/kg, J/kg·K. */
export type MeltFigures = {
  readonly alloyId: string;
  /** For a crucible's volume and a stream: the lower end of what is known. */
  readonly crucibleKgM3: Published;
  readonly conductivityWMK: Published;
  /** Heat of the solid at room temperature. */
  readonly roomHeatJKgK: Published;
  /** Mean heat of the solid from room to liquidus: the one for energy. */
  readonly solidHeatJKgK: Published;
  readonly liquidHeatJKgK: Published;
  readonly latentJKg: Published;
  /** Pouring range for heavy work; thin work is in the alloy's own row. */
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
