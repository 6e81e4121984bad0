import type { Pour } from "../fire/fireStates.ts";
import { airAround, startingLeaveC } from "../fire/shellOut.ts";
import { startingShellC } from "../fire/shellHeat.ts";
import { ranges, within } from "../entries/ranges.ts";
import type { Shop } from "../piece/piece.ts";
import type { Standing } from "../piece/standing.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { pourShell } from "./pourShells.ts";
import { readTold, startingTold } from "./pourTold.ts";

/** What the plan of its pour says of one shell; null where it says nothing that can be worked with. */
export type PlannedShell = { readonly thinnestMm: number | null; readonly shellC: number | null };

/** What planned pours say of their shells, by the piece's id; of a shell in two of them the last one is heard. */
export const plannedShells = (
  pours: readonly Pick<Pour, "pieceIds" | "plan">[],
): ReadonlyMap<string, PlannedShell> =>
  new Map(
    pours.flatMap(({ pieceIds, plan }) => {
      const { thinnestMm } = readTold(plan);
      const shellC = within(ranges.shellC, plan.shellC) ? plan.shellC : null;
      return pieceIds.map((id, place) => [id, { thinnestMm: thinnestMm[place] ?? null, shellC }] as const);
    }),
  );

/** What one shell leaves the kiln with, °C: as its pour is planned, else as a pour's plan starts. */
export function leaveOf(
  standing: Standing,
  { shop, planned }: { readonly shop: Shop; readonly planned: PlannedShell | undefined },
): number {
  const alloy = ownAlloy(standing.piece.plan.alloyId ?? "", shop);
  const shell = pourShell(standing, { toldMm: planned?.thinnestMm ?? null, metalKg: null, alloy });
  const { carryMin, family } = startingTold;
  const place = { bed: "air", airC: airAround(standing), family } as const;
  return planned?.shellC ?? startingLeaveC([shell], { alloy, carryMin, place });
}

/** What shells in one kiln leave it with, °C: the hottest asked for; with no shell yet, the start of a metal nobody named. */
export const hottestLeave = (leaves: readonly number[]): number =>
  leaves.length === 0 ? startingShellC(null, null) : Math.max(...leaves);
