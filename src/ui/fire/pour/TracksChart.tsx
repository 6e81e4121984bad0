import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useState } from "react";
import type { PourStep } from "../../../logbook/entries/fireBodies.ts";
import { trackOrder } from "../../../logbook/pour/pourSteps.ts";
import type { PlannedTrack, PourPlan } from "../../../physics/metal/pourDay.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { plotFrame } from "../../base/charts/plotFrame.ts";
import { clockTicks } from "../../base/charts/timeTicks.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { clockTime, dayTime, duration } from "../../base/format/time.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import { lateWords, stepWords, trackNames } from "./pourStepWords.ts";
import { StepsTable } from "./StepsTable.tsx";
import { tracksWindow } from "./tracksWindow.ts";
import { trackOf } from "./trackState.ts";
import styles from "./tracks.module.css";

const rowHeight = 54;
const barHeight = 24;

/** A pour day as tracks one below the other, time across, all meeting at one moment. */
export function TracksChart({
  plan,
  steps,
  now,
}: {
  readonly plan: PourPlan;
  readonly steps: readonly PourStep[];
  /** Null on a plan that has not begun. */
  readonly now: number | null;
}) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { from: filled, whole } = tracksWindow(plan.tracks, plan.pourAt);
  const [asked, setAsked] = useState<"whole" | "near" | null>(null);
  const startAt = asked === "whole" ? whole : filled;
  const endAt = Math.max(plan.pourAt, now ?? 0) + Math.max(minuteMs, plan.pourAt - startAt) * 0.03;
  const rows = trackOrder.flatMap((id) => plan.tracks.find((track) => track.id === id) ?? []);
  const frame = plotFrame({
    width,
    left: 6,
    rightGap: 6,
    top: 44,
    height: rows.length * rowHeight,
    x: [startAt, endAt],
    y: [0, 1],
  });
  const { x, top, bottom } = frame;
  const numberOf = (id: string): number => steps.findIndex((step) => step.id === id) + 1;
  const meetX = x(plan.pourAt);
  const { locale } = format;
  const late = trackOrder.find((track) => track === plan.lateTrack);
  const title =
    plan.movedMin >= 1 && late !== undefined
      ? `Pour moved to ${clockTime(plan.pourAt, locale)}: ${lateWords[late]}`
      : `All tracks meet at ${clockTime(plan.pourAt, locale)}`;
  const begins = (track: PlannedTrack): string => {
    const at = track.steps[0]?.startAt ?? startAt;
    return at < startAt ? `, from ${dayTime(at, plan.pourAt, locale)}` : "";
  };
  return (
    <>
      {filled > whole && (
        <Choice
          label="Show"
          options={[
            { value: "near", label: `Last ${duration(plan.pourAt - filled)}` },
            { value: "whole", label: "All" },
          ]}
          value={asked ?? "near"}
          onChange={setAsked}
        />
      )}
      <PlotFigure
        title={title}
        box={box}
        legend={
          <>
            <span className={styles["key"]}>to come</span>
            {now !== null && <span className={styles["keyRunning"]}>under way</span>}
            {now !== null && <span className={styles["keyDone"]}>done</span>}
            {now !== null && <span data-key="softDotted">held, waiting</span>}
          </>
        }
        table={<StepsTable plan={plan} steps={steps} isLive={now !== null} />}
      >
        <Plot
          frame={frame}
          name={null}
          label={`${rows.length} tracks for the pour at ${clockTime(plan.pourAt, locale)}; the same times as a table below`}
          ticks={clockTicks(startAt, plan.pourAt, { most: Math.max(2, Math.floor(width / 62)), locale })}
          hasUprights
          now={now !== null && now >= startAt && now <= endAt ? now : null}
        >
          {rows.map((track, row) => {
            const y = top + row * rowHeight;
            const barY = y + 22;
            return (
              <g key={track.id}>
                <text className={styles["name"]} x={frame.left} y={y + 15}>
                  {trackNames[trackOf(track.id)]}
                  {begins(track)}
                </text>
                {track.steps.map((step, place) => {
                  const nextAt = track.steps[place + 1]?.startAt ?? plan.pourAt;
                  const [a, b] = [x(step.startAt), x(step.endAt)];
                  const isSeen = step.endAt > startAt;
                  return (
                    <g key={step.id}>
                      {nextAt - step.endAt > minuteMs / 2 && nextAt > startAt && (
                        <path
                          className={styles["hold"]}
                          d={`M${x(step.endAt) + 3} ${barY + barHeight / 2}H${x(nextAt) - 2}`}
                        />
                      )}
                      {isSeen && (
                        <>
                          <rect
                            className={styles[barOf[step.state]]}
                            x={a}
                            y={barY}
                            width={Math.max(4, b - a - 1.5)}
                            height={barHeight}
                            rx="3"
                          />
                          {b - a > 16 && (
                            <text
                              className={styles[step.state === "done" ? "numberDone" : "number"]}
                              x={(a + b) / 2}
                              y={barY + 17}
                            >
                              {b - a > 130
                                ? `${numberOf(step.id)} ${stepWords(step.id).title.split(" ")[0]}`
                                : numberOf(step.id)}
                            </text>
                          )}
                        </>
                      )}
                    </g>
                  );
                })}
              </g>
            );
          })}
          <path className={styles["meetLine"]} d={`M${meetX} ${top - 10}V${bottom}`} />
          <text className={styles["meet"]} x={Math.min(width - 4, meetX)} y={16}>
            pour {clockTime(plan.pourAt, locale)}
          </text>
        </Plot>
      </PlotFigure>
    </>
  );
}

const barOf = { waiting: "barWaiting", running: "barRunning", done: "barDone" } as const;
