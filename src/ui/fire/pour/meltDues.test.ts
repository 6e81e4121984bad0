import { expect, test } from "vitest";
import { meltDues } from "./meltDues.ts";

const at = Date.UTC(2026, 4, 9, 12);
const melt = { id: "m" };

test("a melt on the fire is due when it should be at pouring heat, always under one name", () => {
  const [due, ...more] = meltDues(melt, { endsAt: at, doneAt: null }, "Tin bronze");
  expect(more).toEqual([]);
  expect(due).toMatchObject({ id: "m-hot", dueMs: at, path: "/fire/melt/m" });
  expect(due?.words).toBe("Tin bronze: about at pouring temperature, measure it");
  expect(meltDues(melt, { endsAt: at + 1, doneAt: null }, "Tin bronze")[0]?.id).toBe("m-hot");
});

test("nothing is due before it was lit, where no time can be said, and once it was read hot", () => {
  expect(meltDues(melt, null, "Tin bronze")).toEqual([]);
  expect(meltDues(melt, { endsAt: null, doneAt: null }, "Tin bronze")).toEqual([]);
  expect(meltDues(melt, { endsAt: at, doneAt: at - 1 }, "Tin bronze")).toEqual([]);
});
