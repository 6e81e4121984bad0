import type { NumberRange } from "./ranges.ts";
import { ranges, within } from "./ranges.ts";

/** What is wrong with a body by itself, with what was found and what was expected. */
export type BodyFault =
  /** A logger's lists differ in length: `field` has another number of values than there are times. */
  | {
      readonly code: "uneven-readings";
      readonly field: string;
      readonly found: number;
      readonly expected: number;
    }
  /** A reading's time is not in whole seconds, each later than the one before; `place` counts from 1. */
  | {
      readonly code: "readings-not-rising";
      readonly place: number;
      readonly found: number;
      readonly before: number | null;
    }
  | { readonly code: "readings-too-long"; readonly spanS: number; readonly mostS: number }
  | {
      readonly code: "out-of-range";
      readonly field: string;
      readonly found: number;
      readonly low: number;
      readonly high: number;
    }
  | { readonly code: "missing"; readonly field: string }
  | { readonly code: "hold-without-reason"; readonly rules: readonly string[] };

export type Fault = BodyFault | null;

/** A number outside its range, with both; null for one within it and for one that is not there. */
export const number = (field: string, value: number | null | undefined, { low, high }: NumberRange): Fault =>
  value === null || value === undefined || within({ low, high }, value)
    ? null
    : { code: "out-of-range", field, found: value, low, high };

/** The first number of a list that is outside. */
const numbers = (field: string, values: readonly number[] | undefined, range: NumberRange): Fault =>
  number(
    field,
    values?.find((value) => !within(range, value)),
    range,
  );

export const first = (...faults: readonly Fault[]): Fault => faults.find((fault) => fault !== null) ?? null;

/** Passes that carry no written reason; null when all do. */
export function unreasoned(passed: readonly { readonly name: string; readonly reason: string }[]): Fault {
  const rules = passed.filter(({ reason }) => reason.trim() === "").map(({ name }) => name);
  return rules.length > 0 ? { code: "hold-without-reason", rules } : null;
}

/** The longest a logger's block may reach past its own time, s. */
const blockMostS = 86_400;

type Packed = {
  readonly afterS: readonly number[];
  /** Each list of values by its field, with what a value may be. */
  readonly values: readonly {
    readonly field: string;
    readonly list: readonly number[] | undefined;
    readonly range: NumberRange;
  }[];
};

/** What is wrong with a logger's readings as packed: how many, their times, the lengths of the lists, each value. */
export function packedFault({ afterS, values }: Packed): Fault {
  const expected = afterS.length;
  const uneven = values.find(({ list }) => list !== undefined && list.length !== expected);
  return first(
    number("readings", expected, ranges.readings),
    uneven
      ? { code: "uneven-readings", field: uneven.field, found: uneven.list?.length ?? 0, expected }
      : null,
    timesFault(afterS),
    ...values.map(({ field, list, range }) => numbers(field, list, range)),
  );
}

function timesFault(afterS: readonly number[]): Fault {
  const place = afterS.findIndex(
    (second, i) => !(Number.isInteger(second) && second > (afterS[i - 1] ?? -1)),
  );
  if (place >= 0)
    return {
      code: "readings-not-rising",
      place: place + 1,
      found: afterS[place] ?? NaN,
      before: afterS[place - 1] ?? null,
    };
  const spanS = afterS.at(-1) ?? 0;
  return spanS > blockMostS ? { code: "readings-too-long", spanS, mostS: blockMostS } : null;
}
