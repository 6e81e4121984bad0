import type { MetalHazard } from "../../trade/alloys.ts";
import { contentsOf } from "../../trade/composition.ts";
import { dryToolC, leadFlag, zincFlags } from "../../trade/metalHazards.ts";
import type { Format } from "../format/units.ts";

export const hazardName: Readonly<Record<MetalHazard, string>> = {
  "zinc-fume": "zinc fume",
  lead: "lead",
  "oxide-film": "oxide film",
  hydrogen: "hydrogen",
  "copper-fume": "copper fume",
  "oxygen-pick-up": "takes up oxygen",
};

/** What a hazard does, and what to do about it. */
export function hazardSays(hazard: MetalHazard, format: Format): string {
  switch (hazard) {
    case "zinc-fume":
      return `Zinc boils at ${format.show("temp", 907)}, below every pour: white smoke and metal fever hours later. Open air or a hood, a respirator for metal fume, and no hotter than it must be.`;
    case "lead":
      return "Lead: no food ware from it, no food or drink near it, a crucible of its own, wet clean-up, hands washed and clothes left in the shop. Never ground dry.";
    case "oxide-film":
      return "A tough skin forms as it flows: fill quietly from below, and never stir the skin in.";
    case "hydrogen":
      return "It drinks hydrogen from damp and from an overlong melt: dry tools, no hotter and no longer than it must be.";
    case "copper-fume":
      return "Copper fume: melt under a hood or in the open, stand out of the smoke.";
    case "oxygen-pick-up":
      return "It takes up oxygen while it is liquid: keep it covered, and deoxidise before the pour.";
  }
}

/** Zinc or lead beyond what is passed over in silence, from what the alloy may hold; empty where there is neither. */
export function contentFlags(
  alloyId: string,
  format: Format,
): readonly { readonly level: "watch" | "hold"; readonly says: string }[] {
  const contents = contentsOf(alloyId);
  const zinc = contents?.zn?.high ?? 0;
  const lead = contents?.pb?.high ?? 0;
  return [
    ...(zinc >= zincFlags.hold.value
      ? [
          {
            level: "hold" as const,
            says: `Up to ${format.show("share", zinc)} zinc: it flares. Stay close to the lowest heat the wall allows.`,
          },
        ]
      : zinc >= zincFlags.watch.value
        ? [
            {
              level: "watch" as const,
              says: `Up to ${format.show("share", zinc)} zinc: it smokes at the pour.`,
            },
          ]
        : []),
    ...(lead > leadFlag.value
      ? [{ level: "watch" as const, says: `Up to ${format.show("share", lead)} lead: counts as leaded.` }]
      : []),
  ];
}

/** The cautions of a melt, whatever the metal. Common practice, no source. */
export const meltCautions = (format: Format): readonly string[] => [
  `Water under or in a melt throws it out of the crucible. Ingot, scrap, skimmer, plunger and ingot mould are dry and at least ${format.show("temp", dryToolC.value)} before they touch it (common practice, no source).`,
  "Nothing hollow and closed goes in: it bursts. Cut tube open, warm it on the lid first.",
  "Face shield over glasses, leather, wool, closed boots without laces; a second person, a clear path, dry sand under all of it, never bare concrete.",
  "Ventilate: a burner and a hot crucible make carbon monoxide, and it has no smell.",
];

/** Never melted: hard springy copper alloys may hold beryllium, whose fume kills slowly. */
export const berylliumCaution =
  "Springs, contact strips, non-sparking tools and hard, springy copper of unknown make may hold beryllium. Its fume scars the lungs for life: it is not melted, not even a little of it.";
