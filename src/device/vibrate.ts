/** "asked" is all a page can know: whether the phone shook, it is not told. */
export type VibrateResult = "asked" | "refused" | "missing";

/** Shakes the phone, ms on and ms off in turn. A bonus only: iPhones have no such thing. */
export function vibrate(patternMs: readonly number[]): VibrateResult {
  if (typeof navigator.vibrate !== "function") return "missing";
  return navigator.vibrate([...patternMs]) ? "asked" : "refused";
}
