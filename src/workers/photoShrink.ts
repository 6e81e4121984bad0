/** Longest side of a stored photo, px: fills a phone's screen and shows a hairline crack, at about 250 kB. */
export const longestPx = 1600;

/** JPEG quality 0–1. Our own choice: no visible change on stucco, a tenth of a camera's file. */
export const jpegQuality = 0.8;

/**
 * The size to store a picture at, px: longest side at most `limitPx`, shape kept, never enlarged, no side under 1.
 *
 * Refuses sides that are not whole numbers from 1 with RangeError, as no picture has them.
 */
export function targetSize({
  widthPx,
  heightPx,
  limitPx = longestPx,
}: {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly limitPx?: number | undefined;
}): { readonly widthPx: number; readonly heightPx: number } {
  for (const [name, side] of Object.entries({ widthPx, heightPx, limitPx }))
    if (!Number.isSafeInteger(side) || side < 1)
      throw new RangeError(`${name} must be a whole number from 1, found ${side}`);
  const scale = Math.min(1, limitPx / Math.max(widthPx, heightPx));
  const shrunk = (side: number): number => Math.max(1, Math.round(side * scale));
  return { widthPx: shrunk(widthPx), heightPx: shrunk(heightPx) };
}
