import { saturationPressurePa, vapourPressurePa } from "../air/air.ts";
import type { WetLayer } from "./coat.ts";
import { dryingHours } from "./drying.ts";
import type { MovingAir } from "../air/film.ts";
import { evaporativeDropK } from "../air/film.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";

/** One thing that can be changed about the air of a coat. */
export type Remedy =
  | { readonly kind: "warmer"; readonly byK: number }
  | { readonly kind: "dehumidified"; readonly toRh: number }
  | { readonly kind: "air-class"; readonly id: string; readonly filmWM2K: number }
  | { readonly kind: "air-into-pocket"; readonly pocketSM: number }
  | { readonly kind: "opened-downwards"; readonly pocketSM: number };

/** What to mind with a prime coat as the outer one. */
export type PrimeCaution =
  | { readonly code: "wax-moves"; readonly changeK: number; readonly mostK: number }
  | { readonly code: "wet-coat-cools"; readonly dropK: number; readonly mostK: number }
  | { readonly code: "too-dry-for-face"; readonly rh: number; readonly leastRh: number }
  | { readonly code: "hard-air-early"; readonly filmWM2K: number; readonly firstS: number };

export type AdvisedChange = {
  readonly remedy: Remedy;
  readonly air: MovingAir & { readonly pocketSM: number };
  /** Hours from now until ready, with the remedy; null where it would still never be. */
  readonly hours: number | null;
  /** Hours saved; null where nothing would be ready without it, or not even with it. */
  readonly savedHours: number | null;
  readonly cautions: readonly PrimeCaution[];
};

export type DryingAdvice = {
  /** Hours from now until ready as it stands; null in air over 80 %. */
  readonly hoursNow: number | null;
  /** Those that help, best first; what makes ready possible at all comes before what only speeds it. */
  readonly advice: readonly AdvisedChange[];
};

const warmerByK = 3;
const dehumidifiedRh = 0.45;

/** Mixing by air led into a pocket, and by one that drains downwards (damp air is colder and heavier): estimates, of 2–6. */
const ledMixing = 6;
const drainedMixing = 2;

/** Less than this share of the time is no help. */
const leastHelp = 0.01;

/** Pattern wax and prime: ± 3 °F, Investment Casting Institute, Atlas of Casting Defects, prime coat lift. */
const mostSwingK = 1.7;
/** Derived: wax at 4e-4/K shrinks by 0.2 % over 5 K. */
const mostDropK = 5;
/** Face-coat rooms are kept at 60–70 %; common practice, no source. */
const leastFaceRh = 0.6;
/** A fan on the rack, and how long a prime is kept from it; common practice, no source. */
const hardFilmWM2K = 15;
const noHardAirS = 3600;

/**
 * What would help a coat dry: each remedy recomputed in constant air, ranked by hours saved.
 *
 * `coat.waterKgM2` is the water left now; `air` what is about it now. Warmer by 3 K keeps the vapour the air holds,
 * as a heater does; dehumidified to 45 % keeps the temperature. `airClasses` are the film coefficients to
 * try; those that move less air than now are left out. `factor` is the coat's own factor on time. For a prime
 * coat (`isPrime`) each remedy carries its cautions; `isWax` says whether the pattern moves with warmth as wax does
 * (plastic moves 4–6 times less).
 */
export function dryingAdvice({
  coat,
  air,
  airClasses,
  factor = 1,
  isPrime,
  isWax,
}: {
  readonly coat: WetLayer;
  readonly air: MovingAir & { readonly pocketSM: number };
  readonly airClasses: readonly { readonly id: string; readonly filmWM2K: number }[];
  readonly factor?: number | undefined;
  readonly isPrime: boolean;
  readonly isWax: boolean;
}): DryingAdvice {
  requirePositive("factor", factor, { high: 20, unit: "" });
  requireWithin("pocketSM", air.pocketSM, { low: 0, high: 1e6, unit: "s/m" });
  for (const { filmWM2K } of airClasses) requirePositive("filmWM2K", filmWM2K, { high: 500, unit: "W/m²K" });
  const hoursIn = (there: typeof air): number | null => {
    const hours = dryingHours({ ...coat, ...there });
    return hours === null ? null : factor * hours;
  };
  const hoursNow = hoursIn(air);
  const advice = remediesFor(air, airClasses).flatMap((remedy): readonly AdvisedChange[] => {
    const there = airWith(remedy, air);
    const hours = hoursIn(there);
    const savedHours = hours === null || hoursNow === null ? null : hoursNow - hours;
    const helps = savedHours === null ? hours !== null : savedHours > leastHelp * (hoursNow ?? 0);
    if (!helps) return [];
    const cautions = isPrime ? cautionsOf(remedy, there, isWax) : [];
    return [{ remedy, air: there, hours, savedHours, cautions }];
  });
  return { hoursNow, advice: advice.toSorted((a, b) => (a.hours ?? Infinity) - (b.hours ?? Infinity)) };
}

function remediesFor(
  air: MovingAir & { readonly pocketSM: number },
  airClasses: readonly { readonly id: string; readonly filmWM2K: number }[],
): readonly Remedy[] {
  const classes = airClasses
    .filter(({ filmWM2K }) => filmWM2K > air.filmWM2K)
    .map(({ id, filmWM2K }) => ({ kind: "air-class", id, filmWM2K }) as const);
  const pocket: readonly Remedy[] =
    air.pocketSM > 0
      ? [
          { kind: "air-into-pocket", pocketSM: air.pocketSM / ledMixing },
          { kind: "opened-downwards", pocketSM: air.pocketSM / drainedMixing },
        ]
      : [];
  const drier: readonly Remedy[] =
    air.rh > dehumidifiedRh ? [{ kind: "dehumidified", toRh: dehumidifiedRh }] : [];
  return [{ kind: "warmer", byK: warmerByK }, ...drier, ...classes, ...pocket];
}

function airWith<A extends MovingAir & { readonly pocketSM: number }>(remedy: Remedy, air: A): A {
  switch (remedy.kind) {
    case "warmer": {
      const tempC = air.tempC + remedy.byK;
      return { ...air, tempC, rh: Math.min(1, vapourPressurePa(air) / saturationPressurePa(tempC)) };
    }
    case "dehumidified":
      return { ...air, rh: remedy.toRh };
    case "air-class":
      return { ...air, filmWM2K: remedy.filmWM2K };
    case "air-into-pocket":
    case "opened-downwards":
      return { ...air, pocketSM: remedy.pocketSM };
  }
}

function cautionsOf(remedy: Remedy, there: MovingAir, isWax: boolean): readonly PrimeCaution[] {
  const cautions: PrimeCaution[] = [];
  const { rh, filmWM2K } = there;
  if (isWax && remedy.kind === "warmer" && remedy.byK > mostSwingK)
    cautions.push({ code: "wax-moves", changeK: remedy.byK, mostK: mostSwingK });
  const dropK = evaporativeDropK(there);
  if (isWax && dropK > mostDropK) cautions.push({ code: "wet-coat-cools", dropK, mostK: mostDropK });
  if ((remedy.kind === "warmer" || remedy.kind === "dehumidified") && rh < leastFaceRh)
    cautions.push({ code: "too-dry-for-face", rh, leastRh: leastFaceRh });
  const isHard = remedy.kind === "air-into-pocket" || filmWM2K >= hardFilmWM2K;
  if (isHard) cautions.push({ code: "hard-air-early", filmWM2K, firstS: noHardAirS });
  return cautions;
}
