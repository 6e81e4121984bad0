import { useParams } from "wouter";
import { readTold } from "../../../logbook/pour/pourTold.ts";
import { goStanding, type GoStanding } from "../../../rules/pourGo.ts";
import type { PourLog } from "../../../rules/pourLog.ts";
import {
  useArchived,
  useFigures,
  useMelts,
  usePour,
  usePourLog,
  useRack,
  useRuns,
} from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { PourDayView } from "./PourDayView.tsx";
import { PourSheet } from "./PourSheet.tsx";
import { pourParts, type PourParts } from "./pourParts.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { Entry } from "../../../logbook/entries/entry.ts";

type Found = {
  readonly pour: Pour;
  readonly entries: readonly Entry[];
  readonly parts: PourParts;
  readonly log: PourLog;
};

const none: readonly string[] = [];

/** A pour with all it rests on; undefined while it loads, null when there is none of that id. */
function useFound(id: string): Found | null | undefined {
  const found = usePour(id);
  const log = usePourLog(id);
  const rack = useRack();
  const archive = useArchived(found?.pour.pieceIds ?? none);
  const runs = useRuns();
  const melts = useMelts();
  const shop = useFigures();
  if (found === null) return null;
  if (
    found === undefined ||
    log === undefined ||
    rack === undefined ||
    archive === undefined ||
    runs === undefined ||
    melts === undefined ||
    shop === undefined
  )
    return undefined;
  const { pour, entries } = found;
  const all = [...rack, ...archive];
  const items = pour.pieceIds.flatMap(
    (pieceId) => all.find(({ standing }) => standing.piece.id === pieceId) ?? [],
  );
  const told = readTold(pour.plan);
  // What was told is in the plan's order; a piece that is not on this device leaves its place.
  const thinnestMm = items.map(
    ({ standing }) => told.thinnestMm[pour.pieceIds.indexOf(standing.piece.id)] ?? null,
  );
  const parts = pourParts({
    items,
    run: runs.find((run) => run.id === pour.plan.runId) ?? null,
    melt: melts.find((melt) => melt.id === pour.plan.meltId) ?? null,
    melts: melts.filter(({ ended }) => ended !== null),
    shop,
    told: { metalKg: told.metalKg, thinnestMm },
  });
  return { pour, entries, parts, log };
}

/** Where its go stands; looked at every ten seconds and whenever something is written. */
function useGo(log: PourLog | undefined): { readonly go: GoStanding | null; readonly now: number } {
  const { clock } = useShop();
  const now = Math.max(useNow(10_000), clock());
  return { go: log === undefined ? null : goStanding(log, now), now };
}

/** A pour day: its tracks live, the pour itself, and what comes after. */
export function PourPage() {
  const { id = "" } = useParams();
  const found = useFound(id);
  const { go } = useGo(found?.log);
  if (found === null) return <NoPour />;
  if (found === undefined || go === null) return <Page title="Pour">{null}</Page>;
  return <PourDayView key={id} pour={found.pour} entries={found.entries} parts={found.parts} go={go} />;
}

/** Its sheet, to go through and to print. */
export function PourSheetPage() {
  const { id = "" } = useParams();
  const found = useFound(id);
  const { go, now } = useGo(found?.log);
  if (found === null) return <NoPour />;
  if (found === undefined || go === null) return <Page title="Pour sheet">{null}</Page>;
  return <PourSheet key={id} log={found.log} go={go} now={now} />;
}

function NoPour() {
  return (
    <Page title="No such pour" back={paths.fire}>
      <Empty title="There is no such pour">
        <p>It is not in this device’s log.</p>
      </Empty>
    </Page>
  );
}
