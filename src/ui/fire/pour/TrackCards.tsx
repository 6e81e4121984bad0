import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useState } from "react";
import { markPourStep } from "../../../logbook/acts/markPourStep.ts";
import type { PourTrack } from "../../../logbook/entries/fireBodies.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { trackOrder } from "../../../logbook/pour/pourSteps.ts";
import type { PlannedStep, PlannedTrack, PourPlan } from "../../../physics/metal/pourDay.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { ago, clockTime, duration } from "../../base/format/time.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { correctedPlan } from "../../../logbook/pour/correctedPlan.ts";
import type { PourParts } from "./pourParts.ts";
import { SkipStepper } from "./SkipStepper.tsx";
import { stepWords, trackNames } from "./pourStepWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

type Props = {
  readonly pour: Pour;
  readonly plan: PourPlan;
  readonly sensed: ReadonlySet<string>;
  readonly parts: PourParts;
  readonly now: number;
  /** Folds finished tracks away beneath the others. */
  readonly isFolded: boolean;
};

/** Every track with the step it is at and one big key. Their order stands still: a key must not move under a thumb. */
export function TrackCards(props: Props) {
  const { tracks } = props.plan;
  const soonest = Math.min(...tracks.map(dueAt));
  const done = props.isFolded ? tracks.filter((track) => currentOf(track) === undefined) : [];
  const cards = (of: readonly PlannedTrack[]) =>
    of.map((track) => (
      <OneTrack
        key={track.id}
        {...props}
        track={track}
        isNext={soonest !== Infinity && dueAt(track) === soonest}
      />
    ));
  return (
    <div className={styles["stack"]}>
      <ul className={styles["tracks"]} aria-label="Tracks">
        {cards(tracks.filter((track) => !done.includes(track)))}
      </ul>
      {done.length > 0 && (
        <details>
          <summary>Ready: {done.map(({ id }) => trackNames[trackOf(id)].toLowerCase()).join(", ")}</summary>
          <ul className={styles["tracks"]} aria-label="Tracks that are ready">
            {cards(done)}
          </ul>
        </details>
      )}
    </div>
  );
}

const currentOf = ({ steps }: PlannedTrack): PlannedStep | undefined =>
  steps.find(({ state }) => state !== "done");

const trackOf = (id: string): PourTrack => trackOrder.find((one) => one === id) ?? "people";

const dueAt = (track: PlannedTrack): number => {
  const step = currentOf(track);
  if (step === undefined) return Infinity;
  return step.state === "running" ? step.endAt : step.startAt;
};

function OneTrack({
  pour,
  plan,
  sensed,
  parts,
  now,
  track,
  isNext,
}: Props & { readonly track: PlannedTrack; readonly isNext: boolean }) {
  const { log, logAll, takeBack } = useShop();
  const { locale } = useFormat();
  const name = trackOf(track.id);
  // No kiln run says how hot the shell is: then it is read when its soak is over.
  const [shellC, setShellC] = useState<number | null>(null);
  const step = currentOf(track);
  const isLate = plan.lateTrack === track.id && plan.movedMin >= 1;
  const next = step === undefined ? undefined : track.steps[track.steps.indexOf(step) + 1];
  const marks = pour.marks.filter((mark) => track.steps.some(({ id }) => id === mark.step));
  const last = marks.at(-1);

  const asksHeat = step?.id === "shell-preheated" && parts.run === null;

  const mark = async (state: "started" | "done"): Promise<void> => {
    if (step === undefined) return;
    const pieces = parts.items.map(({ standing }) => standing.piece);
    await logAll(markPourStep(pour, { step: step.id, state }, { pieces, shellC: asksHeat ? shellC : null }));
  };
  const more = (minutes: number) => {
    if (step === undefined) return undefined;
    const took = (Math.max(now, step.endAt) - step.startAt) / minuteMs + minutes;
    const steps = pour.steps.map((one) =>
      one.id === step.id ? { ...one, minutes: Math.round(took * 10) / 10 } : one,
    );
    return log(correctedPlan(pour, { steps }, `${stepWords(step.id).title}: ${minutes} min more`));
  };
  const undo = () => last && takeBack(last.id, "marked by mistake");

  return (
    <li
      className={`${sheet["stack2"]} ${sheet["panel"]} ${styles["track"]}`}
      data-late={isLate || undefined}
      data-next={isNext || undefined}
      aria-label={trackNames[name]}
    >
      <div className={`${sheet["row03"]} ${sheet["baseline"]} ${sheet["between"]} ${styles["trackHead"]}`}>
        <h3>
          {trackNames[name]}
          {isNext && step !== undefined && <span className={styles["nextMark"]}>next</span>}
        </h3>
        <span className={`${sheet["soft"]} ${styles["soft"]}`}>
          {step === undefined
            ? "ready"
            : isLate
              ? "late: the pour moves"
              : track.slackMin >= 1
                ? `${duration(track.slackMin * minuteMs)} to spare`
                : "no time to spare"}
        </span>
      </div>
      {step !== undefined && (
        <>
          <p>
            <strong>{stepWords(step.id).title}</strong>{" "}
            {step.state === "running" ? (
              <>
                under way since {clockTime(step.startAt, locale)}, through about{" "}
                {clockTime(step.endAt, locale)}.
              </>
            ) : (
              <>
                starts by {clockTime(step.startAt, locale)}, {ago(step.startAt, now)}.
              </>
            )}
          </p>
          <p className={`${sheet["soft"]} ${styles["soft"]}`}>{stepWords(step.id).says}</p>
          <BigKey onPress={() => mark(step.state === "running" ? "done" : "started")}>
            {step.state === "running" ? stepWords(step.id).done : stepWords(step.id).start}
          </BigKey>
          {asksHeat && step.state === "running" && (
            <SkipStepper
              label="Kiln, read"
              unread="Kiln not read: set it"
              quantity="temp"
              start={pour.plan.shellC}
              step={10}
              low={0}
              high={1300}
              value={shellC}
              onChange={setShellC}
            />
          )}
          {step.state === "running" && !sensed.has(step.id) && (
            <div className={styles["keys"]}>
              <Button onPress={() => more(5)}>5 min more</Button>
              <Button onPress={() => more(15)}>15 min more</Button>
            </div>
          )}
          {sensed.has(step.id) && (
            <p className={`${sheet["soft"]} ${styles["soft"]}`}>Its time comes from its own log.</p>
          )}
          {next !== undefined && (
            <p className={`${sheet["soft"]} ${styles["soft"]}`}>
              Then: {stepWords(next.id).title.toLowerCase()}, from {clockTime(next.startAt, locale)}.
            </p>
          )}
        </>
      )}
      <div className={styles["keys"]}>
        {name === "shell" && pour.plan.runId !== undefined && (
          <LinkButton kind="quiet" href={paths.run(pour.plan.runId)}>
            To the kiln run
          </LinkButton>
        )}
        {name === "metal" && pour.plan.meltId !== undefined && (
          <LinkButton kind="quiet" href={paths.melt(pour.plan.meltId)}>
            To the melt
          </LinkButton>
        )}
        {last !== undefined && (
          <Button kind="quiet" onPress={undo} label={`${trackNames[name]}: undo the last mark`}>
            Undo the last mark
          </Button>
        )}
      </div>
    </li>
  );
}
