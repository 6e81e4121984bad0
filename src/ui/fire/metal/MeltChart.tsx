import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { MeltHeat } from "../../../physics/metal/melt.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import type { PowerKnown } from "../../../logbook/fire/furnaceMemory.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { timeTicks } from "../../base/charts/timeTicks.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { clockTime } from "../../base/format/time.ts";
import { meltCourse, metalAfter, type CoursePoint } from "./meltCourse.ts";
import css from "./MeltChart.module.css";

const top = 24;
const height = 172;
const bottom = top + height;
const left = 70;
const right = 14;

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
  const x = (at: number): number =>
    left + ((Math.min(Math.max(at, startedAt), to) - startedAt) / (to - startedAt)) * (width - left - right);
  const y = (c: number): number => bottom - (Math.max(0, c) / mostC) * height;
  const at = (afterS: number): number => startedAt + afterS * 1000;
  const line = (points: readonly CoursePoint[]): string =>
    points
      .map(
        ({ afterS, metalC }, i) =>
          `${i === 0 ? "M" : "L"}${x(at(afterS)).toFixed(1)} ${y(metalC).toFixed(1)}`,
      )
      .join("");
  const band = [...fast, { afterS: untilS * 1.05, metalC: plan.pourC }, ...slow.toReversed()];
  return (
    <figure className={css["figure"]}>
      <div ref={box}>
        <svg
          className={css["svg"]}
          width={width}
          height={bottom + 28}
          role="img"
          aria-label={`Metal against time, ${readings.length} readings, to pour at ${format.show("temp", plan.pourC)}`}
        >
          {power !== null && fast.length > 0 && <path className={css["band"]} d={`${line(band)}Z`} />}
          {[
            { c: heat.liquidusC, says: "all melted" },
            { c: plan.pourC, says: "pour" },
          ].map(({ c, says }) => (
            <g key={says}>
              <path className={css["rule"]} d={`M${left} ${y(c)}H${width - right}`} />
              <text className={css["level"]} x={left - 6} y={y(c) + 4}>
                {format.show("temp", c)}
              </text>
              <text x={left + 6} y={y(c) - 5}>
                {says}
              </text>
            </g>
          ))}
          <path className={css["axis"]} d={`M${left} ${bottom}H${width - right}`} />
          <text className={css["level"]} x={left - 6} y={bottom + 4}>
            {format.show("temp", 0)}
          </text>
          {ticksOf(startedAt, to, Math.max(2, Math.floor((width - left - right) / 64))).map((tick) => (
            <text key={tick} className={css["tick"]} x={x(tick)} y={bottom + 20}>
              {clockTime(tick, format.locale)}
            </text>
          ))}
          <path className={css["likely"]} d={line(likely)} />
          {readings.map(({ id, at: when, metalC }) => (
            <circle key={id} className={css["reading"]} cx={x(when)} cy={y(metalC)} r={5} />
          ))}
          {ended === null && <path className={css["now"]} d={`M${x(now)} ${top - 8}V${bottom}`} />}
          {ended === null && (
            <text
              className={css["nowText"]}
              x={x(now)}
              y={top - 12}
              textAnchor={x(now) < left + 16 ? "start" : "middle"}
            >
              now
            </text>
          )}
        </svg>
      </div>
      <figcaption className={css["caption"]}>
        {power === null
          ? "Circles: what was read."
          : "Line: expected by the furnace's power, shaded how sure that is. Circles: what was read."}
      </figcaption>
      <details>
        <summary>The same as a table</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Read</th>
              <th scope="col">Expected</th>
            </tr>
          </thead>
          <tbody>
            {tableRows({ startedAt, readings, likely }).map(({ when, read }, place) => (
              <tr key={`${when} ${place}`}>
                <td>{clockTime(when, format.locale)}</td>
                <td>{read === null ? "–" : format.show("temp", read)}</td>
                <td>
                  {power === null
                    ? "–"
                    : format.show(
                        "temp",
                        Math.min(
                          plan.pourC,
                          metalAfter({
                            afterS: Math.max(0, (when - startedAt) / 1000),
                            powerW: power.likelyW,
                            massKg,
                            heat,
                          }),
                        ),
                      )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
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
