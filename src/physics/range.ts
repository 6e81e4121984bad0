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

/** Throws a RangeError unless the value is finite and above zero, at most `high`. */
export function requirePositive(
  name: string,
  value: number,
  { high, unit }: { high: number; unit: string },
): void {
  if (typeof value === "number" && value > 0 && value <= high) return;
  throw new RangeError(`${name} must be above 0 and at most ${high} ${unit}, found ${value}`);
}
