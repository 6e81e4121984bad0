import { runLengthMm, runTimeBandS } from "../../physics/metal/fluidity.ts";
import { capillaryHeadMm, tiltLimitDeg, tiltSpeedMS } from "../../physics/metal/gating.ts";
import { misrunAdvice, type MisrunAdvice } from "../../physics/metal/misrun.ts";
import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import { mouldHeat } from "../../trade/mouldHeat.ts";
import { pourHeatOf } from "../pour/pourHeat.ts";
import { shellHeatOf } from "../fire/shellHeat.ts";
import { preheatOf, type Preheat } from "../../trade/preheat.ts";
import { gatingLimits, type GatingDraft } from "./gatingDraft.ts";
import { kept } from "./limits.ts";

export type RunSum = {
  /** Null where the shell is as hot as the liquidus: the stream doesn't stop. */
  readonly time: { readonly lowS: number; readonly likelyS: number; readonly highS: number } | null;
  readonly length: { readonly mostMm: number; readonly planMm: number } | null;
  readonly speedMS: number;
  readonly preheat: Preheat | null;
  readonly capillary: { readonly needMm: number; readonly hasMm: number | null; readonly isShort: boolean };
  readonly advice: MisrunAdvice | null;
};

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

/** How far metal runs in the thinnest wall before it stops, and what to change where that isn't enough. */
export function runSum({
  draft,
  hot,
  alloy,
  figures,
  speedMS,
}: {
  readonly draft: GatingDraft;
  readonly hot: MetalHot;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly speedMS: number;
}): RunSum {
  const typed = kept(draft, gatingLimits);
  const run = {
    liquidKgM3: figures.crucibleKgM3.value,
    wallMm: hot.wallMm,
    latentJKg: figures.latentJKg.value,
    liquidJKgK: figures.liquidHeatJKgK.value,
    superheatK: hot.metalC - alloy.liquidusC.value,
    liquidusC: alloy.liquidusC.value,
    shellC: hot.shellC,
    mould: mouldHeat.shell.value,
  };
  const time = runTimeBandS(run);
  const preheat = preheatOf({ alloy, wallMm: hot.wallMm });
  const { stream } = alloy;
  const needMm = capillaryHeadMm({
    tensionNM: stream.tensionNM.value,
    liquidKgM3: run.liquidKgM3,
    slotMm: hot.wallMm,
    hasSkin: stream.hasSkin,
  });
  return {
    time,
    length: time === null ? null : runLengthMm({ timeS: Math.min(time.likelyS, 1e6), speedMS }),
    speedMS,
    preheat,
    capillary: {
      needMm,
      hasMm: typed.wallHeadMm,
      isShort: typed.wallHeadMm !== null && typed.wallHeadMm < 2 * needMm,
    },
    advice:
      typed.runMm === null
        ? null
        : misrunAdvice({
            run,
            neededMm: typed.runMm,
            speedMS,
            solidusC: alloy.solidusC.value,
            preheat: preheat?.value ?? null,
          }),
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
