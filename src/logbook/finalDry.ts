import { geometryClasses } from "../trade/geometryClasses.ts";
import { practice } from "../trade/practice.ts";
import { staysOf } from "./hanging.ts";
import type { Piece } from "./piece.ts";
import { ranges, within } from "./ranges.ts";
import { pocketDrying } from "./pocketDrying.ts";
import type { DryingFrom } from "./shellDrying.ts";
import type { CoatDrying, DryPlace, FinalDry } from "./standing.ts";
import { firstDrier, meanRh } from "./stayAir.ts";

const hourMs = 3_600_000;
const forecastMs = 14 * 24 * hourMs;

/**
 * The last drying of a shell whose coats are on: its water, its slowest place, and the least wait before fire. The
 * wait is the later of two: the sum's late guess for the slowest place, and the hours common practice gives (12–24
 * open, 24–72 deep or thick, in air no damper than 50 %; in damper air the longer figure). It does not end in air over
 * 70 %, in which gel keeps water. Null before the first coat. `drying` is that of `piece` as it stands.
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
  const wettedAt = outer.coat.redips.reduce((last, { at }) => Math.max(last, at), outer.coat.dippedAt);
  const stays = staysOf(piece, from.surroundings, from.memory?.lines);
  // Fire has emptied what lies beneath a coat put on after it: only the new coats hold water.
  const { why, leastH, mostH } = usualHours(places, outer.coat.afterBurnout ? 0 : wallMm);
  const rh = meanRh(stays, { from: wettedAt, to: wettedAt + leastH * hourMs });
  const hours = rh !== null && rh > practice.finalDryRh.value ? mostH : leastH;
  const until = wettedAt + hours * hourMs;
  const sumAt = slowest.readyAt.late;
  const wait = sumAt === null ? null : Math.max(sumAt, until);
  const mostRh = practice.rhFinalDry.value;
  const at = wait === null ? null : firstDrier(stays, { from: wait, to: wait + forecastMs, mostRh });
  return {
    water: waterOf(piece, { drying, slowest }),
    places,
    wettedAt,
    sumAt,
    practice: { hours, until, why, meanRh: rh, leastH, mostH },
    least:
      at === null
        ? { at, reason: wait === null ? (slowest.reason ?? "beyond-forecast") : "damp-air" }
        : { at, reason: wait !== null && at > wait ? "damp-air" : sumAt === wait ? "sum" : "practice" },
  };
}

function placesOf(piece: Piece, outer: CoatDrying, from: DryingFrom): readonly DryPlace[] {
  const named = piece.plan.geometry ?? "open";
  const others = [...new Set(piece.plan.pockets)].filter((geometry) => geometry !== named);
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
  wallMm: number,
): { readonly why: "open" | "deep" | "thick"; readonly leastH: number; readonly mostH: number } {
  const isDeep = places.some(({ geometry }) => geometry === "recess" || geometry === "blind");
  if (isDeep || wallMm > practice.thickWallMm.value) {
    const { finalDryDeepH, finalDryDeepMostH } = practice;
    return { why: isDeep ? "deep" : "thick", leastH: finalDryDeepH.value, mostH: finalDryDeepMostH.value };
  }
  return { why: "open", leastH: practice.finalDryH.value, mostH: practice.finalDryMostH.value };
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
