import type { Segment, Stretch } from "../../../physics/heat/firingSegments.ts";
import { PlainTable, PlotTable } from "../../base/charts/PlotTable.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import type { Live } from "./scheduleLive.ts";
import { minutesWords, segmentTitle } from "./segmentWords.ts";

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
    <PlotTable
      head={["Step", "After", "Kiln"]}
      rows={curve.flatMap(({ segment, startMin, fromC, toC }) => {
        const part = segments[segment];
        if (part === undefined) return [];
        const [first, last] = [format.show("temp", fromC), format.show("temp", toC)];
        return {
          key: `${segment}`,
          cells: [
            `${segment + 1}. ${segmentTitle(part, fromC, format)}`,
            startMin === 0 ? "at once" : minutesWords(startMin),
            fromC === toC ? last : `${first} → ${last}`,
          ],
        };
      })}
    >
      {live !== undefined && readings.length > 0 && (
        <PlainTable
          caption={every === 1 ? "Readings" : `One reading in ${every} of ${readings.length}`}
          head={["Read", "Kiln"]}
          rows={readings
            .filter((_, place) => place % every === 0 || place === readings.length - 1)
            .toReversed()
            .map(({ at, kilnC }, place) => ({
              key: `${at} ${place}`,
              cells: [dayTime(at, live.now, format.locale), format.show("temp", kilnC)],
            }))}
        />
      )}
    </PlotTable>
  );
}
