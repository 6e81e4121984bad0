import { millisecondsInHour as hourMs } from "date-fns/constants";
import { finalDryH } from "../../trade/dryMinimums.ts";
import { geometryClasses, type GeometryClass } from "../../trade/geometryClasses.ts";
import { practice } from "../../trade/practice.ts";
import { wettedAt } from "./dryMinimum.ts";
import { staysOf } from "../air/hanging.ts";
import type { Piece, Shop } from "../piece/piece.ts";
import { ranges, within } from "../entries/ranges.ts";
import { pocketDrying } from "./pocketDrying.ts";
import { placesOfPlan } from "./slowPlace.ts";
import type { DryingFrom } from "./shellDrying.ts";
import type { CoatDrying, DryPlace, FinalDry } from "../piece/standing.ts";
import { firstDrier, meanRh } from "../air/stayAir.ts";

const forecastMs = 14 * 24 * hourMs;

/**
 * The last drying of a shell whose coats are on: its water, its slowest place, and the least wait before fire. The
 * wait is the later of two: the sum's late guess for the slowest place, and the hours common practice gives (12 open,
 * 24 deep or thick, 48 blind, or the shop's own, in air no damper than 50 % on the mean; in damper air 24 and 72). It
 * does not end in air over 70 %, in which gel keeps water. Null before the first coat. `drying` is that of `piece` as
 * it stands.
 */
export function finalDry(
  piece: Piece,
  {
    drying,
    wallMm,
    ...from
  }: DryingFrom & { readonly drying: readonly CoatDrying[]; readonly wallMm: number },
): FinalDry | null {
  const outer = drying.at(-1);
  if (outer === undefined) return null;
  const places = placesOf(piece, outer, from);
  const slowest = places[0]?.drying ?? outer;
  const wetted = wettedAt(outer.coat);
  const stays = staysOf(piece, from.surroundings, from.memory?.memo);
  // Fire has emptied what lies beneath a coat put on after it: only the new coats hold water.
  const usual = usualHours(places, {
    wallMm: outer.coat.afterBurnout ? 0 : wallMm,
    shop: from.surroundings.shop,
  });
  const { leastH, mostH } = usual;
  const rh = meanRh(stays, { from: wetted, to: wetted + leastH * hourMs });
  // The mean of a steady 50 % may come out a hair over it.
  const isDamp = rh !== null && rh > practice.finalDryRh.value + 1e-6;
  const hours = isDamp ? mostH : leastH;
  const until = wetted + hours * hourMs;
  const { reason } = slowest;
  const sumAt = slowest.readyAt.late;
  const wait = sumAt === null ? null : Math.max(sumAt, until);
  const mostRh = practice.rhFinalDry.value;
  const at = wait === null ? null : firstDrier(stays, { from: wait, to: wait + forecastMs, mostRh });
  return {
    water: waterOf(piece, { drying, slowest }),
    places,
    wettedAt: wetted,
    sumAt,
    practice: { ...usual, hours, until, meanRh: rh },
    least:
      at === null
        ? { at, reason: wait === null ? (reason ?? "beyond-forecast") : "damp-air" }
        : { at, reason: wait !== null && at > wait ? "damp-air" : sumAt === wait ? "sum" : "practice" },
  };
}

function placesOf(piece: Piece, outer: CoatDrying, from: DryingFrom): readonly DryPlace[] {
  const named = piece.plan.geometry ?? "open";
  const others = placesOfPlan(piece.plan).slice(1);
  const places: readonly DryPlace[] = [
    { geometry: named, isNamed: true, drying: outer },
    ...others.flatMap((geometry) => {
      const drying = pocketDrying(piece, geometry, { named: { geometry: named, drying: outer }, from });
      return drying === null ? [] : [{ geometry, isNamed: false, drying }];
    }),
  ];
  const late = ({ drying }: DryPlace): number => drying.readyAt.late ?? Infinity;
  const pocketSM = ({ geometry }: DryPlace): number => geometryClasses[geometry].pocketSM;
  return places.toSorted((a, b) => {
    const [lateA, lateB] = [late(a), late(b)];
    return lateA === lateB ? pocketSM(b) - pocketSM(a) : lateA < lateB ? 1 : -1;
  });
}

function usualHours(
  places: readonly DryPlace[],
  { wallMm, shop }: { readonly wallMm: number; readonly shop: Pick<Shop, "finalDryH"> },
): Pick<FinalDry["practice"], "why" | "leastH" | "mostH" | "isOwn"> {
  const has = (wanted: GeometryClass): boolean => places.some(({ geometry }) => geometry === wanted);
  const isThick = wallMm > practice.thickWallMm.value;
  const kind = has("blind") ? "blind" : has("recess") || isThick ? "deep" : "open";
  const { dryAirH, dampAirH } = finalDryH[kind];
  const own = shop.finalDryH?.[kind];
  const leastH = within(ranges.finalDryH, own) ? own : dryAirH.value;
  return {
    why: kind === "deep" && !has("recess") ? "thick" : kind,
    leastH,
    // A shop's own minimum is of its usual air; in damper air no figure makes the wait shorter.
    mostH: Math.max(leastH, dampAirH.value),
    isOwn: within(ranges.finalDryH, own),
  };
}

function waterOf(
  { plan: { areaM2 } }: Piece,
  { drying, slowest }: { readonly drying: readonly CoatDrying[]; readonly slowest: CoatDrying },
): FinalDry["water"] {
  const left = slowest.waterKgM2;
  // Water handed up to the next coat is counted there; here is what a coat kept that was covered when dry.
  const beneathKgM2 = drying.slice(0, -1).reduce((sum, { waterKgM2 }, i) => {
    const handedUp = drying[i + 1]?.carriedKgM2 ?? 0;
    return sum + Math.max(0, (waterKgM2 ?? 0) - handedUp);
  }, 0);
  return {
    putOnKgM2: drying.reduce((sum, { startKgM2, carriedKgM2 }) => sum + startKgM2 - carriedKgM2, 0),
    leftKgM2: left,
    beneathKgM2,
    leftG: left !== null && within(ranges.areaM2, areaM2) ? left * areaM2 * 1000 : null,
  };
}
