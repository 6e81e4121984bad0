import type { Contents, Element } from "../../physics/metal/scrap.ts";
import { fumeLimits, type FumeLimit } from "../fumeLimits.ts";
import { hazardAbove } from "./hazards.ts";
import type { Published } from "../published.ts";

const z1 = "29 CFR 1910.1000, table Z-1 (from memory)";
const mean = (label: string, value: number): FumeLimit => ({
  label,
  unit: "mg/m³",
  limit: { value, basis: "published", source: z1 },
  kind: "mean-8-h",
  actionLevel: null,
});

/** What may be in the air over a melt that holds an element. */
const overMelt: Readonly<Partial<Record<Element, readonly FumeLimit[]>>> = {
  cu: [fumeLimits["copper-fume"], mean("Copper dust and mist", 1)],
  zn: [fumeLimits["zinc-oxide-fume"]],
  pb: [fumeLimits.lead],
  be: [fumeLimits.beryllium],
  cd: [fumeLimits.cadmium],
  mn: [{ ...mean("Manganese", 5), kind: "ceiling" }],
  sn: [mean("Tin, inorganic", 2)],
  sb: [mean("Antimony", 0.5)],
  ni: [mean("Nickel", 1)],
  ag: [mean("Silver", 0.01)],
  al: [mean("Aluminium, respirable dust", 5)],
  fe: [mean("Iron oxide fume", 10)],
};

/** Share of an element from which its limit is shown. Judgement; poisons are shown above shares of their own. */
const tellFrom = 0.005;

/** Lead above which no tableware is made of a metal. */
export const leadFlag: Published = {
  value: 0.0009,
  basis: "published",
  source: "limit of present silicon bronzes, ASTM B584-14, by way of a trade magazine's table; check",
};

const tellAbove: Readonly<Partial<Record<Element, number>>> = {
  pb: leadFlag.value,
  be: hazardAbove.beryllium.value,
  cd: hazardAbove.cadmium.value,
};

/** Limits on what is breathed over a metal, by what it may hold; never a promise that below them is safe. */
export function limitsOfMetal(contents: Contents): readonly FumeLimit[] {
  const isShown = (element: Element): boolean => {
    const most = contents[element]?.high ?? 0;
    const above = tellAbove[element];
    return above === undefined ? most >= tellFrom : most > above;
  };
  return (Object.keys(overMelt) as Element[]).filter(isShown).flatMap((element) => overMelt[element] ?? []);
}

/** Zinc from which a melt is flagged, and flagged again: it boils at 907 °C, below every pour. */
export const zincFlags = {
  watch: { value: 0.04, basis: "practice", source: "common practice, no source; zinc boils at 907 °C" },
  hold: { value: 0.12, basis: "practice", source: "common practice, no source; zinc boils at 907 °C" },
} as const satisfies Record<string, Published>;

/** Ingot, skimmer and ingot mould are dry and at least this warm before they meet metal, °C. */
export const dryToolC: Published = {
  value: 150,
  basis: "practice",
  source: "common practice, no source; 120–150 °C",
};
