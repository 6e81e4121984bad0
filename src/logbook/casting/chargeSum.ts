import { chargeParts, type ChargeParts } from "../../physics/metal/melt.ts";
import { metalPatternRatio } from "../../physics/metal/castingMass.ts";
import type { LearnedLoss } from "../../physics/heat/furnace.ts";
import type { VolumeRoute } from "../../physics/metal/patternVolume.ts";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { marginOf } from "../../trade/volumeRoutes.ts";
import { kept } from "./limits.ts";
import { massLimits, type MassDraft } from "./massDraft.ts";

export type LossKnown = {
  readonly lossShare: number;
  readonly basis: "typed" | "learned" | "starting";
  readonly source: string;
};

/** Melt loss: what was typed, else the shop's own, else the middle of what is usual; null where nothing is known. */
export function lossFor({
  draft,
  alloyId,
  learned,
}: {
  readonly draft: MassDraft;
  readonly alloyId: string;
  readonly learned: LearnedLoss;
}): LossKnown | null {
  const { lossShare, chargeKind } = kept(draft, massLimits);
  if (lossShare !== null) return { lossShare, basis: "typed", source: "typed here" };
  if (learned.kind === "learned" && learned.lossShare <= 0.6)
    return {
      lossShare: learned.lossShare,
      basis: "learned",
      source: `the shop's own, 1 − out ÷ in over its last ${learned.melts === 1 ? "melt" : `${learned.melts} melts`}`,
    };
  const usual = alloyOf(alloyId)?.loss?.[chargeKind] ?? null;
  if (usual === null) return null;
  const { low, high } = usual.value;
  return { lossShare: (low + high) / 2, basis: "starting", source: usual.source };
}

export type MarginBy = keyof typeof marginOf;

/** How well the volume is known decides the margin, unless the maker says otherwise. */
export function marginFor(draft: MassDraft, route: VolumeRoute | null): MarginBy {
  if (draft.marginBy !== null) return draft.marginBy;
  if (route === null) return "guessed";
  return route === "pattern-weight" ? "weighed" : "measured";
}

/** Sprue, cup, runners, vents: typed, weighed as wax, or what the mesh has; nothing where the casting's figure holds it already. */
export function gatingKgOf({
  draft,
  mesh,
  metalKgM3,
  waxKgM3,
}: {
  readonly draft: MassDraft;
  readonly mesh: PatternMeasured | null;
  readonly metalKgM3: number;
  readonly waxKgM3: number;
}): number {
  const { withGating, gatingBy, gatingKg, gatingWaxG } = kept(draft, massLimits);
  if (withGating === "yes") return 0;
  switch (gatingBy) {
    case "mass":
      return gatingKg ?? 0;
    case "wax":
      return ((gatingWaxG ?? 0) / 1000) * metalPatternRatio({ metalKgM3, patternKgM3: waxKgM3 });
    case "mesh":
      return ((mesh?.gatingMm3 ?? 0) * metalKgM3) / 1e9;
  }
}

/** The charge and where it goes; null while the casting's metal isn't known. */
export function chargeFor({
  draft,
  castingKg,
  gatingKg,
  margin,
  lossShare,
}: {
  readonly draft: MassDraft;
  readonly castingKg: number;
  readonly gatingKg: number;
  readonly margin: MarginBy;
  readonly lossShare: number;
}): ChargeParts | null {
  if (!(castingKg > 0) || castingKg > 50_000 || gatingKg > 50_000) return null;
  const heelKg = kept(draft, massLimits).heelKg ?? 0;
  return chargeParts({ castingKg, gatingKg, marginShare: marginOf[margin].value, heelKg, lossShare });
}
