import { symbolOf } from "../../../trade/elementSymbols.ts";
import type { CompositionLimit } from "../../../physics/metal/chargeVerdict.ts";
import type { Format } from "../../base/format/units.ts";

/** "Si", "Cu + Ni", "Cu and all that is named". */
export const limitName = ({ of }: CompositionLimit): string =>
  of.length > 3 ? "All named together" : of.map(symbolOf).join(" + ");

/** "3.5 to 4.5%", "0.25% at most", "the rest". */
export function limitWords({ min, max }: CompositionLimit, format: Format): string {
  if (min !== undefined && max !== undefined)
    return `${format.number(min * 100, 3)} to ${format.number(max * 100, 3)}%`;
  if (max !== undefined) return `${format.number(max * 100, 3)}% at most`;
  return min === undefined ? "the rest" : `${format.number(min * 100, 3)}% at least`;
}
