/**
 * The numbers an entry may hold, each stated once. Plain data that imports nothing: the schemas of the entries are built
 * from it, and forms, refusals and sums read it without them.
 *
 * A row is named by the key of the body it belongs to. Where one key means different things in different entries, each
 * has a row of a more precise name, and `as` is the key that refusals and words know it by.
 */
type Field = {
  /** What kind of number it is, in the words of `ui/base/format/units`; canonical units, as its name says. */
  readonly quantity: FieldQuantity;
  /** What is read of an old log or a backup: it keeps nonsense out and is never made narrower. */
  readonly stored: Span;
  /**
   * What may be written: wide enough for any shop, narrow enough to catch a slipped digit or the wrong unit. Judgement
   * throughout. Sums leave out what lies outside.
   */
  readonly entry: Span;
  /** A number of things: read only as an integer. */
  readonly whole?: true;
  readonly as?: string;
};

/** The least and the most, both allowed. */
type Span = readonly [low: number, high: number];

type FieldQuantity =
  | "temp"
  | "tempDiff"
  | "mm"
  | "m"
  | "kg"
  | "g"
  | "m2"
  | "litre"
  | "kilnL"
  | "percent"
  | "share"
  | "min"
  | "s"
  | "h"
  | "MPa"
  | "density"
  | "kW"
  | "kWh"
  | "rate"
  | "plain";

const tempC = [-60, 2500] as const;
const minutes = [0, 100_000] as const;
const daySeconds = [0, 86_400] as const;
const share = [0, 1] as const;
/** Where the log ends: the year 2200. */
const epochMs = [0, 7_258_118_400_000] as const;

export const fields = {
  // The piece and its pattern.
  headM: { quantity: "m", stored: [0, 50], entry: [0.01, 10] },
  widthMm: { quantity: "mm", stored: [0, 20_000], entry: [1, 5000] },
  lengthMm: { quantity: "mm", stored: [0, 20_000], entry: [1, 5000] },
  diameterMm: { quantity: "mm", stored: [0, 20_000], entry: [1, 5000] },
  ribEveryMm: { quantity: "mm", stored: [0, 20_000], entry: [10, 5000] },
  coreLitre: { quantity: "litre", stored: [0, 1e6], entry: [0.001, 2000], as: "litre" },
  coreKgM3: { quantity: "plain", stored: [0, 1e5], entry: [200, 10_000], as: "densityKgM3" },
  coreMPa: { quantity: "MPa", stored: [0, 1000], entry: [0.05, 50], as: "morMPa" },
  pins: { quantity: "plain", stored: [0, 10_000], entry: [0, 500], whole: true },
  pinMm: { quantity: "mm", stored: [0, 1000], entry: [0.5, 50] },
  mouthMm: { quantity: "mm", stored: [0, 20_000], entry: [1, 2000] },
  coreDepthMm: { quantity: "mm", stored: [0, 20_000], entry: [1, 5000], as: "depthMm" },
  crownMm: { quantity: "mm", stored: [0, 20_000], entry: [0.5, 2000] },
  areaM2: { quantity: "m2", stored: [0, 1000], entry: [0.0001, 100] },
  metalKg: { quantity: "kg", stored: [0, 100_000], entry: [0.001, 10_000] },
  metalLitre: { quantity: "litre", stored: [0, 100_000], entry: [0.0001, 4000] },
  sumsVersion: { quantity: "plain", stored: [0, 10_000], entry: [1, 9999], whole: true },
  triangles: { quantity: "plain", stored: [0, 1e9], entry: [1, 100_000_000], whole: true },
  mmPerUnit: { quantity: "plain", stored: [0, 1e6], entry: [1e-6, 100_000] },
  volumeMm3: { quantity: "plain", stored: [0, 1e13], entry: [0, 1e12] },
  volumeLowMm3: { quantity: "plain", stored: [0, 1e13], entry: [0, 1e12] },
  volumeHighMm3: { quantity: "plain", stored: [0, 1e13], entry: [0, 1e12] },
  areaMm2: { quantity: "plain", stored: [0, 1e11], entry: [0, 1e10] },
  boxMm: { quantity: "mm", stored: [0, 1e5], entry: [0, 20_000] },
  /** Stored: each part of the direction. Written: its length, 1 but for rounding. */
  up: { quantity: "plain", stored: [-1.001, 1.001], entry: [0.99, 1.01] },
  /** The metal above the lowest point, as measured on the mesh: 0 where nothing stands above it. */
  meshHeadM: { quantity: "m", stored: [0, 50], entry: [0, 10], as: "headM" },
  tips: { quantity: "plain", stored: [0, 1e6], entry: [0, 10_000], whole: true },
  vents: { quantity: "plain", stored: [0, 1e6], entry: [0, 10_000], whole: true },
  drains: { quantity: "plain", stored: [0, 1e6], entry: [0, 10_000], whole: true },
  trappedMl: { quantity: "plain", stored: [0, 1e8], entry: [0, 1_000_000] },
  gatingMm3: { quantity: "plain", stored: [0, 1e13], entry: [0, 1e12] },
  gatingAreaMm2: { quantity: "plain", stored: [0, 1e11], entry: [0, 1e10] },
  /** Volume over cooling area of the thickest bar of the tree. */
  treeModulusMm: { quantity: "mm", stored: [0, 1e5], entry: [0, 1000] },
  patternMm3: { quantity: "plain", stored: [0, 1e13], entry: [0, 1e12] },
  thinnestMm: { quantity: "mm", stored: [0, 1e5], entry: [0, 5000] },
  thickestMm: { quantity: "mm", stored: [0, 1e5], entry: [0, 5000] },

  // Coats and what is seen of them.
  coatNumber: { quantity: "plain", stored: [1, 200], entry: [1, 99], whole: true, as: "number" },
  step: { quantity: "plain", stored: [0, 199], entry: [0, 98], whole: true },
  drainS: { quantity: "s", stored: daySeconds, entry: [0, 3600] },
  leftShare: { quantity: "percent", stored: share, entry: share },
  leftLow: { quantity: "percent", stored: share, entry: share },
  leftHigh: { quantity: "percent", stored: share, entry: share },
  /** Hours a coat was likely to take, as said at the dip that covered it. */
  neededH: { quantity: "h", stored: [0, 1e6], entry: [0, 10_000] },
  saidAt: { quantity: "plain", stored: epochMs, entry: epochMs, whole: true },
  massG: { quantity: "g", stored: [0, 1e8], entry: [0.1, 2_000_000] },
  scaleG: { quantity: "g", stored: [0, 1e5], entry: [0.001, 10_000] },
  surfaceC: { quantity: "temp", stored: tempC, entry: [-30, 80] },
  dryShellC: { quantity: "temp", stored: tempC, entry: [-30, 80] },
  /** The shell on the rack while its resistance is read. */
  hangingShellC: { quantity: "temp", stored: tempC, entry: [-30, 80], as: "shellC" },
  ohm: { quantity: "plain", stored: [0, 1e15], entry: [0.001, 1e12] },
  roomRh: { quantity: "percent", stored: share, entry: share },
  bagMin: { quantity: "min", stored: minutes, entry: [1, 1440], as: "minutes" },
  wallMm: { quantity: "mm", stored: [0, 1000], entry: [0.1, 60] },
  safety: { quantity: "plain", stored: [0, 1e6], entry: [0, 1_000_000] },

  // The shell in the fire and full of metal.
  kilnC: { quantity: "temp", stored: tempC, entry: [-30, 1500] },
  dewaxMin: { quantity: "min", stored: minutes, entry: [0, 2880], as: "minutes" },
  waxBackG: { quantity: "g", stored: [0, 1e8], entry: [0.1, 2_000_000] },
  peakC: { quantity: "temp", stored: tempC, entry: [100, 1600] },
  holdMin: { quantity: "min", stored: minutes, entry: [0, 10_080] },
  heldMin: { quantity: "min", stored: minutes, entry: [0, 10_080] },
  shellC: { quantity: "temp", stored: tempC, entry: [-30, 1400] },
  metalC: { quantity: "temp", stored: tempC, entry: [100, 2200] },
  /** What one shell took. */
  shellTookKg: { quantity: "kg", stored: [0, 100_000], entry: [0.001, 10_000], as: "massKg" },
  outOfKilnMin: { quantity: "min", stored: minutes, entry: [0, 1440] },

  // Rooms.
  altitudeM: { quantity: "m", stored: [-1000, 10_000], entry: [-430, 5000] },
  airC: { quantity: "temp", stored: tempC, entry: [-30, 60] },
  rh: { quantity: "percent", stored: share, entry: share },
  pressurePa: { quantity: "plain", stored: [10_000, 200_000], entry: [50_000, 110_000] },
  /** How many a logger's block may hold: one every ten seconds for a day. */
  readings: { quantity: "plain", stored: [1, 10_000], entry: [1, 8641] },

  // Recipes and the shop's own figures.
  coats: { quantity: "plain", stored: [0, 200], entry: [1, 40] },
  targetDryness: { quantity: "percent", stored: share, entry: [0.5, 1] },
  /** From a coat dried in a tunnel to one left over a long holiday. */
  leastDryH: { quantity: "h", stored: [0, 10_000], entry: [0.1, 336] },
  /** The shop's own, for one kind of coat. */
  kindLeastDryH: { quantity: "h", stored: [0, 1000], entry: [0.1, 336], as: "leastDryH" },
  finalDryH: { quantity: "h", stored: [0, 1000], entry: [1, 720] },
  morMPa: { quantity: "MPa", stored: [0, 1000], entry: [0.1, 50] },
  safetyFactor: { quantity: "plain", stored: [0, 1000], entry: [1, 10] },
  floorMm: { quantity: "mm", stored: [0, 1000], entry: [0, 60] },
  dryingFactor: { quantity: "plain", stored: [0, 1000], entry: [0.1, 10] },
  slurryKgM2: { quantity: "plain", stored: [0, 1000], entry: [0.01, 20] },
  stuccoKgM2: { quantity: "plain", stored: [0, 1000], entry: [0.01, 20] },
  buildMm: { quantity: "mm", stored: [0, 1000], entry: [0.01, 10] },

  // Buckets.
  flourKg: { quantity: "kg", stored: [0, 1e6], entry: [0, 5000] },
  solKg: { quantity: "kg", stored: [0, 1e6], entry: [0, 5000] },
  waterKg: { quantity: "kg", stored: [0, 1e6], entry: [0, 5000] },
  solSilica: { quantity: "percent", stored: share, entry: [0, 0.6] },
  flourGCm3: { quantity: "density", stored: [0, 20], entry: [1, 8] },
  solGCm3: { quantity: "density", stored: [0, 20], entry: [0.9, 5] },
  densityGCm3: { quantity: "density", stored: [0, 20], entry: [0.9, 5] },
  liquorGCm3: { quantity: "density", stored: [0, 20], entry: [0.9, 5] },
  ratio: { quantity: "plain", stored: [0, 1000], entry: [0.1, 10] },
  fullL: { quantity: "litre", stored: [0, 1e6], entry: [0, 2000] },
  leastL: { quantity: "litre", stored: [0, 1e6], entry: [0, 2000] },
  litre: { quantity: "litre", stored: [0, 1e6], entry: [0, 2000] },
  openM2: { quantity: "m2", stored: [0, 1000], entry: [0.001, 20] },
  lowS: { quantity: "s", stored: daySeconds, entry: [1, 600] },
  highS: { quantity: "s", stored: daySeconds, entry: [1, 600] },
  cupS: { quantity: "s", stored: daySeconds, entry: [1, 600] },
  dipsS: { quantity: "s", stored: daySeconds, entry: [1, 600] },
  dips: { quantity: "plain", stored: [0, 20], entry: [1, 10] },
  slurryC: { quantity: "temp", stored: tempC, entry: [-10, 60] },
  weighedG: { quantity: "g", stored: [0, 1e8], entry: [0.1, 2_000_000] },
  weighedMl: { quantity: "plain", stored: [0, 1e8], entry: [1, 10_000] },
  pH: { quantity: "plain", stored: [0, 14], entry: [0, 14] },
  ovenSolids: { quantity: "percent", stored: share, entry: share },
  plateG: { quantity: "g", stored: [0, 1e6], entry: [0, 1000] },
  plateCm2: { quantity: "plain", stored: [0, 1e6], entry: [1, 10_000] },
  gelledAfterH: { quantity: "h", stored: [0, 1e6], entry: [0, 10_000] },
  liquidForH: { quantity: "h", stored: [0, 1e6], entry: [0, 10_000] },
  bacteriaPerMl: { quantity: "plain", stored: [0, 1e15], entry: [0, 1e12] },

  // The shop's limits of its buckets, and how long they mix. Tolerances of density are by kind of flour.
  fitLowC: { quantity: "temp", stored: tempC, entry: [0, 45] },
  fitHighC: { quantity: "temp", stored: tempC, entry: [0, 45] },
  stopLowC: { quantity: "temp", stored: tempC, entry: [0, 45] },
  stopHighC: { quantity: "temp", stored: tempC, entry: [0, 45] },
  ownOffK: { quantity: "tempDiff", stored: [0, 1000], entry: [0.2, 15] },
  lightFitGCm3: { quantity: "density", stored: [0, 20], entry: [0.002, 0.5] },
  lightStopGCm3: { quantity: "density", stored: [0, 20], entry: [0.002, 0.5] },
  heavyFitGCm3: { quantity: "density", stored: [0, 20], entry: [0.002, 0.5] },
  heavyStopGCm3: { quantity: "density", stored: [0, 20], entry: [0.002, 0.5] },
  fitLowPH: { quantity: "plain", stored: [0, 14], entry: [1, 13] },
  fitHighPH: { quantity: "plain", stored: [0, 14], entry: [1, 13] },
  stopPH: { quantity: "plain", stored: [0, 14], entry: [1, 13] },
  meterPH: { quantity: "plain", stored: [0, 14], entry: [1, 14] },
  weekDropPH: { quantity: "plain", stored: [0, 14], entry: [0.02, 3] },
  fitSilica: { quantity: "percent", stored: share, entry: [0.001, 0.2] },
  lowestSilica: { quantity: "percent", stored: share, entry: [0.001, 0.2] },
  highestSilica: { quantity: "percent", stored: share, entry: [0.001, 0.2] },
  fitGelH: { quantity: "h", stored: [0, 1e6], entry: [1, 1000] },
  stopGelH: { quantity: "h", stored: [0, 1e6], entry: [1, 1000] },
  fitPlateShare: { quantity: "percent", stored: share, entry: [0.01, 0.9] },
  stopPlateShare: { quantity: "percent", stored: share, entry: [0.01, 0.9] },
  fitBacteria: { quantity: "plain", stored: [0, 1e15], entry: [1, 1e9] },
  stopBacteria: { quantity: "plain", stored: [0, 1e15], entry: [1, 1e9] },
  oldDays: { quantity: "plain", stored: [0, 1e6], entry: [7, 3650] },
  tooOldDays: { quantity: "plain", stored: [0, 1e6], entry: [7, 3650] },
  weeklyShare: { quantity: "percent", stored: share, entry: [0.001, 1] },
  primeMadeH: { quantity: "h", stored: [0, 10_000], entry: [0, 336] },
  backupMadeH: { quantity: "h", stored: [0, 10_000], entry: [0, 336] },
  flourAddedH: { quantity: "h", stored: [0, 10_000], entry: [0, 336] },
  waterAddedH: { quantity: "h", stored: [0, 10_000], entry: [0, 336] },

  // Stock, kilns, furnaces, alloys.
  pricePerKg: { quantity: "plain", stored: [0, 1e7], entry: [0, 1_000_000] },
  pricePerKWh: { quantity: "plain", stored: [0, 1e7], entry: [0, 1_000_000] },
  weeksToCome: { quantity: "plain", stored: [0, 10_000], entry: [0, 520] },
  packKg: { quantity: "kg", stored: [0, 1e7], entry: [0, 1_000_000] },
  keepsMonths: { quantity: "plain", stored: [0, 10_000], entry: [0, 600] },
  stockKg: { quantity: "kg", stored: [0, 1e7], entry: [0, 1_000_000] },
  powerKW: { quantity: "kW", stored: [0, 1e5], entry: [0.05, 2000] },
  volumeL: { quantity: "kilnL", stored: [0, 1e7], entry: [0.1, 1_000_000] },
  maxC: { quantity: "temp", stored: tempC, entry: [100, 1800] },
  maxRampKPerH: { quantity: "tempDiff", stored: [0, 1e5], entry: [1, 5000] },
  efficiency: { quantity: "percent", stored: share, entry: [0.001, 1] },
  crucibleL: { quantity: "litre", stored: [0, 1e5], entry: [0.01, 1000] },
  densityKgM3: { quantity: "plain", stored: [0, 1e5], entry: [500, 25_000] },
  liquidDensityKgM3: { quantity: "plain", stored: [0, 1e5], entry: [500, 25_000] },
  solidusC: { quantity: "temp", stored: tempC, entry: [50, 2200] },
  liquidusC: { quantity: "temp", stored: tempC, entry: [50, 2200] },
  pourLowC: { quantity: "temp", stored: tempC, entry: [100, 2200] },
  pourHighC: { quantity: "temp", stored: tempC, entry: [100, 2200] },
  shrink: { quantity: "share", stored: share, entry: [0, 0.1] },
  latentJKg: { quantity: "plain", stored: [0, 1e7], entry: [10_000, 1_000_000] },
  solidJKgK: { quantity: "plain", stored: [0, 1e5], entry: [100, 2000] },
  liquidJKgK: { quantity: "plain", stored: [0, 1e5], entry: [100, 2000] },
  patternMm: { quantity: "mm", stored: [0, 1e5], entry: [0.5, 20_000] },
  castingMm: { quantity: "mm", stored: [0, 1e5], entry: [0.5, 20_000] },

  // Kiln runs.
  startC: { quantity: "temp", stored: tempC, entry: [-30, 1500] },
  toC: { quantity: "temp", stored: tempC, entry: [-30, 1500] },
  atC: { quantity: "temp", stored: tempC, entry: [-30, 1500] },
  rateKPerH: { quantity: "rate", stored: [0, 1e5], entry: [1, 5000] },
  segmentMin: { quantity: "min", stored: minutes, entry: [0, 10_080], as: "minutes" },
  segments: { quantity: "plain", stored: [0, 200], entry: [0, 200] },
  segment: { quantity: "plain", stored: [0, 199], entry: [0, 199], whole: true },
  /** The thickest of the shells a plan is for. */
  thickestWallMm: { quantity: "mm", stored: [0, 10_000], entry: [0.1, 60], as: "wallMm" },
  patternKg: { quantity: "kg", stored: [0, 1e5], entry: [0, 5000] },
  shellKg: { quantity: "kg", stored: [0, 1e5], entry: [0, 5000] },
  greenShare: { quantity: "plain", stored: [0, 100], entry: [0.1, 5] },
  blindMm: { quantity: "mm", stored: [0, 1e5], entry: [0, 2000] },
  preheatC: { quantity: "temp", stored: tempC, entry: [-30, 1400], as: "shellC" },
  fireC: { quantity: "temp", stored: tempC, entry: [100, 1600], as: "peakC" },
  energyKWh: { quantity: "kWh", stored: [0, 1e6], entry: [0, 100_000] },
  fuelKg: { quantity: "kg", stored: [0, 1e6], entry: [0, 10_000] },

  // Melts and pours.
  /** One part of a charge. */
  chargeKg: { quantity: "kg", stored: [0, 1e5], entry: [0, 10_000] },
  /** A charge on the scale weighs something. */
  weighedKg: { quantity: "kg", stored: [0, 1e5], entry: [0.001, 10_000], as: "chargeKg" },
  mayHold: { quantity: "share", stored: share, entry: share },
  /** Share of a charge that burns, boils or is skimmed off. */
  meltLoss: { quantity: "share", stored: share, entry: [0, 0.6] },
  pourC: { quantity: "temp", stored: tempC, entry: [100, 2200] },
  pouredKg: { quantity: "kg", stored: [0, 1e5], entry: [0, 10_000] },
  piggedKg: { quantity: "kg", stored: [0, 1e5], entry: [0, 10_000] },
  pourAt: { quantity: "plain", stored: epochMs, entry: epochMs, whole: true },
  sandC: { quantity: "temp", stored: tempC, entry: [-30, 800] },
  stepMin: { quantity: "min", stored: minutes, entry: [0, 10_080] },
  keepsMin: { quantity: "min", stored: minutes, entry: [0, 10_080] },
  people: { quantity: "plain", stored: [1, 1000], entry: [1, 20], whole: true },
  carryMin: { quantity: "min", stored: minutes, entry: [0.1, 60] },
  /** Melted metal at hand where no melt is named. */
  meltedKg: { quantity: "kg", stored: [0, 1e5], entry: [0, 10_000], as: "chargeKg" },
} as const satisfies Readonly<Record<string, Field>>;

export type FieldKey = keyof typeof fields;

/** The row of a key; where it has no `as`, the key is also the name its refusals give it. */
export const fieldOf = (key: FieldKey): Field => fields[key];

/** The name a field has in refusals and in the page's words. */
export const fieldName = (key: FieldKey): string => fieldOf(key).as ?? key;
