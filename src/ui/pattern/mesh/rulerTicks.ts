import type { Format } from "../../base/format/units.ts";

/** Marks of a ruler from 0 up to `tallMm`: round steps in the person's own unit, five or so of them. */
export function rulerTicks(
  tallMm: number,
  format: Format,
): readonly { readonly aboveMm: number; readonly label: string }[] {
  const tall = format.toShown("mm", tallMm);
  if (!(tall > 0)) return [];
  const rough = tall / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * power).find((one) => one >= rough) ?? 10 * power;
  const count = Math.floor(tall / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, n) => {
    const shown = n * step;
    const label = format.number(shown, step < 1 ? 2 : 0);
    return {
      aboveMm: format.fromShown("mm", shown),
      label: n === count ? `${label}\u00a0${format.unit("mm")}` : label,
    };
  });
}
