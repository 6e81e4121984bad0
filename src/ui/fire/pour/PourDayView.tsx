import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { GoStanding } from "../../../rules/pourGo.ts";
import { streamOf, type Entry } from "../../../logbook/entries/entry.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { shellCourse, turnOf } from "../../../logbook/pour/pourCourse.ts";
import { pourStanding, sensedRun } from "../../../logbook/pour/pourStanding.ts";
import { readTold } from "../../../logbook/pour/pourTold.ts";
import { shellsInOrder } from "../../../logbook/pour/pourShells.ts";
import { shellsTooCold } from "../../../logbook/fire/shellOut.ts";
import { useBareFrame } from "../../base/state/useBareFrame.ts";
import { useNow } from "../../base/state/useNow.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useAwake } from "../../base/alarm/useAwake.ts";
import { WasPutAway } from "../../base/parts/WasPutAway.tsx";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { Timeline } from "../../base/history/Timeline.tsx";
import { AfterPour } from "./AfterPour.tsx";
import { ColdShellCard } from "./ColdShellCard.tsx";
import { CoolingCard } from "./CoolingCard.tsx";
import { EndPour } from "./EndPour.tsx";
import { OrderCard } from "./OrderCard.tsx";
import { PourAct } from "./PourAct.tsx";
import { PourAlarm } from "./PourAlarm.tsx";
import { PourMoment } from "./PourMoment.tsx";
import { TrackCards } from "./TrackCards.tsx";
import { TracksChart } from "./TracksChart.tsx";
import { pourDues } from "./pourDues.ts";
import { knockoutOf } from "./knockoutTimes.ts";
import { bedOf, pourContents, pourWeights, sensedMelt, type PourParts } from "./pourParts.ts";
import { usePourAlarm } from "./usePourAlarm.ts";
import styles from "./pour.module.css";

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
  const { clock } = useShop();
  const format = useFormat();
  const courses = parts.items.map(({ standing }) => shellCourse(standing.piece, pour.id));
  const turn = turnOf(courses);
  const isPouring = courses.some(({ stage }) => stage === "out" || stage === "pouring");
  const hasBegun = courses.some(({ stage }) => stage !== "waiting");
  const isOpen = pour.ended === null;
  const tick = useNow(isPouring ? 1_000 : 10_000);
  const now = Math.max(tick, clock());
  const told = readTold(pour.plan);
  const place = bedOf(parts, { bed: pour.plan.bed, sandC: pour.plan.sandC, family: told.family });
  const begunAt = Math.min(...courses.flatMap(({ out, begun, full }) => (out ?? begun ?? full)?.at ?? []));
  const plannedNow = hasBegun ? Math.min(now, begunAt) : now;
  const sensed = [parts.run === null ? null : sensedRun(parts.run, plannedNow), sensedMelt(parts)].filter(
    (one) => one !== null,
  );
  const { plan, sensed: heard } = pourStanding(pour, { now: plannedNow, people: told.people, sensed });
  const knockouts = courses.map((course, i) =>
    knockoutOf({ course, shell: parts.shells[i], parts, plan: pour.plan, place }),
  );
  const dues = pourDues({ pour, plan, hasBegun, knockouts, courses });
  usePourAlarm(pour.id, isOpen ? dues : [], now);
  const awake = useAwake(isOpen);
  // With metal on the way no target may lie beside the big key.
  useBareFrame(isOpen && isPouring);
  const { alloy, figures } = parts;
  const order =
    alloy === null || figures === null
      ? null
      : shellsInOrder({ ...parts, alloy, figures, ...pour.plan, carryMin: told.carryMin, place });
  const { carryMin } = told;
  const tooCold =
    alloy === null || hasBegun
      ? []
      : shellsTooCold(parts.shells, { alloy, carryMin, place, shellC: pour.plan.shellC });
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
            {pour.pieceIds.length - parts.items.length} of {pour.pieceIds.length} shells not on this device:
            they are left out here.
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
            isAllFull={turn === null}
          />
        )}
        {isOpen && hasBegun && !isPouring && <EndPour pour={pour} hasBegun isAllFull={turn === null} />}
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
            {isAtPour && act}
            <div className={styles["live"]}>
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
                <Card title="The tracks">
                  <TracksChart plan={plan} steps={pour.steps} now={now} />
                </Card>
              </div>
            </div>
            {!isAtPour && act}
          </>
        )}
        {isOpen && <PourAlarm pour={pour} dues={dues} awakeWords={awake.words} />}
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
            {isOpen && !hasBegun && <ColdShellCard tooCold={tooCold} shells={parts.shells} bed={place.bed} />}
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
            {isOpen && !hasBegun && <EndPour pour={pour} hasBegun={false} isAllFull={false} />}
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
