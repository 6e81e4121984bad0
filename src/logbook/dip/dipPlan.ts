import type { Bucket } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import type { CoatKind } from "../../trade/coats.ts";

/** What one visit to a bucket gives: chosen once, then only pieces are tapped. */
export type DipPlan = { readonly bucketId: string; readonly kind: CoatKind };

/** A dip the rack asks for: how many pieces it would serve now, how many still dry, how many may get no further coat yet. */
export type WantedDip = DipPlan & { readonly ready: number; readonly drying: number; readonly held: number };

/** Which buckets serve a kind of coat, the best fit first. Common practice, no source. */
const servedBy: Record<CoatKind, readonly Bucket["use"][]> = {
  prime: ["prime", "single"],
  intermediate: ["backup", "single", "prime"],
  backup: ["backup", "single"],
  seal: ["seal", "backup", "single", "prime"],
};

const kinds: readonly CoatKind[] = ["prime", "intermediate", "backup", "seal"];

/** The kinds of coat a bucket can give, in the order they go on. */
export function kindsOf(bucket: Pick<Bucket, "use">): readonly CoatKind[] {
  return kinds.filter((kind) => servedBy[kind].includes(bucket.use));
}

/** The bucket to reach for: the one used last if it serves the kind, else the best fit; null when none does. */
export function bucketFor(
  kind: CoatKind,
  buckets: readonly Bucket[],
  lastUsedId: string | null,
): Bucket | null {
  const open = buckets.filter((bucket) => !bucket.retired);
  const last = open.find((bucket) => bucket.id === lastUsedId && servedBy[kind].includes(bucket.use));
  if (last !== undefined) return last;
  for (const use of servedBy[kind]) {
    const fit = open.find((bucket) => bucket.use === use);
    if (fit !== undefined) return fit;
  }
  return null;
}

/** The bucket of the newest coat on the rack; null while there is none. */
function lastBucketId(standings: readonly Pick<Standing, "piece">[]): string | null {
  const coats = standings
    .flatMap(({ piece }) => piece.coats)
    .filter(({ beforeLog }) => beforeLog === undefined);
  return coats.reduce((last, coat) => (coat.dippedAt > last.dippedAt ? coat : last), {
    dippedAt: Number.NEGATIVE_INFINITY,
    bucketId: null as string | null,
  }).bucketId;
}

/** The bucket for the next coats of a kind on this rack. Dip menu, visit and timeline name this one. */
export const bucketOfRack = (
  kind: CoatKind,
  { buckets, standings }: { readonly buckets: readonly Bucket[]; readonly standings: readonly Standing[] },
): Bucket | null => bucketFor(kind, buckets, lastBucketId(standings));

/** True where a dip may give a coat: in work and being coated, or reviewed with a coat of the recipe still open. */
export function canTakeCoat({ piece, next }: Pick<Standing, "piece" | "next">): boolean {
  return !piece.archived && (piece.phase === "coating" || (piece.phase === "reviewed" && next !== null));
}

/** True once the last coat is dry, or may be checked. */
export function mayGoOn({ cover }: Pick<Standing, "cover">): boolean {
  return cover === null || cover.state === "dry" || cover.state === "check";
}

/** The kind a piece wants next: its recipe's; a bare pattern without a recipe wants a prime. Null where nobody can say. */
const wantedKind = ({ next, recipe, coatsDone }: Standing): CoatKind | null =>
  next?.kind ?? (recipe === null && coatsDone === 0 ? "prime" : null);

/** What the next coats on the rack want, the dip that serves most pieces now first. */
export function wantedDips(
  standings: readonly Standing[],
  buckets: readonly Bucket[],
  onHold: ReadonlySet<Standing> = new Set(),
): readonly WantedDip[] {
  return kinds
    .flatMap((kind) => {
      const asking = standings.filter((it) => canTakeCoat(it) && wantedKind(it) === kind);
      const bucket = bucketOfRack(kind, { buckets, standings });
      if (asking.length === 0 || bucket === null) return [];
      const able = asking.filter((it) => !onHold.has(it));
      const ready = able.filter(mayGoOn).length;
      const held = asking.length - able.length;
      return [{ bucketId: bucket.id, kind, ready, drying: able.length - ready, held }];
    })
    .sort((a, b) => b.ready - a.ready || b.drying - a.drying);
}
