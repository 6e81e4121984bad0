/** What a Bluetooth scale tells at best, g: Weight Measurement 0x2A9D counts in 0.005 kg (GATT Specification Supplement). */
export const scaleStepG = 5;

/** The coarsest step, g, a balance may have for a coat that took on this much water: a twentieth of it (judgement). */
export const neededStepG = (waterG: number): number => waterG / 20;

/** True where the standard's scale can't tell a twentieth of the coat's water; false where the water isn't known. */
export const isTooCoarse = (waterG: number | null): boolean =>
  waterG !== null && scaleStepG > neededStepG(waterG);
