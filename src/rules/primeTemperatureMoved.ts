import type { AirReading } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { patternMaterials } from "../trade/patternMaterials.ts";
import { practice } from "../trade/practice.ts";
import type { Level } from "./finding.ts";
import { figure } from "./finding.ts";
import type { Stretch } from "./stage.ts";
import { hoursBetween, isNews, primeStretchesHere } from "./stage.ts";
import type { FindingOf, VariantOf } from "./variants.ts";

type Found = FindingOf<"prime-temperature-moved">;
type Swing = {
  readonly stretch: Stretch;
  readonly from: AirReading;
  readonly to: AirReading;
  readonly swingK: number;
};

/**
 * The room warmed or cooled while a prime coat was the outer one: wax grows and shrinks, the coat does not. Wax alone
 * is spoken of, or a pattern nobody named: plastic moves a fifth as much. Needs a reading near the dip and one after.
 * A wide move is to be watched when it is read, once for each prime; after that, and for a narrow one, it is a note.
 * Primes that are covered are past, and of those only the worst is told.
 */
export function primeTemperatureMoved(standing: Standing): readonly Found[] {
  const { material } = standing.piece.plan;
  if (material !== undefined && material !== "other" && !patternMaterials[material].isWax) return [];
  const variant = material === "wax" ? "wax" : "not-known";
  const swings = primeStretchesHere(standing)
    .map((stretch) => worstSwing(stretch, standing.readings))
    .filter((swing) => swing !== null)
    .filter(({ swingK }) => Math.abs(swingK) > practice.primeSwingK.value);
  const outer = swings.filter(({ stretch }) => stretch.isOuter);
  const covered = swings
    .filter(({ stretch }) => !stretch.isOuter)
    .toSorted((a, b) => Math.abs(b.swingK) - Math.abs(a.swingK))
    .slice(0, 1);
  return [
    ...outer.map((swing) => {
      const isWatched = variant === "wax" && isWideNow(swing, standing);
      return finding(swing, { level: isWatched ? "watch" : "note", variant });
    }),
    ...covered.map((swing) => ({
      ...finding(swing, { level: "note", variant: "covered" }),
      past: true as const,
    })),
  ];
}

/** True for some hours after the reading that first showed a wide move of this prime. */
function isWideNow({ stretch, from }: Swing, { readings, now }: Standing): boolean {
  const first = readings.find(
    ({ at, airC }) =>
      at > stretch.from && at <= stretch.to && Math.abs(airC - from.airC) > practice.primeSwingWatchK.value,
  );
  return first !== undefined && isNews(first.at, now);
}

function worstSwing(stretch: Stretch, readings: readonly AirReading[]): Swing | null {
  const during = readings.filter(({ at }) => at > stretch.from && at <= stretch.to);
  const before = readings.findLast(({ at }) => at <= stretch.from);
  const isNear = before !== undefined && hoursBetween(before.at, stretch.from) <= practice.readingOldH.value;
  const from = isNear ? before : during[0];
  if (from === undefined) return null;
  return during.reduce<Swing | null>((worst, to) => {
    const swingK = to.airC - from.airC;
    return worst !== null && Math.abs(worst.swingK) >= Math.abs(swingK)
      ? worst
      : { stretch, from, to, swingK };
  }, null);
}

type Said = { readonly level: Level; readonly variant: VariantOf<"prime-temperature-moved"> };

function finding({ stretch, from, to, swingK }: Swing, { level, variant }: Said): Found {
  return {
    rule: "prime-temperature-moved",
    variant,
    level,
    figures: {
      coat: figure(stretch.coat.number, "count"),
      swingK: figure(Math.abs(swingK), "K"),
      fromC: figure(from.airC, "C"),
      toC: figure(to.airC, "C"),
      limitK: figure(practice.primeSwingK.value, "K"),
    },
    texts: {},
    entries: [stretch.coat.id, from.id, to.id],
    source: practice.primeSwingK.source,
  };
}
