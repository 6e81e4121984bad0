import { requireWithin } from "../stats/range.ts";

/** A property that is one number, or goes linearly between `[°C, value]` rows and is flat beyond them. */
export type Property = number | PropertyRows;
type PropertyRows = readonly (readonly [atC: number, value: number])[];

/** Heat held by a kilogram over temperature, rising; two rows of one temperature are a melting point. */
export type HeatHeld = readonly (readonly [atC: number, JKg: number])[];

/** Refuses a property with a value out of range, or rows whose temperatures do not rise. */
export function requireProperty(
  name: string,
  property: Property,
  range: { readonly low: number; readonly high: number; readonly unit: string },
): void {
  if (typeof property === "number") return requireWithin(name, property, range);
  firstOf(property);
  for (const [i, [atC, value]] of property.entries()) {
    requireWithin(`${name}: °C of a row`, atC, {
      low: property[i - 1]?.[0] ?? -273.15,
      high: 4000,
      unit: "°C, rising",
    });
    requireWithin(name, value, range);
  }
}

/** Refuses rows of heat held that do not rise. */
export function requireHeld(rows: HeatHeld): void {
  firstTwo(rows);
  for (const [i, [atC, JKg]] of rows.entries()) {
    const [beforeC, before] = rows[i - 1] ?? [-1e5, -1e12];
    requireWithin("°C of a row", atC, { low: beforeC, high: 1e5, unit: "°C, rising" });
    requireWithin("heat held", JKg, { low: before + 1e-6, high: 1e12, unit: "J/kg, rising" });
  }
  const [[firstC], [secondC]] = firstTwo(rows);
  if (!(secondC > firstC))
    throw new RangeError(`the second row must lie above ${firstC} °C, found ${secondC}`);
}

export function propertyAt(property: Property, atC: number): number {
  return requireNumber("property", valueAt(property, requireNumber("atC", atC)));
}

function valueAt(property: Property, atC: number): number {
  if (typeof property === "number") return property;
  let before = firstOf(property);
  for (const row of property) {
    if (row[0] >= atC) return between(before, row, Math.max(before[0], atC));
    before = row;
  }
  return before[1];
}

/** The property's integral from one temperature to another; minus that the other way. */
export function propertyBetween(property: Property, { fromC, toC }: { fromC: number; toC: number }): number {
  requireNumber("fromC", fromC);
  requireNumber("toC", toC);
  return requireNumber("integral", integralOf(property, { fromC, toC }));
}

function integralOf(property: Property, { fromC, toC }: { fromC: number; toC: number }): number {
  if (typeof property === "number") return property * (toC - fromC);
  if (toC < fromC) return -integralOf(property, { fromC: toC, toC: fromC });
  let sum = 0;
  let at = fromC;
  if (property.some(([rowC]) => Number.isNaN(rowC))) return NaN;
  for (const [rowC] of [...property, [Infinity, 0] as const]) {
    const next = Math.min(rowC, toC);
    if (next <= at) continue;
    sum += (next - at) * propertyAt(property, (at + next) / 2);
    at = next;
  }
  return sum;
}

/** Heat held at a temperature, J/kg, from the rows' own zero; beyond the rows by the end slopes. */
export function heldAt(rows: HeatHeld, atC: number): number {
  requireHeld(rows);
  requireNumber("atC", atC);
  let [before, after] = firstTwo(rows);
  for (const [i, row] of rows.entries()) {
    if (i < 2) continue;
    if (after[0] >= atC) break;
    before = after;
    after = row;
  }
  return between(before, after, atC);
}

/**
 * The temperature T and heat H on the rows at which a·H + b·T = c, for a > 0 and b >= 0: one crossing,
 * found on its own straight piece, so a freezing range or point needs no iteration.
 */
export function crossHeld(
  rows: HeatHeld,
  { a, b, c }: { a: number; b: number; c: number },
): readonly [atC: number, JKg: number] {
  let [before, after] = firstTwo(rows);
  for (const [i, row] of rows.entries()) {
    if (i < 2) continue;
    if (a * after[1] + b * after[0] >= c) break;
    before = after;
    after = row;
  }
  const low = a * before[1] + b * before[0];
  const share = requireNumber("crossing", (c - low) / (a * after[1] + b * after[0] - low));
  return [
    requireNumber("°C", before[0] + share * (after[0] - before[0])),
    requireNumber("heat held", before[1] + share * (after[1] - before[1])),
  ];
}

function between(
  [fromC, from]: readonly [number, number],
  [toC, to]: readonly [number, number],
  atC: number,
): number {
  return toC === fromC ? to : from + ((to - from) * (atC - fromC)) / (toC - fromC);
}

/** Hot loops come through here: one look, no list. */
function requireNumber(name: string, value: number): number {
  if (Math.abs(value) <= 1e30) return value;
  throw new RangeError(`${name} must be a number, found ${value}`);
}

function firstOf(rows: PropertyRows): readonly [number, number] {
  const [row] = rows;
  if (row === undefined) throw new RangeError("a property table wants at least one row, found none");
  return row;
}

function firstTwo(rows: HeatHeld): [readonly [number, number], readonly [number, number]] {
  const [first, second] = rows;
  if (first === undefined || second === undefined)
    throw new RangeError(`rows of heat held must be at least 2, found ${rows.length}`);
  return [first, second];
}
