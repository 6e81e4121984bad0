import { requirePositive, requireWithin } from "../stats/range.ts";

/** Standard here is 9.81 m/s², as for the head on a wall. */
const gravityMS2 = 9.81;

/**
 * Speed at the foot of a fall, m/s: Cd·√(2gH + v0²), Torricelli and Bernoulli. Head 0–20 m; Cd 1 is no loss,
 * 0.80–0.90 a tapered sprue with a basin, 0.5–0.7 straight or with sharp turns, 0.4–0.6 a filter (from memory of
 * P. N. Rao, Manufacturing Technology, gating). Entry speed 0 unless given.
 */
export function spoutVelocityMS({
  headM,
  dischargeCoefficient = 1,
  entrySpeedMS = 0,
}: {
  headM: number;
  dischargeCoefficient?: number | undefined;
  entrySpeedMS?: number | undefined;
}): number {
  requireWithin("headM", headM, { low: 0, high: 20, unit: "m (not mm)" });
  requirePositive("dischargeCoefficient", dischargeCoefficient, { high: 1, unit: "(a fraction)" });
  requireWithin("entrySpeedMS", entrySpeedMS, { low: 0, high: 50, unit: "m/s" });
  return dischargeCoefficient * Math.sqrt(2 * gravityMS2 * headM + entrySpeedMS ** 2);
}

/** Fall at whose foot a stream has a given speed, m: v²/2g. */
export function fallForSpeedM(speedMS: number): number {
  requireWithin("speedMS", speedMS, { low: 0, high: 20, unit: "m/s" });
  return speedMS ** 2 / (2 * gravityMS2);
}

/**
 * Narrowest section of the gating, mm²: M/(ρL·t·Cd·√(2gH)), the same gating chapter. Mass with gates and risers,
 * liquid density, effective head; Cd 0.8, the cautious end of a tapered sprue with a basin, unless given.
 */
export function chokeAreaMm2({
  massKg,
  liquidKgM3,
  timeS,
  headM,
  dischargeCoefficient = 0.8,
}: {
  massKg: number;
  liquidKgM3: number;
  timeS: number;
  headM: number;
  dischargeCoefficient?: number | undefined;
}): number {
  requirePositive("headM", headM, { high: 20, unit: "m (not mm)" });
  return sectionForSpeedMm2({
    massKg,
    liquidKgM3,
    timeS,
    speedMS: spoutVelocityMS({ headM, dischargeCoefficient }),
  });
}

/** Section through which a mass passes in a time at a speed, mm²: what all gates together need at their speed limit. */
export function sectionForSpeedMm2({
  massKg,
  liquidKgM3,
  timeS,
  speedMS,
}: {
  massKg: number;
  liquidKgM3: number;
  timeS: number;
  speedMS: number;
}): number {
  requirePositive("massKg", massKg, { high: 100_000, unit: "kg" });
  requireWithin("liquidKgM3", liquidKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requirePositive("timeS", timeS, { high: 3600, unit: "s" });
  requirePositive("speedMS", speedMS, { high: 50, unit: "m/s" });
  return (massKg / (liquidKgM3 * timeS * speedMS)) * 1e6;
}

/** Diameter of a round of a section, mm. */
export function roundMm(areaMm2: number): number {
  requirePositive("areaMm2", areaMm2, { high: 1e7, unit: "mm²" });
  return Math.sqrt((4 * areaMm2) / Math.PI);
}

export type FillBy =
  /** K·W^⅓, mass with gates and risers below 450 kg; K by wall or by gating (from memory of P. N. Rao). */
  | { readonly by: "mass"; readonly massKg: number; readonly factor: number }
  /** Constant head, any mould filled from above; taken where no way is said. */
  | {
      readonly by?: "top-gate" | undefined;
      readonly volumeCm3: number;
      readonly gateAreaMm2: number;
      readonly headM: number;
      readonly dischargeCoefficient?: number | undefined;
    }
  /** The metal rises against its own head; even section (from memory of Ghosh & Mallik, Manufacturing Science, ch. 2). */
  | {
      readonly by: "bottom-gate";
      readonly cavityAreaMm2: number;
      readonly cavityHeightM: number;
      readonly gateAreaMm2: number;
      readonly headM: number;
      readonly dischargeCoefficient?: number | undefined;
    }
  /** What the way of pouring gives, kg/s. */
  | { readonly by: "ladle"; readonly massKg: number; readonly rateKgS: number };

/** Time to fill, s, by one way of reckoning it; Cd is 1 unless given; null where the cavity stands above the metal in the cup and never fills. */
export function fillTimeS(fill: FillBy): number | null {
  switch (fill.by) {
    case "mass":
      requirePositive("massKg", fill.massKg, { high: 450, unit: "kg" });
      requireWithin("factor", fill.factor, { low: 0.1, high: 20, unit: "" });
      return fill.factor * Math.cbrt(fill.massKg);
    case "top-gate":
    case undefined:
      requirePositive("volumeCm3", fill.volumeCm3, { high: 1e7, unit: "cm³" });
      requirePositive("headM", fill.headM, { high: 20, unit: "m (not mm)" });
      return (fill.volumeCm3 * 1e-6) / (metres2(fill.gateAreaMm2) * spoutVelocityMS(fill));
    case "bottom-gate":
      return bottomGateS(fill);
    case "ladle":
      requirePositive("massKg", fill.massKg, { high: 100_000, unit: "kg" });
      requirePositive("rateKgS", fill.rateKgS, { high: 100, unit: "kg/s" });
      return fill.massKg / fill.rateKgS;
    default:
      throw new RangeError(`by must be mass, top-gate, bottom-gate or ladle, found ${said(fill)}`);
  }
}

const said = ({ by }: { readonly by: string }): string => by;

function bottomGateS({
  cavityAreaMm2,
  cavityHeightM,
  gateAreaMm2,
  headM,
  dischargeCoefficient = 1,
}: Extract<FillBy, { by: "bottom-gate" }>): number | null {
  requirePositive("headM", headM, { high: 20, unit: "m (not mm)" });
  requirePositive("cavityHeightM", cavityHeightM, { high: 20, unit: "m (not mm)" });
  requirePositive("dischargeCoefficient", dischargeCoefficient, { high: 1, unit: "(a fraction)" });
  if (cavityHeightM > headM) return null;
  const rise = Math.sqrt(headM) - Math.sqrt(headM - cavityHeightM);
  const shape = (metres2(cavityAreaMm2) / metres2(gateAreaMm2)) * (2 / Math.sqrt(2 * gravityMS2));
  return (shape * rise) / dischargeCoefficient;
}

function metres2(areaMm2: number): number {
  requirePositive("areaMm2", areaMm2, { high: 1e8, unit: "mm²" });
  return areaMm2 * 1e-6;
}
