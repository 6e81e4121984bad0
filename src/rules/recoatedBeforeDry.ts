import { firstHotAt } from "../logbook/fire/hotTimes.ts";
import { hoursNeeded } from "../logbook/drying/hoursNeeded.ts";
import type { CoatDrying, Standing } from "../logbook/piece/standing.ts";
import { dampLeaves } from "../trade/shellStrength.ts";
import { figure } from "./finding.ts";
import type { Level } from "./finding.ts";
import { halvedStrength } from "./halvedStrength.ts";
import { hoursBetween, wasHot } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"recoated-before-dry">;
type Variant = VariantOf<"recoated-before-dry">;

const source =
  "Dooley & Everden, INCAST Nov 2020 p. 20 (green strength + 55 % from 1 h to 4 h between coats); Investment Casting Institute, Atlas of Casting Defects, spall";

const levels: Readonly<Record<Variant, Level>> = {
  wet: "hold",
  weak: "watch",
  maybe: "watch",
  unknown: "note",
  "dried-since": "note",
};
const variantsInOrder = Object.keys(levels) as Variant[];

/** A coat and the one that went on over it. */
type Pair = { readonly under: CoatDrying; readonly over: CoatDrying };

/**
 * Coats that went on over one that was not dry, one finding for each way in which they stand now. Water shut in is a
 * hold until the shell has dried through or been hot; a weak bond stays after that. Each coat is judged by what was
 * known at the dip that covered it. What has dried since is past, and so is what nothing was known of by then.
 */
export function recoatedBeforeDry(standing: Standing): readonly Found[] {
  const pairs = standing.drying.flatMap((under, i): readonly (readonly [Variant, boolean, Pair])[] => {
    const over = standing.drying[i + 1];
    if (over === undefined) return [];
    const said = sayOf({ under, over }, standing);
    return said === null ? [] : [[said.variant, said.isPast, { under, over }]];
  });
  return variantsInOrder.flatMap((variant) =>
    [false, true].flatMap((isPast) => {
      const of = pairs.filter(([one, past]) => one === variant && past === isPast).map(([, , pair]) => pair);
      return of.length === 0 ? [] : [finding(of, { variant, isPast, standing })];
    }),
  );
}

/** Water within the last step to ready is nothing to keep telling once the shell has dried: judgement. */
const worthTelling = 0.05;

function sayOf(
  { under, over }: Pair,
  standing: Standing,
): { readonly variant: Variant; readonly isPast: boolean } | null {
  const { verdict, leftShare, reason } = under;
  if (verdict === "dry") return null;
  // What lies before the log is not judged; that a dip was logged over a wet coat is.
  if (reason === "before-log" && verdict !== "wet") return null;
  const driedSince = hasDriedSince(standing, over);
  const heated = wasHot(standing.piece, { since: over.coat.dippedAt });
  if (verdict === "unknown") return { variant: "unknown", isPast: driedSince || heated };
  if (verdict === "wet") {
    if (driedSince) return { variant: "dried-since", isPast: true };
    return { variant: heated ? "weak" : "wet", isPast: false };
  }
  if (!driedSince && !heated) return { variant: "maybe", isPast: false };
  const wasAccepted = over.coat.acceptedDamp !== null && (leftShare ?? 0) > worthTelling;
  return wasAccepted ? { variant: "dried-since", isPast: true } : null;
}

/** The shell as it hangs now is weighed, so it is its outer coat that says when. */
const weighOf = ({ outer, now }: Standing): Pick<Found, "weigh"> =>
  outer === null || outer.toTell === null ? {} : { weigh: { toTell: outer.toTell, now } };

/** Figures are those of the coat that was the dampest; `texts.which` lists all that were, `texts.accepted` those dipped knowingly. */
function finding(
  pairs: readonly Pair[],
  { variant, isPast, standing }: { variant: Variant; isPast: boolean; standing: Standing },
): Found {
  const worst = pairs.reduce((one, pair) =>
    (pair.under.leftShare ?? 0) > (one.under.leftShare ?? 0) ? pair : one,
  );
  const { under, over } = worst;
  const stoodH = hoursBetween(under.coat.dippedAt, over.coat.dippedAt);
  const halved = variant === "unknown" || variant === "maybe" ? null : halvedStrength(standing);
  const accepted = pairs.filter((pair) => pair.over.coat.acceptedDamp !== null);
  return {
    rule: "recoated-before-dry",
    variant,
    level: levels[variant],
    figures: {
      count: figure(pairs.length, "count"),
      coat: figure(under.coat.number, "count"),
      over: figure(over.coat.number, "count"),
      leftShare: figure(under.leftShare, "share"),
      stoodH: figure(stoodH, "h"),
      neededH: figure(neededH(under, over), "h"),
      ...(halved === null ? {} : { fullMPa: halved.figures.fullMPa, usedMPa: halved.figures.usedMPa }),
    },
    texts: { which: numbersOf(pairs), accepted: numbersOf(accepted) },
    entries: [
      ...new Set(
        pairs.flatMap((pair) => [
          pair.under.coat.id,
          pair.over.coat.id,
          ...pair.under.coat.redips.map(({ id }) => id),
          ...(pair.under.evidence === null ? [] : [pair.under.evidence.seen.id]),
        ]),
      ),
    ],
    source: halved === null ? source : `${source}; strength left: ${dampLeaves.tableWall.source}`,
    ...(isPast ? { past: true } : {}),
    ...(under.said === undefined ? {} : { said: { kept: under.said, now: standing.now } }),
    ...weighOf(standing),
  };
}

const numbersOf = (pairs: readonly Pair[]): string => pairs.map(({ under }) => under.coat.number).join(", ");

/** As it was said at the dip, as long as that stands. */
const neededH = (under: CoatDrying, { coat }: CoatDrying): number | null =>
  under.said?.anew === null ? under.said.neededH : hoursNeeded(under, coat.dippedAt);

/** Whether this coat or one over it dried in the air, before any fire, and with it what was shut in beneath. */
function hasDriedSince({ piece, drying }: Standing, over: CoatDrying): boolean {
  const hotAt = firstHotAt(piece, { since: over.coat.dippedAt }) ?? Infinity;
  return drying
    .slice(drying.indexOf(over))
    .some(({ verdict, readyAt }) => verdict === "dry" && readyAt.late !== null && readyAt.late < hotAt);
}
