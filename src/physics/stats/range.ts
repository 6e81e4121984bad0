/** Throws a RangeError unless `value` lies in low–high; says what was found and what was expected. */
export function requireWithin(
  name: string,
  value: number,
  { low, high, unit }: { low: number; high: number; unit: string },
): void {
  // Written so that NaN and a non-number fall through to the refusal.
  if (typeof value === "number" && value >= low && value <= high) return;
  throw new RangeError(`${name} must be ${low}–${high}${unit === "" ? "" : ` ${unit}`}, found ${value}`);
}

/** Throws a RangeError unless `rh` is a fraction 0–1, so that a percentage is caught at once. */
export function requireFraction(name: string, value: number): void {
  requireWithin(name, value, { low: 0, high: 1, unit: "(a fraction, not percent)" });
}

/** Throws a RangeError unless the air pressure is in Pa and of this world (kPa and hPa are caught). */
export function requireAirPressure(pressurePa: number): void {
  requireWithin("pressurePa", pressurePa, { low: 20_000, high: 120_000, unit: "Pa (not hPa or kPa)" });
}

/** Under this no figure above zero is one of a shop; dividing by less would leave the numbers altogether. */
const leastPositive = 1e-12;

/** Throws a RangeError unless the value is above zero (from 1e-12 on), at most `high`. */
export function requirePositive(
  name: string,
  value: number,
  { high, unit }: { high: number; unit: string },
): void {
  if (typeof value === "number" && value >= leastPositive && value <= high) return;
  throw new RangeError(
    `${name} must be above 0 (from ${leastPositive}) and at most ${high} ${unit}, found ${value}`,
  );
}

/** Throws a RangeError unless every figure named is a number of a size that sums can bear, ± 1e15. */
export function requireFigures(figures: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(figures))
    requireWithin(name, value, { low: -1e15, high: 1e15, unit: "" });
}

/** Throws a RangeError unless the value is a whole number in low–high. */
export function requireWhole(
  name: string,
  value: number,
  { low, high }: { low: number; high: number },
): void {
  requireWithin(name, value, { low, high, unit: "" });
  if (!Number.isInteger(value)) throw new RangeError(`${name} must be a whole number, found ${value}`);
}

/** Throws a RangeError unless the time is one of the years 1970 to 2500, epoch ms. */
export function requireMoment(name: string, atMs: number): void {
  requireWithin(name, atMs, { low: 0, high: 16_725_225_600_000, unit: "ms since 1970" });
}

/** Throws a RangeError unless every figure in the value, however deep, is one that sums can bear, ± 1e15. */
export function requireEveryFigure(name: string, value: unknown): void {
  if (typeof value === "number") requireFigures({ [name]: value });
  if (typeof value !== "object" || value === null) return;
  for (const [key, inner] of Object.entries(value)) requireEveryFigure(`${name}.${key}`, inner);
}
