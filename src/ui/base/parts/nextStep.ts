/**
 * The next multiple of the step in its direction, within the ends. A value between two multiples goes to the nearer
 * one ahead, so that 20.3 with a step of 0.5 becomes 20.5 and not 20.8.
 */
export function nextStep(of: {
  readonly value: number;
  readonly step: number;
  readonly min: number;
  readonly max: number;
}): number {
  const size = Math.abs(of.step);
  const places = of.value / size;
  const slack = 1e-6;
  const place = of.step > 0 ? Math.floor(places + slack) + 1 : Math.ceil(places - slack) - 1;
  const next = Number((place * size).toPrecision(12));
  return Math.min(of.max, Math.max(of.min, next));
}
