import { expect, test } from "vitest";
import { padNumber, padPressed, padStepped, type PadKey, type PadText } from "./keypadText.ts";

const empty: PadText = { text: "", isWhole: false };
const typed = (keys: readonly PadKey[], from: PadText = empty): string => keys.reduce(padPressed, from).text;

test("digits and a mark make a number, a second mark is not taken", () => {
  expect(typed(["1", "2", "mark", "4"])).toBe("12.4");
  expect(typed(["1", "mark", "mark", "6"])).toBe("1.6");
  expect(typed(["mark", "5"])).toBe("0.5");
});

test("a leading nought gives way, and no more than eight places fit", () => {
  expect(typed(["0", "0", "7"])).toBe("7");
  expect(typed(["1", "2", "3", "4", "5", "6", "7", "8", "9"])).toBe("12345678");
});

test("a digit on a whole number begins anew, back clears it, a step leaves it whole", () => {
  const stepped = padStepped("12.3", { step: 0.2, from: 0, digits: 1, low: 1, high: 600 });
  expect(stepped).toEqual({ text: "12.4", isWhole: true });
  expect(typed(["9"], stepped)).toBe("9");
  expect(typed(["back"], stepped)).toBe("");
});

test("steps go to the next multiple, start where they are told and stop at the ends", () => {
  const of = { step: -0.1, from: 9.6, digits: 1, low: 0, high: 14 };
  expect(padStepped("", of).text).toBe("9.6");
  expect(padStepped("9.55", of).text).toBe("9.5");
  expect(padStepped("0.0", of).text).toBe("0.0");
});

test("what is not a number yet is none", () => {
  expect(padNumber("")).toBeNull();
  expect(padNumber("12.")).toBe(12);
});
