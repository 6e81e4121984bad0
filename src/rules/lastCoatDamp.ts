import type { Piece } from "../logbook/piece/piece.ts";
import type { CoatDrying, FireAnswer, Standing } from "../logbook/piece/standing.ts";
import { wettedAt } from "../logbook/drying/dryMinimum.ts";
import { geometryClasses } from "../trade/geometryClasses.ts";
import { practice } from "../trade/practice.ts";
import type { Level } from "./finding.ts";
import { figure } from "./finding.ts";
import { coatsAreDone, isBeforeFire, wasHot } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"last-coat-damp">;

const source =
  "derived: steam pressure in a damp wall comes near the strength of a green shell when it is flashed; common practice";

/** The shell must be dry right through before the fire, by the one answer; "not known" holds as well. */
export function lastCoatDamp(standing: Standing): readonly Found[] {
  if (!isBeforeFire(standing.piece)) return afterStart(standing);
  const { forFire, outer, now } = standing;
  if (!coatsAreDone(standing) || forFire === null || outer === null || forFire.state === "dry") return [];
  return [finding({ outer, forFire, now }, { level: "hold", variant: variantOf(forFire) })];
}

function variantOf({ by, reason }: FireAnswer): VariantOf<"last-coat-damp"> {
  if (by === "hours" || by === "air" || by === "damp-air") return by;
  switch (reason) {
    case "no-readings":
      return "unknown";
    case "air-too-damp":
    case "condensing":
    case "frost":
    case "damp-air":
      return reason;
    case "beyond-forecast":
    case "before-log":
    case null:
      return "air";
  }
}

/** A burnout that began on a damp shell: a hold while it runs, then something to look for. */
function afterStart({ piece, drying, forFire, now }: Standing): readonly Found[] {
  const run = piece.burnouts.at(-1);
  if (run === undefined || piece.phase === "fired" || piece.phase === "preheated") return [];
  const last = drying.findLast(({ coat }) => coat.dippedAt <= run.startedAt);
  if (last === undefined || forFire === null) return [];
  if (wasHot(piece, { since: wettedAt(last.coat), until: run.startedAt })) return [];
  const was = stateAt(last, { forFire, run });
  if (was === "dry") return [];
  const level = piece.phase === "burnout" ? "hold" : "watch";
  return [
    finding(
      { outer: last, forFire, now },
      {
        level: was === "unknown" ? "watch" : level,
        variant: was === "unknown" ? "burnout-unknown" : "burnout-damp",
      },
    ),
  ];
}

/** A coat that was put on over it since has closed the answer: then its own drying says. */
function stateAt(
  { coat, evidence, readyAt, basis }: CoatDrying,
  { forFire, run }: { readonly forFire: FireAnswer; readonly run: Piece["burnouts"][number] },
): "dry" | "damp" | "unknown" {
  const dryAt = forFire.coat.id === coat.id ? forFire.coldAt : readyAt.late;
  if (dryAt !== null && dryAt <= run.startedAt) return "dry";
  return evidence === null && basis.readings === 0 ? "unknown" : "damp";
}

function finding(
  {
    outer: { coat, evidence, toTell },
    forFire,
    now,
  }: { readonly outer: CoatDrying; readonly forFire: FireAnswer; readonly now: number },
  { level, variant }: { readonly level: Level; readonly variant: VariantOf<"last-coat-damp"> },
): Found {
  const { hours, place, touchedAt, dryAt } = forFire;
  return {
    rule: "last-coat-damp",
    variant,
    level,
    figures: {
      coat: figure(coat.number, "count"),
      hours: figure(hours?.hours ?? null, "h"),
      dryAt: figure(dryAt, "epoch-ms"),
      now: figure(now, "epoch-ms"),
      damp: figure(practice.rhFinalDry.value, "share"),
    },
    texts: {
      kind: coat.kind,
      shell: shellWords[hours?.why ?? "open"],
      place: geometryClasses[place].label.toLowerCase(),
      ...(touchedAt === null ? {} : { touched: "yes" }),
    },
    entries: [coat.id, ...coat.redips.map(({ id }) => id), ...(evidence === null ? [] : [evidence.seen.id])],
    source,
    ...(toTell !== null && { weigh: { toTell, now } }),
  };
}

const shellWords = {
  open: "Open shell",
  deep: "Shell with a deep recess",
  blind: "Shell with a blind core",
  thick: "Thick shell",
} as const;
