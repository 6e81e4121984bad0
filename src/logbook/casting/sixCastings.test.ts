import { describe, expect, test } from "vitest";
import { kiln } from "../../../tests/givenFiring.ts";
import truth from "../../../tests/truth/castings.json" with { type: "json" };
import { dryingHours } from "../../physics/drying/drying.ts";
import { planFiring } from "../../physics/heat/firingSchedule.ts";
import type { Segment } from "../../physics/heat/firingSegments.ts";
import { brimNeededMl, brimShare } from "../../physics/metal/crucible.ts";
import { leastDryH } from "../../trade/dryMinimums.ts";
import { burningPatternOf, firingShellOf } from "../../trade/firingFigures.ts";
import { geometryClasses } from "../../trade/geometryClasses.ts";
import { crucibleLift } from "../../trade/lifting.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { metalContentsOf } from "../../trade/metals/contents.ts";
import { hazardsOf } from "../../trade/metals/hazards.ts";
import type { BurnoutMaterial } from "../../trade/patternBurnout.ts";
import { crucibleLiftKg } from "../bucket/liftWeights.ts";
import { usualRoute } from "../fire/dewaxWay.ts";
import { shellHeatOf } from "../fire/shellHeat.ts";
import { pourHeatOf } from "../pour/pourHeat.ts";
import { castingTimesOf } from "../pour/pourShells.ts";
import { chargeFor, lossFor } from "./chargeSum.ts";
import { fillTimes } from "./fillTimes.ts";
import { gatingDraftOf } from "./gatingDraft.ts";
import { gatingSum } from "./gatingSum.ts";
import { massDraftOf } from "./massDraft.ts";
import { metalHot, mostFillS, runFull } from "./runSum.ts";

type Case = (typeof truth.cases)[number];

/** From the plan to the numbers, by the functions that the pages ask. */
function numbersOf(of: Case): Readonly<Record<string, number | string>> {
  const alloy = alloyOf(of.alloyId)!;
  const massKg = of.castingKg + of.gatingKg;
  const draft = {
    ...gatingDraftOf({ metalKg: massKg, headM: of.sprueMm / 1000, mesh: null, shellMm: of.shellMm }),
    wallMm: of.wallMm,
    runMm: of.wayMm,
    runWidthMm: of.widthMm,
    cavityMm: of.cavityMm,
  };
  const hot = metalHot(draft, alloy, alloy)!;
  const run = { alloy, figures: alloy, hot, massKg, wayMm: of.wayMm, widthMm: of.widthMm };
  const times = fillTimes({ massKg, gate: draft.gate, alloy, wallMm: of.wallMm, mostS: mostFillS(run) });
  const { choke } = gatingSum({
    draft,
    massKg,
    timeS: times.plannedS,
    quickestS: times.leastS,
    liquidKgM3: alloy.crucibleKgM3.value,
    stream: alloy.stream,
  });
  const contents = metalContentsOf(of.alloyId) ?? {};
  return {
    ...chargeOf(of, alloy),
    ...fireOf(of),
    ...dryOf(),
    shellC: shellHeatOf(alloy, of.wallMm)?.startC ?? NaN,
    pourC: pourHeatOf({ alloy, figures: alloy, thinnestMm: of.wallMm }).startC,
    fillS: times.plannedS,
    kgS: massKg / times.plannedS,
    run: runFull({ ...run, gate: draft.gate, fillS: null }).verdict,
    gatesMm2: choke?.gatesMm2 ?? NaN,
    ventsMm2: choke?.ventsMm2 ?? NaN,
    sprueMm: choke?.roundMm ?? NaN,
    knockoutMin: outAfterMin(of, alloy),
    zinc: hazardsOf(contents).includes("zinc-fume") ? "warned" : "silent",
    tin: contents.sn?.high ?? NaN,
  };
}

function chargeOf({ castingKg, gatingKg, alloyId }: Case, alloy: Alloy) {
  const draft = massDraftOf({ name: "piece" });
  const loss = lossFor({ draft, alloyId, learned: { kind: "nothing-weighed" } });
  const charge = chargeFor({
    draft,
    castingKg,
    gatingKg,
    margin: "weighed",
    lossShare: loss?.lossShare ?? NaN,
  });
  const chargeKg = charge?.chargeKg ?? NaN;
  const crucibleKg = crucibleLiftKg({ metalKg: chargeKg, figures: alloy, furnace: null }) ?? NaN;
  const brimMl = brimNeededMl({
    meltKg: chargeKg,
    liquidKgM3: alloy.crucibleKgM3.value,
    fillShare: brimShare.tongs,
  });
  return { chargeKg, crucibleL: brimMl / 1000, lift: crucibleLift(crucibleKg) };
}

function outAfterMin({ thickMm, wallMm, shellMm, castingKg }: Case, alloy: Alloy): number {
  const times = castingTimesOf({
    shell: {
      id: "shell",
      name: "shell",
      wallMm: shellMm,
      isWallKnown: true,
      thinnestMm: wallMm,
      thinnestFrom: "told",
      modulusMm: thickMm / 2,
      modulusFrom: "mesh",
      metalKg: castingKg,
    },
    alloy,
    figures: alloy,
    metalC: pourHeatOf({ alloy, figures: alloy, thinnestMm: wallMm }).startC,
    faceC: shellHeatOf(alloy, wallMm)?.startC ?? NaN,
    place: { family: "fused-silica", bed: "air", airC: 20 },
  });
  return (times?.knockoutS ?? NaN) / 60;
}

function fireOf({ material, patternKg, shellMm, areaM2 }: Case) {
  const of = material as BurnoutMaterial;
  const plan = (blindMm: number) =>
    planFiring({
      purpose: "burnout",
      route: "staged",
      pattern: burningPatternOf(of, of === "wax" ? 0.05 : patternKg),
      shell: firingShellOf("fused-silica", { wallMm: shellMm, seenAbove1100: false, greenShare: 1 }),
      shellKg: areaM2 * shellMm * 1.7,
      damp: "dry",
      firedBefore: false,
      seenAbove1100: false,
      kiln,
      startC: 20,
      after: "inspect",
      blindMm,
    });
  const made = plan(0);
  const blind = plan(100);
  if (made.kind !== "plan" || blind.kind !== "plan") throw new Error("no plan");
  const { finish, drain } = made.limits;
  return {
    route: usualRoute(of, { isFilm: false }),
    drainMin: drain?.minutes ?? NaN,
    minutes200To430: minutesBetween(made.segments, 200, 430),
    finishC: Math.max(...made.segments.map((s) => (s.kind === "hold" ? s.atC : -Infinity))),
    finishMin: finish?.minutes ?? NaN,
    blindMoreMin: (blind.limits.finish?.minutes ?? NaN) - (finish?.minutes ?? NaN),
  };
}

/** Minutes of the way up between two temperatures. */
function minutesBetween(segments: readonly Segment[], fromC: number, toC: number): number {
  let atC = 20;
  let minutes = 0;
  for (const segment of segments) {
    if (segment.kind === "hold" && segment.atC >= fromC && segment.atC < toC) minutes += segment.minutes;
    if (segment.kind !== "ramp") continue;
    const crossed = Math.min(toC, segment.toC) - Math.max(fromC, atC);
    if (segment.toC > atC && crossed > 0) minutes += (60 * crossed) / segment.rateKPerH;
    atC = segment.toC;
    if (atC >= toC) return minutes;
  }
  return minutes;
}

function dryOf() {
  // A backup coat at 21 °C and 50 % with a fan on the room.
  const coat = { waterKgM2: 0.2, criticalKgM2: 0.12, depthM: 0.00373, dryFraction: 0.95 };
  const air = { tempC: 21, rh: 0.5, pressurePa: 101_325, filmWM2K: 10 };
  const hours = (pocketSM: number): number => dryingHours({ ...coat, ...air, pocketSM }) ?? NaN;
  return {
    leastBackupH: leastDryH.backup.value,
    blindAirLedInH: hours(geometryClasses.recess.pocketSM),
    blindShutH: hours(geometryClasses.blind.pocketSM),
  };
}

describe.each(truth.cases)("$name", (of) => {
  const numbers = numbersOf(of);

  test.each(of.quantities)("$what", (quantity) => {
    const found = numbers[quantity.what];
    expect(quantity.basis).not.toBe("");
    if ("is" in quantity) return expect(found).toBe(quantity.is);
    const { low = NaN, high = NaN } = quantity as { low?: number; high?: number };
    const isWithin = typeof found === "number" && found >= low && found <= high;
    // What is explained must lie outside: once it doesn't, the explanation goes.
    expect({ found, low, high, isWithin }).toMatchObject({ isWithin: !("explained" in quantity) });
  });
});
