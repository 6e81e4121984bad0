import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { later, read, standingAt } from "../../../tests/logs/testBucket.ts";
import { guideSteps } from "./guide.ts";
import { readAgain } from "./readAgain.ts";

const ids = (from: Parameters<typeof guideSteps>[0]) => guideSteps(from).map(({ id }) => id);
const first = { kind: "prime", prewet: false, coatsDone: 0, coatsPlanned: 8 } as const;

describe("a guided dip", () => {
  test("a prime has no prewet, is looked at for bare wax, and is in the log once the stucco is on", () => {
    const steps = guideSteps(first);
    expect(steps.map(({ id }) => id)).toEqual([
      "piece-ready",
      "bucket-ready",
      "enter",
      "bubbles",
      "drain",
      "wait",
      "stucco",
      "after",
      "dry",
    ]);
    expect(steps.flatMap(({ hold }) => (hold === null ? [] : [hold]))).toEqual(["prime-coverage", "cup-rim"]);
    expect(steps.filter(({ logsCoat }) => logsCoat).map(({ id }) => id)).toEqual(["stucco"]);
    expect(steps.filter(({ dust }) => dust).map(({ id }) => id)).toEqual(["stucco"]);
  });

  test("a backup is prewetted only where the maker wants it", () => {
    const backup = { ...first, kind: "backup", coatsDone: 5 } as const;
    expect(ids(backup)).not.toContain("prewet");
    expect(ids({ ...backup, prewet: true })).toContain("prewet-drain");
  });

  test("a seal has no stucco: it is in the log once drained, and the shell is looked over first", () => {
    const steps = guideSteps({ ...first, kind: "seal", coatsDone: 7 });
    expect(steps.find(({ logsCoat }) => logsCoat)?.id).toBe("drain");
    expect(steps[0]?.hold).toBe("before-seal");
  });

  test("after the second coat, and half way, the shell is looked over", () => {
    const of = (coatsDone: number) => guideSteps({ ...first, kind: "backup", coatsDone })[0]?.hold ?? null;
    expect([1, 2, 3, 4, 5].map(of)).toEqual([null, "after-second-coat", null, "mid-shell", null]);
  });
});

describe("reading again within a visit", () => {
  const standing = standingAt(later, { readings: [read("r", later - hourMs / 2)] });
  const visit = { startedAt: later - hourMs, now: later, dips: [] };

  test("half an hour after a reading and little used: no", () => {
    expect(readAgain(standing, visit)).toBeNull();
  });

  test("an hour open since it was read: yes", () => {
    expect(readAgain(standing, { ...visit, now: later + hourMs / 2 })?.because).toBe("open");
  });

  test("a tenth gone out since it was read: yes; what went before counts no more", () => {
    // 20 L of 1.68 hold 33.6 kg.
    const dip = (at: number) => ({ at, slurryKg: 3.4 });
    expect(readAgain(standing, { ...visit, dips: [dip(later)] })?.because).toBe("used");
    expect(readAgain(standing, { ...visit, dips: [dip(later - 0.9 * hourMs)] })).toBeNull();
  });

  test("a bucket nobody told of is not asked for", () => {
    const untold = standingAt(later, { targets: {}, mixes: [] });
    expect(readAgain(untold, { ...visit, startedAt: later - 9 * hourMs })).toBeNull();
  });
});
