/** Opening of a sieve, mm, by its mesh number: ASTM E11 / ISO 565 (from memory). */
export const sieveOpeningMm = {
  10: 2.0,
  12: 1.7,
  16: 1.18,
  20: 0.85,
  30: 0.6,
  40: 0.425,
  50: 0.3,
  60: 0.25,
  70: 0.212,
  80: 0.18,
  100: 0.15,
  120: 0.125,
  140: 0.106,
  200: 0.075,
  325: 0.045,
} as const satisfies Record<number, number>;

export type SieveMesh = keyof typeof sieveOpeningMm;
