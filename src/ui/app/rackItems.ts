import { standingOf } from "../../logbook/buildStanding.ts";
import { dippedFromMark } from "../../logbook/dippedFrom.ts";
import type { DryingMemory } from "../../logbook/dryingMemory.ts";
import type { Piece } from "../../logbook/piece.ts";
import { rackOrder } from "../../logbook/rackOrder.ts";
import type { Standing, Surroundings } from "../../logbook/standing.ts";
import { findingsFor, worstLevel } from "../../rules/all.ts";
import { coverHold } from "../../rules/coverHold.ts";
import type { Finding, Level } from "../../rules/finding.ts";
import type { RackData } from "../../storage/reads.ts";

export type RackItem = {
  readonly standing: Standing;
  readonly findings: readonly Finding[];
  readonly worst: Level | null;
};

export function rackItem(
  piece: Piece,
  surroundings: Surroundings,
  now: number,
  memory: DryingMemory | null = null,
): RackItem {
  const standing = standingOf(piece, surroundings, now, memory);
  const findings = findingsFor(standing);
  return { standing, findings, worst: worstLevel(findings) };
}

type Kept = { readonly piece: string; readonly around: string; readonly item: RackItem };
export type RackCache = Map<string, Kept>;

/** A standing this young still tells the time well enough; a tap on one piece then costs the sums of one. */
export const freshMs = 25_000;

/** The rack's pieces in order, each reckoned anew only where its log, its surroundings or the time have moved on. */
export function rackItems(
  cache: RackCache,
  rack: RackData,
  now: number,
  memory: DryingMemory | null = null,
): readonly RackItem[] {
  const { readings, rooms, recipes, shop, learned = null } = rack;
  const taught = learned && [learned.shop, [...learned.groups], [...learned.without]];
  const minimums = [...rack.buckets].map(([id, { targets }]) => [id, targets.leastDryH]);
  const around = JSON.stringify([[...readings], [...rooms], [...recipes], shop, taught, minimums]);
  const items = rack.pieces.map((piece) => {
    // Of the buckets only what was known at the dips counts: a reading of today changes no coat of yesterday.
    const text = JSON.stringify(piece) + dippedFromMark(piece, rack) + runsMark(piece, rack);
    const kept = cache.get(piece.id);
    if (kept !== undefined && kept.piece === text && kept.around === around && isFresh(kept.item, now))
      return kept.item;
    const item = rackItem(piece, rack, now, memory);
    cache.set(piece.id, { piece: text, around, item });
    return item;
  });
  const held = new Set(
    items.filter(({ findings }) => coverHold(findings) !== null).map(({ standing }) => standing),
  );
  return items.toSorted((a, b) => rackOrder(a.standing, b.standing, (one) => held.has(one)));
}

/** Changes with every line of a run that a piece was in. */
const runsMark = ({ runIds }: Piece, { runs }: Surroundings): string =>
  runIds
    .map((id) => {
      const run = runs?.get(id);
      return run && [run.lastAt, run.readings.length, run.stepsDone.length, run.changes.length].join("/");
    })
    .join();

function isFresh({ standing }: RackItem, now: number): boolean {
  const age = now - standing.now;
  return age >= 0 && age < freshMs;
}
