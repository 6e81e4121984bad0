/** Water a coat set out with, and what it may still hold when it is dry enough for the next, kg/m². */
export type DryingWay = { readonly startKgM2: number; readonly readyKgM2: number };

/**
 * Water still to go as a share of all that must go, 0–1: 1 as the coat went on, 0 once it is dry enough. The one share
 * of water that words and pictures show. 0 for a coat that set out dry enough.
 */
export function shareToGo(waterKgM2: number, { startKgM2, readyKgM2 }: DryingWay): number {
  if (!(startKgM2 > readyKgM2)) return 0;
  return Math.min(1, Math.max(0, (waterKgM2 - readyKgM2) / (startKgM2 - readyKgM2)));
}

/** The water at which such a share is still to go, kg/m². */
export const waterAtShare = (share: number, { startKgM2, readyKgM2 }: DryingWay): number =>
  startKgM2 > readyKgM2 ? readyKgM2 + share * (startKgM2 - readyKgM2) : startKgM2;
