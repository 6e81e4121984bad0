import { expect, test } from "vitest";
import { cupCheck } from "./cupCheck.ts";

test("12.5 s against 12.5 s agree; 14.1 s is more than 11 % off and suspect, 13.8 s is not yet", () => {
  expect(cupCheck({ referenceS: 12.5, workingS: 12.5 })).toEqual({ share: 0, verdict: "agrees" });
  expect(cupCheck({ referenceS: 12.5, workingS: 14.1 }).verdict).toBe("suspect");
  expect(cupCheck({ referenceS: 12.5, workingS: 13.8 }).verdict).toBe("apart");
});

test("a scoured cup reads thin, and the sign tells it", () => {
  const check = cupCheck({ referenceS: 24, workingS: 20 });
  expect(check.share).toBeLessThan(0);
  expect(check.verdict).toBe("suspect");
});
