import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { expect, test } from "vitest";
import { ringsAt } from "./pourDues.ts";

const due = (minute: number, id = "p-metal-melted") => ({
  id,
  dueMs: minute * minuteMs,
  title: "Melt",
  says: "",
});
const ids = (look: ReturnType<typeof ringsAt>): readonly string[] => look.ring.map(({ id }) => id);

test("a step rings once as its time comes, though its time then goes along with the clock", () => {
  const before = ringsAt([due(10)], { rung: new Set(), now: 9 * minuteMs, isFirst: true });
  expect(ids(before)).toEqual([]);
  const come = ringsAt([due(10)], { rung: before.rung, now: 10 * minuteMs, isFirst: false });
  expect(ids(come)).toEqual(["p-metal-melted"]);
  // Nobody began it: it would now begin a minute later, and again a minute later.
  const later = ringsAt([due(11)], { rung: come.rung, now: 11 * minuteMs, isFirst: false });
  expect(ids(later)).toEqual([]);
});

test("a step that was put off by a quarter of an hour rings again", () => {
  const come = ringsAt([due(10)], { rung: new Set(), now: 10 * minuteMs, isFirst: false });
  const putOff = ringsAt([due(25)], { rung: come.rung, now: 10.5 * minuteMs, isFirst: false });
  expect(ids(putOff)).toEqual([]);
  expect(ids(ringsAt([due(25)], { rung: putOff.rung, now: 25 * minuteMs, isFirst: false }))).toHaveLength(1);
});

test("what was due long before the screen was opened does not ring as news", () => {
  const first = ringsAt([due(0), due(29.5, "p-skim")], {
    rung: new Set(),
    now: 30 * minuteMs,
    isFirst: true,
  });
  expect(ids(first)).toEqual(["p-skim"]);
});
