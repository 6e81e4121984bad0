import type { LinkRole } from "../../physics/metal/feedChain.ts";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import type { Limits } from "./limits.ts";

export type LinkShape = "plate" | "bar" | "round" | "tube" | "ball" | "cup" | "measured";

/** One simple solid on the way from the far end of the casting to the cup. Sizes mm, cm³, cm². */
export type LinkDraft = {
  readonly key: number;
  readonly name: string;
  readonly role: LinkRole;
  readonly shape: LinkShape;
  readonly thicknessMm: number | null;
  readonly widthMm: number | null;
  readonly lengthMm: number | null;
  readonly diameterMm: number | null;
  readonly volumeCm3: number | null;
  readonly areaCm2: number | null;
  /** Face that touches its neighbours and does not cool. */
  readonly coveredCm2: number | null;
};

export type GatingDraft = {
  readonly gate: "top" | "bottom" | "parting";
  readonly massKg: number | null;
  readonly sprueMm: number | null;
  readonly cavityMm: number | null;
  readonly aboveGateMm: number | null;
  readonly cupMm: number | null;
  readonly flow: "tapered" | "straight" | "filter";
  readonly fillS: number | null;
  readonly gateMm2: number | null;
  readonly wallMm: number | null;
  readonly runMm: number | null;
  /** Breadth of the front in the thinnest wall. */
  readonly runWidthMm: number | null;
  readonly wallHeadMm: number | null;
  readonly shellC: number | null;
  readonly metalC: number | null;
  readonly leanDeg: number | null;
  readonly leanMm: number | null;
  readonly bed: "air" | "cold-sand" | "thick-mould";
  readonly shellMm: number | null;
  readonly riserGive: "plain" | "domed" | "insulated";
  readonly links: readonly LinkDraft[];
};

const size = { low: 0.1, high: 5000 };

export const linkLimits: Limits<LinkDraft> = {
  thicknessMm: size,
  widthMm: size,
  lengthMm: size,
  diameterMm: size,
  volumeCm3: { low: 0.001, high: 1_000_000 },
  areaCm2: { low: 0.01, high: 1_000_000 },
  coveredCm2: { low: 0, high: 1_000_000 },
};

export const gatingLimits: Limits<GatingDraft> = {
  massKg: { low: 0.001, high: 440 },
  sprueMm: { low: 5, high: 3000 },
  cavityMm: { low: 1, high: 3000 },
  aboveGateMm: { low: 0, high: 3000 },
  cupMm: { low: 1, high: 500 },
  fillS: { low: 0.2, high: 600 },
  gateMm2: { low: 0.5, high: 100_000 },
  wallMm: { low: 0.3, high: 300 },
  runMm: { low: 1, high: 5000 },
  runWidthMm: { low: 1, high: 5000 },
  wallHeadMm: { low: 0, high: 5000 },
  shellC: { low: -20, high: 1300 },
  metalC: { low: 100, high: 2200 },
  leanDeg: { low: 0, high: 90 },
  leanMm: { low: 5, high: 3000 },
  shellMm: { low: 1, high: 60 },
};

export const emptyLink = (key: number, name: string, role: LinkRole, shape: LinkShape): LinkDraft => ({
  key,
  name,
  role,
  shape,
  thicknessMm: null,
  widthMm: null,
  lengthMm: null,
  diameterMm: null,
  volumeCm3: null,
  areaCm2: null,
  coveredCm2: null,
});

/**
 * What is known before anything is typed: the plan's metal and head, the shell's wall, and of the mesh the thinnest place,
 * which is the hardest to fill, and the thickest, which freezes last and has to be fed.
 */
export function gatingDraftOf({
  metalKg,
  headM,
  mesh,
  shellMm,
}: {
  readonly metalKg: number | null;
  readonly headM: number | undefined;
  readonly mesh: PatternMeasured | null;
  readonly shellMm: number;
}): GatingDraft {
  const thickestMm = (mesh?.thickestMm ?? 0) > 0 ? (mesh?.thickestMm ?? null) : null;
  return {
    gate: "bottom",
    massKg: metalKg === null ? null : Number(metalKg.toPrecision(4)),
    sprueMm: headM === undefined ? null : Math.round(headM * 1000),
    cavityMm: null,
    aboveGateMm: null,
    cupMm: null,
    flow: "tapered",
    fillS: null,
    gateMm2: null,
    wallMm: mesh?.thinnestMm ?? null,
    runMm: null,
    runWidthMm: null,
    wallHeadMm: null,
    shellC: null,
    metalC: null,
    leanDeg: null,
    leanMm: null,
    bed: "air",
    shellMm: shellMm > 1 ? Number(shellMm.toFixed(1)) : null,
    riserGive: "plain",
    links: [
      thickestMm === null
        ? emptyLink(1, "Casting wall", "casting", "plate")
        : { ...emptyLink(1, "Casting, thickest place", "casting", "plate"), thicknessMm: thickestMm },
      emptyLink(2, "Gate", "gate", "bar"),
      emptyLink(3, "Runner", "runner", "bar"),
      emptyLink(4, "Sprue", "sprue", "round"),
      emptyLink(5, "Cup", "cup", "cup"),
    ],
  };
}
