import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { MeltHeat } from "../../../physics/metal/melt.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import type { PowerKnown } from "../../../logbook/fire/furnaceMemory.ts";
import { Plot, PlotFigure } from "../../base/charts/Plot.tsx";
import { PlotDots, PlotField, PlotLevel, PlotLine } from "../../base/charts/PlotMarks.tsx";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { plotFrame, ticksFor } from "../../base/charts/plotFrame.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { clockTime } from "../../base/format/time.ts";
import { meltCourse, metalAfter, type CoursePoint } from "../../../logbook/casting/meltCourse.ts";

/** Metal against the clock: what the furnace's power makes of it, with its spread, and what was read. */
export function MeltChart({
  melt: { startedAt, readings, plan, ended },
  heat,
  power,
  massKg,
  now,
}: {
  readonly melt: Melt;
  readonly heat: MeltHeat;
  readonly power: PowerKnown | null;
  readonly massKg: number;
  readonly now: number;
}) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  if (startedAt === null || plan.pourC < heat.liquidusC) return null;
  const course = (powerW: number): readonly CoursePoint[] =>
    meltCourse({ powerW, massKg, heat, pourC: plan.pourC });
  const likely = power === null ? [] : course(power.likelyW);
  const fast = power === null ? [] : course(power.highW);
  const slow = power === null ? [] : course(power.lowW);
  const untilS = Math.max(
    slow.at(-1)?.afterS ?? 0,
    ((ended?.at ?? now) - startedAt) / 1000,
    ...readings.map(({ at }) => (at - startedAt) / 1000),
    600,
  );
  const to = startedAt + untilS * 1050;
  const mostC = Math.max(plan.pourC, ...readings.map(({ metalC }) => metalC)) + 60;
  const frame = plotFrame({ width, left: 70, height: 172, x: [startedAt, to], y: [0, mostC] });
  const placed = (points: readonly CoursePoint[]) =>
    points.map(({ afterS, metalC }) => ({ at: startedAt + afterS * 1000, value: metalC }));
  const band = [...fast, { afterS: untilS * 1.05, metalC: plan.pourC }, ...slow.toReversed()];
  const temp = (c: number): string => format.show("temp", c);
  const hotAt = readings.find(({ metalC }) => metalC >= plan.pourC)?.at ?? null;
  const lastRead = readings.at(-1) ?? null;
  const endS = likely.at(-1)?.afterS ?? null;
  const meltTitle = (): string => {
    if (hotAt !== null) return `At its pouring heat since ${clockTime(hotAt, format.locale)}`;
    if (lastRead !== null) return `Read at ${temp(lastRead.metalC)}, poured at ${temp(plan.pourC)}`;
    return endS === null
      ? "Metal not read yet"
      : `At ${temp(plan.pourC)} about ${clockTime(startedAt + endS * 1000, format.locale)}`;
  };
  return (
    <PlotFigure
      title={meltTitle()}
      box={box}
      caption={
        power === null
          ? "Circles: readings."
          : "Line: expected by the furnace's power, shaded: its range. Circles: readings."
      }
      table={
        <PlotTable
          head={["When", "Read", "Expected"]}
          rows={tableRows({ startedAt, readings, likely }).map(({ when, read }, place) => {
            const afterS = Math.max(0, (when - startedAt) / 1000);
            const expected =
              power === null
                ? null
                : Math.min(plan.pourC, metalAfter({ afterS, powerW: power.likelyW, massKg, heat }));
            return {
              key: `${when} ${place}`,
              cells: [
                clockTime(when, format.locale),
                read === null ? "–" : temp(read),
                expected === null ? "–" : temp(expected),
              ],
            };
          })}
        />
      }
    >
      <Plot
        frame={frame}
        name={`Metal, ${format.unit("temp")}`}
        label={`Metal against time, ${readings.length} readings, to pour at ${temp(plan.pourC)}`}
        levels={[0, heat.liquidusC, plan.pourC].map((c) => ({ at: c, text: temp(c) }))}
        ticks={ticksOf(startedAt, to, ticksFor(frame, 64)).map((at) => ({
          at,
          text: clockTime(at, format.locale),
        }))}
        now={ended === null ? now : null}
        under={power !== null && fast.length > 0 && <PlotField frame={frame} corners={placed(band)} />}
      >
        <PlotLevel frame={frame} at={0} look="axis" />
        <PlotLevel frame={frame} at={heat.liquidusC} look="mark" name="all melted" />
        <PlotLevel frame={frame} at={plan.pourC} look="mark" name="pour" />
        <PlotLine frame={frame} points={placed(likely)} look="soft" />
        <PlotDots frame={frame} points={readings.map(({ at, metalC }) => ({ at, value: metalC }))} />
      </Plot>
    </PlotFigure>
  );
}

/** Every reading, and the corners of the expected course. */
function tableRows({
  startedAt,
  readings,
  likely,
}: {
  readonly startedAt: number;
  readonly readings: readonly { readonly at: number; readonly metalC: number }[];
  readonly likely: readonly CoursePoint[];
}): readonly { readonly when: number; readonly read: number | null }[] {
  return [
    ...readings.map(({ at, metalC }) => ({ when: at, read: metalC })),
    ...likely.map(({ afterS }) => ({ when: startedAt + afterS * 1000, read: null })),
  ].toSorted((a, b) => a.when - b.when);
}

/** A melt is short: round ten minutes, or quarters of an hour and up. */
function ticksOf(from: number, to: number, most: number): readonly number[] {
  if ((to - from) / (10 * minuteMs) > most) return timeTicks(from, to, most);
  const step = (to - from) / (5 * minuteMs) > most ? 10 * minuteMs : 5 * minuteMs;
  const first = Math.ceil(from / step) * step;
  return Array.from({ length: Math.floor((to - first) / step) + 1 }, (_, i) => first + i * step);
}
