import { lossTaken, type LossKnown } from "../../../logbook/casting/chargeSum.ts";
import type { ChargeKind } from "../../../trade/metals/losses.ts";
import type { Format } from "../../base/format/units.ts";

export const chargeKinds: readonly { readonly value: ChargeKind; readonly label: string }[] = [
  { value: "clean-ingot", label: "Clean ingot" },
  { value: "mixed-returns", label: "Mixed returns" },
  { value: "turnings", label: "Turnings and fine" },
];

/** Which loss is taken and where it comes from. */
export function lossHint(loss: LossKnown | null, format: Format): string {
  const taken = format.show("share", lossTaken(loss));
  if (loss === null) return `Not known for this metal: ${taken} is used. Enter your own.`;
  if (loss.basis === "typed") return "Yours. Clear it for the usual figure.";
  return `Used: ${taken}, ${loss.basis === "learned" ? loss.source : "a starting value"}.`;
}
