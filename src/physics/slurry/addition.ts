import { elements, type Element } from "../metal/scrap.ts";
import { requireFraction, requirePositive } from "../stats/range.ts";

export type Addition =
  | { readonly kind: "add"; readonly addKg: number }
  | { readonly kind: "not-needed" }
  /** What would be added can't bring the melt to its target at any mass. */
  | { readonly kind: "cannot-reach" };

/** How much cleaner metal brings one element down to its target, kg: M(w − w*)/(w* − wd). Derived here. */
export function diluteKg({
  meltKg,
  share,
  targetShare,
  diluentShare,
}: {
  meltKg: number;
  share: number;
  targetShare: number;
  diluentShare: number;
}): Addition {
  requirePositive("meltKg", meltKg, { high: 100_000, unit: "kg" });
  for (const [name, value] of Object.entries({ share, targetShare, diluentShare }))
    requireFraction(name, value);
  if (share <= targetShare) return { kind: "not-needed" };
  // A target of next to nothing asks for a mountain of clean metal.
  return diluentShare < targetShare - 1e-9
    ? { kind: "add", addKg: (meltKg * (share - targetShare)) / (targetShare - diluentShare) }
    : { kind: "cannot-reach" };
}

/** Something to add: what it is made of, and what of each element comes through (1 where not named). */
export type Additive = {
  readonly name: string;
  readonly shares: Readonly<Partial<Record<Element, number>>>;
  readonly recovery: Readonly<Partial<Record<Element, number>>>;
};

export type Correction =
  | {
      readonly kind: "add";
      readonly additions: readonly {
        readonly name: string;
        readonly addKg: number;
        readonly inMeltKg: number;
      }[];
      readonly meltKg: number;
    }
  /** An addition would have to be taken out again: nothing can be taken out of a melt. */
  | { readonly kind: "cannot-reach"; readonly names: readonly string[] }
  /** Two additions do the same, or there are not as many as targets. */
  | { readonly kind: "not-determined" };

/**
 * Several elements brought to their targets at once, one addition for each, exactly: for every target
 * M·w + Σa·p·r = w*·(M + Σa·Σp·r), a linear solve with pivots. Shares 0–1. Derived here.
 */
export function correctMelt({
  meltKg,
  shares,
  targets,
  additives,
}: {
  meltKg: number;
  shares: Readonly<Partial<Record<Element, number>>>;
  targets: Readonly<Partial<Record<Element, number>>>;
  additives: readonly Additive[];
}): Correction {
  requirePositive("meltKg", meltKg, { high: 100_000, unit: "kg" });
  const wanted = elements.flatMap((e) => {
    const target = targets[e];
    return target === undefined ? [] : [{ e, target }];
  });
  for (const { e, target } of wanted) {
    requireFraction(`${e} target`, target);
    requireFraction(`${e} share`, shares[e] ?? 0);
  }
  if (wanted.length === 0 || wanted.length !== additives.length) return { kind: "not-determined" };
  const brings = (additive: Additive, e: Element): number => {
    const [share, through] = [additive.shares[e] ?? 0, additive.recovery[e] ?? 1];
    requireFraction(`${additive.name} ${e}`, share);
    requireFraction(`${additive.name} ${e} recovery`, through);
    return share * through;
  };
  const leaves = additives.map((additive) => elements.reduce((sum, e) => sum + brings(additive, e), 0));
  const rows = wanted.map(({ e, target }) => [
    ...additives.map((additive, k) => brings(additive, e) - target * (leaves[k] ?? 0)),
    meltKg * (target - (shares[e] ?? 0)),
  ]);
  const kg = solve(rows);
  if (kg === null) return { kind: "not-determined" };
  const additions = additives.map(({ name }, k) => {
    const addKg = kg[k] ?? 0;
    return { name, addKg, inMeltKg: addKg * (leaves[k] ?? 0) };
  });
  const below = additions.filter(({ addKg }) => addKg < -1e-9 * meltKg);
  if (below.length > 0) return { kind: "cannot-reach", names: below.map(({ name }) => name) };
  return { kind: "add", additions, meltKg: additions.reduce((sum, { inMeltKg }) => sum + inMeltKg, meltKg) };
}

/** Gauss and Jordan with row pivots on [A | b]; null where A has no inverse. */
function solve(rows: readonly (readonly number[])[]): readonly number[] | null {
  const a = rows.map((row) => [...row]);
  for (let col = 0; col < a.length; col++) {
    const size = (row: readonly number[]): number => Math.abs(row[col] ?? 0);
    const best = a.slice(col).reduce((most, row) => (size(row) > size(most) ? row : most), a[col] ?? []);
    if (size(best) < 1e-12) return null;
    a[a.indexOf(best)] = a[col] ?? [];
    a[col] = best.map((x) => x / (best[col] ?? 1));
    const pivot = a[col] ?? [];
    for (const [i, row] of a.entries()) {
      const factor = row[col] ?? 0;
      if (i !== col) a[i] = row.map((x, j) => x - factor * (pivot[j] ?? 0));
    }
  }
  return a.map((row) => row.at(-1) ?? 0);
}
