import * as castingCooling from "../../src/physics/heat/castingCooling.ts";
import * as coolingSolid from "../../src/physics/heat/coolingSolid.ts";
import * as heat from "../../src/physics/heat/heat.ts";
import * as heatMarch from "../../src/physics/heat/heatMarch.ts";
import * as heatProperty from "../../src/physics/heat/heatProperty.ts";
import * as heatSolver from "../../src/physics/heat/heatSolver.ts";
import * as hotShell from "../../src/physics/metal/hotShell.ts";
import * as knockout from "../../src/physics/heat/knockout.ts";
import * as latestPour from "../../src/physics/metal/latestPour.ts";
import * as pourDay from "../../src/physics/metal/pourDay.ts";
import * as pourOrder from "../../src/physics/metal/pourOrder.ts";
import type { Rows } from "./numberRow.ts";
import { row } from "./numberRow.ts";

const table = [
  [20, 0.6],
  [500, 0.8],
  [1000, 1],
] as const;
const held = [
  [-200, -80_000],
  [800, 0],
  [900, 200_000],
  [1900, 600_000],
] as const;
const mould = { conductivityWMK: 0.7, densityKgM3: 1800, heatJKgK: 1000 };
const layer = {
  cellsMm: [1, 1, 2],
  conductivityWMK: table,
  densityKgM3: 1800,
  heatJKgK: 1000,
  startC: 600,
};
const solid = {
  layers: [layer],
  outer: { kind: "open", airC: 20, filmWM2K: 8, emissivity: 0.85 } as const,
  melt: { kgM2: 40, contactWM2K: 1500, startC: 1100, held },
};
const march = (conduction: heatSolver.Conduction): unknown => {
  for (let i = 0; i < 5; i++) conduction.advance(1, 0.5);
  return [
    conduction.cellC,
    conduction.outerC(),
    conduction.meltC(),
    conduction.lostJM2(),
    conduction.gainedJM2(),
  ];
};
const rows = [0, 1, 2].map((minute) => ({
  minute,
  cavityFaceC: 600 - 20 * minute,
  meanC: 600 - 25 * minute,
  outerC: 600 - 40 * minute,
  cavityFaceLowC: 600 - 25 * minute,
  cavityFaceHighC: 600 - 15 * minute,
}));
const unreadOfRows = rows.flatMap((_, i) =>
  ["meanC", "outerC", "cavityFaceHighC"].map((key) => `0.rows.${i}.${key}`),
);
const at = 1_790_000_000_000;
const steps = [
  { id: "heat", durationMin: 90, maxHoldMin: 30, holdAs: "keep-in-kiln", people: 1, uses: ["kiln"] },
  { id: "carry", durationMin: 2, maxHoldMin: null, holdAs: "stand-ready", people: 2 },
] as const;
const waiting = { id: "a", metalKg: 3, thinnestMm: 3, pourMin: 1, leastMetalC: 1050, latestMin: 6 };

export const heatRows: Rows = {
  castingCooling: {
    castingCooling: row(castingCooling.castingCooling, [
      {
        metal: {
          densityKgM3: 8500,
          solidusC: 860,
          liquidusC: 980,
          latentJKg: 200_000,
          solidJKgK: 420,
          liquidJKgK: 490,
        },
        modulusMm: 3,
        pourC: 1100,
        shellMm: 8,
        shellC: 540,
        conductivityWMK: table,
        shellKgM3: 1800,
        shellJKgK: 1000,
        emissivity: 0.85,
        airC: 20,
        around: "sand",
        sandC: 30,
        sand: castingCooling.backingSand,
        filmWM2K: 10,
        contactWM2K: 1500,
        knockoutC: 300,
        cells: 6,
      },
    ]),
  },
  coolingSolid: {
    coolingOf: row(coolingSolid.coolingOf, [
      { kind: "tube", outerMm: 60, wallMm: 6, lengthMm: 100, coreCools: true, coveredMm2: 200 },
    ]),
  },
  heat: {
    wallCooling: row(heat.wallCooling, [
      {
        ...mould,
        conductivityWMK: table,
        emissivity: 0.85,
        conductivityShare: [0.7, 1.4],
        storageShare: [0.8, 1.2],
        emissivityShare: [0.9, 1.05],
        wallMm: 8,
        startC: 540,
        airC: 20,
        minutes: 4,
        outside: "hot-sand",
        inside: "sand-backed",
        sandC: 300,
        sand: heat.looseSand,
        filmWM2K: 8,
        everyMin: 2,
        cells: 6,
      },
    ]),
    requireBed: row(heat.requireBed, [heat.looseSand]),
    requireWall: row(heat.requireWall, [8]),
    rampLimitKPerH: row(heat.rampLimitKPerH, [
      { wallMm: 8, diffusivityM2S: 4e-7, modulusGPa: 3, expansionPerK: 1e-6, poisson: 0.2, strengthMPa: 0.5 },
    ]),
    rampStress: row(heat.rampStress, [
      { wallMm: 8, diffusivityM2S: 4e-7, modulusGPa: 3, expansionPerK: 1e-6, poisson: 0.2, rateKPerH: 200 },
    ]),
  },
  heatMarch: {
    evenCellsMm: row(heatMarch.evenCellsMm, [{ thicknessMm: 8, cells: 6 }]),
    growingCellsMm: row(heatMarch.growingCellsMm, [{ thicknessMm: 150, firstMm: 0.5, cells: 12 }]),
    march: row(
      (asked: {
        marksS: readonly number[];
        firstS: number;
        growth: number;
        longestS: number;
        implicit: number;
      }) => {
        const conduction = heatSolver.startConduction({ layers: [layer], outer: solid.outer });
        heatMarch.march({ ...asked, conduction, onMark: () => "go-on" });
        return conduction.cellC;
      },
      [{ marksS: [1, 5, 20], firstS: 0.5, growth: 1.1, longestS: 5, implicit: 0.5 }],
    ),
  },
  heatProperty: {
    requireProperty: row(heatProperty.requireProperty, ["k", table, { low: 0, high: 2, unit: "W/(m·K)" }]),
    requireHeld: row(heatProperty.requireHeld, [held]),
    propertyAt: row(heatProperty.propertyAt, [table, 300], { unread: ["0.2.0", "0.2.1"] }),
    propertyBetween: row(heatProperty.propertyBetween, [table, { fromC: 100, toC: 900 }]),
    heldAt: row(heatProperty.heldAt, [held, 850]),
    crossHeld: row(heatProperty.crossHeld, [held, { a: 1, b: 100, c: 100_000 }], {
      unread: ["0.0.0", "0.0.1", "0.3.0", "0.3.1"],
    }),
  },
  heatSolver: {
    startConduction: row(heatSolver.startConduction, [solid], { read: march }),
  },
  hotShell: {
    hotShellFreezeS: row(hotShell.hotShellFreezeS, [
      {
        metalKgM3: 8500,
        metalWallMm: 5,
        latentJKg: 200_000,
        liquidJKgK: 490,
        superheatK: 120,
        solidusC: 860,
        liquidusC: 980,
        shell: mould,
        shellMm: 8,
        shellC: 540,
        interfaceWM2K: 1000,
        around: { kind: "air", filmWM2K: 8, emissivity: 0.85 },
        aroundC: 20,
      },
    ]),
  },
  knockout: { knockoutTime: row(knockout.knockoutTime, [{ freezeS: 60, coolS: 1800 }]) },
  latestPour: {
    latestPour: row(latestPour.latestPour, [{ rows, leastShellC: 570 }], { unread: unreadOfRows }),
  },
  pourDay: {
    planPour: row(pourDay.planPour, [
      {
        pourAt: at,
        tracks: [{ id: "shell", steps }],
        done: [{ track: "shell", step: "heat", startedAt: at - 5_400_000, doneAt: at - 600_000 }],
        now: at - 3_600_000,
        people: 2,
      },
    ]),
  },
  pourOrder: {
    pourOrder: row(pourOrder.pourOrder, [
      {
        shells: [waiting, { ...waiting, id: "b", thinnestMm: 5, latestMin: 9 }],
        metalKg: 8,
        metalC: 1150,
        meltCoolKPerMin: 8,
        outTogether: true,
      },
    ]),
    fallsShort: row(pourOrder.fallsShort, [3, 2]),
    meltCoolKPerMin: row(pourOrder.meltCoolKPerMin, [
      { metalKg: 8, heatJKgK: 490, metalC: 1150, airC: 20, bareM2: 0.01, emissivity: 0.3 },
    ]),
  },
};
