import fc from "fast-check";

/** For tests only: what the fields of any body may hold, most of it making little sense. */
export const ids = Array.from({ length: 12 }, (_, i) => `id${i}`);
export const anId = fc.constantFrom(...ids);
export const someText = fc.constantFrom("", "wing", "cup");
export const aNumber = fc.oneof(
  fc.double({ min: -100, max: 2000, noNaN: true }),
  fc.constantFrom(0, 1, 0.5, NaN, Infinity, -1),
);
export const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });
export const orNull = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { nil: null });
/** Lists of a logger, of one length or not. */
export const someNumbers = fc.array(aNumber, { maxLength: 4 });
export const someSeconds = fc
  .array(fc.integer({ min: 1, max: 20_000 }), { maxLength: 4 })
  .map((steps) => steps.map((_, i) => steps.slice(0, i).reduce((sum, step) => sum + step, 0)));
