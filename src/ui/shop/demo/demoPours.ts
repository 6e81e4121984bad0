import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { stepsOf } from "../../../logbook/pour/pourSteps.ts";
import { startingTold } from "../../../logbook/pour/pourTold.ts";
import { demoAlloyId, demoFurnaceId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";
import { demoPreheatId, preheatPlan, preheatToC } from "./demoRuns.ts";

const dayH = 24;
const plannedMeltId = "demo-melt";
const pourHour = 14;
const meltMin = 25;
const aluminiumC = 720;
const bronzeC = 1140;

type Ended = {
  readonly id: string;
  /** The piece that took what was poured. */
  readonly pieceId: string;
  readonly agoH: number;
  readonly isHot: boolean;
  /** Minutes from the fire on until the metal was at its heat. */
  readonly minutes: number;
  readonly pouredKg: number;
  readonly piggedKg: number;
  readonly fuelKg: number;
};

/** Two evenings at the furnace: each with a melt in a cold lining and one in the hot one after it. */
const evenings: readonly Ended[] = [
  {
    id: "demo-melt-1",
    pieceId: "demo-hooks",
    agoH: 13 * dayH - 1,
    isHot: false,
    minutes: 82,
    pouredKg: 4.1,
    piggedKg: 0.79,
    fuelKg: 1.6,
  },
  {
    id: "demo-melt-2",
    pieceId: "demo-scraper",
    agoH: 13 * dayH - 3.5,
    isHot: true,
    minutes: 39,
    pouredKg: 3.7,
    piggedKg: 1.21,
    fuelKg: 0.8,
  },
  {
    id: "demo-melt-3",
    pieceId: "demo-gnomon",
    agoH: 6 * dayH - 1,
    isHot: false,
    minutes: 78,
    pouredKg: 4.4,
    piggedKg: 0.49,
    fuelKg: 1.5,
  },
  {
    id: "demo-melt-4",
    pieceId: "demo-lantern",
    agoH: 6 * dayH - 3.5,
    isHot: true,
    minutes: 37,
    pouredKg: 3.9,
    piggedKg: 1.01,
    fuelKg: 0.7,
  },
];

/** When the metal of such a melt went into its piece, hours ago, and how much of it. */
export function pouredOf(pieceId: string): {
  readonly meltId: string;
  readonly agoH: number;
  readonly kg: number;
} {
  const melt = evenings.find((one) => one.pieceId === pieceId);
  if (melt === undefined) throw new RangeError(`no melt of the demo was poured into ${pieceId}`);
  return { meltId: melt.id, agoH: melt.agoH - (melt.minutes + 3) / 60, kg: melt.pouredKg };
}

/** Melts that taught the furnace, and tomorrow's pour with the heat it needs. */
export function demoPours(demo: DemoLog): void {
  for (const melt of evenings) ended(demo, melt);
  planned(demo, preheatPlan(demo));
}

function ended(
  { log }: DemoLog,
  { id, pieceId, agoH, isHot, minutes, pouredKg, piggedKg, fuelKg }: Ended,
): void {
  const at = (minute: number): number => agoH - minute / 60;
  log("melt", id, "melt-planned", agoH + 0.3, {
    furnaceId: demoFurnaceId,
    alloyId: demoAlloyId,
    pieceIds: [pieceId],
    items: [
      { name: "Demo: ingot", massKg: 3.5, alloyId: demoAlloyId },
      { name: "Demo: sorted returns", massKg: 1.5, alloyId: demoAlloyId },
    ],
    pourC: bronzeC,
  });
  log("melt", id, "melt-started", agoH, { hotFurnace: isHot });
  log("melt", id, "melt-read", at(minutes - 9), { metalC: bronzeC - 70 });
  log("melt", id, "melt-read", at(minutes), { metalC: bronzeC + 4 });
  log("melt", id, "melt-ended", at(minutes + 6), { pouredKg, piggedKg, fuelKg });
}

function planned(demo: DemoLog, kilnMin: number): void {
  const { log, now, hourOfDay } = demo;
  log("melt", plannedMeltId, "melt-planned", 1.8, {
    furnaceId: demoFurnaceId,
    alloyId: "a356",
    pieceIds: ["demo-dancer"],
    items: [{ name: "Demo: ingot A356", massKg: 1.3, alloyId: "a356" }],
    pourC: aluminiumC,
    note: "Demo: the crucible kept for aluminium alone.",
  });
  const pourInH = dayH - hourOfDay(0) + pourHour;
  log("pour", "demo-pour", "pour-planned", 1.5, {
    pourAt: now + Math.round(pourInH * 60) * minuteMs,
    pieceIds: ["demo-dancer"],
    runId: demoPreheatId,
    meltId: plannedMeltId,
    bed: "cold-sand",
    shellC: preheatToC,
    metalC: aluminiumC,
    steps: stepsOf({ kilnMin, sandMin: null, crucibleMin: 20, meltMin }),
    told: { ...startingTold, metalKg: 1.3, thinnestMm: [5] },
  });
}
