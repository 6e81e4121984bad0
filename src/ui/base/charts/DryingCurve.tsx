import { millisecondsInHour as hourMs } from "date-fns/constants";
import { shareToGo, waterAtShare } from "../../../logbook/drying/waterToGo.ts";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../state/useFormat.ts";
import { dayTime, soonTime } from "../format/time.ts";
import { Plot, PlotFigure } from "./Plot.tsx";
import { PlotLine, PlotSpan, PlotUpright } from "./PlotMarks.tsx";
import { PlotTable } from "./PlotTable.tsx";
import { dryTitle } from "./dryTitle.ts";
import { plotFrame, ticksFor } from "./plotFrame.ts";
import { clockTicks } from "./timeTicks.ts";
import { useWidth } from "./useWidth.ts";

const mostRows = 12;

/** Water left in the outer coat against time, with the hours in which it comes to ready. */
export function DryingCurve({ drying, now }: { readonly drying: CoatDrying; readonly now: number }) {
  const format = useFormat();
  const { locale } = format;
  const [box, width] = useWidth<HTMLDivElement>(340);
  const { curve, readyAt, startKgM2 } = drying;
  const first = curve[0];
  const last = curve.at(-1);
  if (first === undefined || last === undefined || curve.length < 2 || startKgM2 <= 0) return null;
  const most = Math.max(startKgM2, ...curve.map((point) => point.waterKgM2));
  const from = first.at;
  const { early, likely, late } = readyAt;
  const to = Math.max(now + hourMs, Math.min(last.at, (late ?? likely ?? last.at) + hourMs));
  const frame = plotFrame({ width, left: 48, height: 132, x: [from, to], y: [0, most] });
  const shown = curve.filter((point) => point.at <= to);
  const points = shown.map(({ at, waterKgM2 }) => ({ at, value: waterKgM2 }));
  const past = points.filter(({ at }) => at <= now);
  const ahead = [...past.slice(-1), ...points.filter(({ at }) => at > now)];
  const share = (kgM2: number): string => format.show("percent", shareToGo(kgM2, drying));
  const every = Math.max(1, Math.ceil(shown.length / mostRows));
  return (
    <PlotFigure
      title={dryTitle(drying, now, locale)}
      box={box}
      caption={
        <>
          Water left in the coat: at 0% it is dry enough for the next.
          {early !== null &&
            ` Shaded: dry by the air between ${soonTime(early, now, locale)} and ${late === null ? "some time beyond the forecast" : soonTime(late, now, locale)}.`}
        </>
      }
      table={
        <PlotTable
          head={["When", "Water left"]}
          rows={shown
            .filter((_, place) => place % every === 0 || place === shown.length - 1)
            .map(({ at, waterKgM2 }, place) => ({
              key: `${at} ${place}`,
              cells: [`${dayTime(at, now, locale)}${at > now ? " (forecast)" : ""}`, share(waterKgM2)],
            }))}
        />
      }
    >
      <Plot
        frame={frame}
        label={`Water left in coat ${drying.coat.number} against time${likely === null ? "" : `; ready likely ${dayTime(likely, now, locale)}`}`}
        levels={[0, 0.5, 1].map((part) => ({
          at: waterAtShare(part, drying),
          text: format.show("percent", part),
        }))}
        ticks={clockTicks(from, to, { most: ticksFor(frame, 78), locale, daysFromH: 40 })}
        name="Water left, %"
        now={now}
        under={early !== null && <PlotSpan frame={frame} from={early} to={late ?? to} />}
      >
        {likely !== null && likely <= to && (
          <PlotUpright frame={frame} at={likely} look="likely" name="likely" />
        )}
        <PlotLine frame={frame} points={past} look="water" />
        <PlotLine frame={frame} points={ahead} look="water" broken="ahead" />
      </Plot>
    </PlotFigure>
  );
}
