import { usualRoute, waxLeavesBy } from "./dewaxWay.ts";
import type { RunBasis, RunPurpose } from "../entries/fireBodies.ts";
import type { FactsTogether, FireFacts } from "./fireFacts.ts";
import { factsTogether } from "./fireFacts.ts";
import type { Kiln as ShopKiln } from "../shop/shopThings.ts";
import type { Segment } from "../../physics/heat/firingSegments.ts";
import type { Kiln } from "../../physics/heat/kilnPower.ts";
import type { BurnoutMaterial } from "../../trade/patternBurnout.ts";
import type { StuccoFamily } from "../../trade/shellThermal.ts";

/** What a person puts in the place of what the log says; a key that is absent leaves it to the log. */
export type PlanInputs = {
  readonly material?: BurnoutMaterial | undefined;
  readonly patternKg?: number | null | undefined;
  /** A print's skin, mm, and the share of its inside that is filled: for the estimate of its mass. */
  readonly skinMm?: number | null | undefined;
  readonly infill?: number | null | undefined;
  readonly wallMm?: number | null | undefined;
  readonly shellKg?: number | null | undefined;
  readonly damp?: RunBasis["damp"] | undefined;
  readonly firedBefore?: boolean | undefined;
  readonly seenAbove1100?: boolean | undefined;
};

export type PlanDraft = {
  readonly purpose: RunPurpose;
  readonly pieceIds: readonly string[];
  /** A kiln of the shop, or `notListed`; null takes the first of the shop. */
  readonly kilnId: string | null;
  readonly ownKiln: {
    readonly powerKW: number | null;
    readonly maxC: number | null;
    readonly volumeL: number | null;
  };
  /** Null takes the usual way for the pattern. */
  readonly route: RunBasis["route"] | null;
  /** Whether wax that melts in the kiln gets out of it. */
  readonly waxLeaves: boolean;
  readonly after: RunBasis["after"];
  readonly family: StuccoFamily;
  readonly blindMm: number | null;
  readonly startC: number;
  readonly fireC: number | null;
  /** Null takes what the shells leave the kiln with by their pour. */
  readonly preheatC: number | null;
  readonly told: PlanInputs;
  /** Null while the proposal stands as it is. */
  readonly segments: readonly Segment[] | null;
  readonly note: string;
};

export const notListed = "not-listed";

export const startingDraft = (purpose: RunPurpose, pieceIds: readonly string[]): PlanDraft => ({
  purpose,
  pieceIds,
  kilnId: null,
  ownKiln: { powerKW: 3.6, maxC: 1200, volumeL: 60 },
  route: null,
  waxLeaves: true,
  after: "inspect",
  family: "fused-silica",
  blindMm: 0,
  startC: 20,
  fireC: null,
  preheatC: null,
  told: {},
  segments: null,
  note: "",
});

type PlanGap = "pieces" | "kiln" | "material" | "materials-differ" | "pattern-mass" | "wall" | "shell-mass";

/** A kiln that was chosen, with what the sums want of it; null where figures are missing or out of this world. */
export function chosenKiln(
  { kilnId, ownKiln }: Pick<PlanDraft, "kilnId" | "ownKiln">,
  kilns: readonly ShopKiln[],
): { readonly listed: ShopKiln | null; readonly kiln: Kiln } | null {
  const listed = kilns.find(({ id }) => id === kilnId) ?? (kilnId === null ? kilns[0] : undefined);
  if (listed !== undefined) {
    const { powerKW, maxC, volumeL, maxRampKPerH } = listed;
    return { listed, kiln: { powerKW, maxC, volumeL, maxRateKPerH: maxRampKPerH } };
  }
  const { powerKW, maxC, volumeL } = ownKiln;
  const isKnown = powerKW !== null && maxC !== null && volumeL !== null;
  if (!isKnown || !(powerKW > 0 && powerKW <= 1000 && volumeL > 0 && volumeL <= 1e5)) return null;
  return maxC >= 100 && maxC <= 1800 ? { listed: null, kiln: { powerKW, maxC, volumeL } } : null;
}

export type PlanQuestion =
  | { readonly ok: true; readonly basis: RunBasis; readonly together: FactsTogether }
  | { readonly ok: false; readonly gaps: readonly PlanGap[]; readonly together: FactsTogether | null };

/** The plan's question: the log, and what a person said over it. */
export function askedOf(
  draft: PlanDraft,
  {
    facts,
    kiln,
    preheatC,
  }: { readonly facts: readonly FireFacts[]; readonly kiln: Kiln | null; readonly preheatC: number },
): PlanQuestion {
  const together = factsTogether(facts);
  const { told, purpose } = draft;
  const material = told.material ?? together?.material ?? null;
  const massKg = told.patternKg === undefined ? (together?.patternKg ?? null) : told.patternKg;
  const wallMm = told.wallMm === undefined ? (together?.wallMm ?? 0) : told.wallMm;
  const shellKg = told.shellKg === undefined ? (together?.shellKg ?? 0) : told.shellKg;
  const burns = purpose === "burnout";
  const gaps: PlanGap[] = [];
  if (together === null) gaps.push("pieces");
  if (kiln === null) gaps.push("kiln");
  if (burns && together !== null && (material === null || material === "other"))
    gaps.push(together.materials.length > 1 && told.material === undefined ? "materials-differ" : "material");
  if (burns && (massKg === null || !(massKg >= 0 && massKg <= 1000))) gaps.push("pattern-mass");
  if (wallMm === null || !(wallMm >= 1 && wallMm <= 60)) gaps.push("wall");
  if (shellKg === null || !(shellKg > 0 && shellKg <= 5000)) gaps.push("shell-mass");
  if (gaps.length > 0 || together === null || kiln === null || wallMm === null || shellKg === null)
    return { ok: false, gaps, together };
  const { after, family, blindMm, fireC } = draft;
  const { route, isFilm, waxLeaves } = wayOf(draft, together);
  const pours = purpose === "preheat" || after === "pour";
  return {
    ok: true,
    together,
    basis: {
      route,
      ...(burns && waxLeaves !== undefined ? { waxLeaves } : {}),
      ...(burns && isFilm ? { isFilm } : {}),
      pattern: burns && material !== null && massKg !== null ? { material, massKg } : null,
      wallMm,
      family,
      shellKg,
      damp: told.damp ?? together.damp,
      firedBefore: told.firedBefore ?? together.firedBefore,
      seenAbove1100: told.seenAbove1100 ?? together.seenAbove1100,
      greenShare: together.greenShare,
      blindMm: blindMm ?? 0,
      kiln,
      after: purpose === "preheat" ? "pour" : after,
      preheatC: pours ? (draft.preheatC ?? preheatC) : null,
      fireC: purpose === "preheat" ? null : fireC,
    },
  };
}

/** How this plan takes the pattern out: as a person chose, else as is usual for it. */
export function wayOf(
  { route: chosen, waxLeaves: leaves, told }: Pick<PlanDraft, "route" | "waxLeaves" | "told">,
  together: FactsTogether | null,
): { readonly material: BurnoutMaterial | null; readonly isFilm: boolean } & Pick<
  RunBasis,
  "route" | "waxLeaves"
> {
  const material = told.material ?? together?.material ?? null;
  const isFilm = together?.isFilm === true && material === "wax";
  const route = chosen ?? usualRoute(material, { isFilm });
  return { material, isFilm, route, waxLeaves: waxLeavesBy(material, { isFilm, route, leaves }) };
}
