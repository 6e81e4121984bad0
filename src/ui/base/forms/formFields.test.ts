import { describe, expect, test } from "vitest";
import { fields as table } from "../../../logbook/entries/fields.ts";
import { makeFormat } from "../format/units.ts";
import {
  asGiven,
  checkFields,
  chosen,
  figure,
  figureOrNone,
  figureOrNull,
  oneOf,
  photoIds,
  rowsOf,
  startOf,
  ticked,
  withoutEmpty,
  words,
  wordsOrNone,
} from "./formFields.ts";

const metric = makeFormat("metric", "en-GB");
const plain = (sentence: string | undefined): string | undefined => sentence?.replaceAll("\u00a0", " ");

describe("a figure", () => {
  const remedy = "Read it again.";
  const fields = { wallMm: figure("wallMm", { what: "wall", remedy }) };
  const complaint = (wallMm: number | null, format = metric): string | undefined => {
    const read = checkFields(fields, { wallMm }, format);
    return read.ok ? undefined : plain(read.errors["wallMm"]);
  };

  test("has unit and range from the table of the entries, both ends allowed", () => {
    const [low, high] = table.wallMm.entry;
    expect(fields.wallMm.quantity).toBe("mm");
    expect(complaint(low)).toBeUndefined();
    expect(complaint(high)).toBeUndefined();
    expect(complaint(high + 0.1)).toBe(
      "Found 60.1 mm for the wall, expected 0.1 mm to 60 mm. Read it again.",
    );
  });

  test("that is missing, or is no number, says what is expected and what to do", () => {
    expect(complaint(null)).toBe("Found no wall, expected 0.1 mm to 60 mm. Read it again.");
    expect(complaint(Number.NaN)).toBe("Found no wall, expected 0.1 mm to 60 mm. Read it again.");
  });

  test("is complained of in the reader's own unit", () => {
    expect(complaint(254, makeFormat("us", "en-US"))).toMatch(/^Found 10 in for the wall, expected/);
  });

  test("that may be left empty is undefined or null as its entry keeps it, and is still held to its range", () => {
    const may = {
      drainS: figureOrNone("drainS", { what: "drain time", remedy }),
      metalC: figureOrNull("metalC", { what: "metal temperature", remedy }),
    };
    const read = checkFields(may, startOf(may), metric);
    expect(read.ok && read.value).toEqual({ drainS: undefined, metalC: null });
    const wrong = checkFields(may, { drainS: -1, metalC: 20 }, metric);
    expect(!wrong.ok && Object.keys(wrong.errors)).toEqual(["drainS", "metalC"]);
  });

  test("of a form's own unit is held to the form's own range", () => {
    const own = { range: { low: 10, high: 10_000 }, quantity: "mm", why: "typed in millimetres" } as const;
    const headMm = figure("headM", { what: "head", remedy, own });
    const read = checkFields({ headMm }, { headMm: 0.4 }, metric);
    expect(!read.ok && plain(read.errors["headMm"])).toMatch(/^Found 0.4 mm for the head, expected 10 mm to/);
  });
});

describe("words and choices", () => {
  test("words are trimmed, wanted where they are needed, and bounded", () => {
    const fields = { name: words("name", "Write it.", 5), note: wordsOrNone };
    const read = checkFields(fields, { name: "  Fox ", note: "   " }, metric);
    expect(read.ok && read.value).toEqual({ name: "Fox", note: undefined });
    const none = checkFields(fields, { name: " ", note: "x".repeat(4001) }, metric);
    expect(!none.ok && none.errors).toEqual({
      name: "Found no name. Write it.",
      note: "Found 4001 letters, expected 4000 at most. Shorten the note.",
    });
    const long = checkFields(fields, { name: "Heron", note: "" }, metric);
    expect(long.ok).toBe(true);
    expect(checkFields(fields, { name: "Herons", note: "" }, metric).ok).toBe(false);
  });

  test("a choice not made, or one that can't be made any more, is asked for", () => {
    const fields = { kind: oneOf(["a", "b"], "the kind"), id: chosen("Tap it.", ["one"]) };
    const read = checkFields(fields, { kind: null, id: "gone" }, metric);
    expect(!read.ok && read.errors).toEqual({ kind: "Nothing chosen for the kind. Tap one.", id: "Tap it." });
  });

  test("what says nothing leaves no key behind", () => {
    const fields = { isOff: ticked, photos: photoIds, note: wordsOrNone };
    const read = checkFields(fields, startOf(fields), metric);
    expect(read.ok && withoutEmpty(read.value)).toEqual({});
    const full = checkFields(fields, { isOff: true, photos: ["p"], note: "x" }, metric);
    expect(full.ok && full.value).toEqual({ isOff: true, photos: ["p"], note: "x" });
  });
});

test("fields that speak of each other are asked once each is fine by itself", () => {
  const fields = { low: asGiven(0), name: words("name", "Write it.") };
  const across = () => ({ low: "Too low." });
  const bare = checkFields(fields, { low: 1, name: "" }, metric, across);
  expect(!bare.ok && bare.errors).toEqual({ name: "Found no name. Write it." });
  const named = checkFields(fields, { low: 1, name: "Fox" }, metric, across);
  expect(!named.ok && named.errors).toEqual({ low: "Too low." });
});

test("a complaint in a row stands at its own row, one of the list at the list", () => {
  const row = { name: words("name", "Write it.") };
  const fields = {
    rows: rowsOf(row, {
      most: 2,
      none: "None.",
      tooMany: (count) => `${count} are too many.`,
      toRow: ({ name }) => name,
    }),
  };
  const errors = (names: readonly string[]) => {
    const read = checkFields(fields, { rows: names.map((name) => ({ name })) }, metric);
    return read.ok ? read.value : read.errors;
  };
  expect(errors(["a", " "])).toEqual({ "rows.1.name": "Found no name. Write it." });
  expect(errors([])).toEqual({ rows: "None." });
  expect(errors(["a", "b", "c"])).toEqual({ rows: "3 are too many." });
  expect(errors(["a", "b"])).toEqual({ rows: ["a", "b"] });
});

test("what is known to begin with stands before the field's own start", () => {
  const fields = { name: words("name", "Write it."), count: asGiven(1) };
  expect(startOf(fields, { name: "Fox" })).toEqual({ name: "Fox", count: 1 });
});
