import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { EntryIn } from "../../../logbook/entries/entryKinds.ts";
import { fieldWords } from "./fieldWords.ts";
import { figureDetail, retiredWords, entryText, type EntryText } from "./entryText.ts";
import { priceWords, powerWords } from "./moneyWords.ts";
import type { Format } from "./units.ts";

/** One line of a room's or a recipe's log in words. */
export function roomAndRecipeWords(entry: EntryIn<"room"> | EntryIn<"recipe">, format: Format): EntryText {
  switch (entry.type) {
    case "room-set":
      return entryText(
        `Room: ${entry.body.name}`,
        `altitude ${format.show("m", entry.body.altitudeM)}`,
        retiredWords(entry.body),
      );
    case "air-read":
      return entryText(
        `Air read: ${format.show("temp", entry.body.airC)}, ${format.show("percent", entry.body.rh)} humidity`,
        figureDetail("pressure", entry.body.pressurePa, (pa) => format.show("hPa", pa / 100)),
        entry.body.sensor,
        entry.body.note,
      );
    case "air-logged":
      return airLogged(entry.body, format);
    case "recipe-set": {
      const { name, coats, polymer, note } = entry.body;
      const own = coats.filter(({ leastDryH }) => leastDryH !== undefined).length;
      return entryText(
        `Recipe: ${name}`,
        `${coats.length} coats`,
        own === 0 ? null : `${own} with a minimum drying time`,
        polymer === true ? "polymer in the binder" : null,
        note,
      );
    }
  }
}

function airLogged({ source, afterS, airC, rh }: EntryBodies["air-logged"], format: Format): EntryText {
  const hours = (afterS.at(-1) ?? 0) / 3600;
  return entryText(
    `Air logged: ${afterS.length === 1 ? "1 reading" : `${afterS.length} readings`}`,
    `from ${source}`,
    `over ${format.show("h", hours)}`,
    `${format.show("temp", Math.min(...airC))} to ${format.show("temp", Math.max(...airC))}`,
    `${format.show("percent", Math.min(...rh))} to ${format.show("percent", Math.max(...rh))} humidity`,
  );
}

/** One line of the shop's own log in words. */
export function shopEntryWords(entry: EntryIn<"shop">, format: Format): EntryText {
  switch (entry.type) {
    case "shop-figures-set":
      return figuresSet(entry.body, format);
    case "drying-pair-judged":
      return entryText(
        entry.body.leftOut ? "Drying time excluded" : "Drying time included again",
        entry.body.reason,
      );
    case "cup-set":
      return entryText(`Cup: ${entry.body.name}`, entry.body.cup, retiredWords(entry.body));
    case "material-set":
      return entryText(
        `Material: ${entry.body.name}`,
        priceWords(entry.body.pricePerKg, entry.body.currency, { each: "a kilogram", format }),
        figureDetail("packs of", entry.body.packKg, (kg) => format.show("kg", kg)),
        figureDetail("delivery weeks", entry.body.weeksToCome, (weeks) => format.number(weeks, 1)),
        figureDetail("shelf life, months", entry.body.keepsMonths, (months) => format.number(months, 0)),
        retiredWords(entry.body),
      );
    case "stock-moved":
      return entryText(
        `${moveWords[entry.body.how]}: ${format.show("kg", entry.body.massKg)}`,
        entry.body.note,
      );
    case "kiln-set":
      return entryText(
        `Kiln: ${entry.body.name}`,
        entry.body.heat,
        powerWords(entry.body.powerKW, format),
        format.show("kilnL", entry.body.volumeL),
        `up to ${format.show("temp", entry.body.maxC)}`,
        figureDetail(
          "climbs at most",
          entry.body.maxRampKPerH,
          (k) => `${format.show("tempDiff", k)} an hour`,
        ),
        priceWords(entry.body.pricePerKWh, entry.body.currency, { each: "a kWh", format }),
        retiredWords(entry.body),
      );
    case "furnace-set":
      return entryText(
        `Furnace: ${entry.body.name}`,
        entry.body.heat.replace("-", " "),
        powerWords(entry.body.powerKW, format),
        figureDetail("into the metal", entry.body.efficiency, (share) => format.show("percent", share)),
        figureDetail("crucible", entry.body.crucibleL, (litre) => format.show("litre", litre)),
        priceWords(entry.body.pricePerKWh, entry.body.currency, { each: "a kWh", format }),
        retiredWords(entry.body),
      );
    case "alloy-set":
      return alloySet(entry.body, format);
    case "shrink-measured":
      return entryText(
        `Shrink measured: ${format.number(100 * (1 - entry.body.castingMm / entry.body.patternMm), 2)}%`,
        `${format.show("mm", entry.body.patternMm)} became ${format.show("mm", entry.body.castingMm)}`,
        entry.body.held === "free" ? "free to shrink" : "restrained by the shell",
      );
  }
}

const moveWords: Record<EntryBodies["stock-moved"]["how"], string> = {
  received: "Received",
  "made-up": "Made up",
  "dipped-out": "Dipped out",
  lost: "Lost",
  "thrown-away": "Discarded",
  counted: "Counted",
};

function figuresSet(body: EntryBodies["shop-figures-set"], format: Format): EntryText {
  const byKind = (
    name: string,
    figures: EntryBodies["shop-figures-set"]["buildMm"] = {},
    show: (value: number) => string,
  ): readonly (string | null)[] =>
    Object.entries(figures).map(([kind, value]) => figureDetail(`${name} of a ${kind} coat`, value, show));
  const minimum = (name: string, hours: number | null | undefined): string | null =>
    hours === null ? `${name}: starting value` : figureDetail(name, hours, (h) => format.show("h", h));
  const perArea = (kg: number): string => `${format.number(kg, 2)} kg/m²`;
  return entryText(
    "Own figures set",
    figureDetail("drying factor", body.dryingFactor, (value) => format.number(value, 2)),
    figureDetail("fired strength", body.morMPa, (value) => format.show("MPa", value)),
    ...byKind("slurry", body.slurryKgM2, perArea),
    ...byKind("stucco", body.stuccoKgM2, perArea),
    ...byKind("build", body.buildMm, (mm) => format.show("mm", mm)),
    ...Object.entries(body.leastDryH ?? {}).map(([kind, h]) =>
      minimum(`minimum drying of a ${kind} coat`, h),
    ),
    ...Object.entries(body.finalDryH ?? {}).map(([place, h]) => minimum(`minimum final dry, ${place}`, h)),
    ...limitsSet(body.bucketLimits, format),
  );
}

/** Limits by name; those that went back to the starting value are counted. */
function limitsSet(
  limits: EntryBodies["shop-figures-set"]["bucketLimits"] = {},
  format: Format,
): readonly (string | null)[] {
  const told = Object.entries(limits).flatMap(([key, value]) =>
    value === null || value === undefined
      ? []
      : [`${fieldWords(key).name} ${format.show(fieldWords(key).quantity, value)}`],
  );
  const given = Object.keys(limits).length;
  return given > 0 && told.length === 0 ? ["slurry limits: starting values"] : told;
}

function alloySet(body: EntryBodies["alloy-set"], format: Format): EntryText {
  const temp = (c: number): string => format.show("temp", c);
  const density = (kgM3: number): string => format.show("density", kgM3 / 1000);
  return entryText(
    `Alloy: ${body.name}`,
    figureDetail("density", body.densityKgM3, density),
    figureDetail("density when liquid", body.liquidDensityKgM3, density),
    figureDetail("solid below", body.solidusC, temp),
    figureDetail("liquid above", body.liquidusC, temp),
    figureDetail("poured from", body.pourLowC, temp),
    figureDetail("poured up to", body.pourHighC, temp),
    figureDetail("shrinks", body.shrink, (share) => `${format.number(100 * share, 2)}%`),
    figureDetail("latent heat", body.latentJKg, (j) => `${format.number(j / 1000, 0)} kJ/kg`),
    figureDetail("heat of the solid", body.solidJKgK, (j) => `${format.number(j, 0)} J/kg·K`),
    figureDetail("heat of the liquid", body.liquidJKgK, (j) => `${format.number(j, 0)} J/kg·K`),
    body.note,
    retiredWords(body),
  );
}
