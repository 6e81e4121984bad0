import { describe, expect, test } from "vitest";
import { keeping, pla, plan, runStart, wax } from "../../../tests/givenFiring.ts";
import { burnAir } from "../drying/burnAir.ts";
import { checkSchedule } from "./checkSchedule.ts";
import { firingPractice } from "./firingLimits.ts";
import type { FiringPlan } from "./firingSchedule.ts";
import type { Segment } from "./firingSegments.ts";
import { scheduleCurve } from "./firingSegments.ts";
import { judgeRun } from "./kilnRun.ts";

/** Lowest flash point of waxes, 200 °C: the trade's table, from memory of waxes. */
const drained = { ...wax, massKg: 0.08, flashC: 200, staysShare: 0.1 };
const onTray = plan({ pattern: drained, waxLeaves: "tray" });
const through = plan({ pattern: { ...drained, massKg: 0.5 }, route: "flash", waxLeaves: "floor" });

const instructions = (made: FiringPlan) =>
  made.segments.flatMap((part) => (part.kind === "instruction" ? [part.code] : []));
const placeOf = (made: FiringPlan, code: string): number =>
  made.segments.findIndex((part) => part.kind === "instruction" && part.code === code);
const trayFaults = (made: FiringPlan, edit: (all: readonly Segment[]) => readonly Segment[]) =>
  checkSchedule(edit(made.segments), { limits: made.limits, startC: 20 }).filter(
    ({ code }) => code === "tray-in-too-hot",
  );

describe("wax melted out in the kiln onto a tray", () => {
  test("tray in, held where it runs, then kiln off and tray out before anything hotter", () => {
    const [inAt, outAt] = [placeOf(onTray, "tray-in"), placeOf(onTray, "tray-out")];
    expect(inAt).toBeGreaterThan(-1);
    const between = onTray.segments.slice(inAt, outAt);
    expect(between).toContainEqual(expect.objectContaining({ kind: "hold", atC: 150, minutes: 30 }));
    expect(onTray.segments[outAt - 1]).toMatchObject({ kind: "hold", atC: 150 });
    const hottestC = Math.max(
      ...scheduleCurve(onTray.segments, 20)
        .slice(0, outAt + 1)
        .map(({ toC }) => toC),
    );
    expect(hottestC).toBeLessThanOrEqual(200 - firingPractice.trayMarginK);
    expect(onTray.limits.tray).toEqual({ mostC: 170 });
    expect(trayFaults(onTray, (all) => all)).toEqual([]);
  });

  test.each([
    [170, 0],
    [171, 1],
  ])("a plan changed to run the wax out at %d °C with the tray in: %d refused", (toC, count) => {
    const hotter = (all: readonly Segment[]): readonly Segment[] =>
      all.map((part, place) =>
        place < placeOf(onTray, "tray-out") && part.kind === "hold" && part.atC === 150
          ? { kind: "ramp", toC, rateKPerH: 100, reasons: [] }
          : part,
      );
    const found = trayFaults(onTray, hotter);
    expect(found).toHaveLength(count);
    if (count === 1)
      expect(found[0]).toMatchObject({ level: "hold", figures: { hottestC: 171, mostC: 170 } });
  });

  test("the step that takes it out struck, or moved to the end: the tray is in at full heat", () => {
    const dropped = (all: readonly Segment[]) =>
      all.filter((_, place) => place !== placeOf(onTray, "tray-out"));
    const moved = (all: readonly Segment[]) => {
      const out = all[placeOf(onTray, "tray-out")];
      return out === undefined ? all : [...dropped(all), out];
    };
    for (const edit of [dropped, moved])
      expect(trayFaults(onTray, edit)).toEqual([
        expect.objectContaining({
          level: "hold",
          limit: "wax-flash-point",
          figures: { hottestC: 870, mostC: 170 },
        }),
      ]);
    // Without the step that puts it in as well, the plan still says that the wax leaves on a tray.
    const neither = (all: readonly Segment[]) =>
      dropped(all).filter((part) => part.kind !== "instruction" || part.code !== "tray-in");
    expect(trayFaults(onTray, neither)).toHaveLength(1);
  });

  test("no tray where wax burns inside, in flash fire, or for plastic", () => {
    for (const made of [
      plan({ pattern: drained, waxLeaves: "no" }),
      plan({ pattern: wax }),
      through,
      plan({ pattern: { ...pla, flashC: 330 } }),
    ]) {
      expect(made.limits.tray).toBeNull();
      expect(instructions(made)).not.toContain("tray-in");
      expect(instructions(made)).not.toContain("tray-out");
    }
  });

  test("a run read hotter than that before the tray was ticked out says so; ticked in time it does not", () => {
    const kept = keeping(onTray, [300]);
    const read = { ...kept, readings: [{ at: runStart + 200 * 60_000, kilnC: 171 }] };
    const untouched = {
      ...read,
      ticked: read.ticked.filter(({ segment }) => segment !== placeOf(onTray, "tray-out")),
    };
    const at = runStart + 201 * 60_000;
    const found = (run: typeof read) =>
      judgeRun(run, at).findings.filter(({ code }) => code === "tray-in-too-hot");
    expect(found(untouched)).toMatchObject([{ level: "hold", figures: { kilnC: 171, mostC: 170 } }]);
    expect(found(read)).toEqual([]);
    const cooler = { ...untouched, readings: [{ at: runStart + 200 * 60_000, kilnC: 170 }] };
    expect(found(cooler)).toEqual([]);
  });
});

describe("wax in flash fire", () => {
  test("a hole in the floor and a pan outside are asked for before the shell goes in; no tray anywhere", () => {
    expect(placeOf(through, "pan-outside")).toBeGreaterThan(-1);
    expect(placeOf(through, "pan-outside")).toBeLessThan(placeOf(through, "load-hot"));
    expect(
      instructions(plan({ route: "flash", pattern: { ...wax, flashC: 200 }, waxLeaves: "no" })),
    ).not.toContain("pan-outside");
  });

  test("only what stays counts as heat: a tenth of half a kilo in five minutes is 7.2 kW, under sixty litres' 9", () => {
    // 0.05 kg × 43 MJ/kg ÷ 300 s; 43 MJ/kg is the lower heating value of paraffins, the rest of it all 72 kW.
    expect(through.air?.heatKW).toBeCloseTo((0.05 * 43_000) / 300, 9);
    expect(through.air?.isTooMuch).toBe(false);
    expect(through.notes.map(({ code }) => code)).not.toContain("heat-release-over");
    const shut = plan({ pattern: { ...wax, flashC: 200 }, route: "flash", waxLeaves: "no" });
    expect(shut.air?.heatKW).toBeCloseTo(71.7, 1);
    expect(shut.notes.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["heat-release-over", "wax-burns-inside"]),
    );
  });

  test("nothing stays, nothing burns; a share beyond all of it is refused", () => {
    const of = { massKg: 1, heatMJKg: 43, airKgKg: 14.9 };
    const fire = (staysShare: number) => burnAir({ pattern: { ...of, staysShare }, burnS: 300, volumeL: 60 });
    expect(fire(0)).toMatchObject({ heatKW: 0, airKg: 0, isTooMuch: false });
    expect(fire(1).airKg).toBeCloseTo(14.9, 9);
    expect(() => fire(1.01)).toThrow(RangeError);
  });
});
