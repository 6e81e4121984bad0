import {
  inKiln,
  litresOf,
  meltOf,
  sharedHeat,
  type PackPiece,
  type PackShop,
  type Placed,
} from "./packPour.ts";

/** What kept a piece out of a packing, with its numbers. */
export type NotPacked =
  /** More than any crucible holds, kg of melt. */
  | { readonly code: "too-much-metal"; readonly needsKg: number; readonly mostKg: number }
  /** What it would add to the melt of its alloy, and what the crucible has left. */
  | {
      readonly code: "crucible-full";
      readonly needsKg: number;
      readonly leftKg: number;
      readonly crucibleId: string;
    }
  /** Every crucible that would take it melts another alloy that day. */
  | { readonly code: "other-alloy"; readonly alloyIds: readonly string[] }
  | {
      readonly code: "kiln-heat";
      readonly lowC: number;
      readonly highC: number;
      readonly kilnLowC: number;
      readonly kilnHighC: number;
    }
  | { readonly code: "kiln-full"; readonly litre: number; readonly leftL: number };

/** Why a piece that is ready found no place beside those that are placed: the crucible first, then the kiln. */
export function whyNotPacked(piece: PackPiece, placed: readonly Placed[], shop: PackShop): NotPacked {
  return metalAgainst(piece, placed, shop) ?? kilnAgainst(piece, placed, shop);
}

function metalAgainst(
  piece: PackPiece,
  placed: readonly Placed[],
  { crucibles, meltKg }: PackShop,
): NotPacked | null {
  const { alloyId } = piece;
  const needsAlone = meltKg([piece]);
  const holds = crucibles.map((one) => ({ id: one.id, mostKg: one.mostKg(alloyId) ?? Infinity }));
  const mostKg = Math.max(...holds.map((one) => one.mostKg));
  if (needsAlone > mostKg) return { code: "too-much-metal", needsKg: needsAlone, mostKg };
  const large = holds.filter((one) => needsAlone <= one.mostKg);
  const same = large
    .map((one) => ({ ...one, melt: meltOf(placed, one.id) }))
    .filter(({ melt }) => melt.every((other) => other.alloyId === alloyId));
  if (same.length === 0) {
    const others = large.flatMap(({ id }) => meltOf(placed, id)[0]?.alloyId ?? []);
    return { code: "other-alloy", alloyIds: [...new Set(others)] };
  }
  const lefts = same.map(({ id, mostKg: most, melt }) => {
    const now = meltKg(melt);
    return { crucibleId: id, needsKg: meltKg([...melt, piece]) - now, leftKg: most - now };
  });
  // The crucible that comes nearest to taking it is the one to speak of.
  const best = lefts.reduce((a, b) => (b.leftKg - b.needsKg > a.leftKg - a.needsKg ? b : a));
  return best.needsKg > best.leftKg ? { code: "crucible-full", ...best } : null;
}

function kilnAgainst(piece: PackPiece, placed: readonly Placed[], { kilns }: PackShop): NotPacked {
  // One at least is hot enough: a piece that no kiln can heat has no fire and is never packed.
  const hot = kilns.filter(({ maxC }) => piece.leaveC <= maxC);
  const meeting = hot.filter(({ id }) => sharedHeat([...inKiln(placed, id), piece]) !== "none");
  if (meeting.length === 0) {
    const heats = hot.flatMap(({ id }) => {
      const heat = sharedHeat(inKiln(placed, id));
      return heat === null || heat === "none" ? [] : [heat];
    });
    const [first = { lowC: 0, highC: 0 }] = heats;
    const { lowC, highC } = piece.heat ?? first;
    return { code: "kiln-heat", lowC, highC, kilnLowC: first.lowC, kilnHighC: first.highC };
  }
  const lefts = meeting.map(({ id, usableL }) => (usableL ?? Infinity) - litresOf(inKiln(placed, id)));
  return { code: "kiln-full", litre: piece.litre ?? 0, leftL: Math.max(0, Math.max(...lefts)) };
}
