import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { faultsOfText } from "../../../../tests/wordRules.ts";
import { textsOfCatalogue } from "../../../../tests/catalogueTexts.ts";

const files = readdirSync(import.meta.dirname).filter(
  (name) => name.endsWith(".ts") && !name.endsWith(".test.ts") && name !== "catalogue.ts",
);

test("the whole catalogue is read", async () => {
  const texts = await textsOfCatalogue();
  expect(files.length).toBeGreaterThan(20);
  expect(new Set(texts.map(({ file }) => file))).toEqual(new Set(files));
});

describe("every text of the catalogue is in the words of the trade, in short sentences", async () => {
  const texts = await textsOfCatalogue();
  test.each(texts)("$part, $key", ({ text }) => {
    expect(faultsOfText(text, false)).toEqual([]);
  });
});

test("a house word, a source and a long sentence are each found", () => {
  const long = Array.from({ length: 23 }, () => "word").join(" ");
  expect(faultsOfText("The crack was mended", false)).toHaveLength(1);
  expect(faultsOfText("Common practice: 12 h", false)).toHaveLength(1);
  expect(faultsOfText("Common practice: 12 h", true)).toHaveLength(0);
  expect(faultsOfText(`${long}.`, false)).toHaveLength(1);
  expect(faultsOfText("Repair the crack. Coat over it; let it dry.", false)).toEqual([]);
});
