import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { RunStanding } from "../../../logbook/fire/runStanding.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { ago, soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { instructionWords } from "./instructionWords.ts";
import { minutesWords, segmentTitle } from "./segmentWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

/** What to do now, or next and when, and how the run stands against its plan. */
export function RunNext({
  standing: { run, judged },
  now,
  onTick,
}: {
  readonly standing: RunStanding;
  readonly now: number;
  readonly onTick: (segment: number) => Promise<void>;
}) {
  const format = useFormat();
  const { next, waiting, aheadMin, lastReading, unreadMin, endsAt, plannedC } = judged;
  const [first, ...others] = waiting;
  const part = next === null ? undefined : run.segments[next.segment];
  const fromC = scheduleCurve(run.segments, run.startC)[next?.segment ?? 0]?.fromC ?? run.startC;
  return (
    <section className={`${sheet["stack2"]} ${styles["next"]}`} aria-label="Next at the kiln">
      {first !== undefined && (
        <>
          <h2>Now</h2>
          <p className={`${sheet["figure"]} ${styles["what"]}`}>{instructionWords[first.code].title}</p>
          <p>{instructionWords[first.code].says}</p>
          <Button kind="primary" size="big" onPress={() => onTick(first.segment)} debounceMs={500}>
            Done
          </Button>
          {others.length > 0 && (
            <p className={sheet["soft"]}>
              Also due: {others.map(({ code }) => instructionWords[code].short).join(", ")}.
            </p>
          )}
        </>
      )}
      {next === null || part === undefined ? (
        first === undefined && <p className={`${sheet["figure"]} ${styles["what"]}`}>Plan finished</p>
      ) : (
        <>
          <h2>{first === undefined ? "Next" : "After that"}</h2>
          <p className={first === undefined ? `${sheet["figure"]} ${styles["what"]}` : undefined}>
            {segmentTitle(part, fromC, format)}
          </p>
          <p>
            <span className={first === undefined ? sheet["huge"] : undefined}>{ago(next.at, now)}</span>{" "}
            <span className={sheet["soft"]}>at {soonTime(next.at, now, format.locale)}</span>
          </p>
        </>
      )}
      <p>
        <strong>{paceWords(aheadMin)}</strong>{" "}
        {lastReading === null
          ? "The plan"
          : `Last read ${format.show("temp", lastReading.kilnC)}, ${ago(now - unreadMin * minuteMs, now)}; the plan`}{" "}
        has {format.show("temp", plannedC)} now and ends about {`${soonTime(endsAt, now, format.locale)}.`}
        {unreadMin > 45 && " Read the kiln: the rest is a guess."}
      </p>
    </section>
  );
}

function paceWords(aheadMin: number | null): string {
  if (aheadMin === null) return "Not read yet.";
  const apart = minutesWords(Math.abs(aheadMin));
  if (Math.abs(aheadMin) < 5) return "On the plan.";
  return aheadMin < 0 ? `${apart} behind the plan.` : `${apart} ahead of the plan.`;
}
