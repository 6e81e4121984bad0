import type { UpResults } from "./patternResults.ts";

type Place = UpResults["drains"][number];

/** The lowest of all places that drain; of several bodies, or of a skin within another, the one furthest down. */
export const lowestPlace = ({ drains }: Pick<UpResults, "drains">): Place | null =>
  drains.reduce<Place | null>(
    (least, one) => (least === null || one.heightMm < least.heightMm ? one : least),
    null,
  );
