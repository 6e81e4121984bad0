import { Link } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import { useRack, useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { KnockoutWaits } from "../../fire/pour/KnockoutWaits.tsx";
import { DueRow } from "./DueRow.tsx";
import { allDues, useAlarmSources } from "../../base/alarm/alarmSources.ts";
import { useCalendarSent } from "../../base/alarm/calendarSent.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { useCalendarExport } from "../../base/alarm/useCalendarExport.ts";
import { coatRing } from "./coatRings.ts";
import { FireRow } from "./FireRow.tsx";
import { type DueTime, dueList } from "../../base/alarm/dueTimes.ts";
import { ringLabel } from "../../base/alarm/ringLabel.ts";
import { RingWays } from "./RingWays.tsx";
import { useNotifyPermission } from "../../base/alarm/useNotifyPermission.ts";
import { useScreenAlarm } from "../../base/alarm/useScreenAlarm.ts";
import { duesOf } from "./duesOf.ts";

export function DuePage() {
  const items = useRack();
  return (
    <Page title="Due" back={paths.rack}>
      {items !== undefined && items.length > 0 && (
        <p>
          <Link href={paths.timeline} className={sheet["link"]}>
            Next 48 hours: when to dip what
          </Link>
          {". "}
          <Link href={paths.nextPour} className={sheet["link"]}>
            Next pour day: what to do first
          </Link>
        </p>
      )}
      {items !== undefined && <KnockoutWaits items={items} />}
      {items !== undefined && <DueLists dues={duesOf(items)} />}
    </Page>
  );
}

function DueLists({ dues }: { readonly dues: readonly DueTime[] }) {
  const { clock } = useShop();
  const now = useNow(15_000);
  const [settings, changeSettings] = useSettings();
  const told = useCalendarSent();
  const alarm = useScreenAlarm();
  const [permission, askPermission] = useNotifyPermission();
  const giveToCalendar = useCalendarExport();
  const sources = useAlarmSources((list) => list.sources);
  // Before the first look nothing has come due unseen.
  const shownMs = settings.lastSeenDueAt === 0 ? now : settings.lastSeenDueAt;
  const { cameDue, ready, coming } = dueList(dues, { shownMs, nowMs: now });
  const atFire = allDues(sources).filter((due) => due.dueMs > now && dues.every(({ id }) => id !== due.id));
  const labelOf = (due: Pick<RingDue, "id" | "dueMs">): string =>
    ringLabel(due.dueMs, {
      screenOn: alarm.holds && (settings.tone || settings.speech),
      permission,
      inCalendarMs: told[due.id] ?? null,
      tested: settings.ringTested,
    });
  const seen = () => changeSettings({ lastSeenDueAt: clock() });

  return (
    <>
      {cameDue.length > 0 && (
        <Card title="Came due since you last looked" tone="ember">
          <ul className={`${sheet["list"]} ${sheet["cell"]}`}>
            {cameDue.map((due) => (
              <DueRow key={due.id} due={due} label={null} />
            ))}
          </ul>
          <div>
            <Button onPress={seen}>Seen</Button>
          </div>
        </Card>
      )}
      {ready.length > 0 && (
        <Card title="Now dry">
          <ul className={`${sheet["list"]} ${sheet["cell"]}`}>
            {ready.map((due) => (
              <DueRow key={due.id} due={due} label={null} />
            ))}
          </ul>
        </Card>
      )}
      {coming.length > 0 && (
        <Card title="Coming">
          <ul className={`${sheet["list"]} ${sheet["cell"]}`}>
            {coming.map((due) => (
              <DueRow
                key={due.id}
                due={due}
                label={labelOf(due)}
                onCalendar={() =>
                  giveToCalendar(
                    [coatRing(due)],
                    `${fileName(due.name)}-${due.allows === "review" ? "final-dry" : `coat-${due.coat}`}`,
                  )
                }
              />
            ))}
          </ul>
          <div>
            <Button
              kind="primary"
              onPress={() => giveToCalendar([...coming.map(coatRing), ...atFire], "dipbook-rack")}
            >
              {atFire.length === 0 ? "Calendar file for the whole rack" : "Calendar file for rack and fire"}
            </Button>
          </div>
        </Card>
      )}
      {atFire.length > 0 && (
        <Card title="Coming up at the fire">
          <ul className={`${sheet["list"]} ${sheet["cell"]}`}>
            {atFire.map((due) => (
              <FireRow
                key={due.id}
                due={due}
                label={labelOf(due)}
                onCalendar={() => giveToCalendar([due], fileName(due.words))}
              />
            ))}
          </ul>
          {coming.length === 0 && (
            <div>
              <Button kind="primary" onPress={() => giveToCalendar(atFire, "dipbook-fire")}>
                Calendar file for the fire
              </Button>
            </div>
          )}
        </Card>
      )}
      {dues.length === 0 && (
        <Empty title="Nothing is drying">
          <p>
            A drying time shows once a coat and the room’s air are logged.{" "}
            <Link href={paths.rooms} className={sheet["link"]}>
              Log the air
            </Link>
          </p>
        </Empty>
      )}
      <RingWays alarm={alarm} permission={permission} onAsk={askPermission} settings={settings} />
    </>
  );
}

const fileName = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, "-")
    .replaceAll(/^-|-$/g, "")
    .slice(0, 40) || "piece";
