import { expect, test } from "vitest";
import { saidWords, unsaidWords } from "./saidWords.ts";
import { makeFormat } from "./units.ts";

const metric = makeFormat("metric", "en-GB");

test("a weighing tells the water left with its error, and the dry mass", () => {
  const said = {
    by: "target-mass",
    waterShare: 0.292,
    sdShare: 0.07,
    targetG: 1285.26,
    sdG: 1.2,
    waterG: 16.2,
  } as const;
  expect(saidWords(said, metric)).toBe(
    "29% of all its water left, ± 7%; dry weight 1,285.3\u00a0g, ± 1.2\u00a0g",
  );
  expect(saidWords(said, makeFormat("us", "en-US"))).toContain("45.336\u00a0oz");
});

test("a surface reading over a pocket says that it reads only the outer face", () => {
  const said = {
    by: "surface",
    index: 0.97,
    indexSd: 0.05,
    endIndex: 0.8,
    says: "dry",
    isSure: true,
    place: "open",
  } as const;
  expect(saidWords({ ...said, outerFaceOnly: true }, metric)).toContain("only the outer face");
  expect(saidWords({ ...said, outerFaceOnly: false }, metric)).not.toContain("outer face");
});

test("what can't be read says why, with its numbers", () => {
  expect(unsaidWords({ kind: "refused", code: "air-too-damp", rh: 0.84, mostRh: 0.8 }, metric)).toBe(
    "does not work at 84% humidity; the room must be under 80%",
  );
  expect(unsaidWords({ kind: "refused", code: "too-soon", baggedS: 300, leastS: 1200 }, metric)).toBe(
    "5 min in the bag; it takes 20 min",
  );
});
