export type PressPoint = { readonly x: number; readonly y: number; readonly at: number };

/** 12 mm of glass, at about 0.25 mm a CSS pixel of a large phone in a wet hand. */
export const driftPx = 48;
/** Water drops touch for less than this; only a touch screen sees drops. */
export const leastContactMs = 40;

/** Whether a press that began and ended so was meant. */
export function isPressGood(began: PressPoint, ended: PressPoint, pointerType: string): boolean {
  if (Math.hypot(ended.x - began.x, ended.y - began.y) > driftPx) return false;
  return pointerType !== "touch" || ended.at - began.at >= leastContactMs;
}
