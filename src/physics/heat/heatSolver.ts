import type { HeatHeld, Property } from "./heatProperty.ts";
import {
  crossHeld,
  heldAt,
  propertyAt,
  propertyBetween,
  requireHeld,
  requireProperty,
} from "./heatProperty.ts";
import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** A slab of one material, its cells listed from the inside out. */
export type Layer = {
  readonly cellsMm: readonly number[];
  readonly conductivityWMK: Property;
  readonly densityKgM3: number;
  readonly heatJKgK: Property;
  readonly startC: number;
};

/** What the outer face sees: air that it radiates to and warms, or nothing. */
export type Outer =
  | { readonly kind: "open"; readonly airC: number; readonly filmWM2K: number; readonly emissivity: number }
  | { readonly kind: "insulated" };

/** Metal against the innermost layer, all of one temperature. */
export type Melt = {
  readonly kgM2: number;
  readonly contactWM2K: number;
  readonly startC: number;
  readonly held: HeatHeld;
};

/** A wall in the middle of its cooling, stepped in place: tens of millions of cells a second leave no room for copies. */
export type Conduction = {
  readonly cellC: Float64Array;
  readonly outerC: () => number;
  readonly meltC: () => number | null;
  /** Temperature of the face between a cell and the one inside it, where their flows meet. */
  readonly faceC: (cell: number) => number;
  /** Heat let out through the outer face since the start, J/m². */
  readonly lostJM2: () => number;
  /** Heat held above what was held at the start, J/m²: what was lost, with the other sign. */
  readonly gainedJM2: () => number;
  /** One step. `implicit` 1 is backward Euler, which bears any jump; 0.5 is Crank–Nicolson, second order. */
  readonly advance: (stepS: number, implicit: number) => void;
};

export const zeroCK = 273.15;
/** Stefan–Boltzmann constant, W/(m²·K⁴): CODATA 2018. */
export const radiationWM2K4 = 5.670374419e-8;

const mostRounds = 12;

/**
 * One-dimensional conduction through layers: finite volumes, a massless face outside that radiates and
 * convects, nothing passing inside but what the metal gives. Radiation by Newton's method, the metal's
 * freezing solved exactly along its rows. Heat is conserved to rounding for constant properties, to
 * 1e-7 K a step for tabled ones (whose conductivity is read at the step's start).
 */
export function startConduction({
  layers,
  outer,
  melt,
}: {
  layers: readonly Layer[];
  outer: Outer;
  melt?: Melt | undefined;
}): Conduction {
  requireParts(layers, outer, melt);
  const cells = layers.flatMap((layer) => layer.cellsMm.map((mm) => ({ ...layer, mm })));
  const n = cells.length;
  const last = n - 1;
  if (n < 2) throw new RangeError(`conduction wants at least 2 cells, found ${n}`);
  const cellC = Float64Array.from(cells, ({ startC }) => startC);
  const old = Float64Array.from(cellC);
  const massKgM2 = Float64Array.from(cells, ({ densityKgM3, mm }) => (densityKgM3 * mm) / 1000);
  const tabled = layers.some((l) => typeof l.heatJKgK !== "number" || typeof l.conductivityWMK !== "number");
  const half = new Float64Array(n);
  const heatJM2K = new Float64Array(n);
  /** Conductance to the next cell out; the last one's to the outer face. */
  const link = new Float64Array(n);
  const inflow = new Float64Array(n);
  const known = new Float64Array(n);
  const lean = new Float64Array(n);
  let meltLink = 0;
  let meltC = melt?.startC ?? null;
  let meltJKg = melt === undefined ? 0 : heldAt(melt.held, melt.startC);
  const meltStartJKg = meltJKg;
  let outerC = cellC[last]!;
  let lostJM2 = 0;

  const readProperties = (): void => {
    for (const [i, { conductivityWMK, heatJKgK, mm }] of cells.entries()) {
      half[i] = (2000 * propertyAt(conductivityWMK, cellC[i]!)) / mm;
      heatJM2K[i] = massKgM2[i]! * propertyAt(heatJKgK, cellC[i]!);
    }
    for (let i = 0; i < last; i++) link[i] = 1 / (1 / half[i]! + 1 / half[i + 1]!);
    link[last] = half[last]!;
    if (melt !== undefined) meltLink = 1 / (1 / melt.contactWM2K + 1 / half[0]!);
  };
  readProperties();

  const leaving = (): number => (outer.kind === "insulated" ? 0 : link[last]! * (cellC[last]! - outerC));
  const fromMelt = (): number => (meltC === null ? 0 : meltLink * (meltC - cellC[0]!));

  const readInflow = (): void => {
    let coming = fromMelt();
    for (let i = 0; i < last; i++) {
      const going = link[i]! * (cellC[i]! - cellC[i + 1]!);
      inflow[i] = coming - going;
      coming = going;
    }
    inflow[last] = coming - leaving();
  };

  /** Folds the cells from the outside in: each is then `known + lean × the one inside it`. */
  const fold = (stepS: number, implicit: number, face: { slope: number; levelC: number }): void => {
    const explicit = 1 - implicit;
    let outward = face.slope;
    let beyondKnown = face.levelC;
    let beyondLean = 0;
    for (let i = last; i >= 0; i--) {
      const inward = implicit * (i > 0 ? link[i - 1]! : meltLink);
      const pull = implicit * outward;
      // For a tabled heat the old heat content is met by Newton's method, from the last guess.
      const rightOld = tabled ? tabledOld(i, stepS) : (heatJM2K[i]! * old[i]!) / stepS;
      const stored = heatJM2K[i]! / stepS;
      const pivot = stored + inward + pull * (1 - beyondLean);
      known[i] = (rightOld + explicit * inflow[i]! + pull * beyondKnown) / pivot;
      lean[i] = inward / pivot;
      beyondKnown = known[i]!;
      beyondLean = lean[i]!;
      outward = i > 0 ? link[i - 1]! : 0;
    }
  };

  const tabledOld = (i: number, stepS: number): number => {
    const { heatJKgK } = cells[i]!;
    const guess = cellC[i]!;
    heatJM2K[i] = massKgM2[i]! * propertyAt(heatJKgK, guess);
    const since = propertyBetween(heatJKgK, { fromC: old[i]!, toC: guess });
    return (heatJM2K[i] * guess - massKgM2[i]! * since) / stepS;
  };

  const advance = (stepS: number, implicit: number): void => {
    requirePositive("stepS", stepS, { high: 1e9, unit: "s" });
    requireWithin("implicit", implicit, { low: 0.5, high: 1, unit: "" });
    old.set(cellC);
    if (tabled) readProperties();
    readInflow();
    const meltOldJKg = meltJKg;
    const fromMeltOld = fromMelt();
    const leavingOld = leaving();
    for (let round = 0; round < mostRounds; round++) {
      const face = outerFace(outer, outerC);
      const inside = link[last]!;
      const slope = (inside * face.slope) / (inside + face.slope);
      const levelC = face.slope > 0 ? outerC - face.fluxWM2 / face.slope : outerC;
      fold(stepS, implicit, { slope, levelC });
      let within = 0;
      if (melt !== undefined) {
        const a = melt.kgM2 / stepS;
        const b = implicit * meltLink * (1 - lean[0]!);
        const c = a * meltOldJKg + implicit * meltLink * known[0]! - (1 - implicit) * fromMeltOld;
        [within, meltJKg] = crossHeld(melt.held, { a, b, c });
        meltC = within;
      }
      let moved = 0;
      for (let i = 0; i < n; i++) {
        within = known[i]! + lean[i]! * within;
        if (tabled) moved = Math.max(moved, Math.abs(within - cellC[i]!));
        cellC[i] = within;
      }
      const faceC =
        outer.kind === "insulated"
          ? within
          : (inside * within + face.slope * outerC - face.fluxWM2) / (inside + face.slope);
      const faceMoved = outer.kind === "insulated" ? 0 : Math.abs(faceC - outerC);
      outerC = faceC;
      if (faceMoved < 1e-3 && moved < 1e-7) break;
    }
    lostJM2 += stepS * (implicit * leaving() + (1 - implicit) * leavingOld);
  };

  const gainedJM2 = (): number => {
    let gained = melt === undefined ? 0 : melt.kgM2 * (meltJKg - meltStartJKg);
    for (const [i, { heatJKgK, startC }] of cells.entries())
      gained += massKgM2[i]! * propertyBetween(heatJKgK, { fromC: startC, toC: cellC[i]! });
    return gained;
  };

  return {
    cellC,
    outerC: () => outerC,
    meltC: () => meltC,
    faceC: (cell) => {
      const [inner, outer] = [half[cell - 1]!, half[cell]!];
      return (inner * cellC[cell - 1]! + outer * cellC[cell]!) / (inner + outer);
    },
    lostJM2: () => lostJM2,
    gainedJM2,
    advance,
  };
}

function requireParts(layers: readonly Layer[], outer: Outer, melt: Melt | undefined): void {
  for (const { cellsMm, conductivityWMK, densityKgM3, heatJKgK, startC } of layers) {
    for (const mm of cellsMm) requireWithin("cell", mm, { low: 1e-6, high: 1e5, unit: "mm" });
    requireProperty("conductivityWMK", conductivityWMK, { low: 1e-4, high: 1e4, unit: "W/(m·K)" });
    requireWithin("densityKgM3", densityKgM3, { low: 1, high: 30_000, unit: "kg/m³ (not g/cm³)" });
    requireProperty("heatJKgK", heatJKgK, { low: 10, high: 10_000, unit: "J/(kg·K) (not kJ)" });
    requireWithin("startC", startC, { low: -273, high: 4000, unit: "°C" });
  }
  if (outer.kind === "open") {
    requireWithin("airC", outer.airC, { low: -273, high: 4000, unit: "°C" });
    requireWithin("filmWM2K", outer.filmWM2K, { low: 0, high: 1e5, unit: "W/(m²·K)" });
    requireFraction("emissivity", outer.emissivity);
  }
  if (melt === undefined) return;
  requirePositive("kgM2", melt.kgM2, { high: 1e5, unit: "kg/m²" });
  requirePositive("contactWM2K", melt.contactWM2K, { high: 1e6, unit: "W/(m²·K)" });
  requireWithin("melt's startC", melt.startC, { low: -273, high: 4000, unit: "°C" });
  requireHeld(melt.held);
}

/** What leaves a face at a temperature, W/m², and how that grows with it, W/(m²·K). */
function outerFace(outer: Outer, faceC: number): { fluxWM2: number; slope: number } {
  if (outer.kind === "insulated") return { fluxWM2: 0, slope: 0 };
  const { airC, filmWM2K, emissivity } = outer;
  const faceK = faceC + zeroCK;
  const airK = airC + zeroCK;
  const strength = emissivity * radiationWM2K4;
  return {
    fluxWM2:
      filmWM2K * (faceC - airC) + strength * (faceK * faceK * faceK * faceK - airK * airK * airK * airK),
    slope: filmWM2K + 4 * strength * faceK * faceK * faceK,
  };
}
