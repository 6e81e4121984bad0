import { drynessIndex, dryDepthFromIndexM, endIndex } from "../physics/drynessIndex.ts";
import { rhOverIce } from "../physics/air.ts";
import { tooDampRh } from "../physics/dryStep.ts";
import { airClasses } from "../trade/airClasses.ts";
import type { Stay } from "./hanging.ts";
import { airAt } from "./hanging.ts";
import type { DrynessSeen } from "./piece.ts";
import { ranges, within } from "./ranges.ts";

/** What an observation says of its coat. `wetShare`: at least this share of the critical water is still in it. */
export type DryEvidence =
  | { readonly says: "dry"; readonly seen: DrynessSeen }
  | { readonly says: "wet"; readonly seen: DrynessSeen; readonly wetShare: number };

/** A surface this near the air's warmth dries no more; judgement. */
const dryIndex = 0.95;
/** What is left in a coat that feels damp, or still loses weight, as a share of the critical water; judgement. */
const dampShare = 0.5;
/** Weighings nearer than this tell nothing; a loss under these shares is none. Common practice, no source. */
const weighApartMs = 30 * 60_000;
const weighApartLongMs = 60 * 60_000;
const steadyWaterShare = 0.02;
const steadyMassShare = 0.001;

type OfCoat = {
  readonly stays: readonly Stay[];
  readonly depthM: number;
  readonly waterKgM2: number;
  readonly areaM2: number | undefined;
};

/** Reads the observations of one coat, oldest first; those that say nothing are left out. */
export function readEvidence(seen: readonly DrynessSeen[], coat: OfCoat): readonly DryEvidence[] {
  return seen.flatMap((one, i) => {
    const said = evidenceOf(one, seen.slice(0, i), coat);
    return said === null ? [] : [said];
  });
}

function evidenceOf(seen: DrynessSeen, earlier: readonly DrynessSeen[], coat: OfCoat): DryEvidence | null {
  switch (seen.method) {
    case "touch":
      if (seen.verdict === "dry") return { says: "dry", seen };
      return { says: "wet", seen, wetShare: seen.verdict === "wet" ? 1 : dampShare };
    case "surface":
      return fromSurface(seen, seen.surfaceC, coat);
    case "weight":
      return fromWeight(seen, earlier, coat);
  }
}

/** By the dryness index in the air of that moment; between "layer dry" and "all dry" it does not decide. */
function fromSurface(seen: DrynessSeen, surfaceC: number, { stays, depthM }: OfCoat): DryEvidence | null {
  const there = airAt(stays, seen.at);
  if (there === null || !within(ranges.surfaceC, surfaceC)) return null;
  const { airC, rh, air } = there.reading;
  const moving = {
    tempC: airC,
    rh: rhOverIce({ tempC: airC, rh }),
    pressurePa: there.air.pressurePa,
    filmWM2K: airClasses[air].filmWM2K,
  };
  const index = drynessIndex({ ...moving, surfaceC });
  if (index === null) return null;
  if (index >= dryIndex) return { says: "dry", seen };
  if (index >= endIndex({ ...moving, depthM })) return null;
  const dryDepthM = dryDepthFromIndexM({ ...moving, index: Math.max(0, index) }) ?? depthM;
  return { says: "wet", seen, wetShare: Math.min(1, Math.max(dampShare, 1 - dryDepthM / depthM)) };
}

/**
 * By two weighings: no loss worth the name means dry, a loss means wet. In air above 80 % a steady weight says
 * nothing, as nothing dries there; nor does a gain.
 */
function fromWeight(
  seen: DrynessSeen,
  earlier: readonly DrynessSeen[],
  { stays, waterKgM2, areaM2 }: OfCoat,
): DryEvidence | null {
  const before = earlier.findLast((one) => one.method === "weight" && one.at <= seen.at - weighApartMs);
  if (seen.method !== "weight" || before?.method !== "weight") return null;
  const lossG = before.massG - seen.massG;
  const limitG = within(ranges.areaM2, areaM2)
    ? steadyWaterShare * waterKgM2 * areaM2 * 1000
    : seen.at - before.at >= weighApartLongMs
      ? steadyMassShare * before.massG
      : null;
  if (limitG === null || lossG < -limitG) return null;
  if (lossG >= limitG) return { says: "wet", seen, wetShare: dampShare };
  const rh = airAt(stays, seen.at)?.reading.rh ?? 0;
  return rh > tooDampRh ? null : { says: "dry", seen };
}
