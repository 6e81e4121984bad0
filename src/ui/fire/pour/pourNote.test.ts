import { expect, test } from "vitest";
import { heatEstimated, ofPourNote, pourNote } from "./pourNote.ts";

test("a person's line and the mark of an estimate live side by side, in old notes too", () => {
  expect(ofPourNote(pourNote("two vents dark", true))).toEqual({
    words: "two vents dark",
    isEstimated: true,
  });
  expect(ofPourNote(pourNote("  ", true))).toEqual({ words: "", isEstimated: true });
  expect(pourNote(" ", false)).toBeUndefined();
  expect(pourNote("", true)).toBe(heatEstimated);
  expect(ofPourNote("shell at the metal: reckoned")).toEqual({ words: "", isEstimated: true });
  expect(ofPourNote("ran well")).toEqual({ words: "ran well", isEstimated: false });
});
