import { standingOf } from "../../../logbook/piece/buildStanding.ts";
import { learningStamp, recipeGround } from "../../../logbook/drying/dryingMemory.ts";
import { shopStream, streamOf } from "../../../logbook/entries/entry.ts";
import { runsOfPiece } from "../../../logbook/fire/runsOfPiece.ts";
import type { Memo } from "../../../logbook/log/memo.ts";
import { groundOf, keep, recall } from "../../../logbook/log/memo.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { rackOrder } from "../../../logbook/piece/rackOrder.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { Surroundings } from "../../../logbook/piece/surroundings.ts";
import { findingsFor, worstLevel } from "../../../rules/all.ts";
import { heldStandings } from "../../../rules/coverHold.ts";
import type { Finding, Level } from "../../../rules/finding.ts";
import type { RackData } from "../../../storage/reads.ts";

export type RackItem = {
  readonly standing: Standing;
  readonly findings: readonly Finding[];
  readonly worst: Level | null;
};

export function rackItem(piece: Piece, surroundings: Surroundings, now: number, memo?: Memo): RackItem {
  const standing = standingOf(piece, surroundings, now, memo);
  const findings = findingsFor(standing);
  return { standing, findings, worst: worstLevel(findings) };
}

/** A standing this young still tells the time well enough; a tap on one piece then costs the sums of one. */
export const freshMs = 25_000;

/** A piece the sums can't be done for, or whose summary can't be read; `name` is null where it is not known. */
export type RackFault = { readonly pieceId: string; readonly name: string | null; readonly detail: string };
export type WholeRack = { readonly items: readonly RackItem[]; readonly faults: readonly RackFault[] };

/** The rack's pieces in order, and those that can't be worked out: one of them never costs the others. */
export function workOutRack(memo: Memo, rack: RackData, now: number): WholeRack {
  const items: RackItem[] = [];
  const faults: RackFault[] = (rack.rotten ?? []).map((stream) => ({
    pieceId: stream.slice(stream.indexOf("/") + 1),
    name: null,
    detail: "its summary can't be read",
  }));
  for (const piece of rack.pieces) {
    try {
      items.push(itemOf(piece, { rack, now, memo }));
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      faults.push({ pieceId: piece.id, name: piece.plan?.name ?? null, detail });
    }
  }
  const held = heldStandings(items);
  return {
    items: items.toSorted((a, b) => rackOrder(a.standing, b.standing, (one) => held.has(one))),
    faults,
  };
}

/** Worked out anew only where its log, its surroundings or the time have moved on. */
function itemOf(
  piece: Piece,
  { rack, now, memo }: { readonly rack: RackData; readonly now: number; readonly memo: Memo },
): RackItem {
  const place = { memo, kind: "item", id: piece.id };
  const grounds = itemGrounds(piece, rack);
  const kept = recall<RackItem>(place, grounds);
  if (kept !== null && isFresh(kept, now)) return kept;
  return keep(place, { grounds, value: rackItem(piece, rack, now, memo) });
}

/** The stamps of all that a piece's standing rests on: its log, where it hung, what it was dipped in, its runs, and the shop. */
function itemGrounds(piece: Piece, { stamps, buckets: known, runs: fired }: RackData): readonly unknown[] {
  const rooms = piece.rooms.map(({ roomId }) => streamOf("room", roomId));
  const buckets = piece.coats.flatMap(({ bucketId }) =>
    bucketId !== null && known.has(bucketId) ? [streamOf("bucket", bucketId)] : [],
  );
  const runs = runsOfPiece(piece, fired).map(({ id }) => streamOf("run", id));
  const streams = new Set([streamOf("piece", piece.id), ...rooms, ...buckets, ...runs, shopStream]);
  return [
    recipeGround(piece, stamps),
    ...[...streams, learningStamp].map((stream) => groundOf(stamps, stream)),
  ];
}

function isFresh({ standing }: RackItem, now: number): boolean {
  const age = now - standing.now;
  return age >= 0 && age < freshMs;
}
