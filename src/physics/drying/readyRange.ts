import type { Coat } from "./coat.ts";
import type { DryingResult } from "./drying.ts";
import { dryThrough } from "./drying.ts";
import type { DryingInterval } from "./dryStep.ts";
import type { ReadySpread } from "../stats/spread.ts";

/** The same coat through the same air three times: early, likely and late. */
export function readyRange({
  spread,
  ...rest
}: {
  readonly coat: Coat;
  readonly filmWM2K: number;
  readonly pocketSM: number;
  readonly intervals: readonly DryingInterval[];
  readonly spread: ReadySpread;
}): { readonly early: DryingResult; readonly likely: DryingResult; readonly late: DryingResult } {
  const through = (resistanceFactor: number): DryingResult => dryThrough({ ...rest, resistanceFactor });
  return { early: through(spread.early), likely: through(spread.likely), late: through(spread.late) };
}
