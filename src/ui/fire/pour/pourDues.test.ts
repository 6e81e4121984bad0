import { expect, test } from "vitest";
import type { PourPlan } from "../../../physics/metal/pourDay.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import type { KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import { pourDues } from "./pourDues.ts";

const noon = Date.UTC(2026, 4, 9, 12);
const at = (minute: number): number => noon + minute * 60_000;
const pour = { id: "p" } as Pour;
const step = (id: string, minute: number, state: "waiting" | "done") => ({ id, startAt: at(minute), state });
const plan = {
  pourAt: at(60),
  tracks: [
    { id: "metal", steps: [step("crucible-warmed", -30, "done"), step("metal-melted", 10, "waiting")] },
    { id: "people", steps: [step("people-dressed", 45, "waiting")] },
  ],
  advice: [
    { step: "metal-melted", skimAt: at(50) },
    { step: "people-dressed", skimAt: null },
  ],
} as unknown as PourPlan;
const course = (pieceId: string, knockedOut: boolean) =>
  ({ pieceId, name: pieceId, knockedOut }) as unknown as ShellCourse;
const out = (pieceId: string, minute: number): KnockoutTimes => ({
  pieceId,
  fullAt: at(60),
  frozenAt: null,
  outAt: at(minute),
  from: "usual",
});
const none = { knockouts: [], courses: [] };

test("a pour day is due with every step that waits, the skimming and the pour, in the order of the clock", () => {
  const dues = pourDues({ pour, plan, hasBegun: false, ...none });
  expect(dues.map(({ id, dueMs }) => [id, (dueMs - noon) / 60_000])).toEqual([
    ["p-metal-melted", 10],
    ["p-people-dressed", 45],
    ["p-skim-metal-melted", 50],
    ["p-pour", 60],
  ]);
  expect(new Set(dues.map(({ path }) => path))).toEqual(new Set(["/fire/pour/p"]));
});

test("once metal moves only full shells that are not broken out yet are due", () => {
  const dues = pourDues({
    pour,
    plan,
    hasBegun: true,
    knockouts: [out("heron", 120), out("fox", 90), null],
    courses: [course("heron", false), course("fox", true), course("owl", false)],
  });
  expect(dues.map(({ id, words }) => [id, words])).toEqual([
    ["p-knock-out-heron", "heron: ready to knock out"],
  ]);
});

test("its event says that the time is a plan's", () => {
  const [first] = pourDues({ pour, plan, hasBegun: false, ...none });
  expect(first?.calendar(String)).toMatchObject({ durationMin: 5, summary: first?.words });
  expect(first?.calendar(String).description).toMatch(/The time is from the plan. If something is late/);
});
