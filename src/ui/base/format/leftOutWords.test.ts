import { expect, test } from "vitest";
import { leftOutWords } from "./leftOutWords.ts";
import { makeFormat } from "./units.ts";

test("names the figure, its day, what the sums take and what to do", () => {
  const at = Date.UTC(2026, 2, 3, 12);
  const said = { entryId: "e", at, key: "kilnC", value: 2500, low: -30, high: 1500 };
  const words = leftOutWords(said, makeFormat("metric", "en-GB")).replaceAll(/\s/g, " ");
  expect(words).toBe(
    "Kiln temperature 2,500 °C on 3 March is out of range (-30 °C to 1,500 °C). Calculations leave it out. Correct or delete it.",
  );
});
