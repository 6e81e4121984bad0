import { millisecondsInDay as dayMs } from "date-fns/constants";
import type { DippedFrom } from "../logbook/bucket/dippedFrom.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { isSlightlyOff } from "../logbook/bucket/slightlyOff.ts";
import { practice } from "../trade/practice.ts";
import type { Level } from "./finding.ts";
import { figure } from "./finding.ts";
import { hoursBetween } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"dipped-from-unfit-bucket">;
type Asking = Pick<Standing, "dippedFrom" | "piece" | "now">;
type Variant = VariantOf<"dipped-from-unfit-bucket">;

const levels: Readonly<Record<Variant, Level>> = {
  unfit: "watch",
  "unfit-accepted": "watch",
  "never-read": "watch",
  watched: "note",
  "not-checked": "note",
};
/** Hours for which it is said of a dip that its slurry was never read: while whoever dipped is still there (judgement). */
const saidAtDipH = 1;
const source = "common practice, no source; the bucket's own limits";

/**
 * A coat came from a slurry that was not to be dipped from, was to be watched, or that nobody had checked. What can be
 * done about it is done while the coat is the outer one, so the rest is past; a slurry that was out of its limits is
 * to be watched until the shell was measured or reviewed. One that nobody checked is a line on the dip, one line for
 * all of them, and one that was never read is to be watched once it has gone on for days: both weigh more than a
 * bucket that was read a degree off, of which nothing is said.
 */
export function dippedFromUnfitBucket(standing: Asking): readonly Found[] {
  const { dippedFrom } = standing;
  const never = neverRead(dippedFrom);
  const said = dippedFrom.flatMap((dip) => {
    const variant = never.has(dip.bucket.id) && dip.neverRead ? "never-read" : variantOf(dip);
    return variant === null ? [] : [{ dip, variant }];
  });
  return (Object.keys(levels) as Variant[]).flatMap((variant) => {
    const dips = said.filter((one) => one.variant === variant).map(({ dip }) => dip);
    // That nobody looked says the same of every bucket; what was wrong is each one's own.
    const groups = variant === "not-checked" ? [dips] : byBucket(dips);
    return groups.filter(({ length }) => length > 0).map((group) => finding(variant, group, standing));
  });
}

const byBucket = (dips: readonly DippedFrom[]): readonly (readonly DippedFrom[])[] =>
  [...new Set(dips.map(({ bucket }) => bucket.id))].map((id) =>
    dips.filter(({ bucket }) => bucket.id === id),
  );

/** The buckets this piece was dipped from for days on end, and nobody had read one of them even once by the last dip. */
function neverRead(dippedFrom: readonly DippedFrom[]): ReadonlySet<string> {
  const unread = byBucket(dippedFrom).filter((dips) => {
    const [first, last] = [dips[0], dips.at(-1)];
    if (first === undefined || last === undefined || !last.neverRead) return false;
    return last.coat.dippedAt - first.coat.dippedAt >= practice.neverReadDays.value * dayMs;
  });
  return new Set(unread.flatMap((dips) => dips.map(({ bucket }) => bucket.id)));
}

function variantOf({ health, reason }: DippedFrom): Variant | null {
  switch (health.level) {
    case "fit":
      return null;
    case "watch":
      return health.reasons.every(isSlightlyOff) ? null : "watched";
    case "not-checked":
      return "not-checked";
    case "do-not-dip":
      return reason === null ? "unfit" : "unfit-accepted";
  }
}

/** The first dip by which such a bucket had gone unread for too long: from then on it has been said. */
function grewOld(dips: readonly DippedFrom[]): number {
  const [first] = dips;
  const from = (first?.coat.dippedAt ?? 0) + practice.neverReadDays.value * dayMs;
  return dips.find(({ coat }) => coat.dippedAt >= from)?.coat.dippedAt ?? from;
}

function finding(variant: Variant, dips: readonly DippedFrom[], { piece, now }: Asking): Found {
  const spoken = variant === "not-checked" ? [] : dips.flatMap(({ health }) => health.reasons);
  const heavy = variant === "watched" ? "watch" : "do-not-dip";
  const codes = new Set(spoken.filter(({ level }) => level === heavy).map(({ code }) => code));
  const reason = dips.findLast((dip) => dip.reason !== null)?.reason;
  const lastDip = Math.max(...dips.map(({ coat }) => coat.dippedAt));
  const isOuter = piece.coats.at(-1)?.dippedAt === lastDip;
  const isAnswered = [...piece.wall, ...piece.reviews].some(({ at }) => at > lastDip);
  const isPast = variant === "unfit" || variant === "unfit-accepted" ? isAnswered : !isOuter;
  const isTold = variant === "never-read" && hoursBetween(grewOld(dips), now) > saidAtDipH;
  return {
    rule: "dipped-from-unfit-bucket",
    variant,
    level: isPast || isTold ? "note" : levels[variant],
    figures: { count: figure(dips.length, "count"), days: figure(practice.neverReadDays.value, "count") },
    texts: {
      bucket: [...new Set(dips.map(({ bucket }) => bucket.name))].join(", "),
      which: dips.map(({ coat }) => coat.number).join(", "),
      codes: [...codes].join(" "),
      ...(reason == null ? {} : { reason }),
    },
    entries: dips.map(({ coat }) => coat.id),
    source,
    ...(isPast ? { past: true } : {}),
  };
}
