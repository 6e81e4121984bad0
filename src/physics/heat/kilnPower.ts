import type { Segment } from "./firingSegments.ts";
import { scheduleCurve } from "./firingSegments.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/** A kiln as its owner knows it. */
export type Kiln = {
  readonly powerKW: number;
  readonly maxC: number;
  readonly volumeL: number;
  /** Steepest ramp it was seen to make or is set to, K/h. */
  readonly maxRateKPerH?: number | undefined;
  /** Heat its lining takes a kelvin, kJ/K; half a kilojoule a litre unless known. */
  readonly liningKJPerK?: number | undefined;
};

/** Lining's heat per litre of chamber, kJ/(K·L): derived from a 60 L kiln of 3.6 kW that takes 4–5 h to 1000 °C; estimate. */
const liningKJPerKL = 0.5;
/** Share of its power a kiln needs to stay at its highest temperature: judgement, no source. */
const lossShareAtMax = 0.6;
/** Warming shells are counted with this heat: J/(kg·K), mean of ceramic shells, from memory. */
const shellKJKgK = 1;
const roomC = 20;

/** Heat the kiln and its load take for a kelvin, kJ/K. */
export function storeKJPerK({ kiln, loadKg }: { kiln: Kiln; loadKg: number }): number {
  requireKiln(kiln);
  requireWithin("loadKg", loadKg, { low: 0, high: 5000, unit: "kg" });
  return (kiln.liningKJPerK ?? liningKJPerKL * kiln.volumeL) + shellKJKgK * loadKg;
}

/** Loss through the walls at a temperature, kW: straight from none in a cold room to 60 % of the power at the kiln's highest. */
export function kilnLossKW(kiln: Kiln, atC: number): number {
  requireKiln(kiln);
  requireWithin("atC", atC, { low: -273, high: 4000, unit: "°C" });
  return lossShareAtMax * kiln.powerKW * Math.max(0, (atC - roomC) / (kiln.maxC - roomC));
}

/** Steepest ramp the kiln's power allows at a temperature, K/h, never above its own limit; estimate. */
export function kilnRateKPerH({ kiln, loadKg, atC }: { kiln: Kiln; loadKg: number; atC: number }): number {
  const byPower = (3600 * (kiln.powerKW - kilnLossKW(kiln, atC))) / storeKJPerK({ kiln, loadKg });
  return Math.max(0, Math.min(kiln.maxRateKPerH ?? Infinity, byPower));
}

/** Steepest mean fall of a shut kiln from one temperature to a lower one, K/h: its loss and nothing else. */
export function kilnFallKPerH({
  kiln,
  loadKg,
  fromC,
  toC,
}: {
  kiln: Kiln;
  loadKg: number;
  fromC: number;
  toC: number;
}): number {
  if (!(fromC > toC && toC > roomC))
    throw new RangeError(`fromC > toC > ${roomC} °C is wanted, found ${fromC}, ${toC}`);
  requireKiln(kiln);
  requireWithin("fromC", fromC, { low: roomC, high: 4000, unit: "°C" });
  const lossKWPerK = (lossShareAtMax * kiln.powerKW) / (kiln.maxC - roomC);
  const hours =
    (storeKJPerK({ kiln, loadKg }) / lossKWPerK / 3600) * Math.log((fromC - roomC) / (toC - roomC));
  // A fall too small for the logarithm to see goes at the rate of its own heat.
  const rateKPerH = (fromC - toC) / hours;
  return Number.isFinite(rateKPerH)
    ? rateKPerH
    : (3600 * lossKWPerK * (fromC - roomC)) / storeKJPerK({ kiln, loadKg });
}

/**
 * Energy of a schedule, kWh, and its cost at the user's own price; estimate. Heat for warming and for the
 * walls' loss, never more than the kiln's power; a falling kiln that loses enough by itself draws nothing.
 */
export function kilnEnergy({
  segments,
  startC,
  kiln,
  loadKg,
  pricePerKWh,
}: {
  segments: readonly Segment[];
  startC: number;
  kiln: Kiln;
  loadKg: number;
  pricePerKWh?: number | undefined;
}): { readonly energyKWh: number; readonly cost: number | null } {
  const store = storeKJPerK({ kiln, loadKg });
  if (pricePerKWh !== undefined)
    requireWithin("pricePerKWh", pricePerKWh, { low: 0, high: 1e9, unit: "a kWh" });
  let energyKWh = 0;
  for (const { startMin, endMin, fromC, toC } of scheduleCurve(segments, startC)) {
    const hours = (endMin - startMin) / 60;
    if (hours < 1e-9) continue;
    const warmingKW = (store * (toC - fromC)) / (hours * 3600);
    // The loss is straight in temperature: twenty slices leave only the clipped corner to err.
    const slices = 20;
    for (let i = 0; i < slices; i++) {
      const atC = fromC + ((toC - fromC) * (i + 0.5)) / slices;
      const power = Math.min(kiln.powerKW, Math.max(0, warmingKW + kilnLossKW(kiln, atC)));
      energyKWh += (power * hours) / slices;
    }
  }
  return { energyKWh, cost: pricePerKWh === undefined ? null : energyKWh * pricePerKWh };
}

/** Throws a RangeError unless the kiln is of this world. */
export function requireKiln(kiln: Kiln): void {
  requirePositive("powerKW", kiln.powerKW, { high: 1000, unit: "kW (not W)" });
  requireWithin("maxC", kiln.maxC, { low: 100, high: 1800, unit: "°C" });
  requirePositive("volumeL", kiln.volumeL, { high: 100_000, unit: "L" });
  if (kiln.maxRateKPerH !== undefined)
    requirePositive("maxRateKPerH", kiln.maxRateKPerH, { high: 1e5, unit: "K/h" });
  if (kiln.liningKJPerK !== undefined)
    requirePositive("liningKJPerK", kiln.liningKJPerK, { high: 1e6, unit: "kJ/K" });
}
