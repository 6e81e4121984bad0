import { standingOf } from "../../logbook/buildStanding.ts";
import type { Piece } from "../../logbook/piece.ts";
import { rackOrder } from "../../logbook/rackOrder.ts";
import type { Standing, Surroundings } from "../../logbook/standing.ts";
import { findingsFor, worstLevel } from "../../rules/all.ts";
import type { Finding, Level } from "../../rules/finding.ts";
import type { RackData } from "../../storage/reads.ts";

export type RackItem = {
  readonly standing: Standing;
  readonly findings: readonly Finding[];
  readonly worst: Level | null;
};

export function rackItem(piece: Piece, surroundings: Surroundings, now: number): RackItem {
  const standing = standingOf(piece, surroundings, now);
  const findings = findingsFor(standing);
  return { standing, findings, worst: worstLevel(findings) };
}

type Kept = { readonly piece: string; readonly around: string; readonly item: RackItem };
export type RackCache = Map<string, Kept>;

/** A standing this young still tells the time well enough; a tap on one piece then costs the sums of one. */
export const freshMs = 25_000;

/** The rack's pieces in order, each reckoned anew only where its log, its surroundings or the time have moved on. */
export function rackItems(cache: RackCache, rack: RackData, now: number): readonly RackItem[] {
  const around = JSON.stringify([[...rack.readings], [...rack.rooms], [...rack.recipes], rack.shop]);
  const items = rack.pieces.map((piece) => {
    const text = JSON.stringify(piece);
    const kept = cache.get(piece.id);
    if (kept !== undefined && kept.piece === text && kept.around === around && isFresh(kept.item, now))
      return kept.item;
    const item = rackItem(piece, rack, now);
    cache.set(piece.id, { piece: text, around, item });
    return item;
  });
  return items.toSorted((a, b) => rackOrder(a.standing, b.standing));
}

function isFresh({ standing }: RackItem, now: number): boolean {
  const age = now - standing.now;
  return age >= 0 && age < freshMs;
}
