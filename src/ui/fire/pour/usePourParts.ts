import { useMemo } from "react";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { readTold } from "../../../logbook/pour/pourTold.ts";
import { useArchived, useFigures, useMelts, useRack, useRuns } from "../../base/state/live.ts";
import { pourParts, type PourParts } from "./pourParts.ts";

const none: readonly string[] = [];

/** All that a pour rests on; undefined while it or they load. */
export function usePourParts(pour: Pour | null | undefined): PourParts | undefined {
  const rack = useRack();
  const archive = useArchived(pour?.pieceIds ?? none);
  const runs = useRuns();
  const melts = useMelts();
  const shop = useFigures();
  return useMemo(() => {
    if (!pour || !rack || !archive || !runs || !melts || !shop) return undefined;
    const all = [...rack, ...archive];
    const items = pour.pieceIds.flatMap(
      (pieceId) => all.find(({ standing }) => standing.piece.id === pieceId) ?? [],
    );
    const told = readTold(pour.plan);
    // What was told is in the plan's order; a piece that is not on this device leaves its place.
    const thinnestMm = items.map(
      ({ standing }) => told.thinnestMm[pour.pieceIds.indexOf(standing.piece.id)] ?? null,
    );
    return pourParts({
      items,
      run: runs.find((run) => run.id === pour.plan.runId) ?? null,
      melt: melts.find((melt) => melt.id === pour.plan.meltId) ?? null,
      melts: melts.filter(({ ended }) => ended !== null),
      shop,
      told: { metalKg: told.metalKg, thinnestMm },
    });
  }, [pour, rack, archive, runs, melts, shop]);
}
