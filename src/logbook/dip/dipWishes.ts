import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { DipWish } from "./dipProposal.ts";
import type { Bucket } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import { wettedAt } from "../drying/dryMinimum.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { practice } from "../../trade/practice.ts";
import { bucketOfRack, canTakeCoat } from "./dipPlan.ts";

const kinds: readonly CoatKind[] = ["prime", "intermediate", "backup", "seal"];
const bareMs = practice.primeBareH.value * hourMs;

/** A piece as the proposal asks for it, and what goes on it next. */
export type WantedCoat = { readonly wish: DipWish; readonly standing: Standing; readonly kind: CoatKind };

export type DipWishes = {
  readonly wanted: readonly WantedCoat[];
  /** In coating, but what comes next nobody said. */
  readonly withoutRecipe: readonly Standing[];
  /** On hold: no further coat yet. */
  readonly held: readonly Standing[];
};

/** What the pieces on the rack want of the buckets next. Those to be mended, or with all coats on, want none. */
export function dipWishes(
  standings: readonly Standing[],
  buckets: readonly Bucket[],
  now: number,
  onHold: ReadonlySet<Standing> = new Set(),
): DipWishes {
  const asking = standings.filter((one) => canTakeCoat(one) && one.action.kind === "dip");
  const able = asking.filter((one) => !onHold.has(one));
  const bucketIds = new Map(
    kinds.map((kind) => [kind, bucketOfRack(kind, { buckets, standings })?.id ?? ""]),
  );
  const wanted = able.flatMap((standing): readonly WantedCoat[] => {
    const kind = standing.next?.kind;
    return kind === undefined
      ? []
      : [{ wish: wishOf(standing, `${kind} ${bucketIds.get(kind) ?? ""}`, now), standing, kind }];
  });
  return {
    // In the order they go on, prime first.
    wanted: wanted.toSorted((a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind)),
    withoutRecipe: able.filter(({ next }) => next === null),
    held: asking.filter((one) => onHold.has(one)),
  };
}

function wishOf({ piece, outer, cover }: Standing, group: string, now: number): DipWish {
  const isReady = cover === null || cover.state === "dry";
  const { likely, late } = isReady
    ? { likely: now, late: now }
    : { likely: cover.checkAt, late: cover.dryAt };
  const isPrime = outer !== null && outer.coat.kind === "prime" && !outer.coat.afterBurnout;
  return {
    id: piece.id,
    group,
    likely,
    late,
    coverBy: isPrime ? wettedAt(outer.coat) + bareMs : null,
  };
}
