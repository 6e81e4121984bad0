import { expect, test } from "vitest";
import { minSec, stopRule } from "./stopWords.ts";

const latest = { surelyMin: 1.3, likelyMin: 1.8, reachedMin: 20, neverWarmEnough: false };

test("minutes are said as on a watch", () => {
  expect([0, 0.5, 1, 1.3, 1.8, 20].map(minSec)).toEqual([
    "0 s",
    "30 s",
    "1 min",
    "1 min 18 s",
    "1 min 48 s",
    "20 min",
  ]);
});

test("the stop rule is said ahead, while it runs, once it is late and once it is over", () => {
  const ahead = "Pour within 1 min 18 s. Stop at 1 min 48 s: shell too cold.";
  expect(stopRule(latest, null)).toEqual({ kind: "fine", text: ahead });
  expect(stopRule(latest, 1.3)).toEqual({ kind: "fine", text: ahead });
  expect(stopRule(latest, 1.31)).toEqual({
    kind: "late",
    text: "Late: pour now or put it back. Stop at 1 min 48 s: shell too cold.",
  });
  expect(stopRule(latest, 1.8).kind).toBe("late");
  expect(stopRule(latest, 1.81)).toEqual({
    kind: "stop",
    text: "Stop: shell too cold. Put it back in the kiln.",
  });
});

test("a shell that leaves the kiln too cold is stopped at once, and one with no end in sight by its sum’s end", () => {
  expect(stopRule({ ...latest, surelyMin: 0, likelyMin: 0, neverWarmEnough: true }, 0).kind).toBe("stop");
  const long = { surelyMin: null, likelyMin: null, reachedMin: 20, neverWarmEnough: false };
  expect(stopRule(long, 19.9)).toEqual({ kind: "fine", text: "Pour within 20 min. Stop after 20 min." });
  expect(stopRule(long, 20.1).kind).toBe("stop");
});
