import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useRef, useState } from "react";
import { markPourStep } from "../../../logbook/acts/markPourStep.ts";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { PlannedTrack, PourPlan } from "../../../physics/metal/pourDay.ts";
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
import { currentOf, trackOf } from "./trackState.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

export type TracksOf = {
  readonly pour: Pour;
  readonly plan: PourPlan;
  readonly sensed: ReadonlySet<string>;
  readonly parts: PourParts;
  readonly now: number;
};

/** One track: the step it is at, its big key, and what may be said of it. */
export function TrackCard({
  pour,
  plan,
  sensed,
  parts,
  now,
  track,
  isLead = false,
}: TracksOf & { readonly track: PlannedTrack; readonly isLead?: boolean }) {
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

  // The key that leads may come to stand for another step while a finger is on it: then it does nothing.
  const aimedAt = useRef<string | null>(null);
  const keyOf = step === undefined ? null : `${step.id} ${step.state}`;

  const asksHeat = step?.id === "shell-preheated" && parts.run === null;

  const mark = async (state: "started" | "done"): Promise<void> => {
    const isOther = aimedAt.current !== null && aimedAt.current !== keyOf;
    aimedAt.current = null;
    if (step === undefined || isOther) return;
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
  const says = step !== undefined && (
    <p className={`${sheet["soft"]} ${styles["soft"]}`}>{stepWords(step.id).says}</p>
  );
  const undo = () => last && takeBack(last.id, "marked by mistake");

  return (
    <li
      className={`${sheet["stack2"]} ${isLead ? styles["lead"] : `${sheet["panel"]} ${styles["track"]}`}`}
      data-late={isLate || undefined}
      aria-label={trackNames[name]}
    >
      <div className={`${sheet["row03"]} ${sheet["baseline"]} ${sheet["between"]} ${styles["trackHead"]}`}>
        <h3>
          {trackNames[name]}
          {isLead && <span className={styles["nextMark"]}>next</span>}
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
                begins by {clockTime(step.startAt, locale)}, {ago(step.startAt, now)}.
              </>
            )}
          </p>
          {!isLead && says}
          <div
            onPointerDownCapture={() => {
              aimedAt.current = keyOf;
            }}
          >
            <BigKey main={isLead} onPress={() => mark(step.state === "running" ? "done" : "started")}>
              {step.state === "running" ? stepWords(step.id).done : stepWords(step.id).start}
            </BigKey>
          </div>
          {isLead && says}
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
