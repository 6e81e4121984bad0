import { chargeParts, type ChargeParts } from "../../physics/metal/melt.ts";
import { metalPatternRatio } from "../../physics/metal/castingMass.ts";
import type { LearnedLoss } from "../../physics/heat/furnace.ts";
import type { VolumeRoute } from "../../physics/metal/patternVolume.ts";
import type { PatternMeasured } from "../entries/pieceBodies.ts";
import { alloyOf } from "../../trade/metals/alloys.ts";
import { marginOf } from "../../trade/volumeRoutes.ts";
import { unknownLoss } from "../../trade/metals/losses.ts";
import { within } from "../entries/ranges.ts";
import { kept } from "./limits.ts";
import { massLimits, type MassDraft } from "./massDraft.ts";

export type LossKnown = {
  readonly lossShare: number;
  readonly basis: "typed" | "learned" | "starting";
  readonly source: string;
};

/**
 * Melt loss: what was typed; else, of clean ingot, what the shop's own melts have shown; else the middle of what is usual
 * for such a charge. Returns and turnings keep their own, and lose no less than the shop's clean ingot. Null where
 * nothing is known.
 */
export function lossFor({
  draft,
  alloyId,
  learned,
}: {
  readonly draft: Pick<MassDraft, "lossShare" | "chargeKind">;
  readonly alloyId: string;
  readonly learned: LearnedLoss;
}): LossKnown | null {
  const { chargeKind } = draft;
  const lossShare = within(lossLimits, draft.lossShare) ? draft.lossShare : null;
  if (lossShare !== null) return { lossShare, basis: "typed", source: "typed here" };
  const own: LossKnown | null =
    learned.kind === "learned" && within(lossLimits, learned.lossShare)
      ? {
          lossShare: learned.lossShare,
          basis: "learned",
          source: `the shop's own, 1 − out ÷ in over its last ${learned.melts === 1 ? "melt" : `${learned.melts} melts`}`,
        }
      : null;
  if (own !== null && chargeKind === "clean-ingot") return own;
  const usual = alloyOf(alloyId)?.loss?.[chargeKind] ?? null;
  if (usual === null) return own;
  const { low, high } = usual.value;
  const middle = (low + high) / 2;
  if (own !== null && own.lossShare > middle) return own;
  return { lossShare: middle, basis: "starting", source: usual.source };
}

/** The loss a charge is worked out with: as it is known, else a starting value. */
export const lossTaken = (loss: LossKnown | null): number => loss?.lossShare ?? unknownLoss.value;

const lossLimits = { low: 0, high: 0.6 } as const;

export type MarginBy = keyof typeof marginOf;

/** How well the metal is known decides the margin, unless the maker says otherwise; without a volume, as the plan has it. */
export function marginFor(
  draft: Pick<MassDraft, "marginBy">,
  route: VolumeRoute | null,
  plan: MarginBy = "guessed",
): MarginBy {
  if (draft.marginBy !== null) return draft.marginBy;
  if (route === null) return plan;
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

/** One casting's metal, with or without its gating, and how well it is known. */
export type CastingMetal = {
  readonly castingKg: number;
  readonly gatingKg: number;
  readonly by: MarginBy;
};

/** The charge for all that is to be poured from it, and where it goes; null while no casting's metal is known. */
export function chargeOf({
  castings,
  heelKg,
  lossShare,
}: {
  readonly castings: readonly CastingMetal[];
  readonly heelKg: number;
  readonly lossShare: number;
}): ChargeParts | null {
  const castingKg = castings.reduce((sum, one) => sum + one.castingKg, 0);
  const gatingKg = castings.reduce((sum, one) => sum + one.gatingKg, 0);
  if (!(castingKg > 0) || castingKg > 50_000 || gatingKg > 50_000) return null;
  const marginKg = castings.reduce(
    (sum, one) => sum + (one.castingKg + one.gatingKg) * marginOf[one.by].value,
    0,
  );
  return chargeParts({
    castingKg,
    gatingKg,
    marginShare: marginKg / (castingKg + gatingKg),
    heelKg,
    lossShare,
  });
}

/** The charge of one casting, as its metal page has it. */
export const chargeFor = ({
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
}): ChargeParts | null =>
  chargeOf({
    castings: [{ castingKg, gatingKg, by: margin }],
    heelKg: kept(draft, massLimits).heelKg ?? 0,
    lossShare,
  });
