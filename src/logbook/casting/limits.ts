import type { NumberRange } from "../entries/ranges.ts";

/** What a typed figure may be; the field says so, and the sums leave out what lies outside. Judgement. */
export type Limits<D> = { readonly [K in keyof D]?: NumberRange };

/** The draft as the sums may take it: a figure outside its limits counts as not given. */
export function kept<D extends object>(draft: D, limits: Limits<D>): D {
  const entries = Object.entries(draft).map(([name, value]) => {
    const range = limits[name as keyof D];
    const isOut =
      typeof value === "number" &&
      (!Number.isFinite(value) || (range !== undefined && isOutside(value, range)));
    return [name, isOut ? null : value];
  });
  return Object.fromEntries(entries) as D;
}

/** What is typed in other units comes back with a digit off at the fifteenth place. */
const isOutside = (value: number, { low, high }: NumberRange): boolean => {
  const slack = 1e-9 * Math.max(1, Math.abs(low), Math.abs(high));
  return value < low - slack || value > high + slack;
};
