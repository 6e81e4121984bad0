import { useLocation, useSearch } from "wouter";
import { useFigures, usePours, useRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Page } from "../../base/parts/Page.tsx";
import { RunPlan } from "./RunPlan.tsx";
import type { PlanDraft } from "../../../logbook/fire/planDraft.ts";

/** A run is planned: what for, what goes in, and the curve made for it. */
export function RunPlanPage() {
  const items = useRack();
  const shop = useFigures();
  const pours = usePours("open");
  const search = useSearch();
  const [, goTo] = useLocation();
  const asked = new URLSearchParams(search);
  const pieceIds = asked.getAll("piece");
  const [pieceId] = pieceIds;
  const purpose = purposeOf(asked.get("purpose"));
  return (
    <Page
      title="Plan a kiln run"
      back={pieceId === undefined || pieceIds.length > 1 ? paths.fire : paths.piece(pieceId)}
    >
      {items !== undefined && shop !== undefined && pours !== undefined && (
        <RunPlan
          key={search}
          items={items}
          shop={shop}
          pours={pours}
          asked={{ purpose, pieceIds, about: search }}
          onSaved={(id) => goTo(paths.run(id), { replace: true })}
        />
      )}
    </Page>
  );
}

const purposeOf = (text: string | null): PlanDraft["purpose"] =>
  text === "firing" || text === "preheat" ? text : "burnout";
