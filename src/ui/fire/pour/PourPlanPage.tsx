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
  const asked = new URLSearchParams(useSearch()).get("piece");
  const isLoaded =
    rack !== undefined &&
    shop !== undefined &&
    runs !== undefined &&
    melts !== undefined &&
    pours !== undefined;
  return (
    <Page title="Plan a pour" back={asked === null ? paths.fire : paths.piece(asked)}>
      {isLoaded && (
        <PourPlanForm
          key={asked}
          from={{ rack, shop, runs, melts, pours }}
          asked={asked}
          onPlanned={(id) => goTo(paths.pour(id), { replace: true })}
        />
      )}
    </Page>
  );
}
