import type { PatternMaterial } from "./patternMaterials.ts";
import type { Basis, Published } from "./published.ts";

export type BurnoutMaterial = PatternMaterial | "pu-foam";

/** What comes off a burning pattern; `fumeLimits` has the limits of those that have one. */
export type BurnoutGas =
  | "acetaldehyde"
  | "acrolein"
  | "acrylates"
  | "aldehydes"
  | "benzene"
  | "butenal"
  | "carbon-monoxide"
  | "fuel-vapour"
  | "hydrogen-cyanide"
  | "isocyanates"
  | "styrene";

type Span = readonly [lowC: number, highC: number];

/** How a pattern leaves its shell. A null is "not known", or "does not" where `drains` says so. */
export type PatternBurnout = {
  readonly label: string;
  readonly drains: "freely" | "poorly" | "no";
  /** Softens, glass transition, °C. */
  readonly softensC: Published<Span> | null;
  readonly meltsC: Published<Span> | null;
  /** Where it runs or slumps without burning. */
  readonly drainC: Published<Span> | null;
  readonly fivePercentLossC: Published<Span>;
  readonly peakLossC: Published<Span>;
  readonly flashC: Published<Span>;
  readonly selfIgnitionC: Published<Span>;
  readonly ashShare: Published<readonly [low: number, high: number]>;
  readonly heatMJKg: Published;
  readonly airKgKg: Published;
  readonly finishC: Published;
  readonly finishMin: Published;
  readonly gases: readonly BurnoutGas[];
};

const memory = "from memory of polymer data";
const practice = "common practice, no source";
/** Mass share of oxygen in dry air. */
const oxygenShare = 0.2314;

/**
 * Air to burn a kilogram of CₓHᵧO_z(N) wholly, kg/kg: stoichiometry with 23.14 % oxygen by mass; nitrogen leaves as N₂.
 * Atoms 0 or more, at least one of carbon or hydrogen.
 */
export function stoichAirKgKg({
  carbon,
  hydrogen,
  oxygen = 0,
  nitrogen = 0,
}: {
  carbon: number;
  hydrogen: number;
  oxygen?: number | undefined;
  nitrogen?: number | undefined;
}): number {
  if (!(carbon >= 0 && hydrogen >= 0 && oxygen >= 0 && nitrogen >= 0 && carbon + hydrogen > 0))
    throw new RangeError(
      `atoms must be 0 or more with some carbon or hydrogen, found C ${carbon} H ${hydrogen} O ${oxygen} N ${nitrogen}`,
    );
  const massG = 12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen + 14.007 * nitrogen;
  const oxygenG = 31.998 * (carbon + hydrogen / 4 - oxygen / 2);
  return Math.max(0, oxygenG) / massG / oxygenShare;
}

const airFor = (formula: string, atoms: Parameters<typeof stoichAirKgKg>[0]): Published => ({
  value: stoichAirKgKg(atoms),
  basis: "published",
  source: `stoichiometry of ${formula}, oxygen 23.14 % of air by mass`,
});

const span = (low: number, high: number, basis: Basis, source: string): Published<Span> => ({
  value: [low, high],
  basis,
  source,
});

const pla: PatternBurnout = {
  label: "PLA",
  drains: "poorly",
  softensC: span(
    61.8,
    66.2,
    "measured",
    "measured on twelve colours, first heating: J. Iwko et al., Materials Science-Poland 2023, 177–190, doi 10.2478/msp-2023-0015; single lots from 58",
  ),
  meltsC: span(150, 180, "measured", `${memory}; 168–171 measured`),
  drainC: span(
    200,
    260,
    "practice",
    `${practice}: runs out near 260 without catching fire; about 1000 Pa·s at 200, gates of 15 mm and more`,
  ),
  fivePercentLossC: span(
    325,
    325,
    "measured",
    "Polymers 2019, 11, 1514, table 2 (plasticised PLA, thermogravimetry)",
  ),
  peakLossC: span(
    365,
    365,
    "measured",
    "Polymers 2019, 11, 1514, table 2 (plasticised PLA, thermogravimetry)",
  ),
  flashC: span(330, 350, "published", memory),
  selfIgnitionC: span(388, 388, "published", memory),
  ashShare: {
    value: [0.0005, 0.005],
    basis: "published",
    source: `${memory}; white and filled colours to 0.02`,
  },
  heatMJKg: { value: 18, basis: "published", source: memory },
  airKgKg: airFor("C3H4O2", { carbon: 3, hydrogen: 4, oxygen: 2 }),
  finishC: { value: 760, basis: "practice", source: practice },
  finishMin: { value: 60, basis: "practice", source: practice },
  gases: ["acetaldehyde", "aldehydes", "carbon-monoxide"],
};

/** Wax that stays as a film in the shell when the rest has run out, as a share of the pattern's mass. */
export const waxFilmShare: Published = {
  value: 0.1,
  basis: "judgement",
  source: "judgement, starting value: a film of wax on the wall and what it has drunk in",
};
/** Heaviest wax, kg, that is melted out in a kiln from cold: more swells against the wall and fills a tray with fuel. */
export const stagedWaxMostKg: Published = {
  value: 0.1,
  basis: "judgement",
  source: "judgement: thin or small wax only; slow heat cracks shells round thick wax",
};

/** Null for a material nobody named: nothing is known of how it burns. */
export const patternBurnout: Readonly<Record<BurnoutMaterial, PatternBurnout | null>> = {
  wax: {
    label: "Wax",
    drains: "freely",
    softensC: null,
    meltsC: span(55, 80, "published", "from memory of waxes"),
    drainC: span(90, 200, "practice", practice),
    fivePercentLossC: span(230, 280, "published", "from memory of waxes"),
    peakLossC: span(350, 400, "published", "from memory of waxes"),
    flashC: span(200, 230, "published", "from memory of waxes"),
    selfIgnitionC: span(245, 300, "published", "from memory of waxes, vapour"),
    ashShare: {
      value: [0, 0.0005],
      basis: "published",
      source: "from memory of waxes; casting waxes ask for 0.0005 or less",
    },
    heatMJKg: { value: 43, basis: "published", source: "from memory of paraffins, lower heating value" },
    airKgKg: airFor("C25H52", { carbon: 25, hydrogen: 52 }),
    finishC: { value: 700, basis: "practice", source: practice },
    finishMin: { value: 45, basis: "practice", source: practice },
    gases: ["acrolein", "carbon-monoxide", "fuel-vapour"],
  },
  pla,
  pvb: {
    label: "PVB",
    drains: "poorly",
    softensC: span(60, 75, "published", memory),
    meltsC: null,
    drainC: span(200, 250, "practice", `${practice}; flows from 150`),
    fivePercentLossC: span(280, 280, "published", memory),
    peakLossC: span(360, 430, "published", memory),
    flashC: span(370, 370, "published", memory),
    selfIgnitionC: span(390, 390, "published", memory),
    ashShare: { value: [0, 0.003], basis: "published", source: memory },
    heatMJKg: { value: 30, basis: "published", source: memory },
    airKgKg: airFor("C8H14O2", { carbon: 8, hydrogen: 14, oxygen: 2 }),
    finishC: { value: 760, basis: "practice", source: practice },
    finishMin: { value: 60, basis: "practice", source: practice },
    gases: ["butenal", "aldehydes", "carbon-monoxide"],
  },
  resin: {
    label: "Castable resin",
    drains: "no",
    softensC: span(40, 120, "published", memory),
    meltsC: null,
    drainC: null,
    fivePercentLossC: span(280, 330, "published", memory),
    peakLossC: span(380, 430, "published", memory),
    flashC: span(300, 300, "published", memory),
    selfIgnitionC: span(400, 450, "published", memory),
    ashShare: {
      value: [0.0002, 0.003],
      basis: "published",
      source: `${memory}; 0.005 and more where air is short`,
    },
    heatMJKg: { value: 25, basis: "published", source: memory },
    airKgKg: airFor("C5H8O2, an acrylate", { carbon: 5, hydrogen: 8, oxygen: 2 }),
    finishC: { value: 800, basis: "practice", source: `${practice}; 760–870` },
    finishMin: { value: 60, basis: "practice", source: practice },
    gases: ["acrylates", "aldehydes", "carbon-monoxide"],
  },
  foam: {
    label: "EPS or XPS foam",
    drains: "no",
    softensC: span(95, 100, "published", memory),
    meltsC: span(100, 120, "published", `${memory}: it collapses to a film`),
    drainC: null,
    fivePercentLossC: span(330, 330, "published", memory),
    peakLossC: span(410, 410, "published", memory),
    flashC: span(345, 360, "published", memory),
    selfIgnitionC: span(490, 490, "published", memory),
    ashShare: { value: [0, 0.001], basis: "published", source: memory },
    heatMJKg: { value: 40, basis: "published", source: memory },
    airKgKg: airFor("C8H8", { carbon: 8, hydrogen: 8 }),
    finishC: { value: 760, basis: "practice", source: practice },
    finishMin: { value: 60, basis: "practice", source: practice },
    gases: ["styrene", "benzene", "carbon-monoxide"],
  },
  "pu-foam": {
    label: "Polyurethane foam",
    drains: "no",
    softensC: null,
    meltsC: null,
    drainC: null,
    fivePercentLossC: span(250, 250, "published", memory),
    peakLossC: span(330, 450, "published", memory),
    flashC: span(310, 340, "published", memory),
    selfIgnitionC: span(415, 525, "published", memory),
    ashShare: { value: [0.001, 0.01], basis: "published", source: memory },
    heatMJKg: { value: 25, basis: "published", source: memory },
    airKgKg: { value: 8.5, basis: "published", source: `${memory} of rigid foam's make-up` },
    finishC: { value: 800, basis: "practice", source: practice },
    finishMin: { value: 60, basis: "practice", source: practice },
    gases: ["hydrogen-cyanide", "isocyanates", "carbon-monoxide"],
  },
  other: null,
};
