import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import truth from "../../../tests/truth/metal.json" with { type: "json" };
import {
  chokeAreaMm2,
  fallForSpeedM,
  fillTimeS,
  roundMm,
  sectionForSpeedMm2,
  spoutVelocityMS,
} from "./flow.ts";
import { runTime, runTimeBandS, type RunAsked } from "./fluidity.ts";
import {
  capillaryHeadMm,
  criticalSpeedMS,
  effectiveHeadM,
  reynolds,
  sprueTaper,
  tiltLimitDeg,
  tiltSpeedMS,
  ventAreaMm2,
} from "./gating.ts";

const off = (found: number, wanted: number): number => Math.abs(found / wanted - 1);
const round = (mm: number): number => (Math.PI / 4) * mm * mm;

describe("published gatings", () => {
  test("a sprue of 20 cm gives 198 cm/s, 495 cm³/s, and fills 1560 cm³ in 3.15 s", () => {
    const { headM, areaMm2, volumeCm3, speedMS, flowCm3S, timeS, within } = truth.sprue;
    expect(off(spoutVelocityMS({ headM }), speedMS)).toBeLessThan(within);
    expect(off(spoutVelocityMS({ headM }) * areaMm2, flowCm3S)).toBeLessThan(within);
    const filled = fillTimeS({ by: "top-gate", volumeCm3, gateAreaMm2: areaMm2, headM });
    expect(off(filled ?? NaN, timeS)).toBeLessThan(within);
  });

  test("a litre a second through 175 mm of sprue asks 540 mm² at its foot", () => {
    const { headM, areaMm2, within } = truth.sprueFoot;
    const found = chokeAreaMm2({ massKg: 7, liquidKgM3: 7000, timeS: 1, headM, dischargeCoefficient: 1 });
    expect(off(found, areaMm2)).toBeLessThan(within);
  });

  test("a sprue of 10 mm and 250 mm fills a decimetre cube in 5.75 s", () => {
    const { headM, diameterMm, volumeCm3, speedMS, flowMm3S, timeS, within } = truth.cubeFill;
    expect(off(spoutVelocityMS({ headM }), speedMS)).toBeLessThan(within);
    expect(off(spoutVelocityMS({ headM }) * 1000 * round(diameterMm), flowMm3S)).toBeLessThan(within);
    const filled = fillTimeS({ by: "top-gate", volumeCm3, gateAreaMm2: round(diameterMm), headM });
    expect(off(filled ?? NaN, timeS)).toBeLessThan(within);
  });

  test("Kalpakjian's aluminium sprue narrows to 10 mm at 2.05 m/s and is turbulent", () => {
    const t = truth.reynolds;
    const flowM3S = t.flowM3Min / 60;
    const topSpeed = (flowM3S / round(t.topMm)) * 1e6;
    const footSpeed = spoutVelocityMS({ headM: t.headM, entrySpeedMS: topSpeed });
    const footMm = roundMm((flowM3S / footSpeed) * 1e6);
    expect(off(topSpeed, t.topSpeedMS)).toBeLessThan(t.within);
    expect(off(footSpeed, t.footSpeedMS)).toBeLessThan(t.within);
    expect(off(footMm, t.footMm)).toBeLessThan(t.within);
    const at = (diameterMm: number) => reynolds({ ...t, speedMS: footSpeed, diameterMm });
    expect(off(at(10), t.reynoldsAt10Mm)).toBeLessThan(t.within);
    expect(off(at(footMm), t.reynoldsUnrounded)).toBeLessThan(t.within);
  });

  test("a mould filled from above takes 21.9 s, from below twice that", () => {
    const { volumeCm3, headM, topS, bottomS, within, ...gate } = truth.gates;
    const top = fillTimeS({ by: "top-gate", volumeCm3, headM, gateAreaMm2: gate.gateAreaMm2 });
    const bottom = fillTimeS({ by: "bottom-gate", headM, ...gate });
    expect(off(top ?? NaN, topS)).toBeLessThan(within);
    expect(off(bottom ?? NaN, bottomS)).toBeLessThan(within);
  });

  test("4 kg in 8 s under 200 mm ask 39.9 mm² of choke and 127 mm² of gates at 0.5 m/s", () => {
    const { areaMm2, gateMm2, gateSpeedMS, within, ...asked } = truth.choke;
    expect(off(chokeAreaMm2(asked), areaMm2)).toBeLessThan(within);
    expect(off(sectionForSpeedMm2({ ...asked, speedMS: gateSpeedMS }), gateMm2)).toBeLessThan(within);
    expect(ventAreaMm2(areaMm2)).toBeCloseTo(19.97, 2);
  });

  test.each(truth.taper)("$topDepthM m over a sprue and $dropM m in all narrow it by $ratio", (row) => {
    expect(sprueTaper(row)).toBeCloseTo(row.ratio, 9);
  });

  test.each(truth.criticalSpeed)("a front of $name folds above $speedMS m/s", (row) => {
    expect(off(criticalSpeedMS(row), row.speedMS)).toBeLessThan(0.0005);
  });

  test("any fall of more than 12.7 mm passes half a metre a second", () => {
    expect(fallForSpeedM(truth.fallMm.speedMS) * 1000).toBeCloseTo(truth.fallMm.mm, 3);
    expect(tiltLimitDeg({ lengthM: 0.1, speedMS: 0.5 })).toBeCloseTo(7.32, 2);
    expect(tiltLimitDeg({ lengthM: 0.01, speedMS: 0.5 })).toBe(90);
  });

  test.each(truth.capillary)("a slot of $slotMm mm wants $mm mm of head", (row) => {
    expect(off(capillaryHeadMm(row), row.mm)).toBeLessThan(0.0005);
    expect(off(capillaryHeadMm({ ...row, hasSkin: true }), 2 * row.mm)).toBeLessThan(0.0005);
  });

  test.each(truth.massFill.rows)("4 kg fill in $timeS s at a factor of $factor", ({ factor, timeS }) => {
    expect(off(fillTimeS({ by: "mass", massKg: 4, factor }) ?? NaN, timeS)).toBeLessThan(0.005);
  });
});

describe("laws of filling", () => {
  const metres = fc.double({ min: 0.02, max: 2, noNaN: true });
  const seconds = fc.double({ min: 0.5, max: 60, noNaN: true });

  test("half the time asks twice the choke, four times the head half of it", () =>
    fc.assert(
      fc.property(metres, seconds, (headM, timeS) => {
        const asked = { massKg: 3, liquidKgM3: 7900, dischargeCoefficient: 0.8 };
        const at = (h: number, t: number) => chokeAreaMm2({ ...asked, headM: h, timeS: t });
        expect(off(at(headM, timeS / 2), 2 * at(headM, timeS))).toBeLessThan(1e-9);
        expect(off(at(4 * headM, timeS), at(headM, timeS) / 2)).toBeLessThan(1e-9);
        const speedMS = spoutVelocityMS({ headM, dischargeCoefficient: 0.8 });
        expect(7900 * at(headM, timeS) * 1e-6 * speedMS * timeS).toBeCloseTo(3, 9);
      }),
    ));

  test("a shallow cavity fills from below as from above, and a deep one never faster", () =>
    fc.assert(
      fc.property(metres, fc.double({ min: 0.001, max: 1, noNaN: true }), (headM, part) => {
        const gate = { cavityAreaMm2: 1e4, gateAreaMm2: 100, headM };
        const cavityHeightM = part * headM;
        const volumeCm3 = cavityHeightM * 1e4;
        const bottom = fillTimeS({ by: "bottom-gate", cavityHeightM, ...gate }) ?? NaN;
        const top = fillTimeS({ by: "top-gate", volumeCm3, gateAreaMm2: 100, headM }) ?? NaN;
        expect(bottom).toBeGreaterThanOrEqual(top * (1 - 1e-9));
        expect(bottom).toBeLessThanOrEqual(2 * top * (1 + 1e-9));
      }),
    ));

  test("the mean head of a parting gate lies between top and bottom, and meets both", () => {
    const parting = (aboveGateM: number) =>
      effectiveHeadM({ sprueHeightM: 0.3, at: { gate: "parting", cavityHeightM: 0.2, aboveGateM } });
    expect(parting(0)).toBe(effectiveHeadM({ sprueHeightM: 0.3, at: { gate: "top" } }));
    expect(parting(0.2)).toBe(
      effectiveHeadM({ sprueHeightM: 0.3, at: { gate: "bottom", cavityHeightM: 0.2 } }),
    );
    expect(parting(0.2)).toBeCloseTo(0.2, 12);
    expect(parting(0.1)).toBeCloseTo(0.275, 12);
  });

  test("a cavity above the metal in the cup never fills", () => {
    const at = { gate: "bottom", cavityHeightM: 0.31 } as const;
    expect(effectiveHeadM({ sprueHeightM: 0.3, at })).toBeNull();
    const gate = { cavityAreaMm2: 1e4, gateAreaMm2: 100 };
    expect(fillTimeS({ by: "bottom-gate", ...gate, cavityHeightM: 0.31, headM: 0.3 })).toBeNull();
  });

  test("a mould at its limit of lean gives just that speed", () =>
    fc.assert(
      fc.property(metres, (lengthM) => {
        const tiltDeg = tiltLimitDeg({ lengthM, speedMS: 0.5 });
        expect(tiltSpeedMS({ lengthM, tiltDeg })).toBeCloseTo(0.5, 9);
      }),
    ));

  test("a choke whose flow isn't said is that of a lossy sprue, never of none", () => {
    expect(chokeAreaMm2({ massKg: 4, timeS: 8, liquidKgM3: 7900, headM: 0.2 })).toBeCloseTo(39.94, 2);
  });

  test("a fill without a way is from above; a way that isn't known is refused", () => {
    expect(fillTimeS({ volumeCm3: 1560, gateAreaMm2: 250, headM: 0.2 })).toBeCloseTo(3.15, 2);
    expect(() => fillTimeS({ by: "siphon" } as never)).toThrow(/found siphon/);
  });

  test("millimetres for metres and nothing at all are refused", () => {
    expect(() => spoutVelocityMS({ headM: 200 })).toThrow(/not mm/);
    expect(() => spoutVelocityMS({ headM: NaN })).toThrow(RangeError);
    expect(() => sprueTaper({ topDepthM: 0.2, dropM: 0.1 })).toThrow(/whole drop/);
    expect(fillTimeS({ by: "ladle", massKg: 4, rateKgS: 0.5 })).toBe(8);
  });
});

describe("how far thin metal runs", () => {
  const mould = { conductivityWMK: 1, densityKgM3: 1900, heatJKgK: 1100 };
  const sure = { mould, stopShare: 0.25, interfaceWM2K: 1000 };
  const bronze: RunAsked = {
    ...sure,
    liquidKgM3: 7860,
    latentJKg: 195_000,
    liquidJKgK: 490,
    superheatK: 150,
    liquidusC: 1000,
    wallMm: 2,
    shellC: 600,
  };

  test.each(truth.run.rows)(
    "$name, $wallMm mm in a shell of $shellC °C",
    ({ shellS, interfaceS, ...row }) => {
      const run = runTime({ ...sure, ...row });
      expect(Math.abs((run?.shellS ?? NaN) - shellS)).toBeLessThan(0.005 + 0.002 * shellS);
      expect(Math.abs((run?.interfaceS ?? NaN) - interfaceS)).toBeLessThan(0.006);
      expect(run?.timeS).toBe(Math.max(run?.shellS ?? 0, run?.interfaceS ?? 0));
      expect(run?.limitedBy).toBe(shellS > interfaceS ? "shell" : "interface");
    },
  );

  test("a hotter shell, a thicker wall and hotter metal never shorten the run", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 990, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (shellC, wallMm, superheatK) => {
          const at = (more: Partial<RunAsked>) =>
            runTime({ ...bronze, shellC, wallMm, superheatK, ...more })?.timeS ?? Infinity;
          expect(at({ shellC: shellC + 5 })).toBeGreaterThanOrEqual(at({}));
          const band = runTimeBandS({ ...bronze, shellC, wallMm, superheatK });
          // Near the liquidus a thick wall runs on for good.
          if (band === null) {
            expect(shellC).toBeGreaterThan(900);
            return;
          }
          if (at({ wallMm: wallMm * 1.1 }) < Infinity) {
            expect(at({ wallMm: wallMm * 1.1 })).toBeGreaterThan(at({}));
            expect(at({ superheatK: superheatK + 10 })).toBeGreaterThan(at({}));
          }
          expect(band.lowS).toBeLessThan(band.likelyS ?? Infinity);
          expect(band.likelyS ?? 0).toBeLessThan(band.highS ?? Infinity);
        },
      ),
    ));

  test("in a shell as hot as its liquidus it never stops", () => {
    expect(runTime({ ...bronze, shellC: 1000 })).toBeNull();
    expect(runTimeBandS({ ...bronze, shellC: 1000 })?.likelyS).toBeNull();
    expect(runTimeBandS({ ...bronze, shellC: 1030 })).toBeNull();
    expect(runTime({ ...bronze, wallMm: 10, shellC: 999.9 })).toBeNull();
  });
});
