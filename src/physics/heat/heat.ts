import { evenCellsMm, growingCellsMm, march } from "./heatMarch.ts";
import type { Property } from "./heatProperty.ts";
import { requireProperty } from "./heatProperty.ts";
import type { Layer, Outer } from "./heatSolver.ts";
import { startConduction } from "./heatSolver.ts";
import { requirePositive, requireWhole, requireWithin } from "../stats/range.ts";

/** What lies around the wall once it is out of the kiln. */
const outsides = ["air", "cold-sand", "hot-sand", "blanket"] as const;
export type Outside = (typeof outsides)[number];

/** What the cavity face sees: a closed cavity, air as outside (an open dish), or a cavity packed with sand. */
export type Inside = "adiabatic" | "symmetric" | "sand-backed";

/** Factors on the likely figure, lower and upper: how well it is known. */
export type Share = readonly [low: number, high: number];

export type ShellHeat = {
  readonly conductivityWMK: Property;
  readonly densityKgM3: number;
  readonly heatJKgK: Property;
  readonly emissivity: number;
  readonly conductivityShare?: Share | undefined;
  /** On density × heat. */
  readonly storageShare?: Share | undefined;
  readonly emissivityShare?: Share | undefined;
};

export type Bed = {
  readonly conductivityWMK: Property;
  readonly densityKgM3: number;
  readonly heatJKgK: Property;
  readonly thicknessMm: number;
};

export type WallTemperature = {
  readonly minute: number;
  readonly cavityFaceC: number;
  readonly meanC: number;
  readonly outerC: number;
  /** The cavity face at the ends of what is known of the properties. */
  readonly cavityFaceLowC: number;
  readonly cavityFaceHighC: number;
};

export type WallCoolingFor = Partial<ShellHeat> & {
  readonly wallMm: number;
  readonly startC: number;
  readonly airC: number;
  readonly minutes: number;
  /** Air unless said otherwise. */
  readonly outside?: Outside | undefined;
  readonly inside?: Inside | undefined;
  /** Of the sand, outside or in; cold sand is at the air's temperature and hot sand at 315 °C unless given. */
  readonly sandC?: number | undefined;
  readonly sand?: Bed | undefined;
  readonly filmWM2K?: number | undefined;
  /** Minutes between rows; half a minute unless given. */
  readonly everyMin?: number | undefined;
  readonly cells?: number | undefined;
};

/** Loose dry silica sand: 0.3 W/(m·K), from memory; packed by vibration it nears 0.6. */
export const looseSand: Bed = { conductivityWMK: 0.3, densityKgM3: 1600, heatJKgK: 900, thicknessMm: 150 };
/** Ceramic-fibre blanket of 25 mm: from memory of blankets of 128 kg/m³, near 500 °C. */
const blanket: Bed = { conductivityWMK: 0.12, densityKgM3: 128, heatJKgK: 1000, thicknessMm: 25 };
/** Backing sand that was heated: common practice, no source. */
export const hotSandC = 315;
/** Still air at an upright wall of 0.3 m, W/(m²·K): Churchill & Chu gives 8.2 at 540 °C, 7.8 at 300 °C (derived). */
const stillAirWM2K = 8;

/** A dry fused-silica shell, mid-range: from memory of Sabau & Viswanathan, AFS Trans. 2004. */
const usualShell = { conductivityWMK: 0.7, densityKgM3: 1800, heatJKgK: 1000, emissivity: 0.85 } as const;

/** How well a shell's properties are known when nobody measured them: judgement, from the spread of published ones. */
const unmeasured = { conductivity: [0.71, 1.43], storage: [0.83, 1.17], emissivity: [0.88, 1.06] } as const;

/**
 * Temperatures of a wall out of the kiln, minute by minute, with the band its properties' ranges leave.
 *
 * One-dimensional conduction; outside radiation to black surroundings at `airC` and convection, or a bed of
 * sand (far side insulated; 150 mm is endless for an hour). Temperatures −50–1700 °C, wall 0.5–100 mm,
 * 0–600 min. A wall with an inside face `symmetric` is cooled from both sides, and its cavity face is a surface.
 * A shell whose figures are left out is of fused silica, in air.
 */
export function wallCooling(asked: WallCoolingFor): readonly WallTemperature[] {
  const of: Known = { ...asked, ...withUsual(asked), outside: asked.outside ?? "air" };
  requireCooling(of);
  const conductivity = of.conductivityShare ?? unmeasured.conductivity;
  const storage = of.storageShare ?? unmeasured.storage;
  const emissivity = of.emissivityShare ?? unmeasured.emissivity;
  const likely = coolingRows(of);
  // Heat reaches a face that loses it through the wall: a good conductor's cavity face cools faster.
  const [fast, slow] = (
    [
      [1, 0, 1],
      [0, 1, 0],
    ] as const
  ).map(([k, s, e]) =>
    coolingRows({
      ...of,
      conductivityWMK: scaled(of.conductivityWMK, conductivity[k]),
      densityKgM3: of.densityKgM3 * storage[s],
      emissivity: Math.min(1, of.emissivity * emissivity[e]),
    }),
  );
  return likely.map((row, i) => {
    const a = fast?.[i]?.cavityFaceC ?? row.cavityFaceC;
    const b = slow?.[i]?.cavityFaceC ?? row.cavityFaceC;
    return {
      ...row,
      cavityFaceLowC: Math.min(a, b, row.cavityFaceC),
      cavityFaceHighC: Math.max(a, b, row.cavityFaceC),
    };
  });
}

type Known = WallCoolingFor & ShellHeat & { readonly outside: Outside };

const withUsual = ({ conductivityWMK, densityKgM3, heatJKgK, emissivity }: Partial<ShellHeat>) => ({
  conductivityWMK: conductivityWMK ?? usualShell.conductivityWMK,
  densityKgM3: densityKgM3 ?? usualShell.densityKgM3,
  heatJKgK: heatJKgK ?? usualShell.heatJKgK,
  emissivity: emissivity ?? usualShell.emissivity,
});

/** The wall's temperatures for one set of properties, without a band. */
function coolingRows(of: Known): readonly Omit<WallTemperature, "cavityFaceLowC" | "cavityFaceHighC">[] {
  const { wallMm, startC, minutes, inside = "adiabatic", everyMin = 0.5, cells = 24 } = of;
  // A wall cooled alike on both faces is half of it with an insulated middle.
  const thicknessMm = inside === "symmetric" ? wallMm / 2 : wallMm;
  const { layers, outer, shellFrom, shellTo } = layersOf(of, { thicknessMm, cells });
  const conduction = startConduction({ layers, outer });
  const { cellC } = conduction;
  const rowAt = (minute: number): Omit<WallTemperature, "cavityFaceLowC" | "cavityFaceHighC"> => {
    const shell = cellC.subarray(shellFrom, shellTo);
    const outerC = shellTo === cellC.length ? conduction.outerC() : conduction.faceC(shellTo);
    const cavityFaceC =
      inside === "symmetric"
        ? outerC
        : shellFrom > 0
          ? conduction.faceC(shellFrom)
          : // No heat crosses the face: the parabola through the first two cells is flat there.
            (9 * shell[0]! - shell[1]!) / 8;
    return { minute, cavityFaceC, meanC: shell.reduce((sum, c) => sum + c, 0) / shell.length, outerC };
  };
  const rows = [{ minute: 0, cavityFaceC: startC, meanC: startC, outerC: startC }];
  const marks = Array.from({ length: Math.ceil(minutes / everyMin - 1e-9) }, (_, i) =>
    Math.min(minutes, (i + 1) * everyMin),
  );
  march({
    conduction,
    marksS: marks.map((minute) => minute * 60),
    firstS: 0.05,
    longestS: 6,
    onMark: (atS) => {
      rows.push(rowAt(atS / 60));
      return "go-on";
    },
  });
  return rows;
}

function layersOf(
  of: Known,
  { thicknessMm, cells }: { thicknessMm: number; cells: number },
): {
  readonly layers: readonly Layer[];
  readonly outer: Outer;
  readonly shellFrom: number;
  readonly shellTo: number;
} {
  const { outside, inside = "adiabatic", airC, startC, sand = looseSand } = of;
  const shell: Layer = { ...of, cellsMm: evenCellsMm({ thicknessMm, cells }), startC };
  const bedOf = (bed: Bed, bedC: number): Layer => ({
    ...bed,
    startC: bedC,
    cellsMm: growingCellsMm({ thicknessMm: bed.thicknessMm, firstMm: thicknessMm / cells, cells: cells + 8 }),
  });
  const sandC = of.sandC ?? (outside === "hot-sand" ? hotSandC : airC);
  const core = bedOf(sand, sandC);
  const within = inside === "sand-backed" ? [{ ...core, cellsMm: core.cellsMm.toReversed() }] : [];
  const around = outside === "air" ? [] : [outside === "blanket" ? bedOf(blanket, airC) : bedOf(sand, sandC)];
  const shellFrom = within[0]?.cellsMm.length ?? 0;
  const open: Outer = {
    kind: "open",
    airC,
    filmWM2K: of.filmWM2K ?? stillAirWM2K,
    emissivity: outside === "blanket" ? 0.9 : of.emissivity,
  };
  return {
    layers: [...within, shell, ...around],
    outer: outside === "air" || outside === "blanket" ? open : { kind: "insulated" },
    shellFrom,
    shellTo: shellFrom + cells,
  };
}

function scaled(property: Property, factor: number): Property {
  if (typeof property === "number") return property * factor;
  return property.map(([atC, value]) => [atC, value * factor] as const);
}

const conductivityRange = { low: 0.001, high: 500, unit: "W/(m·K)" } as const;
const heatRange = { low: 100, high: 5000, unit: "J/(kg·K) (not kJ)" } as const;

function requireShare(name: string, share: Share | undefined): void {
  if (share === undefined) return;
  requireWithin(`${name} low`, share[0], { low: 0.05, high: 1, unit: "(a factor)" });
  requireWithin(`${name} high`, share[1], { low: 1, high: 20, unit: "(a factor)" });
}

function requireCooling(of: Known): void {
  requireWall(of.wallMm);
  requireShare("conductivityShare", of.conductivityShare);
  requireShare("storageShare", of.storageShare);
  requireShare("emissivityShare", of.emissivityShare);
  if (of.sand !== undefined) requireBed(of.sand);
  if (!outsides.includes(of.outside))
    throw new RangeError(`outside must be one of ${outsides.join(", ")}, found ${of.outside}`);
  for (const name of ["startC", "airC", "sandC"] as const) {
    const found = of[name];
    if (found !== undefined) requireWithin(name, found, { low: -50, high: 1700, unit: "°C" });
  }
  requireWithin("minutes", of.minutes, { low: 0, high: 600, unit: "min" });
  requireWithin("everyMin", of.everyMin ?? 0.5, { low: 0.01, high: 600, unit: "min" });
  requireWhole("cells", of.cells ?? 24, { low: 4, high: 1000 });
  requireProperty("conductivityWMK", of.conductivityWMK, conductivityRange);
  requireWithin("densityKgM3", of.densityKgM3, { low: 50, high: 10_000, unit: "kg/m³ (not g/cm³)" });
  requireProperty("heatJKgK", of.heatJKgK, heatRange);
  requireWithin("emissivity", of.emissivity, { low: 0, high: 1, unit: "" });
  requireWithin("filmWM2K", of.filmWM2K ?? stillAirWM2K, { low: 0, high: 1000, unit: "W/(m²·K)" });
}

/** Refuses a bed without thickness, or of a stuff that is none. */
export function requireBed(bed: Bed): void {
  requireProperty("sand's conductivityWMK", bed.conductivityWMK, conductivityRange);
  requireWithin("sand's densityKgM3", bed.densityKgM3, { low: 10, high: 10_000, unit: "kg/m³ (not g/cm³)" });
  requireProperty("sand's heatJKgK", bed.heatJKgK, heatRange);
  requireWithin("sand's thicknessMm", bed.thicknessMm, { low: 1, high: 5000, unit: "mm" });
}

/** Throws a RangeError unless the wall is 0.5–100 mm. */
export const requireWall = (wallMm: number): void =>
  requireWithin("wallMm", wallMm, { low: 0.5, high: 100, unit: "mm (not m)" });

export type RampFor = {
  readonly wallMm: number;
  readonly diffusivityM2S: number;
  readonly modulusGPa: number;
  readonly expansionPerK: number;
  readonly poisson?: number | undefined;
  /** A shell's inside is dead air: it is heated from one side unless said otherwise. */
  readonly heated?: "one-side" | "both-sides" | undefined;
  /** Heating unless said otherwise: the face in tension is the inside on heating, the outside on cooling. */
  readonly way?: "heating" | "cooling" | undefined;
};

/**
 * Share of E·α·ΔT/(1 − ν) that the face in tension takes on a steady ramp: across a parabola flat at the inside the
 * outside takes 2/3 on cooling, the inside 1/3 on heating (derived; Timoshenko & Goodier, Theory of Elasticity, from
 * memory). A half is kept on heating, as a green wall bends and its inside is what cracks (judgement).
 */
const tensionShare = { heating: 1 / 2, cooling: 2 / 3 } as const;

/**
 * Steepest steady ramp, K/h, at which the stress of the wall's own gradient stays at `strengthMPa` (after any safety
 * factor): 4·a·σ·(1 − ν)/(E·α·t²) on heating, three quarters of it on cooling; t half the wall heated from both sides.
 * Same form as the firing-rate limit of Štubňa, Trník, Chmelík & Vozár, "Mechanical Properties of Kaolin-Base Ceramics
 * During Firing", InTech 2011, with the shape factor 4. Wall 0.5–100 mm.
 */
export function rampLimitKPerH({ strengthMPa, ...of }: RampFor & { readonly strengthMPa: number }): number {
  requirePositive("strengthMPa", strengthMPa, { high: 1000, unit: "MPa" });
  return strengthMPa / rampStress({ ...of, rateKPerH: 1 }).stressMPa;
}

/**
 * Difference across a wall on a steady ramp, K, R·t²/(2a), and its tension, MPa. Holds after about t²/a.
 */
export function rampStress({
  wallMm,
  diffusivityM2S,
  modulusGPa,
  expansionPerK,
  poisson = 0.2,
  heated = "one-side",
  way = "heating",
  rateKPerH,
}: RampFor & { readonly rateKPerH: number }): { readonly differenceK: number; readonly stressMPa: number } {
  requireWall(wallMm);
  requireWithin("diffusivityM2S", diffusivityM2S, { low: 1e-8, high: 1e-3, unit: "m²/s" });
  requireWithin("modulusGPa", modulusGPa, { low: 0.01, high: 500, unit: "GPa" });
  requireWithin("expansionPerK", expansionPerK, { low: 1e-8, high: 1e-3, unit: "1/K" });
  requireWithin("poisson", poisson, { low: 0, high: 0.49, unit: "" });
  requireWithin("rateKPerH", rateKPerH, { low: 0, high: 1e6, unit: "K/h" });
  const throughM = wallMm / 1000 / (heated === "both-sides" ? 2 : 1);
  const differenceK = ((rateKPerH / 3600) * throughM * throughM) / (2 * diffusivityM2S);
  const wholeMPa = (modulusGPa * 1000 * expansionPerK * differenceK) / (1 - poisson);
  return { differenceK, stressMPa: tensionShare[way] * wholeMPa };
}
