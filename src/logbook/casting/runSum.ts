import { capillaryHeadMm, tiltLimitDeg, tiltSpeedMS } from "../../physics/metal/gating.ts";
import { fillWithinS, misrunAdvice, type MisrunAdvice } from "../../physics/metal/misrun.ts";
import { runTimeBandS, type RunBand } from "../../physics/metal/fluidity.ts";
import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import { mouldHeat } from "../../trade/mouldHeat.ts";
import { pourHeatOf } from "../pour/pourHeat.ts";
import { shellHeatOf } from "../fire/shellHeat.ts";
import { preheatOf, type Preheat } from "../../trade/preheat.ts";
import { fillTimes } from "./fillTimes.ts";
import { gatingLimits, type GatingDraft } from "./gatingDraft.ts";
import { kept } from "./limits.ts";

export type MetalHot = { readonly metalC: number; readonly shellC: number; readonly wallMm: number };

/** Metal and shell heat as typed, else where a plan of this metal and section starts; null while the thinnest wall isn't known or the metal is not all melted. */
export function metalHot(draft: GatingDraft, alloy: Alloy, figures: MeltFigures): MetalHot | null {
  const { wallMm, metalC, shellC } = kept(draft, gatingLimits);
  if (wallMm === null) return null;
  const hot = {
    wallMm,
    metalC: metalC ?? pourHeatOf({ alloy, figures, thinnestMm: wallMm }).startC,
    shellC: shellC ?? shellHeatOf(alloy, wallMm)?.startC ?? 20,
  };
  return hot.metalC < alloy.liquidusC.value || hot.metalC - alloy.liquidusC.value > 1000 ? null : hot;
}

type Of = { readonly hot: MetalHot; readonly alloy: Alloy; readonly figures: MeltFigures };

/** What the physics asks of a metal in a section of a hot shell. */
const runAsked = ({ hot, alloy, figures }: Of) => ({
  liquidKgM3: figures.crucibleKgM3.value,
  wallMm: hot.wallMm,
  latentJKg: figures.latentJKg.value,
  liquidJKgK: figures.liquidHeatJKgK.value,
  superheatK: hot.metalC - alloy.liquidusC.value,
  liquidusC: alloy.liquidusC.value,
  shellC: hot.shellC,
  mould: mouldHeat.shell.value,
});

const gateMS = ({ alloy }: Of): number => alloy.stream.gateSpeedMS.value;

/** Time the front has in the thinnest section; null where it does not stop. */
export const runBand = (of: Of): RunBand | null => runTimeBandS(runAsked(of));

/** Longest the whole fill may take for that section to run full, s; null where nothing sets a limit or the metal isn't known. */
export function mostFillS({
  massKg,
  wayMm,
  widthMm,
  ...of
}: Of & {
  readonly massKg: number | null;
  readonly wayMm: number | null;
  readonly widthMm: number | null;
}): number | null {
  const lowS = runBand(of)?.lowS;
  if (lowS === undefined) return null;
  if (massKg === null || wayMm === null || widthMm === null) return lowS;
  const { liquidKgM3, wallMm } = runAsked(of);
  return fillWithinS({ liquidKgM3, wallMm, massKg, wayMm, widthMm, gateMS: gateMS(of) }, lowS);
}

/** Will the thinnest section run full, for a mass through the sprue and the way from gate to far end: the one answer of the metal page and the pour. */
export function runFull({
  massKg,
  wayMm,
  widthMm,
  gate,
  fillS,
  ...of
}: Of & {
  readonly massKg: number;
  readonly wayMm: number;
  readonly widthMm: number | null;
  readonly gate: GatingDraft["gate"];
  /** As planned or as the gates give it; null takes the planned fill of this mass. */
  readonly fillS: number | null;
}): MisrunAdvice {
  const { alloy, hot } = of;
  const mostS = mostFillS({ ...of, massKg, wayMm, widthMm });
  const times = fillTimes({ massKg, gate, alloy, wallMm: hot.wallMm, mostS });
  return misrunAdvice({
    run: runAsked(of),
    front: { massKg, wayMm, widthMm, gateMS: gateMS(of), fillS: fillS ?? times.plannedS },
    leastFillS: times.leastS,
    solidusC: alloy.solidusC.value,
    preheat: preheatOf({ alloy, wallMm: hot.wallMm })?.value ?? null,
  });
}

export type RunSum = {
  /** Null where the shell is as hot as the liquidus: the front doesn't stop. */
  readonly has: RunBand | null;
  readonly preheat: Preheat | null;
  readonly capillary: { readonly needMm: number; readonly hasMm: number | null; readonly isShort: boolean };
  /** Null while the way or the metal through the sprue isn't known. */
  readonly advice: MisrunAdvice | null;
};

/** Whether metal gets to the end of the thinnest wall, the head that wall asks, and what to change where it isn't enough. */
export function runSum({
  draft,
  fillS,
  ...of
}: Of & {
  readonly draft: GatingDraft;
  /** As planned, or longer where the gates give less; null while the metal isn't known. */
  readonly fillS: number | null;
}): RunSum {
  const { massKg, runMm, runWidthMm, wallHeadMm, gate } = kept(draft, gatingLimits);
  const { alloy, figures, hot } = of;
  const { stream } = alloy;
  const needMm = capillaryHeadMm({
    tensionNM: stream.tensionNM.value,
    liquidKgM3: figures.crucibleKgM3.value,
    slotMm: hot.wallMm,
    hasSkin: stream.hasSkin,
  });
  return {
    has: runBand(of),
    preheat: preheatOf({ alloy, wallMm: hot.wallMm }),
    capillary: {
      needMm,
      hasMm: wallHeadMm,
      isShort: wallHeadMm !== null && wallHeadMm < 2 * needMm,
    },
    advice:
      runMm === null || massKg === null
        ? null
        : runFull({ ...of, massKg, wayMm: runMm, widthMm: runWidthMm, gate, fillS }),
  };
}

/** Lean of a mould: the steepest that keeps metal below its speed, and what it reaches at the lean that is meant. */
export function leanSum(draft: GatingDraft, limitMS: number) {
  const { leanMm, leanDeg } = kept(draft, gatingLimits);
  if (leanMm === null) return null;
  const lengthM = leanMm / 1000;
  return {
    limitDeg: tiltLimitDeg({ lengthM, speedMS: limitMS }),
    speedMS: leanDeg === null ? null : tiltSpeedMS({ lengthM, tiltDeg: leanDeg }),
  };
}
