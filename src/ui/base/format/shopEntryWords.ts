import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { EntryIn } from "../../../logbook/entries/entryKinds.ts";
import { figure, retiredWords, told, type EntryText } from "./entryText.ts";
import { priceWords, powerWords } from "./moneyWords.ts";
import type { Format } from "./units.ts";

/** One line of a room's or a recipe's log in words. */
export function roomAndRecipeWords(entry: EntryIn<"room"> | EntryIn<"recipe">, format: Format): EntryText {
  switch (entry.type) {
    case "room-set":
      return told(
        `Room: ${entry.body.name}`,
        `altitude ${format.show("m", entry.body.altitudeM)}`,
        retiredWords(entry.body),
      );
    case "air-read":
      return told(
        `Air read: ${format.show("temp", entry.body.airC)}, ${format.show("percent", entry.body.rh)} humidity`,
        figure("pressure", entry.body.pressurePa, (pa) => format.show("hPa", pa / 100)),
        entry.body.sensor,
        entry.body.note,
      );
    case "air-logged":
      return airLogged(entry.body, format);
    case "recipe-set": {
      const { name, coats, polymer, note } = entry.body;
      const own = coats.filter(({ leastDryH }) => leastDryH !== undefined).length;
      return told(
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
  return told(
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
      return told(
        entry.body.leftOut ? "Drying time left out of the learning" : "Drying time taken in again",
        entry.body.reason,
      );
    case "cup-set":
      return told(`Cup: ${entry.body.name}`, entry.body.cup, retiredWords(entry.body));
    case "material-set":
      return told(
        `Material: ${entry.body.name}`,
        priceWords(entry.body.pricePerKg, entry.body.currency, { each: "a kilogram", format }),
        figure("packs of", entry.body.packKg, (kg) => format.show("kg", kg)),
        figure("weeks to come", entry.body.weeksToCome, (weeks) => format.number(weeks, 1)),
        figure("months it keeps", entry.body.keepsMonths, (months) => format.number(months, 0)),
        retiredWords(entry.body),
      );
    case "stock-moved":
      return told(`${moveWords[entry.body.how]}: ${format.show("kg", entry.body.massKg)}`, entry.body.note);
    case "kiln-set":
      return told(
        `Kiln: ${entry.body.name}`,
        entry.body.heat,
        powerWords(entry.body.powerKW, format),
        format.show("litre", entry.body.volumeL),
        `up to ${format.show("temp", entry.body.maxC)}`,
        figure("climbs at most", entry.body.maxRampKPerH, (k) => `${format.show("tempDiff", k)} an hour`),
        priceWords(entry.body.pricePerKWh, entry.body.currency, { each: "a kWh", format }),
        retiredWords(entry.body),
      );
    case "furnace-set":
      return told(
        `Furnace: ${entry.body.name}`,
        entry.body.heat.replace("-", " "),
        powerWords(entry.body.powerKW, format),
        figure("into the metal", entry.body.efficiency, (share) => format.show("percent", share)),
        figure("crucible", entry.body.crucibleL, (litre) => format.show("litre", litre)),
        priceWords(entry.body.pricePerKWh, entry.body.currency, { each: "a kWh", format }),
        retiredWords(entry.body),
      );
    case "alloy-set":
      return alloySet(entry.body, format);
    case "shrink-measured":
      return told(
        `Shrink measured: ${format.number(100 * (1 - entry.body.castingMm / entry.body.patternMm), 2)}%`,
        `${format.show("mm", entry.body.patternMm)} became ${format.show("mm", entry.body.castingMm)}`,
        entry.body.held === "free" ? "free to shrink" : "held by the shell",
      );
  }
}

const moveWords: Record<EntryBodies["stock-moved"]["how"], string> = {
  received: "Received",
  "made-up": "Made up",
  "dipped-out": "Dipped out",
  lost: "Lost",
  "thrown-away": "Thrown away",
  counted: "Counted",
};

function figuresSet(body: EntryBodies["shop-figures-set"], format: Format): EntryText {
  const byKind = (
    name: string,
    figures: EntryBodies["shop-figures-set"]["buildMm"] = {},
    show: (value: number) => string,
  ): readonly (string | null)[] =>
    Object.entries(figures).map(([kind, value]) => figure(`${name} of a ${kind} coat`, value, show));
  const minimum = (name: string, hours: number | null | undefined): string | null =>
    hours === null ? `${name}: starting value` : figure(name, hours, (h) => format.show("h", h));
  const perArea = (kg: number): string => `${format.number(kg, 2)} kg/m²`;
  return told(
    "Own figures set",
    figure("drying factor", body.dryingFactor, (value) => format.number(value, 2)),
    figure("fired strength", body.morMPa, (value) => format.show("MPa", value)),
    ...byKind("slurry", body.slurryKgM2, perArea),
    ...byKind("stucco", body.stuccoKgM2, perArea),
    ...byKind("build", body.buildMm, (mm) => format.show("mm", mm)),
    ...Object.entries(body.leastDryH ?? {}).map(([kind, h]) =>
      minimum(`minimum drying of a ${kind} coat`, h),
    ),
    ...Object.entries(body.finalDryH ?? {}).map(([place, h]) => minimum(`minimum final dry, ${place}`, h)),
  );
}

function alloySet(body: EntryBodies["alloy-set"], format: Format): EntryText {
  const temp = (c: number): string => format.show("temp", c);
  const density = (kgM3: number): string => format.show("density", kgM3 / 1000);
  return told(
    `Alloy: ${body.name}`,
    figure("density", body.densityKgM3, density),
    figure("density when liquid", body.liquidDensityKgM3, density),
    figure("solid below", body.solidusC, temp),
    figure("liquid above", body.liquidusC, temp),
    figure("poured from", body.pourLowC, temp),
    figure("poured up to", body.pourHighC, temp),
    figure("shrinks", body.shrink, (share) => `${format.number(100 * share, 2)}%`),
    figure("latent heat", body.latentJKg, (j) => `${format.number(j / 1000, 0)} kJ/kg`),
    figure("heat of the solid", body.solidJKgK, (j) => `${format.number(j, 0)} J/kg·K`),
    figure("heat of the liquid", body.liquidJKgK, (j) => `${format.number(j, 0)} J/kg·K`),
    body.note,
    retiredWords(body),
  );
}
