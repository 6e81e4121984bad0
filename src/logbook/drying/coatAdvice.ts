import { pressureAtAltitudePa, rhOverIce } from "../../physics/air/air.ts";
import type { DryingAdvice } from "../../physics/drying/dryingAdvice.ts";
import { dryingAdvice } from "../../physics/drying/dryingAdvice.ts";
import { airClasses } from "../../trade/airClasses.ts";
import { coatWaterOf } from "../../trade/coatWater.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import { geometryClasses } from "../../trade/geometryClasses.ts";
import type { AirReading, Piece } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { CoatDrying, DryPlace, Standing } from "../piece/standing.ts";

/** What would help the outer coat of a piece, in the air as last read; or why nothing can be said. */
export type CoatAdvice =
  | { readonly kind: "none"; readonly why: "no-coat" | "dry" | "no-readings" | "water-not-known" }
  | (DryingAdvice & {
      readonly kind: "advice";
      readonly place: GeometryClass;
      readonly reading: AirReading;
      /** Age of that reading, ms. */
      readonly readingAgeMs: number;
    });

/** The places of a piece that can be asked about, the named one first. */
export function placesOfPiece({ finalDry, outer, piece }: Standing): readonly DryPlace[] {
  if (finalDry !== null) return finalDry.places.toSorted((a, b) => Number(b.isNamed) - Number(a.isNamed));
  return outer === null ? [] : [{ geometry: piece.plan.geometry ?? "open", isNamed: true, drying: outer }];
}

/**
 * Recomputes the outer coat, from the water in it now, in the room's last air held steady and with each thing changed
 * that a shop can change. `place` is one of the piece's own. A pattern nobody told the material of counts as wax,
 * which moves most.
 */
export function coatAdvice({ piece, readings, room, now }: Standing, place: DryPlace | null): CoatAdvice {
  if (place === null) return { kind: "none", why: "no-coat" };
  const { drying, geometry } = place;
  const { waterKgM2, verdict } = drying;
  if (verdict === "dry") return { kind: "none", why: "dry" };
  const reading = readings.findLast((one) => one.at <= now && isUsable(one));
  if (reading === undefined) return { kind: "none", why: "no-readings" };
  if (waterKgM2 === null) return { kind: "none", why: "water-not-known" };
  const { airC, rh, air } = reading;
  const altitudeM = room?.altitudeM ?? 0;
  const { material } = piece.plan;
  const said = dryingAdvice({
    coat: {
      waterKgM2,
      criticalKgM2: drying.startKgM2 * criticalShareOf(piece, drying),
      depthM: drying.depthM,
      dryFraction: drying.targetDryness,
    },
    air: {
      tempC: airC,
      rh: rhOverIce({ tempC: airC, rh }),
      pressurePa: pressureAtAltitudePa(within(ranges.altitudeM, altitudeM) ? altitudeM : 0),
      filmWM2K: airClasses[air].filmWM2K,
      pocketSM: geometryClasses[geometry].pocketSM,
    },
    airClasses: Object.entries(airClasses).map(([id, { filmWM2K }]) => ({ id, filmWM2K })),
    factor: factorOf(drying),
    isPrime: drying.coat.kind === "prime" && !drying.coat.afterBurnout,
    isWax: material === undefined || material === "wax",
  });
  return { kind: "advice", ...said, place: geometry, reading, readingAgeMs: now - reading.at };
}

/** Checks that say more than this are at odds with all the rest; the sum goes no further. */
const mostFactor = 20;

/** What was seen of this coat, else the shop's figure, else none. */
const factorOf = ({ belief, basis }: CoatDrying): number =>
  Math.min(mostFactor, belief?.factor.likely ?? basis.ownFactor ?? basis.learned?.factor ?? 1);

function criticalShareOf({ coats }: Piece, { coat }: CoatDrying): number {
  const upTo = coats.slice(0, coats.findIndex(({ id }) => id === coat.id) + 1);
  return coatWaterOf(coat.kind, upTo.filter(({ kind }) => kind === "prime").length).criticalShare;
}

const isUsable = ({ airC, rh, air }: AirReading): boolean =>
  within(ranges.airC, airC) && within(ranges.rh, rh) && Object.hasOwn(airClasses, air);
