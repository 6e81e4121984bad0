import type { Piece } from "../logbook/piece.ts";
import type { CoatDrying, Standing } from "../logbook/standing.ts";
import { geometryClasses } from "../trade/geometryClasses.ts";
import { practice } from "../trade/practice.ts";
import type { Level } from "./finding.ts";
import { figure } from "./finding.ts";
import { coatsAreDone, coatStillDrying, hoursBetween, isBeforeFire, wasHot, wettedAt } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"last-coat-damp">;
type Said = { readonly level: Level; readonly variant: VariantOf<"last-coat-damp"> };

const source =
  "derived: steam pressure in a damp wall comes near the strength of a green shell when it is flashed; common practice";

/** The last coat must be dry right through before the fire; "perhaps" and "not known" hold as well, for waiting costs nothing. */
export function lastCoatDamp(standing: Standing): readonly Found[] {
  if (isBeforeFire(standing.piece)) return coatsAreDone(standing) ? beforeFire(standing) : [];
  return afterStart(standing);
}

function beforeFire(standing: Standing): readonly Found[] {
  const { now } = standing;
  const still = coatStillDrying(standing);
  const unseen = dryUnseen(standing);
  if (unseen !== null) return [finding(unseen, now, { level: "hold", variant: "unknown" })];
  if (still === null || still.verdict === "dry") return slowPlace(standing);
  if (!isFelt(still)) return [finding(still, now, { level: "hold", variant: still.verdict })];
  // A hand that found it dry lets the maker go on; it is told what the sum says of the inside.
  const isNear = still.leftShare !== null && still.leftShare <= practice.skinShare.value;
  return isNear ? [] : [finding(still, now, { level: "watch", variant: "touch-only" })];
}

/** Dry where the piece is named for, and not in a pocket that dries more slowly: wet there holds as it does anywhere. */
function slowPlace({ finalDry, now }: Standing): readonly Found[] {
  const place = finalDry?.places.find(({ isNamed, drying }) => !isNamed && drying.verdict !== "dry");
  if (place === undefined) return [];
  const { drying, geometry } = place;
  const level = drying.verdict === "wet" ? "hold" : "watch";
  const found = finding(drying, now, { level, variant: "slow-place" });
  return [{ ...found, texts: { place: geometryClasses[geometry].label.toLowerCase() } }];
}

/** A last coat that nobody looked at, in air that nobody read: an ordinary room taken for granted lets no shell into fire. */
function dryUnseen({ outer, piece }: Standing): CoatDrying | null {
  if (outer === null || outer.verdict !== "dry" || wasHot(piece, { since: wettedAt(outer.coat) }))
    return null;
  const { basis, evidence, belief } = outer;
  return basis.readings === 0 && evidence === null && belief === null ? outer : null;
}

/** Only a hand says that it is dry: the outer face is, of the inside nothing is known but the sum. */
const isFelt = ({ evidence }: CoatDrying): boolean => evidence?.says === "dry" && evidence.by === "felt";

/** A burnout that began on a damp shell: a hold while it runs, then something to look for. */
function afterStart({ piece, drying, now }: Standing): readonly Found[] {
  const run = piece.burnouts.at(-1);
  if (run === undefined || piece.phase === "fired" || piece.phase === "preheated") return [];
  const last = drying.findLast(({ coat }) => coat.dippedAt <= run.startedAt);
  if (last === undefined || wasHot(piece, { since: wettedAt(last.coat), until: run.startedAt })) return [];
  const was = stateAt(last, run);
  if (was === "dry") return [];
  const level = piece.phase === "burnout" ? "hold" : "watch";
  return [
    finding(last, now, {
      level: was === "unknown" ? "watch" : level,
      variant: was === "unknown" ? "burnout-unknown" : "burnout-damp",
    }),
  ];
}

function stateAt(
  { evidence, readyAt, basis }: CoatDrying,
  { startedAt }: Piece["burnouts"][number],
): "dry" | "damp" | "unknown" {
  if (evidence?.says === "dry" && evidence.seen.at <= startedAt) return "dry";
  if (evidence === null && basis.readings === 0) return "unknown";
  return readyAt.likely !== null && readyAt.likely <= startedAt ? "dry" : "damp";
}

function finding(drying: CoatDrying, now: number, { level, variant }: Said): Found {
  const { likely, late } = drying.readyAt;
  const inH = (at: number | null): number | null => (at === null ? null : hoursBetween(now, at));
  return {
    rule: "last-coat-damp",
    variant,
    level,
    figures: {
      coat: figure(drying.coat.number, "count"),
      leftShare: figure(drying.leftShare, "share"),
      likelyInH: figure(inH(likely), "h"),
      lateInH: figure(inH(late), "h"),
    },
    texts: {},
    entries: [
      drying.coat.id,
      ...drying.coat.redips.map(({ id }) => id),
      ...(drying.evidence === null ? [] : [drying.evidence.seen.id]),
    ],
    source,
    ...(drying.toTell !== null && { weigh: { toTell: drying.toTell, now } }),
  };
}
