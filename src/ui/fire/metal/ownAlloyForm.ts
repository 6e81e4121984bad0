import { z } from "zod";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import type { Format, Quantity } from "../../base/format/units.ts";
import { figureOrNone, words, wordsOrNone } from "../../base/forms/fieldSchema.ts";

/** Figures a shop may set of its own; empty keeps the table's. Densities g/cm³, latent heat kJ/kg, heats J/kg·K. */
export type OwnDraft = {
  readonly name: string;
  readonly as: "instead" | "copy";
  readonly density: number | null;
  readonly liquidDensity: number | null;
  readonly solidusC: number | null;
  readonly liquidusC: number | null;
  readonly pourLowC: number | null;
  readonly pourHighC: number | null;
  readonly shrink: number | null;
  readonly latent: number | null;
  readonly solidHeat: number | null;
  readonly liquidHeat: number | null;
  readonly note: string;
};

export function ownSchema(format: Format) {
  const orEmpty = "Correct it, or leave it empty to keep the table's.";
  const one = (what: string, quantity: Quantity, range: { low: number; high: number }) =>
    figureOrNone(format, { what, quantity, range, remedy: orEmpty });
  const density = { low: ranges.densityKgM3.low / 1000, high: ranges.densityKgM3.high / 1000 };
  const latent = { low: ranges.latentJKg.low / 1000, high: ranges.latentJKg.high / 1000 };
  const pair = (low: number | null, high: number | null): boolean =>
    low === null || high === null || low <= high;
  return z
    .object({
      name: words("name", "Name it as your ingots are marked.", 80),
      as: z.enum(["instead", "copy"]),
      density: one("density", "density", density),
      liquidDensity: one("liquid density", "density", density),
      solidusC: one("temperature where it begins to melt", "temp", ranges.meltsC),
      liquidusC: one("temperature where all is melted", "temp", ranges.meltsC),
      pourLowC: one("lowest pouring temperature", "temp", ranges.metalC),
      pourHighC: one("highest pouring temperature", "temp", ranges.metalC),
      shrink: one("shrink", "share", ranges.shrink),
      latent: one("latent heat", "plain", latent),
      solidHeat: one("heat of the solid", "plain", ranges.metalJKgK),
      liquidHeat: one("heat of the liquid", "plain", ranges.metalJKgK),
      note: wordsOrNone,
    })
    .refine(({ solidusC, liquidusC }) => pair(solidusC, liquidusC), {
      path: ["liquidusC"],
      message: "It can't be all melted before it begins to melt. Look at both.",
    })
    .refine(({ pourLowC, pourHighC }) => pair(pourLowC, pourHighC), {
      path: ["pourHighC"],
      message: "The highest lies below the lowest. Look at both.",
    });
}

/** Both ends of each pair are told together, so that a copy never crosses the table's other end. */
export function ownBody({
  read,
  alloyId,
  alloy,
  retired,
}: {
  readonly read: z.output<ReturnType<typeof ownSchema>>;
  readonly alloyId: string;
  readonly alloy: Alloy;
  readonly retired: boolean;
}): EntryBodies["alloy-set"] {
  const { name, density, liquidDensity, solidusC, liquidusC, pourLowC, pourHighC, shrink, note } = read;
  const { latent, solidHeat, liquidHeat } = read;
  const melts = solidusC !== null || liquidusC !== null;
  const pours = pourLowC !== null || pourHighC !== null;
  return {
    alloyId,
    copiedFrom: alloy.id,
    name,
    densityKgM3: density === null ? undefined : density * 1000,
    liquidDensityKgM3: liquidDensity === null ? undefined : liquidDensity * 1000,
    solidusC: melts ? (solidusC ?? alloy.solidusC.value) : undefined,
    liquidusC: melts ? (liquidusC ?? alloy.liquidusC.value) : undefined,
    pourLowC: pours ? (pourLowC ?? alloy.pourLowC.value) : undefined,
    pourHighC: pours ? (pourHighC ?? alloy.pourHighC.value) : undefined,
    shrink: shrink ?? undefined,
    latentJKg: latent === null ? undefined : latent * 1000,
    solidJKgK: solidHeat ?? undefined,
    liquidJKgK: liquidHeat ?? undefined,
    note,
    retired: retired || undefined,
  };
}

/** An id a person can read, where only the log's own words stand: two devices that name a copy alike mean the same metal. */
export function copyId(name: string, { alloys }: Pick<Shop, "alloys">): string {
  const base = `own ${name.trim().toLowerCase().replace(/\s+/g, " ")}`;
  const taken = (id: string): boolean => alloyOf(id) !== null || alloys.some((alloy) => alloy.id === id);
  let id = base;
  for (let n = 2; taken(id); n++) id = `${base} ${n}`;
  return id;
}

export const ownDraftOf = (
  own: Shop["alloys"][number] | null,
  alloy: Alloy,
  isTableRow: boolean,
): OwnDraft => ({
  name: own?.name ?? alloy.name,
  as: isTableRow && own === null ? "copy" : "instead",
  density: own?.densityKgM3 === undefined ? null : own.densityKgM3 / 1000,
  liquidDensity: own?.liquidDensityKgM3 === undefined ? null : own.liquidDensityKgM3 / 1000,
  solidusC: own?.solidusC ?? null,
  liquidusC: own?.liquidusC ?? null,
  pourLowC: own?.pourLowC ?? null,
  pourHighC: own?.pourHighC ?? null,
  shrink: own?.shrink ?? null,
  latent: own?.latentJKg === undefined ? null : own.latentJKg / 1000,
  solidHeat: own?.solidJKgK ?? null,
  liquidHeat: own?.liquidJKgK ?? null,
  note: own?.note ?? "",
});

export type OwnFigureName =
  | "density"
  | "liquidDensity"
  | "solidusC"
  | "liquidusC"
  | "pourLowC"
  | "pourHighC"
  | "shrink"
  | "latent"
  | "solidHeat"
  | "liquidHeat";

/** The fields of the form with what the table says in their place. */
export function ownFields(
  alloy: Alloy,
  figures: MeltFigures | null,
  format: Format,
): readonly {
  readonly name: OwnFigureName;
  readonly label: string;
  readonly quantity: Quantity;
  readonly now: string;
}[] {
  const density = (kgM3: number): string => format.show("density", kgM3 / 1000);
  const temp = (c: number): string => format.show("temp", c);
  const heat = (found: number | undefined, by: number, unit: string): string =>
    found === undefined ? "not known" : `${format.number(found / by, 0)} ${unit}`;
  return [
    { name: "density", label: "Density, solid", quantity: "density", now: density(alloy.solidKgM3.value) },
    {
      name: "liquidDensity",
      label: "Density, liquid",
      quantity: "density",
      now: density(alloy.liquidKgM3.value),
    },
    { name: "solidusC", label: "Begins to melt", quantity: "temp", now: temp(alloy.solidusC.value) },
    { name: "liquidusC", label: "All melted", quantity: "temp", now: temp(alloy.liquidusC.value) },
    { name: "pourLowC", label: "Poured from", quantity: "temp", now: temp(alloy.pourLowC.value) },
    { name: "pourHighC", label: "Poured up to", quantity: "temp", now: temp(alloy.pourHighC.value) },
    {
      name: "shrink",
      label: "Shrink by the rule",
      quantity: "share",
      now: figures === null ? "not known" : format.show("share", figures.shrinkHigh.value),
    },
    {
      name: "latent",
      label: "Latent heat, kJ/kg",
      quantity: "plain",
      now: heat(figures?.latentJKg.value, 1000, "kJ/kg"),
    },
    {
      name: "solidHeat",
      label: "Heat of the solid, J/kg·K",
      quantity: "plain",
      now: heat(figures?.solidHeatJKgK.value, 1, "J/kg·K, the mean up to where all is melted"),
    },
    {
      name: "liquidHeat",
      label: "Heat of the liquid, J/kg·K",
      quantity: "plain",
      now: heat(figures?.liquidHeatJKgK.value, 1, "J/kg·K"),
    },
  ];
}
