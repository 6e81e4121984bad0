import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { pickups } from "../../trade/pickup.ts";
import { spanOf, type CoatCase } from "../drying/coatDrying.ts";
import { chainOf, waterOf } from "../drying/coatWeights.ts";
import type { OwnByKind } from "../shop/shopThings.ts";
import type { Piece, Shop } from "./piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { CoatDrying } from "./standing.ts";

/** When in the life of a coat a piece is put on the balance. */
export type WeighMoment = "before-dip" | "drained" | "stuccoed" | "drying";

/** Draining ends by then, and stucco is on by then; judgement. */
const drainedMs = 6 * minuteMs;
const stuccoedMs = 30 * minuteMs;

/**
 * The moment a weighing now most likely is of, from what the log knows: before the first dip; just drained within
 * six minutes of a dip; just stuccoed within half an hour; else while it dries, which also serves as the weight before
 * the next dip.
 */
export function guessMoment({ coats, dryness }: Piece, now: number): WeighMoment {
  const outer = coats.at(-1);
  if (outer === undefined) return "before-dip";
  const from = Math.max(outer.dippedAt, ...outer.redips.map(({ at }) => at));
  const moments = new Set(
    dryness.flatMap((seen) =>
      seen.method === "weight" && seen.coatId === outer.id && seen.at >= from
        ? [seen.moment ?? "drying"]
        : [],
    ),
  );
  if (moments.has("drying") || moments.has("stuccoed") || now - from > stuccoedMs) return "drying";
  if (outer.stuccoId === null)
    return moments.has("drained") ? "drying" : now - from > drainedMs ? "drying" : "drained";
  return moments.has("drained") || now - from > drainedMs ? "stuccoed" : "drained";
}

/**
 * What the balance will show, g, so that a weighing begins near its number: from the weighings before, the area and
 * what such a coat gains. Null where nothing is known to go by: a weighing from before other coats went on is no guide.
 */
export function expectedMassG(
  moment: WeighMoment,
  {
    piece,
    of,
    drying,
    shop,
  }: {
    readonly piece: Piece;
    /** The outer coat; null before the first. */
    readonly of: CoatCase | null;
    readonly drying: CoatDrying | null;
    readonly shop: Pick<Shop, "slurryKgM2" | "stuccoKgM2">;
  },
): number | null {
  const dippedAt = piece.coats.at(-1)?.dippedAt ?? -Infinity;
  const lastG = lastMassG(piece, dippedAt);
  if (of === null || moment === "before-dip") return lastG;
  const span = spanOf(of, { span: of.coat.redips.length, wet: of.wet });
  const { three, stuccoed, drying: weighed } = chainOf(span.seen, span.weights);
  const { areaM2 } = piece.plan;
  const gain = (own: OwnByKind, startKgM2: number): number | null =>
    within(ranges.areaM2, areaM2) ? (own[of.coat.kind] ?? startKgM2) * areaM2 * 1000 : null;
  const pickup = pickups[of.coat.kind];
  switch (moment) {
    case "drained":
      return plus(
        span.weights.dryG ?? lastMassG(piece, piece.coats.at(-2)?.dippedAt ?? -Infinity),
        gain(shop.slurryKgM2, pickup.slurryKgM2),
      );
    case "stuccoed":
      return plus(lastG, gain(shop.stuccoKgM2, pickup.stuccoKgM2));
    case "drying": {
      const lastHereG = (weighed.at(-1) ?? stuccoed)?.massG ?? lastG;
      if (three === null || drying === null || drying.waterKgM2 === null || drying.startKgM2 <= 0)
        return lastHereG;
      // Here no balance is too coarse: it is a place to begin, not a finding.
      const waterG = Math.max(0, span.weights.waterFraction * (three.drainedG - three.dryG));
      return three.stuccoedG - waterG * (1 - Math.min(1, drying.waterKgM2 / drying.startKgM2));
    }
  }
}

/** Whether no weighing of the coat as it dries is in the log yet. */
export function isFirstWeighing(of: CoatCase | null): boolean {
  if (of === null) return true;
  const span = spanOf(of, { span: of.coat.redips.length, wet: of.wet });
  return chainOf(span.seen, span.weights).drying.length === 0;
}

/** Water the coat took on, g: by its three weighings, else by area; null where neither is known. */
export function coatWaterG(of: CoatCase | null): number | null {
  if (of === null) return null;
  const span = spanOf(of, { span: of.coat.redips.length, wet: of.wet });
  return waterOf(chainOf(span.seen, span.weights), span.weights);
}

const plus = (massG: number | null, gainG: number | null): number | null =>
  massG === null ? null : massG + (gainG ?? 0);

/** The last time the piece was on a balance since a time, epoch ms. */
function lastMassG({ weighings, dryness }: Piece, since: number): number | null {
  const told = weighings.findLast(({ at }) => at >= since);
  const seen = dryness.findLast(({ method, at }) => method === "weight" && at >= since);
  if (seen?.method === "weight" && seen.at >= (told?.at ?? -Infinity)) return seen.massG;
  return told?.massG ?? null;
}
