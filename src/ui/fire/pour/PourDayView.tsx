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
import { PourFold } from "./PourFold.tsx";
import { PourMoment } from "./PourMoment.tsx";
import { StopRuleLine } from "./StopRuleLine.tsx";
import { TrackCard } from "./TrackCard.tsx";
import { TrackCards } from "./TrackCards.tsx";
import { TracksChart } from "./TracksChart.tsx";
import { trackNames } from "./pourStepWords.ts";
import { stopRule } from "./stopWords.ts";
import { currentOf, leadOf, trackOf } from "./trackState.ts";
import { turnOut } from "./turnOut.ts";
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
  const { tracks } = plan;
  const lead = isAtPour ? undefined : leadOf(tracks, now);
  const latest = turn === null ? null : (turnOut(turn, { pour, parts, place }).allowed?.latest ?? null);
  const ofTracks = { pour, plan, sensed: heard, parts, now };
  const act = (
    <PourAct
      key={hasBegun ? turn?.pieceId : undefined}
      pour={pour}
      pourAt={plan.pourAt}
      go={go}
      parts={parts}
      courses={courses}
      turn={turn}
      now={now}
      place={place}
      isFirst={hasBegun || isAtPour}
    />
  );
  const end = isOpen && hasBegun && !day.isPouring && (
    <EndPour pour={pour} hasBegun courses={courses} knockouts={knockouts} now={now} />
  );
  const otherNames = tracks
    .filter((track) => track.id !== lead?.id && currentOf(track) !== undefined)
    .map(({ id }) => trackNames[trackOf(id)].toLowerCase());

  return (
    <Page
      title={
        pour.pieceIds.length === 1
          ? `Pour: ${courses[0]?.name ?? "1 shell"}`
          : `Pour of ${pour.pieceIds.length} shells`
      }
      back={paths.fire}
    >
      <div className={styles["sheet"]}>
        {parts.items.length < pour.pieceIds.length && (
          <p className={styles["warn"]}>
            {pour.pieceIds.length - parts.items.length} of {pour.pieceIds.length} shells are not on this
            device and are left out.
          </p>
        )}
        {isOpen && hasBegun && turn !== null && act}
        {hasBegun && (
          <AfterPour
            pour={pour}
            parts={parts}
            courses={courses}
            knockouts={knockouts}
            now={now}
            isOver={turn === null}
            end={turn === null ? end : null}
          />
        )}
        {turn !== null && end}
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
            <PourMoment
              pour={pour}
              plan={plan}
              go={go}
              now={now}
              awakeWords={awake.words}
              lead={
                lead === undefined ? null : (
                  <>
                    {latest !== null && <StopRuleLine rule={stopRule(latest, null)} isSmall />}
                    <ul className={styles["leads"]} aria-label="Next step">
                      <TrackCard {...ofTracks} track={lead} isLead />
                    </ul>
                  </>
                )
              }
            />
            {/* What the sheet let pass, or what would make the plan work: beneath the key. */}
            <FixesCard fixes={fixes} shellC={pour.plan.shellC} shells={parts.shells.length} />
            <PourFold
              title={otherNames.length === 0 ? "The tracks" : `The other tracks: ${otherNames.join(", ")}`}
            >
              <TrackCards {...ofTracks} lead={lead} />
              <Card>
                <TracksChart plan={plan} steps={pour.steps} now={now} />
              </Card>
            </PourFold>
          </>
        )}
        {/* Beneath the key: in the page's head it would push the key down. */}
        <div className={styles["keys"]}>
          <LinkButton href={paths.pourSheet(pour.id)}>Pour sheet</LinkButton>
        </div>
        {isOpen && (
          <PourFold
            title={
              hasBegun
                ? "Alarms and cooling"
                : isAtPour
                  ? "Shell heat, alarms and cautions"
                  : "Pour early, shell heat and alarms"
            }
          >
            {!hasBegun && !isAtPour && act}
            <RingCard
              dues={dues}
              listed={4}
              keys={{ start: "Sound alarms here", stop: "Stop alarms here", calendar: "Calendar file" }}
              awakeWords={awake.words}
              fileName={`pour-${pour.id.slice(-6)}`}
            >
              Reminders only: they do not watch fire or metal.
            </RingCard>
            <div className={styles["columns"]}>
              <CoolingCard
                shells={parts.shells}
                alloy={alloy}
                figures={figures}
                startC={pour.plan.shellC}
                metalC={pour.plan.metalC}
                carryMin={told.carryMin}
                place={place}
              />
              {!hasBegun && (
                <div className={styles["sheet"]}>
                  <OrderCard parts={parts} order={order} metalC={pour.plan.metalC} carryMin={told.carryMin} />
                  <Cautions
                    step="pour"
                    alloyId={alloy?.id}
                    contents={pourContents(parts)}
                    weights={pourWeights(parts)}
                  />
                  <EndPour pour={pour} hasBegun={false} courses={courses} knockouts={[]} now={now} />
                </div>
              )}
            </div>
          </PourFold>
        )}
        {words !== "" && (
          <Card title="Note">
            <p>{words}</p>
          </Card>
        )}
        <Timeline stream={streamOf("pour", pour.id)} entries={entries} />
      </div>
    </Page>
  );
}
