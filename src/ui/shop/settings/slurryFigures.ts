import { binders, solShelfMonths } from "../../../trade/binders.ts";
import { bucketLimitsFor, bucketLimitSources, mixingH } from "../../../trade/bucketLimits.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { cupRepeatability, cups } from "../../../trade/cups.ts";
import { readAgainAfter } from "../../../trade/dipSteps.ts";
import { flours } from "../../../trade/flours.ts";
import { ordinaryRoom, ordinaryRoomTimes } from "../../../trade/ordinaryRoom.ts";
import { materialLoss, pickups } from "../../../trade/pickup.ts";
import { pourGo } from "../../../trade/pourGo.ts";
import { pourHoldMin, pourTaskMin } from "../../../trade/pourTracks.ts";
import { flourVolumeFractions, secondsTargets, slurryStarts } from "../../../trade/slurryTargets.ts";
import { shopBucketLimits } from "../../../logbook/bucket/bucketLimits.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Format } from "../../base/format/units.ts";
import { published, tabled, type ShownFigure, type FigureGroup } from "./figure.ts";

const words = (key: string): string => key.replaceAll("-", " ");

/** Slurry, its checks, and what a dip takes out. */
export function slurryFigures(format: Format, shop: Pick<Shop, "bucketLimits">): FigureGroup {
  const density = (gCm3: number): string => format.show("density", gCm3);
  const share = (value: number): string => format.show("percent", value);
  const seconds = ({ low, high }: { readonly low: number; readonly high: number }): string =>
    `${low} to ${high} s`;
  const grams = (kgM2: number): string => format.show("gM2", kgM2 * 1000);
  return {
    title: "Slurry and dips",
    about: "Mixes to start from, how cups read, when to check, what a coat takes.",
    figures: [
      ...flours.map(({ label, densityGCm3 }) =>
        published(`Flour: ${label}`, densityGCm3, density, "density of a slurry"),
      ),
      ...binders.flatMap(({ label, silica, densityGCm3 }) => [
        published(`${label}: silica`, silica, share, "what water and sol to add"),
        published(`${label}: density`, densityGCm3, density, "density of a slurry"),
      ]),
      published(
        "A sealed sol keeps",
        solShelfMonths,
        (months) => `${months} months`,
        "the warning of an old sol",
      ),
      ...slurryStarts.map(({ label, ratio }) =>
        published(`${label}: flour to sol`, ratio, (value) => `${value} to 1`, "the first mix of a bucket"),
      ),
      ...Object.entries(flourVolumeFractions).map(([use, of]) =>
        published(`Flour by volume, ${use}`, of, share, "the first mix of a flour without a known mix ratio"),
      ),
      ...secondsTargets.map((target) =>
        tabled(
          `${target.label}: Zahn 4`,
          target,
          seconds(target.zahn4S),
          "the band a bucket's viscosity is held to",
        ),
      ),
      ...Object.entries(mixingH).map(([after, hours]) => {
        const shown = (h: number): string => format.show("h", h);
        const ownH = ownMixingH(after, shop.bucketLimits);
        return {
          ...published(`Stirred before dipping, ${words(after)}`, hours, shown, "when a bucket is fit"),
          own: ownH === undefined ? undefined : shown(ownH),
        };
      }),
      ...limitFigures(shop),
      ...cups.flatMap(({ label, orificeMm, formula, seconds: range, referenceC }) => [
        published(`${label}: orifice`, orificeMm, (mm) => format.show("mm", mm), "which cup it is"),
        published(`${label}: viscosity`, formula, String, "viscosity from seconds"),
        published(`${label}: reads well`, range, seconds, "the warning of a cup out of its range"),
        published(
          `${label}: read at`,
          referenceC,
          (c) => format.show("temp", c),
          "the correction for temperature",
        ),
      ]),
      published(
        "Cups in one shop differ by",
        cupRepeatability.within,
        share,
        "when a cup reading counts as moved",
      ),
      published(
        "Cups between shops differ by",
        cupRepeatability.between,
        share,
        "how other shops' seconds count",
      ),
      published(
        "Two means are suspect beyond",
        cupRepeatability.suspect,
        share,
        "when a reading is asked again",
      ),
      published("Seconds are read to", cupRepeatability.stepS, (s) => `${s} s`, "steps of a cup reading"),
      published(
        "Read again once so much is used",
        readAgainAfter.usedShare,
        share,
        "when a dip asks for a reading",
      ),
      published(
        "Read again once open for",
        readAgainAfter.openMin,
        (min) => format.show("min", min),
        "when a dip asks for a reading",
      ),
      ...(Object.keys(pickups) as CoatKind[]).map((kind) => {
        const row = pickups[kind];
        return tabled(
          `A ${kind} coat takes`,
          row,
          `${grams(row.slurryKgM2)} of slurry, ${grams(row.stuccoKgM2)} of stucco`,
          "what a piece costs and what is left in stock",
        );
      }),
      published("Slurry lost on the way", materialLoss.slurry, share, "what is left in stock"),
      published("Stucco lost on the way", materialLoss.stucco, share, "what is left in stock"),
    ],
  };
}

/** Limits of a bucket's health, as the light flours have them. */
function limitFigures({ bucketLimits: own }: Pick<Shop, "bucketLimits">): readonly ShownFigure[] {
  const limits = bucketLimitsFor("light");
  const counted = shopBucketLimits("light", own);
  const ownOf = (key: keyof typeof limits): string | undefined => {
    const shown = numbersIn(counted[key]);
    return shown === numbersIn(limits[key]) ? undefined : shown;
  };
  return (Object.keys(bucketLimitSources) as (keyof typeof bucketLimitSources)[]).map((key) => ({
    name: `Slurry check: ${limitNames[key]}`,
    value: numbersIn(limits[key]),
    own: ownOf(key),
    basis: "practice",
    source: bucketLimitSources[key],
    decides: "whether a bucket is fit to dip from",
  }));
}

/** The shop's own hours of mixing; undefined where the starting value counts, and for one no shop sets. */
function ownMixingH(after: string, own: Shop["bucketLimits"]): number | undefined {
  const keys: Readonly<Record<string, "primeMadeH" | "backupMadeH" | "flourAddedH" | "waterAddedH">> = {
    "prime-made": "primeMadeH",
    "backup-made": "backupMadeH",
    "flour-added": "flourAddedH",
    "water-added": "waterAddedH",
  };
  const key = keys[after];
  return key === undefined ? undefined : own?.[key];
}

const limitNames: Readonly<Record<keyof typeof bucketLimitSources, string>> = {
  temperatureC: "temperature, °C",
  ownTemperatureK: "off the shop's own temperature, K",
  densityGCm3: "density, g/cm³",
  pH: "pH",
  pHDropWeek: "fall of pH in a week",
  silica: "silica",
  gelH: "gel test, h",
  plateShare: "plate weight",
  bacteriaPerMl: "bacteria a mL",
  oldDays: "days a bucket is old",
  tooOldDays: "days a bucket is too old",
  weeklyShare: "used in a week",
};

/** Every number of a limit, from its fit to its last. */
function numbersIn(limit: unknown): string {
  if (typeof limit !== "object" || limit === null) return String(limit);
  return Object.entries(limit)
    .map(([name, value]) => `${name.replace(/([A-Z])/g, " $1").toLowerCase()} ${numbersIn(value)}`)
    .join(", ");
}

/** The pour day, and the room nobody has read. */
export function dayFigures(format: Format): FigureGroup {
  const min = (value: number): string => format.show("min", value);
  const names: Readonly<Record<keyof typeof pourGo, string>> = {
    opensMin: "A go opens before the planned pour by",
    holdsMin: "A go holds for",
    lateMin: "A pour is late after",
    heatMin: "A kiln or metal reading holds for",
    hotToolsMin: "Hot tools hold for",
    peopleMin: "People and gear hold for",
    shellLookMin: "The look over the shell holds for",
    preheatBegunMin: "A shell heat counts as begun for",
    nearHeatK: "A reading counts as at its heat within",
  };
  const practice = (name: string, value: string, decides: string): ShownFigure => ({
    name,
    value,
    basis: "practice",
    source: "",
    decides,
  });
  return {
    title: "Pour day and unread air",
    about: "How long things hold on the day of a pour, and the air of a room that was never read.",
    figures: [
      ...(Object.keys(names) as (keyof typeof pourGo)[]).map((key) =>
        published(
          names[key],
          pourGo[key],
          key === "nearHeatK" ? (k: number) => format.show("tempDiff", k) : min,
          "whether a go holds",
        ),
      ),
      ...Object.entries(pourHoldMin).map(([what, minutes]) =>
        practice(`On a pour day keeps: ${what}`, min(minutes), "when each step of the day begins"),
      ),
      ...Object.entries(pourTaskMin).map(([what, minutes]) =>
        practice(`On a pour day takes: ${what}`, min(minutes), "when each step of the day begins"),
      ),
      published(
        "Air of a room that was never read",
        ordinaryRoom,
        ({ airC, rh, air }) => `${format.show("temp", airC)}, ${format.show("percent", rh)}, ${words(air)}`,
        "drying where no reading is logged",
      ),
      published(
        "Times in such air, early and late",
        ordinaryRoomTimes,
        (factor) => `÷ and × ${factor}`,
        "the range of drying without a reading",
      ),
    ],
  };
}
