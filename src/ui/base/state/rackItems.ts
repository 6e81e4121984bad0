import { standingOf } from "../../../logbook/piece/buildStanding.ts";
import { dippedFromMark } from "../../../logbook/bucket/dippedFrom.ts";
import type { DryingMemory } from "../../../logbook/drying/dryingMemory.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { rackOrder } from "../../../logbook/piece/rackOrder.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { Surroundings } from "../../../logbook/piece/surroundings.ts";
import { findingsFor, worstLevel } from "../../../rules/all.ts";
import { coverHold } from "../../../rules/coverHold.ts";
import type { Finding, Level } from "../../../rules/finding.ts";
import type { RackData } from "../../../storage/reads.ts";

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

/** A piece the sums can't be done for, or whose summary can't be read; `name` is null where it is not known. */
export type RackFault = { readonly pieceId: string; readonly name: string | null; readonly detail: string };
export type WholeRack = { readonly items: readonly RackItem[]; readonly faults: readonly RackFault[] };

/** The rack's pieces in order, and those that can't be worked out: one of them never costs the others. */
export function workOutRack(
  cache: RackCache,
  rack: RackData,
  now: number,
  memory: DryingMemory | null = null,
): WholeRack {
  const around = aroundText(rack);
  const items: RackItem[] = [];
  const faults: RackFault[] = (rack.rotten ?? []).map((stream) => ({
    pieceId: stream.slice(stream.indexOf("/") + 1),
    name: null,
    detail: "its summary can't be read",
  }));
  for (const piece of rack.pieces) {
    try {
      items.push(itemOf(piece, { cache, rack, around, now, memory }));
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      faults.push({ pieceId: piece.id, name: piece.plan?.name ?? null, detail });
    }
  }
  const held = new Set(
    items.filter(({ findings }) => coverHold(findings) !== null).map(({ standing }) => standing),
  );
  return {
    items: items.toSorted((a, b) => rackOrder(a.standing, b.standing, (one) => held.has(one))),
    faults,
  };
}

const aroundText = ({ readings, rooms, recipes, buckets, shop, learned = null }: RackData): string => {
  const taught = learned && [learned.shop, [...learned.groups], [...learned.without]];
  const minimums = [...buckets].map(([id, { targets }]) => [id, targets.leastDryH]);
  return JSON.stringify([[...readings], [...rooms], [...recipes], shop, taught, minimums]);
};

/** Reckoned anew only where its log, its surroundings or the time have moved on. */
function itemOf(
  piece: Piece,
  {
    cache,
    rack,
    around,
    now,
    memory,
  }: {
    readonly cache: RackCache;
    readonly rack: RackData;
    readonly around: string;
    readonly now: number;
    readonly memory: DryingMemory | null;
  },
): RackItem {
  // Of the buckets only what was known at the dips counts: a reading of today changes no coat of yesterday.
  const text = JSON.stringify(piece) + dippedFromMark(piece, rack) + runsMark(piece, rack);
  const kept = cache.get(piece.id);
  if (kept !== undefined && kept.piece === text && kept.around === around && isFresh(kept.item, now))
    return kept.item;
  const item = rackItem(piece, rack, now, memory);
  cache.set(piece.id, { piece: text, around, item });
  return item;
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
