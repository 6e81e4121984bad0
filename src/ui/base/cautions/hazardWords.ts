import type { Contents } from "../../../physics/metal/scrap.ts";
import { hazardAbove, hazardsOf, leadedFrom, type MetalHazard } from "../../../trade/metals/hazards.ts";
import { dryToolC, leadFlag, zincFlags } from "../../../trade/metals/metalAir.ts";
import type { Format } from "../format/units.ts";

export const hazardName: Readonly<Record<MetalHazard, string>> = {
  beryllium: "beryllium",
  cadmium: "cadmium",
  lead: "lead",
  "zinc-fume": "zinc fume",
  magnesium: "burns",
  phosphorus: "phosphorus",
  nickel: "nickel",
  antimony: "antimony",
  manganese: "manganese",
  "copper-fume": "copper fume",
  "rust-and-damp": "no rust, no damp",
  glare: "glare",
  "no-glow": "hot without a glow",
  "oxide-film": "oxide film",
  hydrogen: "hydrogen",
  "oxygen-pick-up": "takes up oxygen",
};

/** Never melted: hard springy copper alloys may hold beryllium, whose fume kills slowly. */
export const berylliumCaution =
  "Springs, contact strips, non-sparking tools and hard, springy copper of unknown make may hold beryllium. Its fume scars the lungs for life. Never melt any of it.";

/** Where a caution matters. */
export type HazardMoment = "melt" | "pour" | "knock-out" | "grinding";

/** What a metal's contents ask for at one moment, worst first; each line once. */
export function hazardLines(contents: Contents, moment: HazardMoment, format: Format): readonly string[] {
  return hazardsOf(contents).flatMap((hazard) => lineOf(hazard, moment, contents, format) ?? []);
}

function lineOf(
  hazard: MetalHazard,
  moment: HazardMoment,
  contents: Contents,
  format: Format,
): string | null {
  const of: Readonly<Partial<Record<HazardMoment, string>>> = byMoment(hazard, contents, format);
  return of[moment] ?? null;
}

function byMoment(
  hazard: MetalHazard,
  contents: Contents,
  format: Format,
): Readonly<Partial<Record<HazardMoment, string>>> {
  const temp = (c: number): string => format.show("temp", c);
  switch (hazard) {
    case "beryllium":
      return {
        melt: berylliumCaution,
        pour: "It may hold beryllium: don't pour it. Let it freeze where it is and keep everyone away.",
        grinding: "It may hold beryllium: don't grind, file, blast or weld it.",
      };
    case "cadmium":
      return {
        melt: "Cadmium fume kills days later and gives no warning: take it out of the charge.",
        pour: "Cadmium fume kills days later and gives no warning: don't pour it.",
        grinding: "Cadmium: don't grind it dry.",
      };
    case "lead":
      return {
        melt: `${upTo("lead", contents.pb?.high ?? 0, format)}: no food or drink near it, a crucible of its own, hands washed, clothes left in the shop.`,
        pour: "Lead: respirator for metal fume, no food or drink near, wash before you eat.",
        "knock-out": "Lead: clean up wet, and wash before you eat.",
        grinding: "Lead: never grind it dry, change clothes before you go home, no tableware from it.",
      };
    case "zinc-fume":
      return {
        melt: `${upTo("zinc", contents.zn?.high ?? 0, format)}: it boils at ${temp(907)}, below every pour. ${zincSays(contents.zn?.high ?? 0)} Open air or a hood, a respirator for metal fume, no hotter than it must be.`,
        pour: "Zinc smokes white and gives metal fever hours later: stand upwind, hood or open air, respirator for metal fume.",
      };
    case "magnesium":
      return {
        melt: `${upTo("magnesium", contents.mg?.high ?? 0, format)}: it burns white. Keep it covered, dry sand at hand, never water.`,
        pour: "Magnesium burns white as it pours: dry sand at hand, never water.",
        grinding:
          "Magnesium dust burns and explodes: no sparks, no mixing with other dust, never water on a fire.",
      };
    case "phosphorus":
      return {
        melt: "Phosphor copper gives an acid white smoke: plunge it warm and dry, at arm's length, and stand back.",
      };
    case "nickel":
      return {
        melt: "Nickel fume can cause cancer: hood, or respirator for metal fume.",
        grinding: "Nickel dust can cause cancer and skin allergy: extraction and a P100 mask, gloves.",
      };
    case "antimony":
      return {
        melt: "Antimony fume is poisonous: hood or open air, no hotter than it must be.",
        grinding: "Antimony in it: dust kept off hands and food.",
      };
    case "manganese":
      return {
        melt: `${upTo("manganese", contents.mn?.high ?? 0, format)}: its fume harms the nerves over years. Hood, or respirator for metal fume.`,
        grinding: "Manganese in it: extraction and a P100 mask.",
      };
    case "copper-fume":
      return { melt: "Copper fume: melt under a hood or in the open, stand out of the smoke." };
    case "rust-and-damp":
      return {
        melt: `Aluminium on rust or damp bursts: iron tools are free of rust, coated, dry and at ${temp(dryToolC.value)} or more. Never in a crucible that held bronze.`,
        pour: "Aluminium on rust or damp bursts: no rusty mould, ladle or floor plate.",
        grinding:
          "Aluminium dust burns and explodes: keep it apart from rust and iron dust, no sparks near it.",
      };
    case "glare":
      return {
        melt: "Iron is white hot: wear a shaded visor and expect more heat than from bronze. Slag and damp make it boil over.",
        pour: "Iron is white hot and throws sparks: shaded visor, leather, everyone else far back.",
      };
    case "no-glow":
      return {
        pour: "It doesn't glow when it is hot or liquid: treat every drop and casting as hot.",
        "knock-out": "It doesn't glow when it is hot: hold a hand near before you touch it.",
      };
    case "oxide-film":
      return { pour: "A tough skin forms as it flows: fill quietly, and never stir the skin in." };
    case "hydrogen":
      return {
        melt: "It takes up hydrogen from damp and from a long melt: dry tools, no hotter and no longer than it must be.",
      };
    case "oxygen-pick-up":
      return {
        melt: "It takes up oxygen while it is liquid: keep it covered, and deoxidise before the pour.",
      };
  }
}

const upTo = (what: string, share: number, format: Format): string =>
  `Up to ${format.show("share", share)} ${what}`;

function zincSays(share: number): string {
  if (share >= zincFlags.hold.value) return "It flares, with white smoke and metal fever hours later.";
  return share >= zincFlags.watch.value
    ? "White smoke, and metal fever hours later."
    : "A little white smoke, and metal fever for some.";
}

/** What an alloy's own page says of its contents beside its hazards: whether it is leaded, and what isn't made of it. */
export function contentNotes(contents: Contents, format: Format): readonly string[] {
  const lead = contents.pb?.high ?? 0;
  if (lead >= leadedFrom.value) return [`${upTo("lead", lead, format)}: a leaded metal.`];
  return lead > leadFlag.value && lead <= hazardAbove.lead.value
    ? [`${upTo("lead", lead, format)}: no tableware from it.`]
    : [];
}

/** The cautions of a melt, whatever the metal. Common practice, no source. */
export const meltCautions = (format: Format): readonly string[] => [
  `Water under or in a melt throws it out of the crucible. Ingot, scrap, skimmer, plunger and ingot mould are dry and at least ${format.show("temp", dryToolC.value)} before they touch it.`,
  "Nothing hollow and closed goes in: it bursts. Cut tube open, warm it on the lid first.",
  "Face shield over glasses, leather, wool, closed boots without laces. A second person, a clear path, dry sand under all of it, never bare concrete.",
  "Ventilate: a burner and a hot crucible make carbon monoxide, and it has no smell.",
];
