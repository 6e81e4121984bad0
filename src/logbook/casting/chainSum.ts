import { coolingOf, type CoolingSolid } from "../../physics/heat/coolingSolid.ts";
import {
  feedChain,
  type ChainLink,
  type FeedChain,
  type FreezingLaw,
} from "../../physics/metal/feedChain.ts";
import {
  riserModulusCheck,
  riserVolumeCheck,
  type ModulusCheck,
  type VolumeCheck,
} from "../../physics/metal/feeding.ts";
import { chvorinovConstant, modulusMm } from "../../physics/metal/freezing.ts";
import { hotShellFreezeS } from "../../physics/metal/hotShell.ts";
import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import { metalToShellWM2K, mouldHeat } from "../../trade/mouldHeat.ts";
import { riserGives } from "../../trade/riserFigures.ts";
import { gatingLimits, linkLimits, type GatingDraft, type LinkDraft } from "./gatingDraft.ts";
import { kept } from "./limits.ts";

/** The solid a link stands for; null while a size is missing or they don't fit together. */
export function solidOf(draft: LinkDraft): CoolingSolid | null {
  const bare = bareOf(kept(draft, linkLimits));
  if (bare === null) return null;
  const coveredMm2 = (kept(draft, linkLimits).coveredCm2 ?? 0) * 100;
  const { isEndless, areaMm2 } = coolingOf(bare);
  return coveredMm2 > 0 && !isEndless && coveredMm2 < 0.99 * areaMm2 ? { ...bare, coveredMm2 } : bare;
}

function bareOf(link: LinkDraft): CoolingSolid | null {
  const { thicknessMm, widthMm, diameterMm, volumeCm3, areaCm2 } = link;
  const lengthMm = link.lengthMm ?? undefined;
  switch (link.shape) {
    case "plate":
      return thicknessMm === null
        ? null
        : { kind: "plate", thicknessMm, widthMm: widthMm ?? undefined, lengthMm };
    case "bar":
      return thicknessMm === null || widthMm === null
        ? null
        : { kind: "bar", widthMm, thicknessMm, lengthMm };
    case "round":
      return diameterMm === null ? null : { kind: "cylinder", diameterMm, heightMm: lengthMm };
    case "tube":
      return diameterMm === null || thicknessMm === null || thicknessMm > diameterMm / 2
        ? null
        : { kind: "tube", outerMm: diameterMm, wallMm: thicknessMm, lengthMm, coreCools: false };
    case "ball":
      return diameterMm === null ? null : { kind: "sphere", diameterMm };
    case "cup":
      return diameterMm === null || lengthMm === undefined
        ? null
        : { kind: "riser", diameterMm, heightMm: lengthMm, topCools: true, baseCools: false };
    case "measured":
      return volumeCm3 === null || areaCm2 === null
        ? null
        : { kind: "measured", volumeMm3: volumeCm3 * 1000, areaMm2: areaCm2 * 100 };
  }
}

export type ChainSum = {
  readonly chain: FeedChain;
  readonly law: FreezingLaw;
  readonly lawKind: "through" | "chill" | "thick";
  /** Solids of the links that are known, in their order. */
  readonly links: readonly ChainLink[];
  /** Names of links left out for want of a size. */
  readonly missing: readonly string[];
  readonly checks: RiserChecks | null;
};

export type RiserChecks = {
  readonly riser: string;
  readonly modulus: ModulusCheck;
  readonly volume: VolumeCheck | null;
  readonly castingVolumeMm3: number;
  readonly riserVolumeMm3: number;
};

/** The way of the feed metal, link by link, and the three checks of what feeds it; null while no link has its sizes. */
export function chainSum({
  draft,
  alloy,
  figures,
  metalC,
  shellC,
}: {
  readonly draft: GatingDraft;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly metalC: number;
  readonly shellC: number;
}): ChainSum | null {
  const named = draft.links.map((link, at) => ({
    name: link.name.trim() === "" ? `Part ${at + 1}` : link.name.trim(),
    role: link.role,
    solid: solidOf(link),
    volumeCm3: kept(link, linkLimits).volumeCm3,
  }));
  const links = named.flatMap(({ name, role, solid }) => (solid === null ? [] : [{ name, role, solid }]));
  const missing = named.flatMap(({ name, solid }) => (solid === null ? [name] : []));
  const [first] = links;
  if (first === undefined || metalC < alloy.liquidusC.value) return null;
  const { law, lawKind } = lawOf({ draft, alloy, figures, metalC, shellC, firstMm: modulusMm(first.solid) });
  return {
    chain: feedChain({ links, law }),
    law,
    lawKind,
    links,
    missing,
    checks: checksOf({
      draft,
      links,
      sections: named.flatMap(({ role, solid, volumeCm3 }) =>
        role === "casting" && solid !== null ? [{ solid, volumeCm3 }] : [],
      ),
      figures,
    }),
  };
}

/** How freezing grows with modulus: in a hot shell about in step with it, in a thick mould with its square. */
function lawOf({
  draft,
  alloy,
  figures,
  metalC,
  shellC,
  firstMm,
}: {
  readonly draft: GatingDraft;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly metalC: number;
  readonly shellC: number;
  readonly firstMm: number;
}): { readonly law: FreezingLaw; readonly lawKind: ChainSum["lawKind"] } {
  const [solidusC, liquidusC] = [alloy.solidusC.value, alloy.liquidusC.value];
  const metal = {
    metalKgM3: alloy.liquidKgM3.value,
    latentJKg: figures.latentJKg.value,
    liquidJKgK: figures.liquidHeatJKgK.value,
    superheatK: metalC - liquidusC,
  };
  if (draft.bed === "thick-mould") {
    const constantSMm2 = chvorinovConstant({
      ...metal,
      freezeC: (solidusC + liquidusC) / 2,
      mouldC: 25,
      mould: mouldHeat["silica-sand"].value,
    });
    return { law: { constantSMm2, exponent: 2 }, lawKind: "thick" };
  }
  const { likelyS, regime } = hotShellFreezeS({
    ...metal,
    metalWallMm: Math.min(500, 2 * firstMm),
    solidusC,
    liquidusC,
    shell: mouldHeat.shell.value,
    shellMm: kept(draft, gatingLimits).shellMm ?? 8,
    shellC: Math.min(shellC, solidusC - 2),
    interfaceWM2K: metalToShellWM2K.value.likely,
    around:
      draft.bed === "air"
        ? { kind: "air", filmWM2K: 10, emissivity: 0.9 }
        : { kind: "sand", sand: mouldHeat["loose-dry-sand"].value },
    aroundC: 20,
  });
  const exponent = regime === "through" ? 1 : 2;
  return { law: { constantSMm2: likelyS / firstMm ** exponent, exponent }, lawKind: regime };
}

/** The last riser of the chain, else its cup, else its last link that isn't casting, feeds the casting sections. */
function checksOf({
  draft,
  links,
  sections,
  figures,
}: {
  readonly draft: GatingDraft;
  readonly links: readonly ChainLink[];
  /** Of the casting; one without a length may still have its volume known. */
  readonly sections: readonly { readonly solid: CoolingSolid; readonly volumeCm3: number | null }[];
  readonly figures: MeltFigures;
}): RiserChecks | null {
  const riser =
    links.findLast(({ role }) => role === "riser") ??
    links.findLast(({ role }) => role === "cup") ??
    links.findLast(({ role }) => role !== "casting");
  if (sections.length === 0 || riser === undefined) return null;
  const cooled = sections.map(({ solid, volumeCm3 }) => ({ ...coolingOf(solid), volumeCm3 }));
  const whole = cooled.every(({ isEndless, volumeCm3 }) => !isEndless || volumeCm3 !== null);
  const castingVolumeMm3 = cooled.reduce(
    (sum, { isEndless, volumeMm3, volumeCm3 }) =>
      sum + (isEndless && volumeCm3 !== null ? 1000 * volumeCm3 : volumeMm3),
    0,
  );
  const feeds = coolingOf(riser.solid);
  return {
    riser: riser.name,
    modulus: riserModulusCheck({
      castingModulusMm: Math.max(...cooled.map(({ volumeMm3, areaMm2 }) => volumeMm3 / areaMm2)),
      riserModulusMm: feeds.volumeMm3 / feeds.areaMm2,
    }),
    volume:
      whole && !feeds.isEndless
        ? riserVolumeCheck({
            castingVolumeMm3,
            riserVolumeMm3: feeds.volumeMm3,
            shrinkShare: figures.freezeHigh.value,
            giveShare: riserGives[draft.riserGive].value,
          })
        : null,
    castingVolumeMm3,
    riserVolumeMm3: feeds.volumeMm3,
  };
}
