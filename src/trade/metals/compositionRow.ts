import type { CompositionLimit } from "../../physics/metal/chargeVerdict.ts";
import type { Element } from "../../physics/metal/scrap.ts";

/** Limits as they are printed, in percent: one number is the most, a pair the least and the most, null for an open end. */
export type PrintedLimits = Readonly<
  Partial<Record<Element, number | readonly [least: number | null, most: number | null]>>
>;

/** Aluminium and silicon, which make a tin bronze leak and dross. */
export const poisons = { al: 0.005, si: 0.005 } as const;

/** Percent to fractions, one limit an element. */
export function limitsFrom(printed: PrintedLimits): readonly CompositionLimit[] {
  return (Object.entries(printed) as [Element, number | readonly [number | null, number | null]][]).map(
    ([element, printedLimit]) => {
      const [least, most] = typeof printedLimit === "number" ? [null, printedLimit] : printedLimit;
      return {
        of: [element],
        ...(least === null ? {} : { min: percent(least) }),
        ...(most === null ? {} : { max: percent(most) }),
      };
    },
  );
}

/** "Copper and the named elements, at least": the least, in percent, of all that `printed` names and `also`. */
export function namedAtLeast(
  least: number,
  printed: PrintedLimits,
  also: readonly Element[] = [],
): CompositionLimit {
  return { of: [...(Object.keys(printed) as Element[]), ...also], min: percent(least) };
}

/** Copper that may count nickel in it. */
export function copperWithNickel(least: number, most: number): CompositionLimit {
  return { of: ["cu", "ni"], min: percent(least), max: percent(most) };
}

/** A percentage as the nearest fraction of its own decimals, so that 0.09 % is 0.0009 and no digit more. */
function percent(value: number): number {
  return Number((value / 100).toFixed(8));
}
