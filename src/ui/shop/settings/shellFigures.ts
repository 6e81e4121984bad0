import type { Shop } from "../../../logbook/piece/piece.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { coatWaterOf, prewetKgM2 } from "../../../trade/coatWater.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { finalDryH, leastDryH, type FinalDryPlace } from "../../../trade/dryMinimums.ts";
import { practice } from "../../../trade/practice.ts";
import { sealMm, stuccos } from "../../../trade/stuccos.ts";
import type { Format } from "../../base/format/units.ts";
import { published, tabled, type ShownFigure, type FigureGroup } from "./figure.ts";

export function stuccoFigures(format: Format): FigureGroup {
  const build = (value: number, low: number, high: number) =>
    `${format.show("mm", value)} a coat, ${format.show("mm", low)} to ${format.show("mm", high)}`;
  return {
    title: "Wall a coat gives",
    about: "Until a piece has caliper readings, which take the place of the table for that piece.",
    figures: [
      ...stuccos.map(({ label, fineMm, coarseMm, mmPerCoat }) =>
        tabled(
          `${label}, grain ${format.show("mm", fineMm)} to ${format.show("mm", coarseMm)}`,
          mmPerCoat,
          build(mmPerCoat.value, mmPerCoat.low, mmPerCoat.high),
          "thickness of the shell, and the coats to add",
        ),
      ),
      tabled(
        "Seal, no stucco",
        sealMm,
        build(sealMm.value, sealMm.low, sealMm.high),
        "thickness of the shell",
      ),
    ],
  };
}

export function dryingFigures(format: Format, shop: Shop): FigureGroup {
  const water = (kgM2: number) => format.show("gM2", kgM2 * 1000);
  const coat = (name: string, kind: Parameters<typeof coatWaterOf>[0], primeNumber: number): ShownFigure => {
    const row = coatWaterOf(kind, primeNumber);
    return tabled(
      name,
      row,
      `${water(row.waterKgM2)} of water; the face stops being wet at ${format.show("percent", row.criticalShare)} of it`,
      "how long this coat dries",
    );
  };
  return {
    title: "Drying",
    about:
      "A wet face dries as fast as the air takes vapour up; then the water left has to come through the dry skin. Calculated over the room's own readings.",
    figures: [
      {
        name: "Actual hours over calculated hours",
        value: "1",
        basis: "judgement",
        source: "known to about ± 45 % until a shop has its own factor",
        decides: "all drying times",
        own: shop.dryingFactor === null ? undefined : format.show("plain", shop.dryingFactor),
      },
      coat("First prime coat", "prime", 1),
      coat("Later prime coats", "prime", 2),
      coat("Intermediate coat", "intermediate", 1),
      coat("Backup coat", "backup", 1),
      coat("Seal coat", "seal", 1),
      published("Prewet", prewetKgM2, water, "how long a coat on a prewet shell dries"),
      ...Object.values(geometryClasses).map((row) =>
        tabled(
          row.label,
          row,
          `${format.number(row.pocketSM, 0)} s/m more for vapour to get out`,
          "how long a hollow dries",
        ),
      ),
      {
        name: "Vapour pressure of water and ice",
        value: "formula",
        basis: "published",
        decides: "how much water air can take up",
        source: "IAPWS SR1-86 (1992) over water, IAPWS R14-08 over ice",
      },
      {
        name: "Vapour through air",
        value: "formula",
        basis: "published",
        decides: "how fast vapour leaves a coat",
        source: "Massman, Atmos. Environ. 32 (1998) 1111 (from memory of it)",
      },
    ],
  };
}

export function airFigures(format: Format): FigureGroup {
  return {
    title: "Air movement",
    about: "How strongly the air works on the pieces: the film coefficient, and the speed it stands for.",
    figures: Object.values(airClasses).map((row) =>
      tabled(
        row.label,
        row,
        `${format.show("wM2K", row.filmWM2K)} (${format.show("wM2K", row.low)} to ${format.show("wM2K", row.high)}), about ${format.show("speed", row.speedMS)}`,
        "how long coats dry in such air",
      ),
    ),
  };
}

export function limitFigures(format: Format, shop: Shop): FigureGroup {
  const percent = (value: number) => format.show("percent", value);
  const hours = (value: number) => format.show("h", value);
  const { primeSwingK, primeDropK, primeHardFilmWM2K, primeBareH, rhNeverDry, rhFinalDry, readingOldH } =
    practice;
  const { primeSwingWatchK, readingOldWorkH, usualCoats, neverReadDays, slurryOffK, toldOnceH } = practice;
  const { gradeRatio, firstPrimeCoarseMm, firedC, firedMin, weakShare } = practice;
  const { bondC, coldShellH } = practice;
  return {
    title: "Limits the findings speak from",
    about: "A finding names its limit and its source; these are all of them.",
    figures: [
      published(
        "Room may move while a prime coat is outermost",
        primeSwingK,
        (value) => format.show("tempDiff", value),
        "the warning of a room that moved on a prime",
      ),
      published(
        "A move of the room on a bare wax prime is to be watched above",
        primeSwingWatchK,
        (value) => format.show("tempDiff", value),
        "how strong that warning is",
      ),
      published(
        "Wet prime on wax may be colder than the room",
        primeDropK,
        (value) => format.show("tempDiff", value),
        "the warning of a prime that dries too hard",
      ),
      published(
        "Prime dries hard from",
        primeHardFilmWM2K,
        (value) => `${value} W/m²K`,
        "the warning of a prime in strong air",
      ),
      published("Prime may stand bare", primeBareH, hours, "the warning of a prime left bare"),
      published("Nothing counts as dry above", rhNeverDry, percent, "whether a coat counts as dry"),
      published(
        "The last coat is not dry through above",
        rhFinalDry,
        percent,
        "whether the last coat counts as dry",
      ),
      ...coatMinimumRows(shop, hours),
      ...finalDryRows(shop, hours),
      published(
        "Air is damper, for these hours, above",
        practice.finalDryRh,
        percent,
        "which of the hours before fire count",
      ),
      published(
        "A wall counts as thick above",
        practice.thickWallMm,
        (value) => format.show("mm", value),
        "which of the hours before fire count",
      ),
      published(
        "An air reading no longer counts at a dip after",
        readingOldH,
        hours,
        "whether a dip has an air reading",
      ),
      published(
        "An air reading is old after working hours, 7:00 to 19:00",
        readingOldWorkH,
        hours,
        "when an air reading is asked for",
      ),
      published(
        "Coats on a shell, where no recipe says",
        usualCoats,
        String,
        "when a piece without a recipe is asked for its figures",
      ),
      published(
        "A bucket without any reading is to be watched after",
        neverReadDays,
        (value) => `${value} days`,
        "the warning of a slurry that was never read",
      ),
      published(
        "Slurry this near its temperature is no finding",
        slurryOffK,
        (value) => format.show("tempDiff", value),
        "the warning of a slurry out of its temperature",
      ),
      published(
        "What is said once is a note after",
        toldOnceH,
        hours,
        "how long a warning of the moment stands",
      ),
      published(
        "Grain over the grain beneath, at most",
        gradeRatio,
        (value) => `${value} times`,
        "the warning of stucco out of order",
      ),
      published(
        "Coarsest grain on the first prime",
        firstPrimeCoarseMm,
        (value) => format.show("mm", value),
        "the warning of stucco too coarse for a prime",
      ),
      published(
        "Fired at, at least",
        firedC,
        (value) => format.show("temp", value),
        "whether a shell counts as fired",
      ),
      published(
        "Silica gel bonds from",
        bondC,
        (value) => format.show("temp", value),
        "whether a fire counts at all",
      ),
      published(
        "A fired shell that stood cold counts as damp after",
        coldShellH,
        hours,
        "whether it is heated again before metal",
      ),
      published(
        "Fired for, at least",
        firedMin,
        (value) => format.show("min", value),
        "whether a shell counts as fired",
      ),
      published(
        "Strength left of an under-fired wall",
        weakShare,
        percent,
        "strength of a shell that was fired too little",
      ),
    ],
  };
}

const kinds = { prime: "Prime", intermediate: "Intermediate", backup: "Backup", seal: "Seal" } as const;
const shells = { open: "An open shell", deep: "A deep or thick shell", blind: "A shell with a blind core" };

function coatMinimumRows({ leastDryH: own }: Shop, hours: (value: number) => string): readonly ShownFigure[] {
  const rows = Object.entries(kinds) as readonly (readonly [CoatKind, string])[];
  return rows.map(([kind, name]) => ({
    ...published(
      `${name} coat dries before the next one, at least`,
      leastDryH[kind],
      hours,
      "when a coat may be covered",
    ),
    own: ownHours(own?.[kind], hours),
  }));
}

function finalDryRows({ finalDryH: own }: Shop, hours: (value: number) => string): readonly ShownFigure[] {
  const rows = Object.entries(shells) as readonly (readonly [FinalDryPlace, string])[];
  return rows.flatMap(([place, name]) => [
    {
      ...published(
        `${name} hangs before fire, at least`,
        finalDryH[place].dryAirH,
        hours,
        "when a shell may go into the fire",
      ),
      own: ownHours(own?.[place], hours),
    },
    published(
      `${name} in damper air, at least`,
      finalDryH[place].dampAirH,
      hours,
      "when a shell may go into the fire",
    ),
  ]);
}

const ownHours = (own: number | undefined, hours: (value: number) => string): string | undefined =>
  own === undefined ? undefined : hours(own);
