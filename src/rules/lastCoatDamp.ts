import type { Piece } from "../logbook/piece.ts";
import type { CoatDrying, Standing } from "../logbook/standing.ts";
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
  const { outer, now, piece } = standing;
  if (outer === null) return [];
  const still = coatStillDrying(standing);
  if (still !== null && still.verdict !== "dry")
    return [finding(still, now, { level: "hold", variant: still.verdict })];
  if (wasHot(piece, { since: wettedAt(outer.coat) })) return [];
  const insideShare = leftInsideShare(outer);
  if (insideShare === null || insideShare <= practice.skinShare.value) return [];
  if (hoursBetween(wettedAt(outer.coat), now) >= practice.finalDryH.value) return [];
  const found = finding(outer, now, { level: "watch", variant: "touch-only" });
  return [{ ...found, figures: { ...found.figures, leftShare: figure(insideShare, "share") } }];
}

/** Water the room's air had left in a coat at the moment it felt dry, as a share; null when no touch had the last word. */
function leftInsideShare({ evidence, curve, startKgM2 }: CoatDrying): number | null {
  if (evidence?.says !== "dry" || evidence.seen.method !== "touch") return null;
  // At the touch the curve drops from what the sum had to what "dry" means.
  const [before, after] = curve.filter(({ at }) => at === evidence.seen.at);
  if (before === undefined || after === undefined || startKgM2 <= after.waterKgM2) return null;
  return (before.waterKgM2 - after.waterKgM2) / (startKgM2 - after.waterKgM2);
}

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
  };
}
