import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** What alloys are made of; "other" is all that has no name here. */
export const elements = [
  "ag",
  "al",
  "as",
  "be",
  "bi",
  "cd",
  "cr",
  "cu",
  "fe",
  "mg",
  "mn",
  "ni",
  "other",
  "p",
  "pb",
  "s",
  "sb",
  "si",
  "sn",
  "ti",
  "zn",
] as const;
export type Element = (typeof elements)[number];

/** A share that is only known to lie between two values, fractions 0–1. */
export type ShareRange = { readonly low: number; readonly high: number };
export type ShareSeen = ShareRange & { readonly likely: number };

/** Elements that are not named are absent; say `cu: { low: 0, high: 1 }` for "the rest is copper". */
export type Contents = Readonly<Partial<Record<Element, ShareRange>>>;

export type ChargeItem = {
  readonly name: string;
  readonly massKg: number;
  readonly contents: Contents;
  /** Spring, contact strip, non-spark tool, or a copper alloy of unknown origin that is hard and springy. */
  readonly isBerylliumSuspect: boolean;
};

/** What of an element comes through the melt; 1 for an element that is not named. */
export type Recovery = Readonly<Partial<Record<Element, ShareSeen>>>;

export type ChargeMix = {
  readonly ok: true;
  readonly inKg: number;
  readonly meltKg: ShareSeen;
  readonly shares: Readonly<Partial<Record<Element, ShareSeen>>>;
};

export type ChargeRefusal = {
  readonly ok: false;
  /** Beryllium fume is not a thing to work with; contents whose lows pass, or highs miss, the whole; nothing to melt. */
  readonly code: "beryllium-suspect" | "does-not-add-up" | "empty";
  readonly names: readonly string[];
};

type Inside = Readonly<Record<Element, ShareRange>>;
type Weighed = { readonly massKg: number; readonly inside: Inside };

/** A charge made ready: what each item can hold once its shares are made to sum to one. */
export type ReadyCharge = {
  readonly ok: true;
  readonly items: readonly Weighed[];
  readonly recovery: Recovery;
};

/** Refuses what can't be reckoned or must not be melted; else narrows each item's ranges by the others' sum. */
export function readyCharge({
  items,
  recovery,
}: {
  items: readonly ChargeItem[];
  recovery: Recovery;
}): ReadyCharge | ChargeRefusal {
  for (const { massKg } of items) requirePositive("massKg", massKg, { high: 100_000, unit: "kg" });
  requireRecovery(recovery);
  const suspect = items.filter(
    ({ isBerylliumSuspect, contents }) => isBerylliumSuspect || (contents.be?.high ?? 0) > 0,
  );
  if (suspect.length > 0)
    return { ok: false, code: "beryllium-suspect", names: suspect.map(({ name }) => name) };
  if (items.length === 0) return { ok: false, code: "empty", names: [] };
  const narrowed = items.map(({ contents }) => narrow(contents));
  const wrong = items.filter((_, i) => narrowed[i] === null);
  if (wrong.length > 0) return { ok: false, code: "does-not-add-up", names: wrong.map(({ name }) => name) };
  return {
    ok: true,
    items: items.flatMap(({ massKg }, i) => {
      const inside = narrowed[i];
      return inside === null || inside === undefined ? [] : [{ massKg, inside }];
    }),
    recovery,
  };
}

/**
 * What the melt will be made of: w = Σm·w·r / ΣmΣw·r, as an interval that is exact for what is known of items and
 * recoveries, and a likely value inside it. Interval arithmetic, the shares of an item bound to sum to one.
 */
export function mixCharge(asked: {
  items: readonly ChargeItem[];
  recovery: Recovery;
}): ChargeMix | ChargeRefusal {
  const ready = readyCharge(asked);
  if (!ready.ok) return ready;
  const named = elements.filter((e) => ready.items.some(({ inside }) => inside[e].high > 0));
  const all = new Set(elements);
  const end = (kind: Bound): number =>
    ready.items.reduce(
      (sum, item) => sum + item.massKg * massOf({ item, of: all, total: 1, recovery: ready.recovery, kind }),
      0,
    );
  return {
    ok: true,
    inKg: ready.items.reduce((sum, { massKg }) => sum + massKg, 0),
    meltKg: { low: end("low"), likely: end("likely"), high: end("high") },
    shares: Object.fromEntries(named.map((e) => [e, shareOfSet(ready, [e])])),
  };
}

/** Refuses recoveries above 1, below 0 or reversed: what comes through is low, likely and high in this order. */
function requireRecovery(recovery: Recovery): void {
  for (const e of elements) {
    const through = recovery[e];
    if (through === undefined) continue;
    requireFraction(`${e} recovery low`, through.low);
    requireWithin(`${e} recovery high`, through.high, {
      low: through.low,
      high: 1,
      unit: "(not below its low)",
    });
    requireWithin(`${e} recovery likely`, through.likely, { ...through, unit: "(between its low and high)" });
  }
}

/** Share of several elements together in the melt, the same interval: for limits on a sum ("copper with named, at least"). */
export function shareOfSet({ items, recovery }: ReadyCharge, of: readonly Element[]): ShareSeen {
  requireRecovery(recovery);
  for (const { massKg, inside } of items) {
    requirePositive("massKg", massKg, { high: 100_000, unit: "kg" });
    for (const e of elements) {
      requireWithin(`${e} low`, inside[e].low, { low: -1e-6, high: 1 + 1e-6, unit: "(a fraction)" });
      requireWithin(`${e} high`, inside[e].high, {
        low: inside[e].low - 1e-6,
        high: 1 + 1e-6,
        unit: "(not below its low)",
      });
    }
  }
  const set = new Set(of);
  const rest = new Set(elements.filter((e) => !set.has(e)));
  const end = (kind: Bound): number => {
    const against: Bound = kind === "low" ? "high" : kind === "high" ? "low" : "likely";
    let inSet = 0;
    let outside = 0;
    for (const item of items) {
      const total = totalOf(item.inside, set, kind);
      inSet += item.massKg * massOf({ item, of: set, total, recovery, kind });
      outside += item.massKg * massOf({ item, of: rest, total: 1 - total, recovery, kind: against });
    }
    return inSet === 0 ? 0 : inSet / (inSet + outside);
  };
  return { low: end("low"), likely: end("likely"), high: end("high") };
}

type Bound = "low" | "likely" | "high";

/** Least, likely or most that a set of elements can be of an item. */
function totalOf(inside: Inside, set: ReadonlySet<Element>, kind: Bound): number {
  const sum = (which: ReadonlySet<Element>, end: "low" | "high"): number =>
    [...which].reduce((total, e) => total + inside[e][end], 0);
  if (kind === "likely") return [...set].reduce((total, e) => total + likelyShares(inside)[e], 0);
  const rest = new Set(elements.filter((e) => !set.has(e)));
  return kind === "low"
    ? Math.max(sum(set, "low"), 1 - sum(rest, "high"))
    : Math.min(sum(set, "high"), 1 - sum(rest, "low"));
}

/** Least, likely or most metal per kg of item that a set leaves in the melt, when the set is `total` of the item. */
function massOf({
  item: { inside },
  of,
  total,
  recovery,
  kind,
}: {
  item: Weighed;
  of: ReadonlySet<Element>;
  total: number;
  recovery: Recovery;
  kind: Bound;
}): number {
  const through = (e: Element): number => recovery[e]?.[kind] ?? 1;
  if (kind === "likely") {
    const likely = likelyShares(inside);
    return [...of].reduce((sum, e) => sum + likely[e] * through(e), 0);
  }
  // A linear programme over a box with one sum: fill the cheapest (or dearest) first.
  const order = [...of].sort((a, b) => (kind === "low" ? 1 : -1) * (through(a) - through(b)));
  let left = total - order.reduce((sum, e) => sum + inside[e].low, 0);
  return order.reduce((sum, e) => {
    const more = Math.max(0, Math.min(inside[e].high - inside[e].low, left));
    left -= more;
    return sum + (inside[e].low + more) * through(e);
  }, 0);
}

/** One mixture inside the ranges: every share as far along its range, so that all sum to one. */
function likelyShares(inside: Inside): Readonly<Record<Element, number>> {
  const low = elements.reduce((sum, e) => sum + inside[e].low, 0);
  const span = elements.reduce((sum, e) => sum + inside[e].high - inside[e].low, 0);
  const along = span > 0 ? (1 - low) / span : 0;
  return perElement((e) => inside[e].low + along * (inside[e].high - inside[e].low));
}

/** Ranges narrowed by the sum of the others; null where no mixture of them makes a whole. */
function narrow(contents: Contents): Inside | null {
  const given = perElement((e) => contents[e] ?? { low: 0, high: 0 });
  for (const e of elements) {
    requireFraction(`${e} low`, given[e].low);
    requireWithin(`${e} high`, given[e].high, { low: given[e].low, high: 1, unit: "(not below its low)" });
  }
  const lows = elements.reduce((sum, e) => sum + given[e].low, 0);
  const highs = elements.reduce((sum, e) => sum + given[e].high, 0);
  // Printed compositions are rounded to a hundredth of a percent.
  if (lows > 1 + 1e-4 || highs < 1 - 1e-4) return null;
  const [down, up] = [Math.max(1, lows), Math.min(1, highs)];
  return perElement((e) => {
    const { low, high } = given[e];
    return {
      low: Math.max(low / down, 1 - (highs - high) / up),
      high: Math.min(Math.max(high / up, low / down), 1 - (lows - low) / down),
    };
  });
}

function perElement<T>(make: (element: Element) => T): Readonly<Record<Element, T>> {
  return Object.fromEntries(elements.map((e) => [e, make(e)])) as Record<Element, T>;
}
