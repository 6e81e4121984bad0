import type { Element, Recovery } from "../physics/metal/scrap.ts";
import type { Published } from "./published.ts";

const source = "common practice, no source; the shop's own assays are better";
type Through = Published<{ readonly low: number; readonly likely: number; readonly high: number }>;
const through = (low: number, high: number, note?: string): Through => ({
  value: { low, likely: (low + high) / 2, high },
  basis: "practice",
  source,
  note,
});

/** What of an element comes through a melt; those not named come through whole. */
export const recoveries: Readonly<Partial<Record<Element, Through>>> = {
  cu: through(0.995, 0.995),
  sn: through(0.99, 0.99),
  pb: through(0.99, 0.99),
  ag: through(0.998, 0.998),
  zn: through(0.93, 0.98, "bare and hot 0.90"),
  al: through(0.95, 0.97),
  si: through(0.95, 0.98),
  mn: through(0.93, 0.97),
  p: through(0.5, 0.8),
  mg: through(0.85, 0.95),
};

/** The same as the sums take it. */
export const usualRecovery: Recovery = Object.fromEntries(
  Object.entries(recoveries).map(([element, { value }]) => [element, value]),
);
