import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { GoStanding } from "../../../rules/pourGo.ts";
import { streamOf, type Entry } from "../../../logbook/entries/entry.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { shellsInOrder } from "../../../logbook/pour/pourShells.ts";
import { pourFixes } from "../../../logbook/pour/pourFixes.ts";
import { useBareFrame } from "../../base/state/useBareFrame.ts";
import { useNow } from "../../base/state/useNow.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { RingCard } from "../../base/alarm/RingCard.tsx";
import { useAwake } from "../../base/alarm/useAwake.ts";
import { WasPutAway } from "../../base/parts/WasPutAway.tsx";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { Timeline } from "../../base/history/Timeline.tsx";
import { AfterPour } from "./AfterPour.tsx";
import { CoolingCard } from "./CoolingCard.tsx";
import { FixesCard } from "./FixesCard.tsx";
import { EndPour } from "./EndPour.tsx";
import { OrderCard } from "./OrderCard.tsx";
import { PourAct } from "./PourAct.tsx";
import { PourMoment } from "./PourMoment.tsx";
import { TrackCards } from "./TrackCards.tsx";
import { TracksChart } from "./TracksChart.tsx";
import { memoOf } from "../../../storage/memoOf.ts";
import { coursesOf, isPouring, pourDay } from "./pourDay.ts";
import { pourContents, pourWeights, type PourParts } from "./pourParts.ts";

/** This near the pour it has the screen. */
const atPourMs = 5 * minuteMs;

export function PourDayView({
  pour,
  entries,
  parts,
  go,
}: {
  readonly pour: Pour;
  readonly entries: readonly Entry[];
  readonly parts: PourParts;
  readonly go: GoStanding;
}) {
  const { clock, db } = useShop();
  const format = useFormat();
  const isOpen = pour.ended === null;
  const tick = useNow(isPouring(coursesOf(pour, parts)) ? 1_000 : 10_000);
  const now = Math.max(tick, clock());
  const day = pourDay(pour, parts, { now, memo: memoOf(db) });
  const { told, place, courses, turn, hasBegun, knockouts, dues } = day;
  const { plan, sensed: heard } = day.standing;
  const awake = useAwake(isOpen);
  // With metal on the way no target may lie beside the big key.
  useBareFrame(isOpen && day.isPouring);
  const { alloy, figures } = parts;
  const order =
    alloy === null || figures === null
      ? null
      : shellsInOrder({ ...parts, alloy, figures, ...pour.plan, carryMin: told.carryMin, place });
  const fixes = hasBegun ? [] : pourFixes({ ...pour.plan, supply: parts, place, carryMin: told.carryMin });
  const words = (pour.plan.note ?? "").trim();
  // At the pour the key, the clock and the stop rule come first; what is finished folds away beneath.
  const isReady = plan.tracks.every(({ steps }) => steps.every(({ state }) => state === "done"));
  const isAtPour = go.state === "go" || isReady || pour.plan.pourAt - now <= atPourMs;
  const act = (
    <PourAct
      pour={pour}
      go={go}
      parts={parts}
      courses={courses}
      turn={turn}
      now={now}
      place={place}
      isFirst={isAtPour}
    />
  );

  // With a go the key stands first: what the sheet let pass is said beneath.
  const fixesCard = isOpen && !hasBegun && (
    <FixesCard fixes={fixes} shellC={pour.plan.shellC} shells={parts.shells.length} />
  );

  return (
    <Page
      title={
        pour.pieceIds.length === 1
          ? `Pour: ${courses[0]?.name ?? "1 shell"}`
          : `Pour of ${pour.pieceIds.length} shells`
      }
      back={paths.fire}
      actions={<LinkButton href={paths.pourSheet(pour.id)}>Pour sheet</LinkButton>}
    >
      <div className={styles["sheet"]}>
        {parts.items.length < pour.pieceIds.length && (
          <p className={styles["warn"]}>
            {pour.pieceIds.length - parts.items.length} of {pour.pieceIds.length} shells are not on this
            device and are left out.
          </p>
        )}
        {isOpen && hasBegun && turn !== null && (
          <PourAct
            key={turn.pieceId}
            pour={pour}
            go={go}
            parts={parts}
            courses={courses}
            turn={turn}
            now={now}
            place={place}
            isFirst
          />
        )}
        {hasBegun && (
          <AfterPour
            pour={pour}
            parts={parts}
            courses={courses}
            knockouts={knockouts}
            now={now}
            isOver={turn === null}
          />
        )}
        {isOpen && hasBegun && !day.isPouring && (
          <EndPour pour={pour} hasBegun came={courses.map(({ came }) => came)} />
        )}
        {pour.ended?.dropped === true && (
          <WasPutAway
            stream={streamOf("pour", pour.id)}
            ended={pour.ended}
            because={hasBegun ? null : "no shell was poured for it"}
          />
        )}
        {pour.ended !== null && pour.ended.dropped !== true && (
          <p className={styles["warn"]}>This pour ended {dayTime(pour.ended.at, now, format.locale)}.</p>
        )}
        {isOpen && !hasBegun && (
          <>
            {go.state !== "go" && fixesCard}
            {isAtPour && act}
            <div className={`${sheet["stack"]} ${sheet["top"]} ${styles["live"]}`}>
              <PourMoment
                pour={pour}
                plan={plan}
                go={go}
                now={now}
                awakeWords={awake.words}
                isFirst={!isAtPour}
              />
              <TrackCards
                pour={pour}
                plan={plan}
                sensed={heard}
                parts={parts}
                now={now}
                isFolded={isAtPour}
              />
              <div className={styles["liveChart"]}>
                <Card title="Timeline">
                  <TracksChart plan={plan} steps={pour.steps} now={now} />
                </Card>
              </div>
            </div>
            {!isAtPour && act}
          </>
        )}
        {isOpen && (
          <RingCard
            dues={dues}
            listed={4}
            keys={{ start: "Sound alarms here", stop: "Stop alarms here", calendar: "Calendar file" }}
            awakeWords={awake.words}
            fileName={`pour-${pour.id.slice(-6)}`}
          >
            Reminders only: they do not watch fire or metal.
          </RingCard>
        )}
        <div className={styles["columns"]}>
          <div className={styles["sheet"]}>
            {isOpen && (
              <CoolingCard
                shells={parts.shells}
                alloy={alloy}
                figures={figures}
                startC={pour.plan.shellC}
                metalC={pour.plan.metalC}
                carryMin={told.carryMin}
                place={place}
              />
            )}
          </div>
          <div className={styles["sheet"]}>
            {go.state === "go" && fixesCard}
            {isOpen && !hasBegun && (
              <OrderCard parts={parts} order={order} metalC={pour.plan.metalC} carryMin={told.carryMin} />
            )}
            {isOpen && !hasBegun && (
              <Cautions
                step="pour"
                alloyId={alloy?.id}
                contents={pourContents(parts)}
                weights={pourWeights(parts)}
              />
            )}
            {isOpen && !hasBegun && <EndPour pour={pour} hasBegun={false} came={[]} />}
            {words !== "" && (
              <Card title="Note">
                <p>{words}</p>
              </Card>
            )}
            <Timeline stream={streamOf("pour", pour.id)} entries={entries} />
          </div>
        </div>
      </div>
    </Page>
  );
}
