import type { Format } from "../format/units.ts";

const metricMm = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
const inchParts = [
  ["1/64", 1 / 64],
  ["1/32", 1 / 32],
  ["1/16", 1 / 16],
  ["1/8", 1 / 8],
  ["1/4", 1 / 4],
  ["1/2", 1 / 2],
  ["1", 1],
  ["2", 2],
] as const;

/** A round length in the person's own unit, the longest that is at most `mostMm`. */
export function scaleBar(format: Format, mostMm: number): { readonly mm: number; readonly text: string } {
  if (format.unit("mm") === "in") {
    const [text, inch] = inchParts.findLast(([, inch]) => inch * 25.4 <= mostMm) ?? inchParts[0];
    return { mm: inch * 25.4, text: `${text} in` };
  }
  const mm = metricMm.findLast((mm) => mm <= mostMm) ?? 0.1;
  return { mm, text: format.show("mm", mm) };
}
