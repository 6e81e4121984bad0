import { firstHotAt } from "../logbook/hotTimes.ts";
import type { CoatDrying, Standing } from "../logbook/standing.ts";
import { figure } from "./finding.ts";
import type { Level } from "./finding.ts";
import { hoursBetween, wasHot } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"recoated-before-dry">;

const source =
  "Dooley & Everden, INCAST Nov 2020 p. 20 (green strength + 55 % from 1 h to 4 h between coats); Investment Casting Institute, Atlas of Casting Defects, spall";

/**
 * Coats that went on over one that was not dry. Water shut in is a hold until the shell has dried through or
 * been hot; what stays then is a weak seam. A coat of which nothing is known is said to be unknown.
 */
export function recoatedBeforeDry(standing: Standing): readonly Found[] {
  const { piece, drying } = standing;
  const unknown: (readonly [CoatDrying, CoatDrying])[] = [];
  const found = drying.flatMap((under, i): readonly Found[] => {
    const over = drying[i + 1];
    if (over === undefined) return [];
    if (under.verdict === "dry") return [];
    if (under.verdict === "unknown") {
      unknown.push([under, over]);
      return [];
    }
    const driedSince = hasDriedSince(standing, over);
    const heated = wasHot(piece, { since: over.coat.dippedAt });
    const accepted = over.coat.acceptedDamp !== null;
    const said =
      under.verdict === "wet"
        ? ofWet({ driedSince, heated, accepted })
        : ofMaybe({ settled: driedSince || heated, accepted, leftShare: under.leftShare ?? 0 });
    return said === null ? [] : [finding(under, over, said)];
  });
  return [...found, ...ofUnknown(standing, unknown)];
}

type Said = { readonly level: Level; readonly variant: VariantOf<"recoated-before-dry"> };

function ofWet({
  driedSince,
  heated,
  accepted,
}: {
  driedSince: boolean;
  heated: boolean;
  accepted: boolean;
}): Said {
  if (driedSince) return { level: "note", variant: "dried-since" };
  if (heated) return { level: "watch", variant: "weak" };
  return { level: "hold", variant: accepted ? "wet-accepted" : "wet" };
}

/** Water within the last step to ready is nothing to keep telling once the shell has dried: judgement. */
const worthTelling = 0.05;

function ofMaybe({
  settled,
  accepted,
  leftShare,
}: {
  settled: boolean;
  accepted: boolean;
  leftShare: number;
}): Said | null {
  if (settled) return accepted && leftShare > worthTelling ? { level: "note", variant: "dried-since" } : null;
  return { level: "watch", variant: accepted ? "maybe-accepted" : "maybe" };
}

function finding(under: CoatDrying, over: CoatDrying, { level, variant }: Said): Found {
  const stoodH = hoursBetween(under.coat.dippedAt, over.coat.dippedAt);
  return {
    rule: "recoated-before-dry",
    variant,
    level,
    figures: {
      coat: figure(under.coat.number, "count"),
      over: figure(over.coat.number, "count"),
      leftShare: figure(under.leftShare, "share"),
      stoodH: figure(stoodH, "h"),
      neededH: figure(neededH(under, stoodH), "h"),
    },
    texts: {},
    entries: [
      under.coat.id,
      over.coat.id,
      ...under.coat.redips.map(({ id }) => id),
      ...(under.evidence === null ? [] : [under.evidence.seen.id]),
    ],
    source,
  };
}

/** Hours it wanted: by the sum, else by the dose of the air it had. Null where the air is not known or it was dipped twice. */
function neededH(
  { coat, readyAt, doseNeededGHM3, doseSuppliedGHM3 }: CoatDrying,
  stoodH: number,
): number | null {
  if (readyAt.likely !== null) return hoursBetween(coat.dippedAt, readyAt.likely);
  if (doseNeededGHM3 === null || !(doseSuppliedGHM3 > 0) || coat.redips.length > 0) return null;
  return (stoodH * doseNeededGHM3) / doseSuppliedGHM3;
}

function ofUnknown(
  standing: Standing,
  pairs: readonly (readonly [CoatDrying, CoatDrying])[],
): readonly Found[] {
  const last = pairs.at(-1);
  if (last === undefined) return [];
  const [, over] = last;
  const settled = hasDriedSince(standing, over) || wasHot(standing.piece, { since: over.coat.dippedAt });
  return [
    {
      rule: "recoated-before-dry",
      variant: "unknown",
      level: settled ? "note" : "watch",
      figures: { coats: figure(pairs.length, "count"), last: figure(last[0].coat.number, "count") },
      texts: {},
      entries: pairs.flatMap(([under]) => [under.coat.id]),
      source,
    },
  ];
}

/** Whether this coat or one over it dried in the air, before any fire, and with it what was shut in beneath. */
function hasDriedSince({ piece, drying }: Standing, over: CoatDrying): boolean {
  const hotAt = firstHotAt(piece, { since: over.coat.dippedAt }) ?? Infinity;
  return drying
    .slice(drying.indexOf(over))
    .some(({ verdict, readyAt }) => verdict === "dry" && readyAt.late !== null && readyAt.late < hotAt);
}
