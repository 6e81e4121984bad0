import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { RunStanding } from "../../../logbook/fire/runStanding.ts";
import { heldSteps, type HeldStep } from "../../../logbook/fire/heldSteps.ts";
import { scheduleCurve, type Segment } from "../../../physics/heat/firingSegments.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { soonTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { minutesWords } from "./segmentWords.ts";
import { SegmentRow } from "./SegmentRow.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

/** Every step of the run with its time from where it is now; what is to be done is ticked here. */
export function RunSteps({
  standing: { run, judged },
  now,
  onTick,
}: {
  readonly standing: RunStanding;
  readonly now: number;
  /** Null once the run is over. */
  readonly onTick: ((segment: number) => Promise<void>) | null;
}) {
  const { locale } = useFormat();
  const curve = scheduleCurve(run.segments, run.startC);
  const held = onTick === null ? heldSteps(run) : [];
  return (
    <Card title="Steps">
      <ol className={styles["steps"]} aria-label="Steps of the run">
        {run.segments.map((part, place) => {
          const { startMin = 0, endMin = 0, fromC = run.startC } = curve[place] ?? {};
          const tick = run.ticked.find(({ segment }) => segment === place);
          const isPast = endMin <= judged.nowMin && part.kind !== "instruction";
          const hold = held.find(({ segment }) => segment === place);
          const at = now + (startMin - judged.nowMin) * minuteMs;
          return (
            <SegmentRow
              key={place}
              part={part}
              place={place}
              fromC={fromC}
              aside={
                part.kind === "instruction" && tick === undefined && onTick !== null ? (
                  <Button
                    kind={startMin <= judged.nowMin ? "secondary" : "quiet"}
                    label={`Done: step ${place + 1}`}
                    onPress={() => onTick(place)}
                    debounceMs={500}
                  >
                    Done
                  </Button>
                ) : (
                  <span className={sheet["soft"]}>
                    {tick !== undefined
                      ? `done ${soonTime(tick.at, now, locale)}`
                      : part.kind === "instruction"
                        ? "not ticked"
                        : hold !== undefined
                          ? heldWords(hold, part)
                          : isPast
                            ? "past"
                            : startMin <= judged.nowMin
                              ? "now"
                              : soonTime(at, now, locale)}
                  </span>
                )
              }
            />
          );
        })}
      </ol>
    </Card>
  );
}

/** The step says what it asks for; with others at its heat it says what they ask for together. */
function heldWords({ heldMin, askedMin }: HeldStep, part: Segment): string {
  const held = `held ${minutesWords(Math.round(heldMin))}`;
  return part.kind === "hold" && askedMin !== part.minutes
    ? `${held}, of ${minutesWords(askedMin)} in all`
    : held;
}
