import { expect, test } from "vitest";
import type { PlannedStep } from "../../../physics/metal/pourDay.ts";
import { currentOf, dueAt, leadOf } from "./trackState.ts";

const step = (id: string, state: PlannedStep["state"], startAt: number, endAt: number) => ({
  id,
  steps: [{ id, state, startAt, endAt } as PlannedStep],
});

test("the first due track leads, a running one by its end", () => {
  const tracks = [
    step("metal", "running", 0, 90),
    step("tools", "waiting", 60, 80),
    step("sand", "done", 0, 1),
  ];
  expect(leadOf(tracks, 10)?.id).toBe("tools");
  expect(leadOf([tracks[0]!, step("tools", "waiting", 95, 99)], 10)?.id).toBe("metal");
});

test("of two that are due, what has not begun leads before what runs past its end", () => {
  const tracks = [step("metal", "running", 0, 100), step("tools", "waiting", 95, 130)];
  expect(leadOf(tracks, 100)?.id).toBe("tools");
});

test("with all done none leads", () => {
  const done = step("sand", "done", 0, 1);
  expect(currentOf(done)).toBeUndefined();
  expect(dueAt(done)).toBe(Infinity);
  expect(leadOf([done], 5)).toBeUndefined();
});
