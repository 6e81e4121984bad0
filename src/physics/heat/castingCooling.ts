import type { Bed } from "./heat.ts";
import { requireBed, requireWall } from "./heat.ts";
import { evenCellsMm, growingCellsMm, march } from "./heatMarch.ts";
import { metalToShellWM2K } from "./metalContact.ts";
import type { HeatHeld, Property } from "./heatProperty.ts";
import { requireProperty } from "./heatProperty.ts";
import { startConduction } from "./heatSolver.ts";
import { requirePositive, requireWhole, requireWithin } from "../stats/range.ts";
import { dayS } from "../stats/time.ts";

/** A metal's heat: latent heat spread evenly from solidus to liquidus. */
export type MetalHeat = {
  readonly densityKgM3: number;
  readonly solidusC: number;
  readonly liquidusC: number;
  readonly latentJKg: number;
  readonly solidJKgK: number;
  readonly liquidJKgK: number;
};

export type CastingFor = {
  readonly metal: MetalHeat;
  /** Casting's modulus, mm: volume over the area that faces shell. A plate has half its thickness. */
  readonly modulusMm: number;
  readonly pourC: number;
  readonly shellMm: number;
  readonly shellC: number;
  readonly conductivityWMK: Property;
  readonly shellKgM3: number;
  readonly shellJKgK: Property;
  readonly emissivity: number;
  readonly airC: number;
  readonly around: "air" | "sand";
  /** The backing's own temperature; that of the air unless given. */
  readonly sandC?: number | undefined;
  readonly sand?: Bed | undefined;
  readonly filmWM2K?: number | undefined;
  /** From metal to shell, W/(m²·K); `metalToShellWM2K.likely` unless given. */
  readonly contactWM2K?: number | undefined;
  /** To be at or below before the shell is broken. */
  readonly knockoutC: number;
  readonly cells?: number | undefined;
};

/** Times from the metal's arrival; null where not reached within a day. */
export type CastingTimes = {
  readonly liquidusS: number | null;
  readonly solidusS: number | null;
  /** Metal at or below `knockoutC`. */
  readonly coldS: number | null;
  /** That, or ten times the freezing if it is longer. */
  readonly knockoutS: number | null;
};

/** Backing sand vibrated round a shell: 0.6 W/(m·K), from memory of silica sand. */
export const backingSand: Bed = {
  conductivityWMK: 0.6,
  densityKgM3: 1500,
  heatJKgK: 1100,
  thicknessMm: 150,
};

/** A freezing floor: no casting is broken out before ten times its freezing (common practice, no source). */
const knockoutFloor = 10;

/**
 * When metal in a hot shell passes its liquidus and its solidus, and when it may be broken out.
 *
 * The metal of one temperature, the shell conducting, outside still air or a bed of sand; radiation with a
 * view factor of 1, so recesses and crowded branches take up to twice as long. Sections of even
 * modulus 0.2–100 mm. Derived; the freezing of a sand-backed 25 mm plate lies within 10 % of Chvorinov's law.
 */
export function castingCooling(of: CastingFor): CastingTimes {
  requireCasting(of);
  const { metal, cells = 24, sand = backingSand, knockoutC } = of;
  const firstMm = of.shellMm / cells;
  const shell = {
    cellsMm: evenCellsMm({ thicknessMm: of.shellMm, cells }),
    conductivityWMK: of.conductivityWMK,
    densityKgM3: of.shellKgM3,
    heatJKgK: of.shellJKgK,
    startC: of.shellC,
  };
  const bed = {
    ...sand,
    startC: of.sandC ?? of.airC,
    cellsMm: growingCellsMm({ thicknessMm: sand.thicknessMm, firstMm, cells: cells + 8 }),
  };
  const conduction = startConduction({
    layers: of.around === "air" ? [shell] : [shell, bed],
    // A box of sand gives its heat on to the room.
    outer: { kind: "open", airC: of.airC, filmWM2K: of.filmWM2K ?? 10, emissivity: of.emissivity },
    melt: {
      kgM2: (metal.densityKgM3 * of.modulusMm) / 1000,
      contactWM2K: of.contactWM2K ?? metalToShellWM2K.likely,
      startC: of.pourC,
      held: heldBy(metal),
    },
  });
  const levels = [metal.liquidusC, metal.solidusC, knockoutC];
  const reached: (number | null)[] = levels.map((level) => (of.pourC <= level ? 0 : null));
  let before = { atS: 0, meltC: of.pourC };
  march({
    conduction,
    marksS: growingMarks(),
    firstS: 0.02,
    growth: 1.1,
    longestS: 60,
    implicit: 1,
    onMark: (atS) => {
      const meltC = conduction.meltC() ?? of.pourC;
      for (const [i, level] of levels.entries()) {
        // A pure metal stands at its melting point: it is solid only below it.
        if (reached[i] !== null || (i === 1 ? meltC >= level : meltC > level)) continue;
        const share = (before.meltC - level) / (before.meltC - meltC);
        reached[i] = before.atS + share * (atS - before.atS);
      }
      before = { atS, meltC };
      return reached.every((s) => s !== null) ? "stop" : "go-on";
    },
  });
  const [liquidusS = null, solidusS = null, coldS = null] = reached;
  const floorS = solidusS === null ? null : knockoutFloor * solidusS;
  return {
    liquidusS,
    solidusS,
    coldS,
    knockoutS: coldS === null || floorS === null ? null : Math.max(coldS, floorS),
  };
}

/** Marks at every step, each 1.5 % later than the last, to a day. */
function* growingMarks(): Generator<number> {
  for (let atS = 0.02; atS < dayS; atS = Math.max(atS + 0.05, atS * 1.015)) yield atS;
  yield dayS;
}

/** Heat held over temperature, zero at the solidus; a pure metal's rows stand one above the other. */
function heldBy(metal: MetalHeat): HeatHeld {
  const { solidusC, liquidusC, latentJKg, solidJKgK, liquidJKgK } = metal;
  return [
    [solidusC - 1000, -1000 * solidJKgK],
    [solidusC, 0],
    [liquidusC, latentJKg],
    [liquidusC + 1000, latentJKg + 1000 * liquidJKgK],
  ];
}

function requireCasting(of: CastingFor): void {
  const { metal } = of;
  requirePositive("modulusMm", of.modulusMm, { high: 200, unit: "mm" });
  requireWall(of.shellMm);
  requireWhole("cells", of.cells ?? 24, { low: 2, high: 200 });
  requireProperty("conductivityWMK", of.conductivityWMK, { low: 0.001, high: 500, unit: "W/(m·K)" });
  requireWithin("shellKgM3", of.shellKgM3, { low: 50, high: 10_000, unit: "kg/m³ (not g/cm³)" });
  requireProperty("shellJKgK", of.shellJKgK, { low: 100, high: 5000, unit: "J/(kg·K) (not kJ)" });
  requireBed(of.sand ?? backingSand);
  requireWithin("sandC", of.sandC ?? of.airC, { low: -50, high: 1700, unit: "°C" });
  requireWithin("filmWM2K", of.filmWM2K ?? 10, { low: 0, high: 1000, unit: "W/(m²·K)" });
  requireWithin("liquidusC", of.metal.liquidusC, { low: 30, high: 2500, unit: "°C" });
  requireWithin("pourC", of.pourC, { low: 100, high: 1900, unit: "°C" });
  requireWithin("shellC", of.shellC, { low: -20, high: 1300, unit: "°C" });
  requireWithin("airC", of.airC, { low: -40, high: 60, unit: "°C" });
  requireWithin("knockoutC", of.knockoutC, { low: of.airC + 5, high: 1500, unit: "°C" });
  requireWithin("emissivity", of.emissivity, { low: 0, high: 1, unit: "" });
  requireWithin("contactWM2K", of.contactWM2K ?? metalToShellWM2K.likely, {
    low: 1,
    high: 1e5,
    unit: "W/(m²·K)",
  });
  requireWithin("solidusC", metal.solidusC, {
    low: 30,
    high: metal.liquidusC,
    unit: "°C (not above the liquidus)",
  });
  requireWithin("latentJKg", metal.latentJKg, { low: 1e4, high: 2e6, unit: "J/kg (not kJ)" });
  requireWithin("solidJKgK", metal.solidJKgK, { low: 100, high: 2000, unit: "J/(kg·K)" });
  requireWithin("liquidJKgK", metal.liquidJKgK, { low: 100, high: 2000, unit: "J/(kg·K)" });
  requireWithin("densityKgM3", metal.densityKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
}
