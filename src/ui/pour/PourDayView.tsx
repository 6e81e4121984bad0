import { streamOf, type Entry } from "../../logbook/entry.ts";
import type { Pour } from "../../logbook/fireStates.ts";
import { shellCourse, turnOf } from "../../logbook/pourCourse.ts";
import { pourStanding, sensedRun } from "../../logbook/pourStanding.ts";
import { pourWords, readTold } from "../../logbook/pourTold.ts";
import { shellsInOrder } from "../../logbook/pourShells.ts";
import { useNow } from "../app/useNow.ts";
import { paths } from "../app/paths.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { useAwake } from "../dip/useAwake.ts";
import { Cautions } from "../log/Cautions.tsx";
import { dayTime } from "../format/time.ts";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { LinkButton } from "../parts/LinkButton.tsx";
import { Page } from "../parts/Page.tsx";
import { Timeline } from "../piece/Timeline.tsx";
import { AfterPour } from "./AfterPour.tsx";
import { CoolingCard } from "./CoolingCard.tsx";
import { OrderCard } from "./OrderCard.tsx";
import { PourAct } from "./PourAct.tsx";
import { PourAlarm } from "./PourAlarm.tsx";
import { PourMoment } from "./PourMoment.tsx";
import { TrackCards } from "./TrackCards.tsx";
import { TracksChart } from "./TracksChart.tsx";
import { pourDues } from "./pourDues.ts";
import { knockoutOf } from "./knockoutTimes.ts";
import { bedOf, sensedMelt, type PourParts } from "./pourParts.ts";
import { usePourAlarm } from "./usePourAlarm.ts";
import styles from "./pour.module.css";

export function PourDayView({
  pour,
  entries,
  parts,
}: {
  readonly pour: Pour;
  readonly entries: readonly Entry[];
  readonly parts: PourParts;
}) {
  const { clock, log } = useShop();
  const format = useFormat();
  const courses = parts.items.map(({ standing }) => shellCourse(standing.piece, pour.id));
  const turn = turnOf(courses);
  const isPouring = courses.some(({ stage }) => stage === "out" || stage === "pouring");
  const hasBegun = courses.some(({ stage }) => stage !== "waiting");
  const isOpen = pour.ended === null;
  const tick = useNow(isPouring ? 1_000 : 10_000);
  const now = Math.max(tick, clock());
  const told = readTold(pour.plan.note);
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
  const { alloy, figures } = parts;
  const order =
    alloy === null || figures === null
      ? null
      : shellsInOrder({ ...parts, alloy, figures, ...pour.plan, carryMin: told.carryMin, place });
  const end = () => log({ do: "log", stream: streamOf("pour", pour.id), type: "pour-ended", body: {} });
  const words = pourWords(pour.plan.note);

  return (
    <Page
      title={
        parts.items.length === 1
          ? `Pour: ${courses[0]?.name ?? ""}`
          : `Pour of ${pour.pieceIds.length} shells`
      }
      back={paths.fire}
      actions={<LinkButton href={paths.pourSheet(pour.id)}>Pour sheet</LinkButton>}
    >
      <div className={styles["sheet"]}>
        {isOpen && hasBegun && turn !== null && (
          <PourAct
            key={turn.pieceId}
            pour={pour}
            parts={parts}
            courses={courses}
            turn={turn}
            now={now}
            place={place}
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
        {isOpen && hasBegun && !isPouring && (
          <Card title={turn === null ? "All shells are full" : "If the rest stays unpoured"}>
            <p>Ending the pour closes its log; each shell's own log goes on.</p>
            <div className={styles["keys"]}>
              <Button kind={turn === null ? "primary" : "secondary"} onPress={end}>
                End the pour
              </Button>
            </div>
          </Card>
        )}
        {!isOpen && (
          <p className={styles["warn"]}>
            This pour ended {dayTime(pour.ended?.at ?? 0, now, format.locale)}.
          </p>
        )}
        {isOpen && !hasBegun && (
          <>
            <div className={styles["live"]}>
              <PourMoment pour={pour} plan={plan} now={now} awakeWords={awake.words} />
              <TrackCards pour={pour} plan={plan} sensed={heard} parts={parts} now={now} />
              <div className={styles["liveChart"]}>
                <Card title="The tracks">
                  <TracksChart plan={plan} steps={pour.steps} now={now} />
                </Card>
              </div>
            </div>
            <PourAct pour={pour} parts={parts} courses={courses} turn={turn} now={now} place={place} />
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
            {isOpen && !hasBegun && (
              <OrderCard parts={parts} order={order} metalC={pour.plan.metalC} carryMin={told.carryMin} />
            )}
            {isOpen && !hasBegun && <Cautions step="pour" alloyId={alloy?.id} />}
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
