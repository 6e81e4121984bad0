import { useLocation, useSearch } from "wouter";
import { useFigures, useMelts, usePours, useRack, useRuns } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Page } from "../../base/parts/Page.tsx";
import { PourPlanForm } from "./PourPlanForm.tsx";

/** A pour day, planned backwards from the moment metal moves. */
export function PourPlanPage() {
  const rack = useRack();
  const shop = useFigures();
  const runs = useRuns("open");
  const melts = useMelts();
  const pours = usePours("open");
  const [, goTo] = useLocation();
  const search = useSearch();
  const { pieceIds, pourAt } = askedIn(search);
  const [pieceId] = pieceIds;
  const isLoaded =
    rack !== undefined &&
    shop !== undefined &&
    runs !== undefined &&
    melts !== undefined &&
    pours !== undefined;
  return (
    <Page
      title="Plan a pour"
      back={pieceId === undefined || pieceIds.length > 1 ? paths.fire : paths.piece(pieceId)}
    >
      {isLoaded && (
        <PourPlanForm
          key={search}
          from={{ rack, shop, runs, melts, pours }}
          asked={{ pieceIds, pourAt }}
          onPlanned={(id) => goTo(paths.pour(id), { replace: true })}
        />
      )}
    </Page>
  );
}

function askedIn(search: string): { readonly pieceIds: readonly string[]; readonly pourAt: number | null } {
  const asked = new URLSearchParams(search);
  const at = Number(asked.get("at") ?? NaN);
  return { pieceIds: asked.getAll("piece"), pourAt: Number.isSafeInteger(at) && at > 0 ? at : null };
}
