import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ranges, type NumberRange } from "../../../logbook/entries/ranges.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import type { Format } from "../../base/format/units.ts";
import {
  asGiven,
  checkFields,
  figureOrNone,
  words,
  wordsOrNone,
  type DraftOf,
  type ReadOf,
} from "../../base/forms/formFields.ts";

const thousandthsOf = ({ low, high }: NumberRange): NumberRange => ({ low: low / 1000, high: high / 1000 });
const remedy = "Correct it, or leave it empty to keep the table's.";
const inG = "the page shows g/cm³, the log keeps kg/m³";
const inKJ = "the page shows kJ, the log keeps J";
const density = { quantity: "density", range: thousandthsOf(ranges.densityKgM3), why: inG } as const;

/** Figures a shop may set of its own; empty keeps the table's. Densities g/cm³, latent heat kJ/kg, heats J/kg·K. */
export const ownFields = {
  name: words("name", "Use the name on your ingots.", 80),
  as: asGiven<"instead" | "copy">("instead"),
  density: figureOrNone("densityKgM3", { what: "density", remedy, own: density }),
  liquidDensity: figureOrNone("liquidDensityKgM3", { what: "liquid density", remedy, own: density }),
  solidusC: figureOrNone("solidusC", { what: "solidus", remedy }),
  liquidusC: figureOrNone("liquidusC", { what: "liquidus", remedy }),
  pourLowC: figureOrNone("pourLowC", { what: "lowest pouring temperature", remedy }),
  pourHighC: figureOrNone("pourHighC", { what: "highest pouring temperature", remedy }),
  shrink: figureOrNone("shrink", { what: "shrink", remedy }),
  latent: figureOrNone("latentJKg", {
    what: "latent heat",
    remedy,
    own: { range: thousandthsOf(ranges.latentJKg), why: inKJ },
  }),
  solidHeat: figureOrNone("solidJKgK", { what: "heat of the solid", remedy }),
  liquidHeat: figureOrNone("liquidJKgK", { what: "heat of the liquid", remedy }),
  note: wordsOrNone,
};
type OwnDraft = DraftOf<typeof ownFields>;

const isTurned = (low: number | undefined, high: number | undefined): boolean =>
  low !== undefined && high !== undefined && low > high;

export const readOwn = (draft: OwnDraft, format: Format) =>
  checkFields(ownFields, draft, format, ({ solidusC, liquidusC, pourLowC, pourHighC }) => ({
    liquidusC: isTurned(solidusC, liquidusC)
      ? "The liquidus must be above the solidus. Check both."
      : undefined,
    pourHighC: isTurned(pourLowC, pourHighC) ? "The highest is below the lowest. Check both." : undefined,
  }));

/** Both ends of each pair are told together, so that a copy never crosses the table's other end. */
export function ownBody({
  read,
  alloyId,
  alloy,
  retired,
}: {
  readonly read: ReadOf<typeof ownFields>;
  readonly alloyId: string;
  readonly alloy: Alloy;
  readonly retired: boolean;
}): EntryBodies["alloy-set"] {
  const { name, density, liquidDensity, solidusC, liquidusC, pourLowC, pourHighC, shrink, note } = read;
  const { latent, solidHeat, liquidHeat } = read;
  const melts = solidusC !== undefined || liquidusC !== undefined;
  const pours = pourLowC !== undefined || pourHighC !== undefined;
  return {
    alloyId,
    copiedFrom: alloy.id,
    name,
    densityKgM3: density === undefined ? undefined : density * 1000,
    liquidDensityKgM3: liquidDensity === undefined ? undefined : liquidDensity * 1000,
    solidusC: melts ? (solidusC ?? alloy.solidusC.value) : undefined,
    liquidusC: melts ? (liquidusC ?? alloy.liquidusC.value) : undefined,
    pourLowC: pours ? (pourLowC ?? alloy.pourLowC.value) : undefined,
    pourHighC: pours ? (pourHighC ?? alloy.pourHighC.value) : undefined,
    shrink,
    latentJKg: latent === undefined ? undefined : latent * 1000,
    solidJKgK: solidHeat,
    liquidJKgK: liquidHeat,
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

type OwnFigureName = Exclude<keyof OwnDraft, "name" | "as" | "note">;

/** The figures of the form with what the table says in their place. */
export function ownRows(
  alloy: Alloy,
  figures: MeltFigures | null,
  format: Format,
): readonly {
  readonly name: OwnFigureName;
  readonly label: string;
  readonly now: string;
}[] {
  const density = (kgM3: number): string => format.show("density", kgM3 / 1000);
  const temp = (c: number): string => format.show("temp", c);
  const heat = (found: number | undefined, by: number, unit: string): string =>
    found === undefined ? "not known" : `${format.number(found / by, 0)} ${unit}`;
  return [
    { name: "density", label: "Density, solid", now: density(alloy.solidKgM3.value) },
    {
      name: "liquidDensity",
      label: "Density, liquid",
      now: density(alloy.liquidKgM3.value),
    },
    { name: "solidusC", label: "Begins to melt", now: temp(alloy.solidusC.value) },
    { name: "liquidusC", label: "Fully melted", now: temp(alloy.liquidusC.value) },
    { name: "pourLowC", label: "Poured from", now: temp(alloy.pourLowC.value) },
    { name: "pourHighC", label: "Poured up to", now: temp(alloy.pourHighC.value) },
    {
      name: "shrink",
      label: "Shrink by the rule",
      now: figures === null ? "not known" : format.show("share", figures.shrinkHigh.value),
    },
    {
      name: "latent",
      label: "Latent heat, kJ/kg",
      now: heat(figures?.latentJKg.value, 1000, "kJ/kg"),
    },
    {
      name: "solidHeat",
      label: "Heat of the solid, J/kg·K",
      now: heat(figures?.solidHeatJKgK.value, 1, "J/kg·K, the mean up to where all is melted"),
    },
    {
      name: "liquidHeat",
      label: "Heat of the liquid, J/kg·K",
      now: heat(figures?.liquidHeatJKgK.value, 1, "J/kg·K"),
    },
  ];
}
