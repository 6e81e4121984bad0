import {
  chokeAreaMm2,
  fillTimeS,
  roundMm,
  sectionForSpeedMm2,
  spoutVelocityMS,
} from "../../physics/metal/flow.ts";
import {
  criticalSpeedMS,
  effectiveHeadM,
  reynolds,
  sprueTaper,
  ventAreaMm2,
  type GateAt,
} from "../../physics/metal/gating.ts";
import { dischargeCoefficients } from "../../trade/gatingFigures.ts";
import type { Stream } from "../../trade/metals/streams.ts";
import { gatingLimits, type GatingDraft } from "./gatingDraft.ts";
import { kept } from "./limits.ts";

export type GatingSum = {
  /** Mean head while it fills; null with the reason why there is none. */
  readonly headM: number | null;
  readonly noHead: "missing" | "never-fills" | null;
  readonly taper: number | null;
  readonly choke: {
    readonly areaMm2: number;
    readonly roundMm: number;
    readonly speedMS: number;
    readonly reynolds: number;
    readonly ventsMm2: number;
    /** What all gates together need so that the metal comes in below its limit, poured as quickly as may be. */
    readonly gatesMm2: number;
    readonly gateToChoke: number;
  } | null;
  readonly throughGates: {
    readonly speedMS: number;
    readonly isTooFast: boolean;
    /** By the exact fill of a cavity of even section; null where it never fills. */
    readonly fillS: number | null;
  } | null;
  readonly limitMS: number;
  readonly criticalMS: number;
};

/** Choke, taper, gates and vents for a mass to be filled in a time. */
export function gatingSum({
  draft,
  massKg,
  timeS,
  quickestS = null,
  liquidKgM3,
  stream,
}: {
  readonly draft: GatingDraft;
  readonly massKg: number | null;
  readonly timeS: number | null;
  /** The quickest it may be poured: gates hold their speed then too. Left out where the fill is set by hand. */
  readonly quickestS?: number | null | undefined;
  readonly liquidKgM3: number;
  readonly stream: Stream;
}): GatingSum {
  const typed = kept(draft, gatingLimits);
  const limitMS = stream.gateSpeedMS.value;
  const at = gateAt(typed);
  const headM =
    typed.sprueMm === null || at === null ? null : effectiveHeadM({ sprueHeightM: typed.sprueMm / 1000, at });
  const isReady = headM !== null && headM > 0 && massKg !== null && timeS !== null;
  return {
    headM,
    noHead: typed.sprueMm === null || at === null ? "missing" : headM === null ? "never-fills" : null,
    taper: taperOf(typed),
    choke: isReady ? chokeOf({ typed, massKg, timeS, quickestS, headM, liquidKgM3, stream }) : null,
    throughGates: isReady ? throughGates({ typed, massKg, timeS, headM, liquidKgM3, limitMS }) : null,
    limitMS,
    criticalMS: criticalSpeedMS({ tensionNM: stream.tensionNM.value, liquidKgM3 }),
  };
}

function gateAt({ gate, cavityMm, aboveGateMm }: GatingDraft): GateAt | null {
  if (gate === "top") return { gate };
  if (cavityMm === null) return null;
  const cavityHeightM = cavityMm / 1000;
  if (gate === "bottom") return { gate, cavityHeightM };
  return aboveGateMm === null || aboveGateMm > cavityMm
    ? null
    : { gate, cavityHeightM, aboveGateM: aboveGateMm / 1000 };
}

function taperOf({ cupMm, sprueMm }: GatingDraft): number | null {
  return cupMm === null || sprueMm === null || cupMm >= sprueMm
    ? null
    : sprueTaper({ topDepthM: cupMm / 1000, dropM: sprueMm / 1000 });
}

type Ready = {
  readonly typed: GatingDraft;
  readonly massKg: number;
  readonly timeS: number;
  readonly headM: number;
  readonly liquidKgM3: number;
};

function chokeOf({
  typed,
  massKg,
  timeS,
  quickestS,
  headM,
  liquidKgM3,
  stream,
}: Ready & { readonly quickestS: number | null; readonly stream: Stream }) {
  const dischargeCoefficient = dischargeCoefficients[typed.flow].value.likely;
  const areaMm2 = chokeAreaMm2({ massKg, liquidKgM3, timeS, headM, dischargeCoefficient });
  const speedMS = spoutVelocityMS({ headM, dischargeCoefficient });
  const gatesMm2 = sectionForSpeedMm2({
    massKg,
    liquidKgM3,
    timeS: Math.min(timeS, quickestS ?? timeS),
    speedMS: stream.gateSpeedMS.value,
  });
  const diameterMm = roundMm(areaMm2);
  return {
    areaMm2,
    roundMm: diameterMm,
    speedMS,
    reynolds: reynolds({
      liquidKgM3,
      speedMS,
      diameterMm,
      viscosityPaS: stream.viscosityPaS.value,
    }),
    ventsMm2: ventAreaMm2(areaMm2),
    gatesMm2,
    gateToChoke: gatesMm2 / areaMm2,
  };
}

function throughGates({
  typed: { gateMm2, gate, cavityMm, sprueMm, flow },
  massKg,
  timeS,
  headM,
  liquidKgM3,
  limitMS,
}: Ready & { readonly limitMS: number }): GatingSum["throughGates"] {
  if (gateMm2 === null) return null;
  const speedMS = massKg / (liquidKgM3 * timeS * gateMm2 * 1e-6);
  const dischargeCoefficient = dischargeCoefficients[flow].value.likely;
  const volumeCm3 = (massKg / liquidKgM3) * 1e6;
  const fillS =
    gate === "bottom" && cavityMm !== null && sprueMm !== null
      ? fillTimeS({
          by: "bottom-gate",
          cavityAreaMm2: (volumeCm3 * 1000) / cavityMm,
          cavityHeightM: cavityMm / 1000,
          gateAreaMm2: gateMm2,
          headM: sprueMm / 1000,
          dischargeCoefficient,
        })
      : fillTimeS({ by: "top-gate", volumeCm3, gateAreaMm2: gateMm2, headM, dischargeCoefficient });
  return { speedMS, isTooFast: speedMS > limitMS * (1 + 1e-9), fillS };
}

/** From the metal in the cup to the lowest wall: what the wall check of the shell asks of this gating; null while a length is missing. */
export function wallHeadMm(draft: GatingDraft): number | null {
  const { gate, sprueMm, cavityMm, aboveGateMm } = kept(draft, gatingLimits);
  if (sprueMm === null) return null;
  if (gate === "bottom") return sprueMm;
  if (cavityMm === null) return null;
  if (gate === "top") return sprueMm + cavityMm;
  return aboveGateMm === null || aboveGateMm > cavityMm ? null : sprueMm + cavityMm - aboveGateMm;
}
