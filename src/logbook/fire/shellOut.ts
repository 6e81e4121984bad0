import { wallCooling, type WallTemperature } from "../../physics/heat/heat.ts";
import { latestPour, type LatestPour } from "../../physics/metal/latestPour.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import { coolingHeatOf, type StuccoFamily } from "../../trade/shellThermal.ts";
import type { PourBodies } from "../entries/fireBodies.ts";
import { shellHeatOf, startingShellC, type ShellHeat } from "./shellHeat.ts";
import type { Standing, WallStanding } from "../piece/standing.ts";

/** Wall where the log has no coats or readings to add up, mm: starting value. */
const startingWallMm = 8;
/** Thickest wall the sum takes, mm. */
const thickestWallMm = 60;

/** The wall whose cooling is calculated, mm; `isKnown` false where the starting one stands in. */
export function coolingWall({ reachedMm }: Pick<WallStanding, "reachedMm">): {
  readonly wallMm: number;
  readonly isKnown: boolean;
} {
  return reachedMm > 0.5
    ? { wallMm: Math.min(thickestWallMm, reachedMm), isKnown: true }
    : { wallMm: startingWallMm, isKnown: false };
}

/** How the shell stands between kiln and metal. */
export type ShellBed = {
  readonly bed: PourBodies["pour-planned"]["bed"];
  readonly sandC?: number | undefined;
  readonly airC: number;
  readonly family: StuccoFamily;
};

/** Air of a room nobody has read, °C: starting value. */
const unreadRoomC = 20;

/** The air a shell cools in, °C: its room's last reading. */
export const airAround = ({ room }: Pick<Standing, "room">): number => room?.last?.airC ?? unreadRoomC;

type OfWall = ShellBed & { readonly wallMm: number };

const coolMinutes = 20;

/** The cavity's face minute by minute after the kiln's door. */
export const shellCooling = ({
  wallMm,
  startC,
  bed,
  sandC,
  airC,
  family,
  minutes = coolMinutes,
}: OfWall & {
  readonly startC: number;
  readonly minutes?: number | undefined;
}): readonly WallTemperature[] =>
  wallCooling({
    ...coolingHeatOf(family, startC),
    wallMm,
    startC,
    airC,
    minutes,
    outside: bed,
    ...(bed === "hot-sand" && sandC !== undefined ? { sandC } : {}),
  });

export type ShellOut = {
  readonly heat: ShellHeat;
  /** Minutes until the face is below the least heat of this metal and section. */
  readonly latest: LatestPour;
  readonly rows: readonly WallTemperature[];
};

/**
 * How long a shell may be out of the kiln: its wall's own cooling from `startC`, °C, down to the least heat of this
 * metal and section, mm. Null for metals with no known practice.
 */
export function mayBeOut({
  alloy,
  thinnestMm,
  startC,
  ...of
}: OfWall & {
  readonly alloy: Alloy;
  readonly thinnestMm: number | null;
  readonly startC: number;
}): ShellOut | null {
  const heat = shellHeatOf(alloy, thinnestMm);
  if (heat === null) return null;
  const rows = shellCooling({ ...of, startC });
  return { heat, rows, latest: latestPour({ rows, leastShellC: heat.lowC }) };
}

/** The face after some minutes, °C, straight between the rows. */
export function faceAt(
  rows: readonly WallTemperature[],
  minute: number,
): { readonly likelyC: number; readonly lowC: number; readonly highC: number } | null {
  const after = rows.findIndex((row) => row.minute >= minute);
  const to = rows[after];
  if (to === undefined || minute < 0) return null;
  const from = rows[after - 1] ?? to;
  const share = to.minute === from.minute ? 0 : (minute - from.minute) / (to.minute - from.minute);
  const between = (a: number, b: number): number => a + share * (b - a);
  return {
    likelyC: between(from.cavityFaceC, to.cavityFaceC),
    lowC: between(from.cavityFaceLowC, to.cavityFaceLowC),
    highC: between(from.cavityFaceHighC, to.cavityFaceHighC),
  };
}

/** Hotter than this no shell is sent out of the kiln, °C: top of the usual heats, common practice, no source. */
const hottestC = 950;

/**
 * Heat to leave the kiln with, °C, up to ten degrees, so that after so many minutes the face is still at `aimC`: by the
 * coldest it may be, or by the likely one where that would take more than a shell is sent out with. Null where both do.
 */
export function leaveKilnC(of: OfWall & { readonly aimC: number; readonly minutes: number }): number | null {
  const key = JSON.stringify([of.wallMm, of.aimC, of.minutes, of.bed, of.sandC, of.airC, of.family]);
  const known = left.get(key);
  if (known !== undefined) return known;
  const leaveC = leaveBy("lowC", of) ?? leaveBy("likelyC", of);
  if (left.size > 50) left.clear();
  left.set(key, leaveC);
  return leaveC;
}

/** The search takes some milliseconds, and a plan asks at every key. */
const left = new Map<string, number | null>();

function leaveBy(
  which: "lowC" | "likelyC",
  of: OfWall & { readonly aimC: number; readonly minutes: number },
): number | null {
  const isShort = (startC: number): boolean =>
    (faceAt(shellCooling({ ...of, startC }), of.minutes)?.[which] ?? of.aimC) < of.aimC;
  let [low, high] = [Math.floor(of.aimC / 10), hottestC / 10];
  if (isShort(high * 10)) return null;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isShort(middle * 10)) low = middle;
    else high = middle;
  }
  return high * 10;
}

/** From the cup's first metal to a full shell, min: starting value. */
const fillMin = 0.2;

/** Minutes from the kiln's door to a full shell. */
export const minutesToFull = (carryMin: number): number => carryMin + fillMin;

/** What is planned of one shell's heat against what its metal and section ask for when it is full. */
export type ShellAtPour = {
  readonly id: string;
  /** The face when the shell is full, likely; °C. */
  readonly faceC: number;
  readonly leastC: number;
  /** What to leave the kiln with instead; null where no shell can be hot enough. */
  readonly leaveC: number | null;
};

type Planned = {
  readonly alloy: Alloy;
  readonly carryMin: number;
  readonly place: ShellBed;
};
type Waiting = { readonly id: string; readonly wallMm: number; readonly thinnestMm: number | null };

/** The shells that are too cold by the time they are full when they leave the kiln at `shellC`, °C. */
export function shellsTooCold(
  shells: readonly Waiting[],
  { alloy, carryMin, place, shellC }: Planned & { readonly shellC: number },
): readonly ShellAtPour[] {
  const minutes = minutesToFull(carryMin);
  return shells.flatMap(({ id, wallMm, thinnestMm }) => {
    const heat = shellHeatOf(alloy, thinnestMm);
    const face = faceAt(shellCooling({ ...place, wallMm, startC: shellC, minutes }), minutes);
    if (heat === null || face === null || face.likelyC >= heat.lowC) return [];
    const leaveC = leaveKilnC({ ...place, wallMm, aimC: heat.lowC, minutes });
    return [{ id, faceC: face.likelyC, leastC: heat.lowC, leaveC }];
  });
}

/**
 * What a plan's shells leave the kiln with, °C: the hottest that one of them asks for. Each asks for the usual heat of its
 * metal and thinnest section, and for more where the way cools its wall too far. Where nobody measured a section, the
 * starting one counts.
 */
export function startingLeaveC(
  shells: readonly Pick<Waiting, "wallMm" | "thinnestMm">[],
  { alloy, carryMin, place }: Omit<Planned, "alloy"> & { readonly alloy: Alloy | null },
): number {
  const minutes = minutesToFull(carryMin);
  const asked = shells.flatMap(({ wallMm, thinnestMm }) => {
    const usualC = startingShellC(alloy, thinnestMm);
    const aimC = alloy === null ? undefined : shellHeatOf(alloy, thinnestMm)?.lowC;
    return aimC === undefined ? usualC : [usualC, leaveKilnC({ ...place, wallMm, aimC, minutes }) ?? usualC];
  });
  return asked.length === 0 ? startingShellC(alloy, null) : Math.max(...asked);
}
