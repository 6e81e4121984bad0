import type { CoatWeighing, LearnedCoat, LearnedMm } from "../../physics/evidence/learnedBuild.ts";
import { learnCoatGains, learnCoatMm } from "../../physics/evidence/learnedBuild.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { startingMm, tableMm } from "./coatMm.ts";
import { spanOf } from "./coatDrying.ts";
import { chainOf } from "./coatWeights.ts";
import type { Coat, Piece } from "../piece/piece.ts";
import { makeMemo } from "../log/memo.ts";
import { ranges, within } from "../entries/ranges.ts";
import { coatCaseOf } from "./shellDrying.ts";
import type { Surroundings } from "../piece/surroundings.ts";

export const learnedKinds: readonly CoatKind[] = ["prime", "intermediate", "backup", "seal"];

/** What each kind of coat gains and builds, learned from weighings and calipers. */
export type LearnedGains = {
  readonly coats: ReadonlyMap<string, LearnedCoat>;
  readonly mm: Readonly<Record<string, LearnedMm>>;
  /** Starting wall a coat, mm, with the spread taken for it. */
  readonly startMm: Readonly<Record<string, { readonly mm: number; readonly sdMm: number }>>;
};

/** The table's build is known this well, one standard deviation as a share; estimate. */
const tableSdShare = 0.25;

/** The weighed coats of a piece: before the dip, drained, stuccoed, with the piece's area known. */
export function weighedCoats(
  piece: Piece,
  { surroundings, now }: { readonly surroundings: Surroundings; readonly now: number },
): readonly CoatWeighing[] {
  const memory = { memo: makeMemo(), rest: [] };
  const { areaM2 } = piece.plan;
  if (!within(ranges.areaM2, areaM2)) return [];
  const recipe = surroundings.recipes.get(piece.plan.recipeId ?? "") ?? null;
  return piece.coats.flatMap((coat): readonly CoatWeighing[] => {
    if (!piece.dryness.some(({ coatId, method }) => coatId === coat.id && method === "weight")) return [];
    const of = coatCaseOf(piece, coat.id, { surroundings, recipe, now, memory });
    const span = of && spanOf(of, { span: 0, wet: of.wet });
    const three = span && chainOf(span.seen, span.weights).three;
    if (span === null || three === null) return [];
    const { waterFraction } = span.weights;
    return [{ kind: coat.kind, atMs: coat.dippedAt, areaM2, waterFraction, ...three }];
  });
}

/** One caliper reading with the coats of each kind that stood then, and the wall the table gives them; none over coats from before the log. */
export type WallRead = {
  readonly wallMm: number;
  readonly coats: Readonly<Record<string, number>>;
  readonly tableMm: Readonly<Record<string, number>>;
};

export function wallReads({ coats, wall }: Piece): readonly WallRead[] {
  return wall.flatMap(({ wallMm, coats: count }): readonly WallRead[] => {
    const on = coats.slice(0, count);
    if (on.length === 0 || !within(ranges.wallMm, wallMm)) return [];
    if (on.some(({ beforeLog }) => beforeLog !== undefined)) return [];
    return [{ wallMm, coats: sumBy(on, () => 1), tableMm: sumBy(on, tableMm) }];
  });
}

const sumBy = (coats: readonly Coat[], of: (coat: Coat) => number): Readonly<Record<string, number>> => {
  const sums: Record<string, number> = {};
  for (const coat of coats) sums[coat.kind] = (sums[coat.kind] ?? 0) + of(coat);
  return sums;
};

/** Puts the weighings and calipers of all pieces together; a kind starts from the table's mean of the coats that were read. */
export function learnGains(weighings: readonly CoatWeighing[], reads: readonly WallRead[]): LearnedGains {
  const startMm = Object.fromEntries(
    learnedKinds.map((kind) => {
      const count = reads.reduce((sum, { coats }) => sum + (coats[kind] ?? 0), 0);
      const total = reads.reduce((sum, { tableMm: table }) => sum + (table[kind] ?? 0), 0);
      const mm = count > 0 ? total / count : startingMm(kind);
      return [kind, { mm, sdMm: mm * tableSdShare }];
    }),
  );
  const readings = reads.map(({ wallMm, coats }) => ({ wallMm, coats }));
  return { coats: learnCoatGains(weighings), mm: learnCoatMm({ readings, startMm }), startMm };
}
