import type { MarginBy } from "../casting/chargeSum.ts";

/** A piece that could be poured that day, by what it asks of crucible and kiln. */
export type PackPiece = {
  readonly id: string;
  /** The alloy's row in the table: one melt is one alloy. */
  readonly alloyId: string;
  /** Casting and gating, kg. */
  readonly metalKg: number;
  /** How well that is known, which decides its margin. */
  readonly known: MarginBy;
  /** What its shell may be at when metal comes, °C; null for a metal of no known practice, which binds nothing. */
  readonly heat: { readonly lowC: number; readonly highC: number } | null;
  /** What it takes to leave the kiln with, °C. */
  readonly leaveC: number;
  /** The pour asked about has it in its plan already: such a piece is never given up for others. */
  readonly isPlanned: boolean;
  /** Room it takes in a kiln; null where its size is not known, which is no room counted and is said. */
  readonly litre: number | null;
};

export type PackCrucible = {
  readonly id: string;
  /** Melt it holds of an alloy, kg; null where nobody knows the crucible or the alloy: then nothing binds it. */
  readonly mostKg: (alloyId: string) => number | null;
};

export type PackKiln = {
  readonly id: string;
  readonly maxC: number;
  /** Room that can be used; null where it is not known. */
  readonly usableL: number | null;
};

export type PackShop = {
  readonly crucibles: readonly PackCrucible[];
  readonly kilns: readonly PackKiln[];
  /** What must be molten for pieces of one alloy together, margin included, kg; rises with each piece, 0 for none. */
  readonly meltKg: (pieces: readonly PackPiece[]) => number;
};

export type Placed = { readonly piece: PackPiece; readonly crucibleId: string; readonly kilnId: string };

export type Packing = {
  readonly placed: readonly Placed[];
  /** `exact`: no other choice takes more pieces, nor as many with one that waits longer. `greedy`: in order, as they fit. */
  readonly how: "exact" | "greedy";
};

/** Up to so many pieces every choice is looked at; beyond, one after the other as they fit. */
export const exactUpTo = 12;
/** An exact search that has looked this often gives the best it found, as greedy: it keeps a phone from standing still. */
const mostLooks = 60_000;

/**
 * Which pieces go together on one day: each crucible melts once, one alloy, no more than it holds; each kiln stands at
 * one heat that all its shells may have, and takes no more room than it has. The most of those planned for it already;
 * then the most pieces; of equals those that stand first in `pieces`, which is their order of urgency. Exact up to 12 pieces by branch and bound; beyond, greedily over
 * every choice of crucibles and kilns (the first six of them together), so that one more of either never takes fewer.
 */
export function packPour(pieces: readonly PackPiece[], shop: PackShop): Packing {
  const greedy = bestGreedy(pieces, shop);
  if (pieces.length > exactUpTo) return { placed: greedy, how: "greedy" };
  return searchAll(pieces, shop, greedy);
}

/** What may still be added to what is placed: a crucible and a kiln that take it, in their order. */
function placesFor(
  piece: PackPiece,
  placed: readonly Placed[],
  shop: PackShop,
): readonly Pick<Placed, "crucibleId" | "kilnId">[] {
  const crucibles = shop.crucibles.filter((one) => meltFits(piece, meltOf(placed, one.id), one, shop));
  const kilns = shop.kilns.filter((one) => kilnFits(piece, inKiln(placed, one.id), one));
  return crucibles.flatMap((crucible) => kilns.map((kiln) => ({ crucibleId: crucible.id, kilnId: kiln.id })));
}

export const meltOf = (placed: readonly Placed[], crucibleId: string): readonly PackPiece[] =>
  placed.filter((one) => one.crucibleId === crucibleId).map(({ piece }) => piece);

export const inKiln = (placed: readonly Placed[], kilnId: string): readonly PackPiece[] =>
  placed.filter((one) => one.kilnId === kilnId).map(({ piece }) => piece);

function meltFits(
  piece: PackPiece,
  others: readonly PackPiece[],
  crucible: PackCrucible,
  { meltKg }: PackShop,
): boolean {
  if (others.some(({ alloyId }) => alloyId !== piece.alloyId)) return false;
  const most = crucible.mostKg(piece.alloyId);
  return most === null || meltKg([...others, piece]) <= most;
}

function kilnFits(piece: PackPiece, others: readonly PackPiece[], kiln: PackKiln): boolean {
  const all = [...others, piece];
  return all.every(({ leaveC }) => leaveC <= kiln.maxC) && sharedHeat(all) !== "none" && roomFits(all, kiln);
}

export const litresOf = (pieces: readonly PackPiece[]): number =>
  pieces.reduce((sum, { litre }) => sum + (litre ?? 0), 0);

const roomFits = (pieces: readonly PackPiece[], { usableL }: PackKiln): boolean =>
  usableL === null || litresOf(pieces) <= usableL;

/** The heat all these shells may have at once, °C; null where none of them asks, "none" where they part. */
export function sharedHeat(
  pieces: readonly PackPiece[],
): { readonly lowC: number; readonly highC: number } | null | "none" {
  const asked = pieces.flatMap(({ heat }) => heat ?? []);
  if (asked.length === 0) return null;
  const lowC = Math.max(...asked.map((heat) => heat.lowC));
  const highC = Math.min(...asked.map((heat) => heat.highC));
  return lowC > highC ? "none" : { lowC, highC };
}

/** One after the other, each where it leaves least over in its crucible. */
function greedily(pieces: readonly PackPiece[], shop: PackShop): readonly Placed[] {
  let placed: readonly Placed[] = [];
  for (const piece of pieces) {
    const leftIn = (crucibleId: string): number => {
      const crucible = shop.crucibles.find(({ id }) => id === crucibleId);
      const most = crucible?.mostKg(piece.alloyId) ?? Infinity;
      return most - shop.meltKg([...meltOf(placed, crucibleId), piece]);
    };
    const best = placesFor(piece, placed, shop).reduce<Pick<Placed, "crucibleId" | "kilnId"> | null>(
      (a, b) => (a === null || leftIn(b.crucibleId) < leftIn(a.crucibleId) ? b : a),
      null,
    );
    if (best !== null) placed = [...placed, { piece, ...best }];
  }
  return placed;
}

/** Six things have 63 choices among them; a shop with more has the rest taken together. */
const mostChosen = 6;

/** Every choice of these, none left out; those past the sixth go with each. */
function choicesOf<T>(all: readonly T[]): readonly (readonly T[])[] {
  const free = all.slice(0, mostChosen);
  const rest = all.slice(mostChosen);
  const chosen = Array.from({ length: 2 ** free.length - 1 }, (_, i) =>
    free.filter((_one, place) => ((i + 1) >> place) & 1),
  );
  return [...chosen.map((some) => [...some, ...rest]), ...(rest.length > 0 ? [rest] : [])];
}

/** The best of greedy placings: in order and smallest metal first, over every choice of crucibles and of kilns. */
function bestGreedy(pieces: readonly PackPiece[], shop: PackShop): readonly Placed[] {
  const orders = [
    pieces.toSorted((a, b) => Number(b.isPlanned) - Number(a.isPlanned)),
    pieces.toSorted((a, b) => Number(b.isPlanned) - Number(a.isPlanned) || a.metalKg - b.metalKg),
  ];
  let best: readonly Placed[] = [];
  for (const crucibles of choicesOf(shop.crucibles))
    for (const kilns of choicesOf(shop.kilns))
      for (const order of orders) {
        const placed = greedily(order, { ...shop, crucibles, kilns });
        if (isBetter(takenOf(pieces, placed), takenOf(pieces, best))) best = placed;
      }
  return best;
}

/** Of each piece whether it is taken, in their order, and whether it counts as planned. */
type Taken = readonly { readonly takes: boolean; readonly isPlanned: boolean }[];

function takenOf(pieces: readonly PackPiece[], placed: readonly Placed[]): Taken {
  const ids = new Set(placed.map(({ piece }) => piece.id));
  return pieces.map(({ id, isPlanned }) => ({ takes: ids.has(id), isPlanned }));
}

const countOf = (taken: Taken, plannedOnly: boolean): number =>
  taken.filter(({ takes, isPlanned }) => takes && (isPlanned || !plannedOnly)).length;

/** More of those planned; then more pieces; of as many, the one that takes the first piece in which they differ. */
function isBetter(a: Taken, b: Taken): boolean {
  const more = countOf(a, true) - countOf(b, true) || countOf(a, false) - countOf(b, false);
  if (more !== 0) return more > 0;
  const differs = a.findIndex(({ takes }, place) => takes !== b[place]?.takes);
  return differs >= 0 && a[differs]?.takes === true;
}

/** Branch and bound: each piece in each place it fits, or left; a branch that can't beat the best is not followed. */
function searchAll(pieces: readonly PackPiece[], shop: PackShop, start: readonly Placed[]): Packing {
  let best = start;
  let bestTaken = takenOf(pieces, start);
  let looks = 0;
  const follow = (place: number, placed: readonly Placed[], taken: Taken): void => {
    looks += 1;
    if (looks > mostLooks) return;
    const piece = pieces[place];
    if (piece === undefined) {
      if (isBetter(taken, bestTaken)) [best, bestTaken] = [placed, taken];
      return;
    }
    const { isPlanned } = piece;
    const most = [...taken, ...pieces.slice(place).map((one) => ({ takes: true, isPlanned: one.isPlanned }))];
    if (!isBetter(most, bestTaken)) return;
    for (const where of placesFor(piece, placed, shop))
      follow(place + 1, [...placed, { piece, ...where }], [...taken, { takes: true, isPlanned }]);
    follow(place + 1, placed, [...taken, { takes: false, isPlanned }]);
  };
  follow(0, [], []);
  return { placed: best, how: looks > mostLooks ? "greedy" : "exact" };
}
