import type { Shop } from "../../../logbook/piece/piece.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { coatWaterOf, prewetKgM2 } from "../../../trade/coatWater.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { finalDryH, leastDryH, type FinalDryPlace } from "../../../trade/dryMinimums.ts";
import { practice } from "../../../trade/practice.ts";
import { sealMm, stuccos } from "../../../trade/stuccos.ts";
import type { Format } from "../../base/format/units.ts";
import { published, type Figure, type FigureGroup } from "./figure.ts";

export function stuccoFigures(format: Format): FigureGroup {
  const build = (value: number, low: number, high: number) =>
    `${format.show("mm", value)} a coat, ${format.show("mm", low)} to ${format.show("mm", high)}`;
  return {
    title: "Wall a coat gives",
    about: "Until a piece has caliper readings, which take the place of the table for that piece.",
    figures: [
      ...stuccos.map(({ label, fineMm, coarseMm, mmPerCoat: { value, low, high, source } }) => ({
        name: `${label}, grain ${format.show("mm", fineMm)} to ${format.show("mm", coarseMm)}`,
        value: build(value, low, high),
        source,
      })),
      { name: "Seal, no stucco", value: build(sealMm.value, sealMm.low, sealMm.high), source: sealMm.source },
    ],
  };
}

export function dryingFigures(format: Format, shop: Shop): FigureGroup {
  const water = (kgM2: number) => `${format.number(kgM2 * 1000, 0)} g/m²`;
  const coat = (name: string, kind: Parameters<typeof coatWaterOf>[0], primeNumber: number): Figure => {
    const { waterKgM2, criticalShare, source } = coatWaterOf(kind, primeNumber);
    return {
      name,
      value: `${water(waterKgM2)} of water; the face stops being wet at ${format.show("percent", criticalShare)} of it`,
      source,
    };
  };
  return {
    title: "Drying",
    about:
      "A wet face dries as fast as the air takes vapour up; then the water left has to come through the dry skin. Reckoned over the room's own readings.",
    figures: [
      {
        name: "Hours real over hours reckoned",
        value: "1",
        source: "starting value; the reckoning is known to about ± 45 % until a shop has its own factor",
        own: shop.dryingFactor === null ? undefined : format.show("plain", shop.dryingFactor),
      },
      coat("First prime coat", "prime", 1),
      coat("Later prime coats", "prime", 2),
      coat("Intermediate coat", "intermediate", 1),
      coat("Backup coat", "backup", 1),
      coat("Seal coat", "seal", 1),
      published("Prewet", prewetKgM2, water),
      ...Object.values(geometryClasses).map(({ label, pocketSM, source }) => ({
        name: label,
        value: `${format.number(pocketSM, 0)} s/m more for vapour to get out`,
        source,
      })),
      {
        name: "Vapour pressure of water and ice",
        value: "formula",
        source: "IAPWS SR1-86 (1992) over water, IAPWS R14-08 over ice",
      },
      {
        name: "Vapour through air",
        value: "formula",
        source: "Massman, Atmos. Environ. 32 (1998) 1111 (from memory of it)",
      },
    ],
  };
}

export function airFigures(format: Format): FigureGroup {
  return {
    title: "Air movement",
    about: "How strongly the air works on the pieces: the film coefficient, and the speed it stands for.",
    figures: Object.values(airClasses).map(({ label, filmWM2K, low, high, speedMS, source }) => ({
      name: label,
      value: `${filmWM2K} W/m²K (${low} to ${high}), about ${format.number(speedMS, 2)} m/s`,
      source,
    })),
  };
}

export function limitFigures(format: Format, shop: Shop): FigureGroup {
  const percent = (value: number) => format.show("percent", value);
  const hours = (value: number) => format.show("h", value);
  const { primeSwingK, primeDropK, primeHardFilmWM2K, primeBareH, rhNeverDry, rhFinalDry, readingOldH } =
    practice;
  const { primeSwingWatchK, readingOldWorkH, usualCoats, neverReadDays, slurryOffK, toldOnceH } = practice;
  const { gradeRatio, firstPrimeCoarseMm, firedC, firedMin, weakShare } = practice;
  return {
    title: "Limits the findings speak from",
    about: "A finding names its limit and its source; these are all of them.",
    figures: [
      published("Room may move while a prime coat is outermost", primeSwingK, (value) =>
        format.show("tempDiff", value),
      ),
      published("A move of the room on a bare wax prime is to be watched above", primeSwingWatchK, (value) =>
        format.show("tempDiff", value),
      ),
      published("Wet prime on wax may be colder than the room", primeDropK, (value) =>
        format.show("tempDiff", value),
      ),
      published("Prime dries hard from", primeHardFilmWM2K, (value) => `${value} W/m²K`),
      published("Prime may stand bare", primeBareH, hours),
      published("Nothing counts as dry above", rhNeverDry, percent),
      published("The last coat is not dry through above", rhFinalDry, percent),
      ...coatMinimumRows(shop, hours),
      ...finalDryRows(shop, hours),
      published("Air is damper, for these hours, above", practice.finalDryRh, percent),
      published("A wall counts as thick above", practice.thickWallMm, (value) => format.show("mm", value)),
      published("An air reading no longer counts at a dip after", readingOldH, hours),
      published("An air reading is old after working hours, 7:00 to 19:00", readingOldWorkH, hours),
      published("Coats on a shell, where no recipe says", usualCoats, String),
      published(
        "A bucket without any reading is to be watched after",
        neverReadDays,
        (value) => `${value} days`,
      ),
      published("Slurry this near its temperature is no finding", slurryOffK, (value) =>
        format.show("tempDiff", value),
      ),
      published("What is said once is a note after", toldOnceH, hours),
      published("Grain over the grain beneath, at most", gradeRatio, (value) => `${value} times`),
      published("Coarsest grain on the first prime", firstPrimeCoarseMm, (value) => format.show("mm", value)),
      published("Fired at, at least", firedC, (value) => format.show("temp", value)),
      published("Fired for, at least", firedMin, (value) => format.show("min", value)),
      published("Strength left of an under-fired wall", weakShare, percent),
    ],
  };
}

const kinds = { prime: "Prime", intermediate: "Intermediate", backup: "Backup", seal: "Seal" } as const;
const shells = { open: "An open shell", deep: "A deep or thick shell", blind: "A shell with a blind core" };

function coatMinimumRows({ leastDryH: own }: Shop, hours: (value: number) => string): readonly Figure[] {
  const rows = Object.entries(kinds) as readonly (readonly [CoatKind, string])[];
  return rows.map(([kind, name]) => ({
    ...published(`${name} coat dries before the next one, at least`, leastDryH[kind], hours),
    own: ownHours(own?.[kind], hours),
  }));
}

function finalDryRows({ finalDryH: own }: Shop, hours: (value: number) => string): readonly Figure[] {
  const rows = Object.entries(shells) as readonly (readonly [FinalDryPlace, string])[];
  return rows.flatMap(([place, name]) => [
    {
      ...published(`${name} hangs before fire, at least`, finalDryH[place].dryAirH, hours),
      own: ownHours(own?.[place], hours),
    },
    published(`${name} in damper air, at least`, finalDryH[place].dampAirH, hours),
  ]);
}

const ownHours = (own: number | undefined, hours: (value: number) => string): string | undefined =>
  own === undefined ? undefined : hours(own);
