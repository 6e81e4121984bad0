import type { MeltHeat } from "../../physics/metal/melt.ts";
import type { PowerKnown } from "../fire/furnaceMemory.ts";

export type CoursePoint = { readonly afterS: number; readonly metalC: number };

/** Temperature of a charge that takes heat at an even rate, its freezing range as one stand at the liquidus. */
export function metalAfter({
  afterS,
  powerW,
  massKg,
  heat,
  fromC = 20,
}: {
  readonly afterS: number;
  readonly powerW: number;
  readonly massKg: number;
  readonly heat: MeltHeat;
  readonly fromC?: number | undefined;
}): number {
  const perKg = (powerW * afterS) / massKg;
  const toLiquidus = heat.solidJKgK * (heat.liquidusC - fromC);
  if (perKg <= toLiquidus) return fromC + perKg / heat.solidJKgK;
  const beyond = perKg - toLiquidus - heat.latentJKg;
  return beyond <= 0 ? heat.liquidusC : heat.liquidusC + beyond / heat.liquidJKgK;
}

/** The corners of that course up to pouring heat: three straight lines. */
export function meltCourse({
  powerW,
  massKg,
  heat,
  pourC,
  fromC = 20,
}: {
  readonly powerW: number;
  readonly massKg: number;
  readonly heat: MeltHeat;
  readonly pourC: number;
  readonly fromC?: number | undefined;
}): readonly CoursePoint[] {
  const at = (jKg: number): number => (jKg * massKg) / powerW;
  const solid = heat.solidJKgK * (heat.liquidusC - fromC);
  const molten = solid + heat.latentJKg;
  return [
    { afterS: 0, metalC: fromC },
    { afterS: at(solid), metalC: heat.liquidusC },
    { afterS: at(molten), metalC: heat.liquidusC },
    { afterS: at(molten + heat.liquidJKgK * (pourC - heat.liquidusC)), metalC: pourC },
  ];
}

export type MeltExpected = {
  readonly earlyAt: number;
  readonly likelyAt: number;
  readonly lateAt: number;
  /** The last reading against what was expected then. */
  readonly standing: "on-time" | "ahead" | "behind" | "not-read";
};

/** When pouring heat is to be expected, from the start and, once the metal is read, from the last reading on. */
export function meltExpected({
  startedAt,
  readings,
  power,
  massKg,
  heat,
  pourC,
}: {
  readonly startedAt: number;
  readonly readings: readonly { readonly at: number; readonly metalC: number }[];
  readonly power: PowerKnown;
  readonly massKg: number;
  readonly heat: MeltHeat;
  readonly pourC: number;
}): MeltExpected {
  const last = readings.at(-1);
  const from = last === undefined ? { at: startedAt, metalC: 20 } : last;
  const leftS = (powerW: number): number => (massKg * heatBetween(heat, from.metalC, pourC)) / powerW;
  const ms = (s: number): number => from.at + s * 1000;
  return {
    earlyAt: ms(leftS(power.highW)),
    likelyAt: ms(leftS(power.likelyW)),
    lateAt: ms(leftS(power.lowW)),
    standing: last === undefined ? "not-read" : standingAt(last, { startedAt, power, massKg, heat }),
  };
}

function standingAt(
  last: { readonly at: number; readonly metalC: number },
  of: {
    readonly startedAt: number;
    readonly power: PowerKnown;
    readonly massKg: number;
    readonly heat: MeltHeat;
  },
): MeltExpected["standing"] {
  const afterS = Math.max(0, (last.at - of.startedAt) / 1000);
  const at = (powerW: number): number => metalAfter({ afterS, powerW, massKg: of.massKg, heat: of.heat });
  if (last.metalC < at(of.power.lowW) - 1) return "behind";
  return last.metalC > at(of.power.highW) + 1 ? "ahead" : "on-time";
}

/** Heat between two temperatures, J/kg; a reading at the liquidus has half its latent heat to go. */
function heatBetween(heat: MeltHeat, fromC: number, toC: number): number {
  const content = (c: number): number => {
    if (c < heat.liquidusC - 5) return heat.solidJKgK * c;
    const solid = heat.solidJKgK * heat.liquidusC;
    if (c <= heat.liquidusC + 5) return solid + heat.latentJKg / 2;
    return solid + heat.latentJKg + heat.liquidJKgK * (c - heat.liquidusC);
  };
  return Math.max(0, content(toC) - content(fromC));
}
