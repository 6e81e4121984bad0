import type { AirReading } from "../logbook/piece/piece.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { pressureAtAltitudePa, rhOverIce } from "../physics/air/air.ts";
import { evaporativeDropK } from "../physics/air/film.ts";
import { airClasses } from "../trade/airClasses.ts";
import { practice } from "../trade/practice.ts";
import { figure } from "./finding.ts";
import type { Stretch } from "./stage.ts";
import { hoursBetween, primeStretchesHere } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"prime-drying-hard">;
type Hard = { readonly stretch: Stretch; readonly reading: AirReading; readonly dropK: number };

/**
 * A wet prime in fast, dry air cools well under the room; a wax pattern shrinks with it and grows back when the
 * coat has set. Only wax, or a pattern nobody named, is spoken of: printed plastic moves a fifth as much.
 */
export function primeDryingHard(standing: Standing): readonly Found[] {
  const { material } = standing.piece.plan;
  if (material !== undefined && material !== "wax" && material !== "other") return [];
  const hard = primeStretchesHere(standing)
    .map((stretch) => hardest(stretch, standing))
    .filter((found) => found !== null);
  const outer = hard.filter(({ stretch }) => isStillWet(stretch, standing));
  const past = hard
    .filter(({ stretch }) => !isStillWet(stretch, standing))
    .toSorted((a, b) => b.dropK - a.dropK)
    .slice(0, 1);
  const variant = material === "wax" ? "wax" : "not-known";
  return [
    ...outer.map((found) => finding(found, { level: variant === "wax" ? "watch" : "note", variant })),
    ...past.map((found) => ({
      ...finding(found, { level: "note", variant: "covered" }),
      past: true as const,
    })),
  ];
}

const isStillWet = (stretch: Stretch, { outer }: Standing): boolean =>
  stretch.isOuter && outer?.verdict !== "dry";

/** The air that pulls hardest while the coat is wet; the reading before the dip counts while it is fresh. */
function hardest(stretch: Stretch, { readings, drying, room }: Standing): Hard | null {
  const ready = drying.find(({ coat }) => coat.id === stretch.coat.id)?.readyAt.likely ?? stretch.to;
  const until = Math.min(stretch.to, ready);
  const before = readings.findLast(({ at }) => at <= stretch.from);
  const freshBefore =
    before !== undefined && hoursBetween(before.at, stretch.from) <= practice.readingOldH.value
      ? [before]
      : [];
  const during = readings.filter(({ at }) => at > stretch.from && at <= until);
  return [...freshBefore, ...during].reduce<Hard | null>((worst, reading) => {
    const dropK = dropOf(reading, room?.altitudeM ?? 0);
    if (dropK === null || dropK <= (worst?.dropK ?? practice.primeDropK.value)) return worst;
    return { stretch, reading, dropK };
  }, null);
}

function dropOf({ airC, rh, air }: AirReading, altitudeM: number): number | null {
  const { filmWM2K } = airClasses[air];
  if (filmWM2K < practice.primeHardFilmWM2K.value) return null;
  return evaporativeDropK({
    tempC: airC,
    rh: rhOverIce({ tempC: airC, rh }),
    pressurePa: pressureAtAltitudePa(altitudeM),
    filmWM2K,
  });
}

function finding(
  { stretch, reading, dropK }: Hard,
  { level, variant }: Pick<Found, "level" | "variant">,
): Found {
  return {
    rule: "prime-drying-hard",
    variant,
    level,
    figures: {
      coat: figure(stretch.coat.number, "count"),
      dropK: figure(dropK, "K"),
      rh: figure(reading.rh, "share"),
      airC: figure(reading.airC, "C"),
      limitK: figure(practice.primeDropK.value, "K"),
    },
    texts: {},
    entries: [stretch.coat.id, reading.id],
    source: practice.primeDropK.source,
  };
}
