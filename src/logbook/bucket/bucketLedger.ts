import type { Composition } from "../../physics/slurry/bucketMix.ts";
import { drawn, evaporated, massKg, mixed, solAs, volumeOfL } from "../../physics/slurry/bucketMix.ts";
import type { BucketAim } from "./bucketAim.ts";
import type { Makings } from "../entries/bucketBodies.ts";
import type { ReadingStanding } from "./bucketReading.ts";
import type { Bucket } from "../piece/piece.ts";

/** Slurry that went out on pieces, kg. */
export type DipOut = { readonly at: number; readonly massKg: number };

/** What the bucket holds by what was written down since it was last made. */
export type BucketLedger = {
  readonly contents: Composition;
  /** Silica of the liquid as it was made, a mass fraction. */
  readonly startSilica: number;
  readonly massKg: number;
  readonly volumeL: number;
  readonly densityGCm3: number;
  /** Flour to liquid by mass; and total solids and silica of the liquid, mass fractions. */
  readonly ratio: number | null;
  readonly solids: number;
  readonly silica: number | null;
  readonly madeAt: number;
  readonly dippedKg: number;
  /** By the last density read since it was last added to: water lost (over 0) or too much (below 0), kg. Null unread. */
  readonly waterLostKg: number | null;
  /** The contents with that water gone; the ledger's own where nothing was read. */
  readonly now: Composition;
};

type Event = { readonly at: number; readonly to: (held: Composition) => Composition };

/**
 * Null where nobody told what was put in, or the flour's density isn't known. Water told as made up for evaporation
 * had gone before it was added; dips and losses take all in proportion; a count scales what is held to the litres found.
 */
export function bucketLedger(
  bucket: Bucket,
  {
    aim,
    readings,
    dips,
  }: {
    readonly aim: BucketAim;
    readonly readings: readonly ReadingStanding[];
    readonly dips: readonly DipOut[];
  },
): BucketLedger | null {
  const mix = bucket.mixes.at(-1);
  if (mix === undefined || aim.flourGCm3 === null) return null;
  const flour = { flourGCm3: aim.flourGCm3.value };
  const lot = (makings: Makings & { readonly solSilica?: number | undefined }): Composition =>
    lotOf(makings, makings.solSilica ?? aim.solSilica.value);
  const start = lot(mix);
  const later = <T extends { readonly at: number }>(all: readonly T[]): readonly T[] =>
    all.filter(({ at }) => at > mix.at);
  const dipped = later(dips);
  const events: readonly Event[] = [
    ...later(bucket.tops).map((top) => ({
      at: top.at,
      to: (held: Composition) =>
        mixed(top.why === "evaporation" ? evaporated(held, top.waterKg) : held, lot(top)),
    })),
    ...later(bucket.losses).map(({ at, litre }) => ({
      at,
      to: (held: Composition) => scaled(held, flour, -litre),
    })),
    ...later(bucket.counts).map(({ at, litre }) => ({
      at,
      to: (held: Composition) => scaled(held, flour, litre - volumeOfL(held, flour)),
    })),
    ...dipped.map(({ at, massKg: kg }) => ({ at, to: (held: Composition) => drawn(held, kg) })),
  ];
  const contents = events.toSorted((a, b) => a.at - b.at).reduce((held, { to }) => to(held), start);
  const volumeL = volumeOfL(contents, flour);
  if (volumeL <= 0) return null;
  const mass = massKg(contents);
  const changedAt = lastChangeAt(bucket) ?? mix.at;
  const read = readings.findLast(({ at, density }) => density !== null && at >= changedAt)?.density ?? null;
  const waterLostKg =
    read === null || read.densityGCm3 <= 1.01
      ? null
      : (read.densityGCm3 * volumeL - mass) / (read.densityGCm3 - 1);
  const liquid = contents.silicaKg + contents.waterKg;
  return {
    contents,
    startSilica: silicaOf(start) ?? aim.solSilica.value,
    massKg: mass,
    volumeL,
    densityGCm3: mass / volumeL,
    ratio: liquid > 0 ? contents.flourKg / liquid : null,
    solids: (contents.flourKg + contents.silicaKg) / mass,
    silica: silicaOf(contents),
    madeAt: mix.at,
    dippedKg: dipped.reduce((sum, { massKg: kg }) => sum + kg, 0),
    waterLostKg,
    now: { ...contents, waterKg: Math.max(0, contents.waterKg - (waterLostKg ?? 0)) },
  };
}

/** When it was last made up or added to; null when it never was. */
export function lastChangeAt({ mixes, tops }: Pick<Bucket, "mixes" | "tops">): number | null {
  const times = [...mixes, ...tops].map(({ at }) => at);
  return times.length === 0 ? null : Math.max(...times);
}

function lotOf({ flourKg, solKg, waterKg }: Makings, silica: number): Composition {
  return mixed({ flourKg, silicaKg: 0, waterKg }, solAs({ solKg, silica }));
}

function scaled(held: Composition, flour: { readonly flourGCm3: number }, byL: number): Composition {
  const volumeL = volumeOfL(held, flour);
  const share = volumeL === 0 ? 0 : Math.max(0, (volumeL + byL) / volumeL);
  return { flourKg: held.flourKg * share, silicaKg: held.silicaKg * share, waterKg: held.waterKg * share };
}

const silicaOf = ({ silicaKg, waterKg }: Composition): number | null =>
  silicaKg + waterKg > 0 ? silicaKg / (silicaKg + waterKg) : null;
