import fc from "fast-check";
import { expect, test } from "vitest";
import { pourWords, readTold, startingTold, toldNote } from "./pourTold.ts";

const figure = fc.double({ min: 0.1, max: 50, noNaN: true }).map((value) => Number(value.toPrecision(6)));

test("what was told comes back from the note, and so do a person's own words", () => {
  fc.assert(
    fc.property(
      fc.record({
        family: fc.constantFrom("fused-silica" as const, "zircon" as const),
        people: fc.integer({ min: 1, max: 20 }),
        carryMin: figure,
        metalKg: fc.option(figure),
        thinnestMm: fc.array(fc.option(figure), { minLength: 1, maxLength: 4 }),
      }),
      fc.constantFrom("", "two of us", "line one\nline two"),
      (told, words) => {
        const note = toldNote(told, words);
        const read = readTold(note);
        const nobody = told.thinnestMm.every((mm) => mm === null);
        expect({ ...read, thinnestMm: nobody ? [] : read.thinnestMm }).toEqual({
          ...told,
          thinnestMm: nobody ? [] : told.thinnestMm,
        });
        expect(pourWords(note)).toBe(words);
      },
    ),
    { numRuns: 100 },
  );
});

test("a note in a person's own words leaves the starting values", () => {
  expect(readTold("bring the long tongs")).toEqual(startingTold);
  expect(pourWords("bring the long tongs")).toBe("bring the long tongs");
  expect(readTold(undefined)).toEqual(startingTold);
});

test("a spoilt line falls back to starting values, never to nonsense", () => {
  expect(readTold("Planned with: stucco moon; people 0; metal nothing; thinnest ? / -3 mm")).toMatchObject({
    family: "fused-silica",
    people: 2,
    metalKg: null,
    thinnestMm: [null, null],
  });
});
