import type { WetLayer } from "../drying/coat.ts";
import { readyWaterKgM2, requireCoat } from "../drying/coat.ts";
import { drynessIndex, endIndex } from "../drying/drynessIndex.ts";
import { tooDampRh } from "../drying/dryStep.ts";
import type { MovingAir } from "../air/film.ts";
import { evaporativeDropK, resistances } from "../air/film.ts";
import { requireFigures, requireFraction, requirePositive, requireWithin } from "../stats/range.ts";
import type { EvidenceSource, ShareEvidence } from "./shareEvidence.ts";
import { evidenceWeights } from "./shareEvidence.ts";

/** The coat under the thermometer: critical water as a share of the starting water, and depth to be dried. */
export type IndexedCoat = {
  readonly criticalShare: number;
  readonly depthM: number;
  /** Share of the starting water at which the coat is ready. */
  readonly readyShare: number;
  /** Stagnant resistance of the place that dries last, s/m; 0 for an open piece. */
  readonly pocketSM: number;
};

/** Refuses a coat no evidence can be read against. */
export function requireIndexed({ criticalShare, depthM, readyShare, pocketSM }: IndexedCoat): void {
  requirePositive("criticalShare", criticalShare, { high: 1, unit: "(a fraction)" });
  requireWithin("depthM", depthM, { low: 0, high: 0.3, unit: "m (not mm)" });
  requireFraction("readyShare", readyShare);
  requireWithin("pocketSM", pocketSM, { low: 0, high: 1e6, unit: "s/m" });
}

/** The coat as its evidence is read against it; shares are of the water it went on with (`coat.waterKgM2`). */
export function indexedCoat(coat: WetLayer, pocketSM: number): IndexedCoat {
  requireCoat(coat);
  const shareOf = (kgM2: number): number => (coat.waterKgM2 > 0 ? Math.min(1, kgM2 / coat.waterKgM2) : 1);
  requireWithin("pocketSM", pocketSM, { low: 0, high: 1e6, unit: "s/m" });
  return {
    criticalShare: shareOf(coat.criticalKgM2),
    depthM: coat.depthM,
    readyShare: shareOf(readyWaterKgM2(coat)),
    pocketSM,
  };
}

/**
 * A surface reading. "absolute": the thermometer's own °C against the room's air. "difference": the same
 * thermometer on a shell known to be dry beside it, which takes its offset and the room sensor's out.
 */
export type SurfaceReading =
  | { readonly method: "absolute"; readonly surfaceC: number; readonly sensorK: number }
  | {
      readonly method: "difference";
      readonly surfaceC: number;
      readonly drySurfaceC: number;
      readonly sensorK: number;
    };

export type SurfaceVerdict =
  | {
      readonly kind: "index";
      /** 0 dripping, 1 as warm as the air. */
      readonly index: number;
      readonly indexSd: number;
      /** The index when the front just reaches the bottom of this coat. */
      readonly endIndex: number;
      readonly says: "dry" | "nearly" | "wet";
      /** Against a dry shell beside it, and so near to it that its whole error lies past the end of the coat's depth. */
      readonly isSure: boolean;
      readonly dropK: number;
      /** A thermometer sees the outer face only: "dry" says nothing of the pocket. */
      readonly outerFaceOnly: boolean;
    }
  | { readonly kind: "refused"; readonly code: "air-too-damp"; readonly rh: number; readonly mostRh: number }
  | {
      readonly kind: "refused";
      readonly code: "signal-too-small";
      readonly dropK: number;
      readonly errorK: number;
      readonly indexSd: number;
      readonly mostSd: number;
    };

/** From here up a surface dries no more; judgement. A front as deep as 16 mm under a fan reads it. */
const dryIndex = 0.95;

/** An index this many of its own errors past the end of the front is past it, 19 of 20 times. */
const sureSd = 1.645;

/** Room sensors: °C and rh, standard deviations; usual data-sheet figures, from memory. */
const roomTempK = 0.5;
const roomRh = 0.03;

/** Past this error of the index a reading is refused; judgement: it spans a fifth of wet to dry. */
const mostSd = 0.2;

/**
 * What a surface temperature says of a coat.
 *
 * The index is taken against the wet surface with radiation; its error from the thermometer (`sensorK`, one
 * standard deviation: 1–2 K for an infrared one, 0.3 K for a difference) and the room's own sensors. Refused
 * above 80 % humidity, where hardly any drop is left, and wherever the error spans over a fifth of the way from
 * wet to dry. Emissivity 0.93 of a shell is the thermometer's usual 0.95; keep sun, lamps, hands and the metal
 * frame out of its spot.
 */
export function judgeSurface(air: MovingAir, reading: SurfaceReading, coat: IndexedCoat): SurfaceVerdict {
  requirePositive("sensorK", reading.sensorK, { high: 20, unit: "K" });
  requireIndexed(coat);
  requireWithin("surfaceC", reading.surfaceC, { low: -40, high: 90, unit: "°C" });
  if (reading.method === "difference")
    requireWithin("drySurfaceC", reading.drySurfaceC, { low: -40, high: 90, unit: "°C" });
  requireFraction("rh", air.rh);
  if (air.rh > tooDampRh) return { kind: "refused", code: "air-too-damp", rh: air.rh, mostRh: tooDampRh };
  const dropK = evaporativeDropK(air);
  const byRhK = Math.abs(dropK - evaporativeDropK({ ...air, rh: Math.max(0, air.rh - roomRh) }));
  const airK = reading.method === "absolute" ? roomTempK : 0;
  const errorK = Math.hypot(reading.sensorK, byRhK);
  const indexSd = errorK / Math.max(dropK, 1e-6);
  if (indexSd > mostSd) return { kind: "refused", code: "signal-too-small", dropK, errorK, indexSd, mostSd };
  // A dry shell beside it stands in for the air's own temperature.
  const surfaceC =
    reading.method === "absolute" ? reading.surfaceC : air.tempC - (reading.drySurfaceC - reading.surfaceC);
  const index = drynessIndex({ ...air, surfaceC }) ?? 0;
  const near = Math.min(1, Math.max(0, index));
  const sd = Math.hypot(reading.sensorK, (1 - near) * byRhK, near * airK) / dropK;
  const end = endIndex({ ...air, depthM: coat.depthM });
  return {
    kind: "index",
    index,
    indexSd: sd,
    endIndex: end,
    says: index >= dryIndex ? "dry" : index >= end ? "nearly" : "wet",
    isSure: reading.method === "difference" && index >= dryIndex && index - sureSd * sd > end,
    dropK,
    outerFaceOnly: coat.pocketSM > 0,
  };
}

/**
 * The index the model expects with a share of the coat's water left, 0–1.
 *
 * 1 − index = A/(A + B·δ) while the front recedes (derived from the resistances); from ready to nothing left it
 * goes on to 1 in a straight line, as the flux fades.
 */
export function indexAtShare(air: MovingAir, waterShare: number, coat: IndexedCoat): number {
  requireIndexed(coat);
  requireWithin("waterShare", waterShare, { low: -100, high: 100, unit: "" });
  const { surfaceSM, layerSM2 } = resistances(air);
  const at = (share: number): number => {
    const depthM = coat.depthM * Math.min(1, Math.max(0, 1 - share / coat.criticalShare));
    return (layerSM2 * depthM) / (surfaceSM + layerSM2 * depthM);
  };
  if (waterShare >= coat.readyShare || coat.readyShare === 0) return at(waterShare);
  const ready = at(coat.readyShare);
  return ready + (1 - ready) * (1 - Math.max(0, waterShare) / coat.readyShare);
}

/**
 * Which side a reading speaks to, of the place it is held against: "both" where it was read there; "wet" where it was
 * read at a place that dries sooner (wet there is wet here); "dry" at one that dries later (dry there is dry here).
 */
export type SpeaksOf = "both" | "wet" | "dry";

/** What is left of a miss on the side that speaks; `wetter` is below 0 where the reading is wetter than expected. */
export function missHeard(wetter: number, speaks: SpeaksOf): number {
  requireFigures({ wetter });
  return speaks === "both" ? wetter : speaks === "wet" ? Math.min(0, wetter) : Math.max(0, wetter);
}

/**
 * A judged surface reading as evidence; null where it was refused. `speaks` is "both" for an open piece and, where
 * nothing else is said, "wet" for one with a pocket: the pocket is as wet as the face or wetter.
 */
export function surfaceEvidence(
  verdict: SurfaceVerdict,
  {
    air,
    coat,
    afterS,
    speaks = coat.pocketSM > 0 ? "wet" : "both",
  }: { air: MovingAir; coat: IndexedCoat; afterS: number; speaks?: SpeaksOf | undefined },
): ShareEvidence | null {
  if (verdict.kind === "refused") return null;
  const { index, indexSd } = verdict;
  requireFigures({ index });
  requirePositive("indexSd", indexSd, { high: 100, unit: "" });
  return indexEvidence(
    { source: "surface", air, coat, afterS },
    (expected) => -0.5 * missHeard((index - expected) / indexSd, speaks) ** 2,
  );
}

/** Evidence through the index: `logLikelihood` of what was seen, by the index the model expects. */
export function indexEvidence(
  {
    source,
    air,
    coat,
    afterS,
  }: { source: EvidenceSource; air: MovingAir; coat: IndexedCoat; afterS: number },
  logLikelihood: (expectedIndex: number) => number,
): ShareEvidence {
  requireWithin("afterS", afterS, { low: 0, high: 1e10, unit: "s" });
  const steps = 200;
  const table = Array.from({ length: steps + 1 }, (_, i) => indexAtShare(air, i / steps, coat));
  return {
    source,
    weight: evidenceWeights[source],
    afterS,
    sinceS: null,
    logLikelihood: (waterShare) => {
      const place = Math.min(1, Math.max(0, waterShare)) * steps;
      const i = Math.min(steps - 1, Math.floor(place));
      const low = table[i] ?? 0;
      return logLikelihood(low + (place - i) * ((table[i + 1] ?? low) - low));
    },
  };
}

/** Casting wax: heat capacity J/m³K and conductivity W/mK (from memory of paraffin's: 900 kg/m³ × 2500 J/kgK; 0.25). */
const waxHeatJM3K = 2.3e6;
const waxConductivityWMK = 0.25;

/** Radiation of surfaces at room temperature, W/m²K. */
const radiationFilmWM2K = 5.25;

/**
 * How long to wait with a surface reading after the air has changed, s: two time constants of the pattern.
 *
 * A solid pattern of half thickness `halfM` re-warms through film and radiation, and through itself: slowest mode
 * of a slab, τ = ρcL(1/h + 4L/π²k), within 6 % of the exact root (checked in the tests; derived here). A hollow
 * pattern counts with half its wall.
 */
export function waitAfterChangeS({ halfM, filmWM2K }: { halfM: number; filmWM2K: number }): number {
  requireWithin("halfM", halfM, { low: 0, high: 0.5, unit: "m (not mm)" });
  requirePositive("filmWM2K", filmWM2K, { high: 500, unit: "W/m²K" });
  const outerM2KW = 1 / (filmWM2K + radiationFilmWM2K);
  const innerM2KW = (4 * halfM) / (Math.PI ** 2 * waxConductivityWMK);
  return 2 * waxHeatJM3K * halfM * (outerM2KW + innerM2KW);
}
