import { practice } from "../../trade/practice.ts";
import type { AirReading } from "../piece/piece.ts";
import { roomAir } from "./roomAir.ts";

/** A stretch of a room's air, epoch ms. */
export type AirSpell = {
  readonly from: number;
  readonly to: number;
  readonly airC: number;
  readonly rh: number;
};

/** A stretch in which the room is damp: with `isTooDamp` over 80 %, where nothing comes to ready; else over 70 %. */
export type DampSpell = {
  readonly from: number;
  readonly to: number;
  readonly mostRh: number;
  readonly isTooDamp: boolean;
};

export type AirAhead = {
  readonly spells: readonly AirSpell[];
  readonly damp: readonly DampSpell[];
  readonly basis: "repeat-yesterday" | "hold-last";
  readonly lastReadAt: number;
};

/** How a room's air goes between two times, by its readings and then its forecast; null where it was never read. */
export function airAhead(
  readings: readonly AirReading[],
  { altitudeM, from, to }: { readonly altitudeM: number; readonly from: number; readonly to: number },
): AirAhead | null {
  const air = roomAir(readings, { altitudeM, pocketSM: 0 });
  const lastReadAt = air?.readings.at(-1)?.at;
  if (air === null || lastReadAt === undefined) return null;
  const spells: AirSpell[] = [];
  for (let i = air.indexAt(from); ; i += 1) {
    const cut = air.cutAt(i);
    if (cut === null || cut.at >= to) break;
    const spell = { from: Math.max(cut.at, from), to: Math.min(air.cutAt(i + 1)?.at ?? Infinity, to) };
    if (spell.to > spell.from) spells.push({ ...spell, airC: cut.interval.tempC, rh: cut.interval.rh });
  }
  return { spells, damp: dampOf(spells), basis: air.forecast, lastReadAt };
}

function dampOf(spells: readonly AirSpell[]): readonly DampSpell[] {
  const damp: DampSpell[] = [];
  for (const { from, to, rh } of spells) {
    if (rh <= practice.rhFinalDry.value) continue;
    const isTooDamp = rh > practice.rhNeverDry.value;
    const last = damp.at(-1);
    const goesOn = last !== undefined && last.to === from && last.isTooDamp === isTooDamp;
    if (goesOn) damp[damp.length - 1] = { ...last, to, mostRh: Math.max(last.mostRh, rh) };
    else damp.push({ from, to, mostRh: rh, isTooDamp });
  }
  return damp;
}
