import fc from "fast-check";

/**
 * One function of the sums with one call that makes sense. `read` takes what cannot be looked through from outside:
 * what a function gives that must be called with figures of its own. `unread`: figures of the call, by their place in
 * it (a whole part of it where that is named), that this call has no use for, so that no word is owed when they are no numbers.
 */
export type NumberRow = {
  readonly call: (args: readonly unknown[]) => unknown;
  readonly args: readonly unknown[];
  readonly unread: readonly string[];
  readonly mayBeEndless: boolean;
};

export function row<A extends readonly unknown[], R>(
  of: (...args: A) => R,
  args: A,
  {
    read = (result) => result,
    unread = [],
    mayBeEndless = false,
  }: {
    readonly read?: (result: R) => unknown;
    readonly unread?: readonly string[];
    /** Its own words say that Infinity may come back. */
    readonly mayBeEndless?: boolean;
  } = {},
): NumberRow {
  // The mutated arguments keep the shape of `args`; only figures and the lengths of lists change.
  return { call: (mutated) => read(of(...(mutated as unknown as A))), args, unread, mayBeEndless };
}

export type Rows = Readonly<Record<string, Readonly<Record<string, NumberRow>>>>;

/** Figures no sum wants, and some that a few do. */
export const extremes: readonly number[] = [
  0,
  -0,
  5e-324,
  1e-300,
  1e-9,
  -1e-9,
  -1,
  1e6,
  1e12,
  1e300,
  Number.MAX_VALUE,
  -1e300,
  NaN,
  Infinity,
  -Infinity,
];

/** The places of a call's figures, as "0.layers.1.startC". */
export function figuresOf(value: unknown, at = ""): readonly string[] {
  if (typeof value === "number") return [at];
  return entriesOf(value).flatMap(([key, inner]) => figuresOf(inner, at === "" ? key : `${at}.${key}`));
}

/** The places of a call's lists. */
export function listsOf(value: unknown, at = ""): readonly string[] {
  const inner = entriesOf(value).flatMap(([key, part]) => listsOf(part, at === "" ? key : `${at}.${key}`));
  return Array.isArray(value) && at !== "" ? [at, ...inner] : inner;
}

const entriesOf = (value: unknown): readonly (readonly [string, unknown])[] =>
  typeof value === "object" && value !== null && !(value instanceof Map) ? Object.entries(value) : [];

/** The same value with some places changed. */
export function changed(
  value: unknown,
  changes: ReadonlyMap<string, (old: unknown) => unknown>,
  at = "",
): unknown {
  const change = changes.get(at);
  if (change !== undefined) return change(value);
  if (typeof value !== "object" || value === null || value instanceof Map) return value;
  const inner = (key: string, part: unknown): unknown =>
    changed(part, changes, at === "" ? key : `${at}.${key}`);
  if (Array.isArray(value)) return value.map((part, i) => inner(String(i), part));
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, inner(key, part)]));
}

/** The places of a result that hold NaN, or Infinity where it is not said to come. Functions are called. */
export function faultsOf(value: unknown, endless: boolean, at = "result"): readonly string[] {
  if (typeof value === "number")
    return Number.isNaN(value) || (!endless && !Number.isFinite(value)) ? [`${at} = ${value}`] : [];
  if (typeof value === "function") return faultsOf(value(0.3, 0.5), endless, `${at}()`);
  if (value instanceof Map) return faultsOf([...value], endless, at);
  if (ArrayBuffer.isView(value)) return faultsOf([...(value as Float64Array)], endless, at);
  return entriesOf(value).flatMap(([key, inner]) => faultsOf(inner, endless, `${at}.${key}`));
}

/** What is wrong with one call: nothing, a refusal that does not name what it found, or an answer that is no number. */
export function faultOf(row: NumberRow, args: readonly unknown[]): string | null {
  try {
    const [fault] = faultsOf(row.call(args), row.mayBeEndless);
    return fault ?? null;
  } catch (error) {
    if (error instanceof RangeError && /found /.test(error.message)) return null;
    return String(error);
  }
}

/** Whether a call was refused; what it gave is not looked at. */
export function isRefused(row: NumberRow, args: readonly unknown[]): boolean {
  try {
    row.call(args);
    return false;
  } catch {
    return true;
  }
}

const reshapings: readonly ((list: readonly unknown[]) => readonly unknown[])[] = [
  () => [],
  (list) => list.slice(0, 1),
  (list) => list.toReversed(),
  (list) => [...list, ...list],
  (list) => [list[0], ...list],
];

/** Calls about the sensible one: every figure of human size, up to two of them extreme, now and then a list reshaped. */
export function callsAbout({ args }: NumberRow): fc.Arbitrary<readonly unknown[]> {
  const figures = figuresOf(args);
  const lists = listsOf(args);
  const pick = fc.nat({ max: 1_000_000 });
  return fc
    .record({
      human: fc.array(fc.tuple(pick, fc.double({ min: 0.3, max: 3, noNaN: true })), { maxLength: 4 }),
      extreme: fc.array(fc.tuple(pick, fc.constantFrom(...extremes)), { maxLength: 2 }),
      reshaped: fc.option(fc.tuple(pick, fc.constantFrom(...reshapings)), { nil: null, freq: 4 }),
    })
    .map(({ human, extreme, reshaped }) => {
      const changes = new Map<string, (old: unknown) => unknown>();
      const at = (all: readonly string[], n: number): string | undefined => all[n % Math.max(1, all.length)];
      for (const [n, factor] of human) {
        const place = at(figures, n);
        if (place !== undefined) changes.set(place, (old) => Number(old) * factor);
      }
      for (const [n, figure] of extreme) {
        const place = at(figures, n);
        if (place !== undefined) changes.set(place, () => figure);
      }
      const list = reshaped && at(lists, reshaped[0]);
      if (reshaped && list !== undefined && list !== null)
        changes.set(list, (old) => reshaped[1](old as readonly unknown[]));
      return changed(args, changes) as readonly unknown[];
    });
}
