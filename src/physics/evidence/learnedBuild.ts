import { requireFraction, requirePositive, requireWithin } from "../stats/range.ts";

/** A coat weighed before, after slurry and after stucco, on a piece of known area. g, m², fraction. */
export type CoatWeighing = {
  readonly kind: string;
  readonly atMs: number;
  readonly areaM2: number;
  readonly dryG: number;
  readonly drainedG: number;
  readonly stuccoedG: number;
  readonly waterFraction: number;
};

/** A running median of up to ten, with the spread of one coat about it (null from one alone). */
export type LearnedGain = { readonly kgM2: number; readonly sdKgM2: number | null };

export type LearnedCoat = {
  readonly slurry: LearnedGain;
  readonly stucco: LearnedGain;
  readonly water: LearnedGain;
  /** Weighings it rests on, at most ten. */
  readonly weighings: number;
};

const lastTen = 10;

/** Scale of the median absolute deviation to a standard deviation of a bell curve. */
const toSd = 1.4826;

/**
 * What each kind of coat gains per m², learned from its last ten weighings: medians, so that one slip of the balance
 * or of the pen moves little. Weighings in which no slurry stayed, or mass went with the stucco, are left out.
 * Refuses an area or a mass out of range. The order they come in does not matter.
 */
export function learnCoatGains(weighings: readonly CoatWeighing[]): ReadonlyMap<string, LearnedCoat> {
  const byKind = new Map<string, CoatWeighing[]>();
  for (const one of weighings) {
    requirePositive("areaM2", one.areaM2, { high: 100, unit: "m²" });
    requireFraction("waterFraction", one.waterFraction);
    requireWithin("atMs", one.atMs, { low: 0, high: 8.64e15, unit: "ms" });
    for (const name of ["dryG", "drainedG", "stuccoedG"] as const)
      requirePositive(name, one[name], { high: 1e6, unit: "g" });
    if (one.drainedG <= one.dryG || one.stuccoedG < one.drainedG) continue;
    const list = byKind.get(one.kind) ?? [];
    list.push(one);
    byKind.set(one.kind, list);
  }
  const learned = [...byKind].map(([kind, list]) => {
    const last = list.toSorted((a, b) => a.atMs - b.atMs || a.drainedG - b.drainedG).slice(-lastTen);
    const slurry = (one: CoatWeighing): number => (one.drainedG - one.dryG) / 1000 / one.areaM2;
    return [
      kind,
      {
        slurry: gainOf(last.map(slurry)),
        stucco: gainOf(last.map((one) => (one.stuccoedG - one.drainedG) / 1000 / one.areaM2)),
        water: gainOf(last.map((one) => one.waterFraction * slurry(one))),
        weighings: last.length,
      },
    ] as const;
  });
  return new Map(learned);
}

function gainOf(values: readonly number[]): LearnedGain {
  const kgM2 = medianOf(values);
  const off = medianOf(values.map((value) => Math.abs(value - kgM2)));
  return { kgM2, sdKgM2: values.length < 2 ? null : toSd * off };
}

function medianOf(values: readonly number[]): number {
  const ordered = values.toSorted((a, b) => a - b);
  const middle = ordered.length / 2;
  const upper = ordered[Math.floor(middle)] ?? 0;
  return ordered.length % 2 === 1 ? upper : (upper + (ordered[middle - 1] ?? upper)) / 2;
}

/** A caliper reading of a wall: mm, with the coats of each kind that stood then. */
export type WallReading = {
  readonly wallMm: number;
  readonly coats: Readonly<Record<string, number>>;
};

/** Millimetres a coat, with the standard deviation of that knowledge. */
export type LearnedMm = { readonly mm: number; readonly sdMm: number; readonly readings: number };

/** A caliper on stuccoed walls: reading and place together, mm; and how walls differ from piece to piece. Estimates. */
const caliperSdMm = 0.3;
const wallSdShare = 0.1;

/**
 * What each kind of coat builds, mm, from caliper readings of walls, starting from table values.
 *
 * Least squares of wall = Σ coats × mm with the table as prior (`startMm`, standard deviation each), so a kind that
 * no reading separates from another moves only as far as the readings ask. Reading error: 0.3 mm and a tenth
 * of the wall. Kinds absent from `startMm` are refused.
 */
export function learnCoatMm({
  readings,
  startMm,
}: {
  readonly readings: readonly WallReading[];
  readonly startMm: Readonly<Record<string, { readonly mm: number; readonly sdMm: number }>>;
}): Readonly<Record<string, LearnedMm>> {
  const kinds = Object.keys(startMm).toSorted();
  for (const { mm, sdMm } of Object.values(startMm)) {
    requireWithin("startMm", mm, { low: 0, high: 100, unit: "mm" });
    requireWithin("startMm's deviation", sdMm, { low: 0, high: 100, unit: "mm" });
  }
  let mean = kinds.map((kind) => startMm[kind]?.mm ?? 0);
  let spread = kinds.map((kind, i) => kinds.map((_, j) => (i === j ? (startMm[kind]?.sdMm ?? 0) ** 2 : 0)));
  for (const { wallMm, coats } of readings) {
    requirePositive("wallMm", wallMm, { high: 300, unit: "mm" });
    const strange = Object.keys(coats).find((kind) => startMm[kind] === undefined);
    if (strange !== undefined) throw new RangeError(`coats must be of ${kinds.join()}, found ${strange}`);
    const counts = kinds.map((kind) => coats[kind] ?? 0);
    for (const count of counts) requireWithin("coats", count, { low: 0, high: 100, unit: "coats" });
    const error2 = caliperSdMm ** 2 + (wallSdShare * wallMm) ** 2;
    // One reading at a time, as a Kalman step: the same sums as all at once, and no matrix to turn over.
    const toward = spread.map((row) => dot(row, counts));
    const total = dot(toward, counts) + error2;
    const off = wallMm - dot(mean, counts);
    mean = mean.map((mm, i) => mm + ((toward[i] ?? 0) * off) / total);
    spread = spread.map((row, i) =>
      row.map((cell, j) => cell - ((toward[i] ?? 0) * (toward[j] ?? 0)) / total),
    );
  }
  return Object.fromEntries(
    kinds.map((kind, i) => [
      kind,
      {
        mm: Math.max(0, mean[i] ?? 0),
        sdMm: Math.sqrt(Math.max(0, spread[i]?.[i] ?? 0)),
        readings: readings.filter(({ coats }) => (coats[kind] ?? 0) > 0).length,
      },
    ]),
  );
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);
