/** How much of a mesh this device is asked to carry; triangles, and cells along the longest side. */
export type PatternCaps = {
  /** The whole mesh is analysed up to this; a lighter copy above. */
  readonly full: number;
  readonly display: number;
  readonly search: number;
  readonly cells: number;
  readonly columns: number;
};

const desktop: PatternCaps = {
  full: 5_000_000,
  display: 300_000,
  search: 20_000,
  cells: 192,
  columns: 256,
};
const phone: PatternCaps = { full: 1_500_000, display: 150_000, search: 20_000, cells: 128, columns: 256 };

/**
 * Caps by what the browser tells of its device; judgement, no source. `memoryGb` is rounded and capped by browsers
 * and undefined in some; a coarse pointer as the first one means a phone or tablet.
 */
export function capsOf({
  memoryGb,
  isTouch,
}: {
  memoryGb: number | undefined;
  isTouch: boolean;
}): PatternCaps {
  const isSmall = memoryGb === undefined ? isTouch : memoryGb < 4 || (isTouch && memoryGb < 8);
  return isSmall ? phone : desktop;
}
