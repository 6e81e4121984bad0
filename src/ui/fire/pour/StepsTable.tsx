import type { PourStep } from "../../../logbook/entries/fireBodies.ts";
import type { PourPlan } from "../../../physics/metal/pourDay.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { clockTime } from "../../base/format/time.ts";
import { stepWords, trackNames } from "./pourStepWords.ts";
import styles from "./pour.module.css";

const stateWords = { waiting: "to come", running: "under way", done: "done" } as const;

/** The tracks in numbers: what begins when, how long it takes, how long it keeps. */
export function StepsTable({
  plan,
  steps,
  isLive,
}: {
  readonly plan: PourPlan;
  readonly steps: readonly PourStep[];
  readonly isLive: boolean;
}) {
  const format = useFormat();
  const all = plan.tracks.flatMap((track) => track.steps);
  return (
    <details open={!isLive}>
      <summary>All steps and times</summary>
      <table className={styles["table"]}>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">{isLive ? "From" : "Start by"}</th>
            <th scope="col">End</th>
            <th scope="col">{isLive ? "State" : "Can wait"}</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ id, track, keepsMin }, place) => {
            const step = all.find((one) => one.id === id);
            if (step === undefined) return null;
            return (
              <tr key={id}>
                <td>
                  {place + 1} {stepWords(id).title} <small>({trackNames[track].toLowerCase()})</small>
                </td>
                <td>{clockTime(step.startAt, format.locale)}</td>
                <td>{clockTime(step.endAt, format.locale)}</td>
                <td>
                  {isLive
                    ? stateWords[step.state]
                    : keepsMin === null
                      ? "no limit"
                      : format.show("min", keepsMin)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}
