import type { Segment, Stretch } from "../../../physics/heat/firingSegments.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import type { Live } from "./scheduleLive.ts";
import { minutesWords, segmentTitle } from "./segmentWords.ts";
import styles from "./chart.module.css";

const mostRead = 30;

/** The chart's figures as tables. */
export function ScheduleTable({
  segments,
  curve,
  live,
}: {
  readonly segments: readonly Segment[];
  readonly curve: readonly Stretch[];
  readonly live: Live | undefined;
}) {
  const format = useFormat();
  const readings = live?.readings ?? [];
  const every = Math.max(1, Math.ceil(readings.length / mostRead));
  return (
    <details className={styles["table"]}>
      <summary>The same as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">After</th>
            <th scope="col">Kiln</th>
          </tr>
        </thead>
        <tbody>
          {curve.map(({ segment, startMin, fromC, toC }) => {
            const part = segments[segment];
            return (
              part !== undefined && (
                <tr key={segment}>
                  <td>
                    {segment + 1}. {segmentTitle(part, fromC, format)}
                  </td>
                  <td>{startMin === 0 ? "at once" : minutesWords(startMin)}</td>
                  <td>
                    {fromC === toC
                      ? format.show("temp", toC)
                      : `${format.show("temp", fromC)} → ${format.show("temp", toC)}`}
                  </td>
                </tr>
              )
            );
          })}
        </tbody>
      </table>
      {live !== undefined && readings.length > 0 && (
        <table>
          <caption>{every === 1 ? "Readings" : `One reading in ${every} of ${readings.length}`}</caption>
          <thead>
            <tr>
              <th scope="col">Read</th>
              <th scope="col">Kiln</th>
            </tr>
          </thead>
          <tbody>
            {readings
              .filter((_, place) => place % every === 0 || place === readings.length - 1)
              .toReversed()
              .map(({ at, kilnC }, place) => (
                <tr key={`${at} ${place}`}>
                  <td>{dayTime(at, live.now, format.locale)}</td>
                  <td>{format.show("temp", kilnC)}</td>
                </tr>
              ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
