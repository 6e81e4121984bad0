import { expect, test } from "vitest";
import { bodyOf, emptyReading, isNothing, stepAfter, stepPast } from "./readDraft.ts";

test("two dips that agree within 8 % need no third, two that don't ask for it", () => {
  expect(stepAfter({ ...emptyReading, dips: [24, 25.9] }, "dip-2")).toBe("slurryC");
  expect(stepAfter({ ...emptyReading, dips: [24, 26.1] }, "dip-2")).toBe("dip-3");
});

test("leaving out a dip leaves out those after it", () => {
  expect(stepPast(emptyReading, "dip-1")).toBe("slurryC");
  expect(stepPast({ ...emptyReading, dips: [24] }, "dip-2")).toBe("slurryC");
});

test("two dips are logged with their mean, three with the mean of the nearest two", () => {
  const draft = { ...emptyReading, cupId: "zahn-4" };
  expect(bodyOf({ ...draft, dips: [24, 25] }, null)).toEqual({
    cupId: "zahn-4",
    cupS: 24.5,
    dipsS: [24, 25],
  });
  expect(bodyOf({ ...draft, dips: [24, 27, 24.4] }, null).cupS).toBeCloseTo(24.2, 9);
});

test("a weighed volume is logged as the two weighings, an instrument's word as it is, never both", () => {
  const both = { ...emptyReading, weighedG: 168.2, densityGCm3: 1.69 };
  expect(bodyOf({ ...both, how: "weighed" }, null)).toEqual({ weighedG: 168.2, weighedMl: 100 });
  expect(bodyOf({ ...both, how: "instrument" }, null)).toEqual({ densityGCm3: 1.69 });
});

test("a look that found nothing is a finding of its own; no look says nothing", () => {
  expect(bodyOf({ ...emptyReading, looked: true }, null)).toEqual({
    smell: "none",
    skin: false,
    lumps: false,
    foam: false,
  });
  expect(bodyOf(emptyReading, null)).toEqual({});
});

test("a cup chosen and a name signed are no reading yet", () => {
  expect(isNothing({ ...emptyReading, cupId: "zahn-4", asLeft: true })).toBe(true);
  expect(isNothing({ ...emptyReading, pH: 9.4 })).toBe(false);
});
