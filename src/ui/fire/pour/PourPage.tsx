import { useParams } from "wouter";
import { goStanding, type GoStanding } from "../../../rules/pourGo.ts";
import type { PourLog } from "../../../rules/pourLog.ts";
import { usePour, usePourLog } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { PourDayView } from "./PourDayView.tsx";
import { PourSheet } from "./PourSheet.tsx";
import type { PourParts } from "./pourParts.ts";
import { usePourParts } from "./usePourParts.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { Entry } from "../../../logbook/entries/entry.ts";

type Found = {
  readonly pour: Pour;
  readonly entries: readonly Entry[];
  readonly parts: PourParts;
  readonly log: PourLog;
};

/** A pour with all it rests on; undefined while it loads, null when there is none of that id. */
function useFound(id: string): Found | null | undefined {
  const found = usePour(id);
  const log = usePourLog(id);
  const parts = usePourParts(found?.pour);
  if (found === null) return null;
  if (found === undefined || log === undefined || parts === undefined) return undefined;
  return { ...found, parts, log };
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
      <Empty title="This pour does not exist">
        <p>It is not in this device’s log.</p>
      </Empty>
    </Page>
  );
}
