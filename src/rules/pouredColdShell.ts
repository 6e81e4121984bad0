import { ownAlloy } from "../logbook/shop/ownAlloy.ts";
import { startingTold } from "../logbook/pour/pourTold.ts";
import { coldShell, shellHeatOf, type ShellHeat } from "../logbook/fire/shellHeat.ts";
import { airAround, coolingWall, mayBeOut } from "../logbook/fire/shellOut.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"poured-cold-shell">;

const coolingSource = "derived: the wall's own cooling in still air, by the slowest of its figures";

/** Metal into a shell that had cooled: out of the kiln too long, or too cold for this metal. Before the pour, the preheat is looked at. */
export function pouredColdShell(standing: Standing): readonly Found[] {
  const { piece } = standing;
  const heat = heatOf(standing);
  const pour = piece.pours.at(-1);
  if (pour === undefined) return ofPreheat(piece, heat);
  const { shellC, outOfKilnMin, id, pourId } = pour;
  const cold = heat === null || shellC === null ? "ok" : coldShell(heat, shellC);
  // A pour logged shell by shell has the face at the metal in it, worked out with its bed; the minutes say no more.
  const isFace = pourId !== undefined && shellC !== null;
  const startC = shellC ?? piece.preheats.at(-1)?.shellC ?? null;
  const long = isFace || outOfKilnMin === null ? null : outTooLong(standing, { startC, outOfKilnMin });
  const isUnknown = heat === null || (shellC === null && outOfKilnMin === null);
  const found = (of: Pick<Found, "variant" | "level" | "figures" | "source">): Found => ({
    rule: "poured-cold-shell",
    texts: {},
    entries: [id],
    ...of,
  });
  return [
    ...(heat !== null && cold !== "ok"
      ? [
          found({
            variant: cold === "cold" ? "too-cold" : "cold-if-thin",
            level: cold === "cold" ? "watch" : "note",
            figures: coldFigures(heat, shellC),
            source: heat.source,
          }),
        ]
      : []),
    ...(long === null ? [] : [found(long)]),
    ...(isUnknown
      ? [
          found({
            variant: "not-known",
            level: "note",
            figures: { shellC: figure(shellC, "C"), outMin: figure(outOfKilnMin, "min") },
            source: heat?.source ?? coolingSource,
          }),
        ]
      : []),
  ];
}

/** What is usual for the planned metal and the mesh's thinnest section; null where either metal or practice isn't known. */
function heatOf({ piece, shop }: Standing): ShellHeat | null {
  const alloy = ownAlloy(piece.plan.alloyId ?? "", shop);
  return alloy === null ? null : shellHeatOf(alloy, thinnestOf(piece));
}

function thinnestOf({ patterns }: Standing["piece"]): number | null {
  const thinnestMm = patterns.at(-1)?.thinnestMm ?? null;
  return thinnestMm !== null && thinnestMm > 0 ? thinnestMm : null;
}

const coldFigures = ({ lowC, sectionMm }: ShellHeat, shellC: number | null): Found["figures"] => ({
  shellC: figure(shellC, "C"),
  leastC: figure(lowC, "C"),
  sectionMm: figure(sectionMm, "mm"),
});

/** Minutes against the wall's own cooling. Past the sure minute it may have been too cold, past the likely one it was. */
function outTooLong(
  { piece, shop, wall, room }: Standing,
  { startC, outOfKilnMin }: { readonly startC: number | null; readonly outOfKilnMin: number },
): Pick<Found, "variant" | "level" | "figures" | "source"> | null {
  const alloy = ownAlloy(piece.plan.alloyId ?? "", shop);
  const thinnestMm = thinnestOf(piece);
  const heat = alloy === null ? null : shellHeatOf(alloy, thinnestMm);
  if (alloy === null || heat === null) return null;
  const { wallMm, isKnown } = coolingWall(wall);
  const leftC = startC ?? heat.startC;
  const out = mayBeOut({
    alloy,
    thinnestMm,
    wallMm,
    startC: leftC,
    bed: "air",
    airC: airAround({ room }),
    family: startingTold.family,
  });
  const { surelyMin, likelyMin } = out?.latest ?? { surelyMin: null, likelyMin: null };
  if (surelyMin === null || outOfKilnMin <= surelyMin) return null;
  const isKnownWell = heat.isSectionKnown && isKnown && startC !== null;
  const isPast = likelyMin !== null && outOfKilnMin > likelyMin;
  return {
    variant: isKnownWell ? "too-long" : "too-long-if",
    level: isPast && (isKnownWell || leftC < heat.surelyColdC) ? "watch" : "note",
    figures: {
      outMin: figure(outOfKilnMin, "min"),
      limitMin: figure(surelyMin, "min"),
      leftC: figure(leftC, "C"),
      leastC: figure(heat.lowC, "C"),
      wallMm: figure(wallMm, "mm"),
      sectionMm: figure(heat.sectionMm, "mm"),
    },
    source: coolingSource,
  };
}

function ofPreheat(piece: Standing["piece"], heat: ShellHeat | null): readonly Found[] {
  const preheat = piece.preheats.at(-1);
  if (piece.phase !== "preheated" || preheat === undefined || heat === null) return [];
  const cold = coldShell(heat, preheat.shellC);
  if (cold === "ok") return [];
  return [
    {
      rule: "poured-cold-shell",
      variant: cold === "cold" ? "preheat-cold" : "preheat-cold-if-thin",
      level: cold === "cold" ? "watch" : "note",
      figures: coldFigures(heat, preheat.shellC),
      texts: {},
      entries: [preheat.id],
      source: heat.source,
    },
  ];
}
