import { requireWithin } from "../stats/range.ts";
import { requireDensity, requireWater, silicaGCm3 } from "./sol.ts";

/** What a bucket holds, kg. Kept running, it tells a correction exactly what went missing. */
export type Composition = {
  readonly flourKg: number;
  readonly silicaKg: number;
  readonly waterKg: number;
};

/** All of it, kg. */
export function massKg(of: Composition): number {
  requireComposition(of);
  return of.flourKg + of.silicaKg + of.waterKg;
}

/** Two lots put together. Nothing is lost; a negative lot is refused. */
export function mixed(one: Composition, other: Composition): Composition {
  requireComposition(one);
  requireComposition(other);
  return {
    flourKg: one.flourKg + other.flourKg,
    silicaKg: one.silicaKg + other.silicaKg,
    waterKg: one.waterKg + other.waterKg,
  };
}

/** Sol as silica and water, kg, from its mass fraction of silica, 0–0.6 (a percentage is refused). */
export function solAs({ solKg, silica }: { solKg: number; silica: number }): Composition {
  requireWithin("solKg", solKg, { low: 0, high: 1e6, unit: "kg" });
  requireWithin("silica", silica, { low: 0, high: 0.6, unit: "(a fraction, not percent)" });
  return { flourKg: 0, silicaKg: solKg * silica, waterKg: solKg * (1 - silica) };
}

/** After `takenKg` of well stirred slurry went out on pieces: the proportions stay. At most all of it goes. */
export function drawn(from: Composition, takenKg: number): Composition {
  requireComposition(from);
  requireWithin("takenKg", takenKg, { low: 0, high: 1e6, unit: "kg" });
  const whole = massKg(from);
  const left = whole === 0 ? 0 : Math.max(0, 1 - takenKg / whole);
  return {
    flourKg: from.flourKg * left,
    silicaKg: from.silicaKg * left,
    waterKg: from.waterKg * left,
  };
}

/** After water has dried off, kg. At most all of it. */
export function evaporated(from: Composition, waterKg: number): Composition {
  requireComposition(from);
  requireWithin("waterKg", waterKg, { low: 0, high: 1e6, unit: "kg" });
  return { ...from, waterKg: Math.max(0, from.waterKg - waterKg) };
}

/** Volume, L, by components: 0.2 % more than by a label's 1.20 for a 30 % sol (derived). */
export function volumeOfL(
  { flourKg, silicaKg, waterKg }: Composition,
  { flourGCm3, waterGCm3 = 1 }: { flourGCm3: number; waterGCm3?: number | undefined },
): number {
  requireDensity("flourGCm3", flourGCm3);
  requireWater(waterGCm3);
  requireComposition({ flourKg, silicaKg, waterKg });
  return flourKg / flourGCm3 + silicaKg / silicaGCm3 + waterKg / waterGCm3;
}

export type Restoring =
  | {
      readonly ok: true;
      readonly waterKg: number;
      readonly solKg: number;
      readonly flourKg: number;
      readonly after: Composition;
    }
  | {
      readonly ok: false;
      /** More water than the start, and the sol at hand is no stronger: let it dry under stirring, blend or discard. */
      readonly code: "over-watered";
      readonly silicaInLiquid: number;
      readonly startSilica: number;
      readonly addedSilica: number;
      /** What would have to dry off, kg. */
      readonly surplusWaterKg: number;
    };

/**
 * Back to the start by composition: water or sol until the liquid has its silica again, then flour to the ratio.
 *
 * `startSilica` and `addedSilica` are mass fractions of silica in the liquid at the start and in the sol at hand.
 * Where flour is over (stucco fell in), liquid of the start's strength is added. Sol weaker than the start is no
 * help then and is refused. Derived: a mass balance.
 */
export function restore({
  now,
  ratio,
  startSilica,
  addedSilica,
}: {
  now: Composition;
  ratio: number;
  startSilica: number;
  addedSilica: number;
}): Restoring {
  requireComposition(now);
  requireWithin("ratio", ratio, { low: 0.05, high: 50, unit: "kg of flour per kg of liquid" });
  requireWithin("startSilica", startSilica, { low: 0.02, high: 0.6, unit: "(a fraction, not percent)" });
  requireWithin("addedSilica", addedSilica, { low: 0.02, high: 0.6, unit: "(a fraction, not percent)" });
  const { flourKg, silicaKg, waterKg } = now;
  const refused = {
    ok: false,
    code: "over-watered",
    silicaInLiquid: silicaKg + waterKg === 0 ? 0 : silicaKg / (silicaKg + waterKg),
    startSilica,
    addedSilica,
  } as const;
  let addWaterKg = (silicaKg * (1 - startSilica)) / startSilica - waterKg;
  const surplusWaterKg = Math.max(0, -addWaterKg);
  let solKg = 0;
  // The last digit of a sum is not over-watering.
  if (surplusWaterKg > 1e-9 * massKg(now)) {
    if (addedSilica <= startSilica) return { ...refused, surplusWaterKg };
    solKg = (startSilica * (silicaKg + waterKg) - silicaKg) / (addedSilica - startSilica);
  }
  addWaterKg = Math.max(0, addWaterKg);
  let addFlourKg = ratio * (silicaKg + waterKg + addWaterKg + solKg) - flourKg;
  if (addFlourKg < -1e-9 * massKg(now)) {
    const liquidKg = -addFlourKg / ratio;
    if (addedSilica < startSilica) return { ...refused, surplusWaterKg };
    const strongKg = (liquidKg * startSilica) / addedSilica;
    solKg += strongKg;
    addWaterKg += liquidKg - strongKg;
  }
  addFlourKg = Math.max(0, addFlourKg);
  const liquid = mixed(mixed(now, solAs({ solKg, silica: addedSilica })), {
    flourKg: addFlourKg,
    silicaKg: 0,
    waterKg: addWaterKg,
  });
  return { ok: true, waterKg: addWaterKg, solKg, flourKg: addFlourKg, after: liquid };
}

function requireComposition({ flourKg, silicaKg, waterKg }: Composition): void {
  for (const [name, kg] of Object.entries({ flourKg, silicaKg, waterKg }))
    requireWithin(name, kg, { low: 0, high: 1e6, unit: "kg" });
}
