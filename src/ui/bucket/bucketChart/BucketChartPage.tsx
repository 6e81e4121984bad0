import { useState } from "react";
import { useParams } from "wouter";
import type { BucketSegment } from "../../../logbook/bucket/bucketChart.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { paths } from "../../base/state/paths.ts";
import { PlotTable } from "../../base/charts/PlotTable.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { useBucketStanding } from "../useBucketStanding.ts";
import { basisSays, checkFirst, ruleName, segmentName, signalSays } from "./chartWords.ts";
import { RangeCard } from "./RangeCard.tsx";
import { SecondsChart } from "./SecondsChart.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./SecondsChart.module.css";

export function BucketChartPage() {
  const { id } = useParams<{ id: string }>();
  const found = useBucketStanding(id);
  if (found === undefined) return <Page title="Chart">{null}</Page>;
  if (found === null)
    return (
      <Page title="Chart" back={paths.buckets}>
        <Empty title="No such bucket">
          <p>It is not in this device’s log.</p>
        </Empty>
      </Page>
    );
  const { standing } = found;
  return (
    <Page title={`${standing.bucket.name}: chart`} back={paths.bucket(id)}>
      {standing.segments.length === 0 ? (
        <Empty title="No viscosity yet">
          <p>The chart starts with the first check as found. Limits are drawn from the tenth on.</p>
          <LinkButton kind="primary" href={paths.bucketRead(id)}>
            Check the slurry
          </LinkButton>
        </Empty>
      ) : (
        <Segments key={standing.segments.length} standing={standing} />
      )}
    </Page>
  );
}

function Segments({ standing }: { readonly standing: BucketStanding }) {
  const { segments } = standing;
  const [place, setPlace] = useState(segments.length - 1);
  const segment = segments[place];
  if (segment === undefined) return null;
  return (
    <>
      {segments.length > 1 && (
        <Choice
          label="Stretch"
          value={String(place)}
          options={segments
            .map((each, i) => ({ value: String(i), label: segmentName(each) }))
            .slice(-6)
            .toReversed()}
          onChange={(next) => setPlace(Number(next))}
        />
      )}
      <OneSegment segment={segment} standing={standing} />
    </>
  );
}

function OneSegment({
  segment,
  standing,
}: {
  readonly segment: BucketSegment;
  readonly standing: BucketStanding;
}) {
  const { aim } = standing;
  const { chart } = segment;
  const band = segment.cup?.key === aim.cup?.key ? aim.bandS : null;
  return (
    <>
      <Card
        title={
          segment.cup === null ? "Viscosity as found (s)" : `Viscosity as found (s), ${segment.cup.name}`
        }
      >
        <SecondsChart
          segment={segment}
          band={band}
          now={standing.now}
          table={<SecondsTable segment={segment} now={standing.now} />}
        />
        <p className={sheet["pale"]}>{basisSays[chart?.basis ?? "too-few"]}</p>
        {band === null && (
          <p className={sheet["pale"]}>
            No target band is drawn:{" "}
            {aim.bandS === null ? "none is set for this bucket." : "it was set for another cup."}
          </p>
        )}
      </Card>
      <RangeCard segment={segment} now={standing.now} />
      <Card title="Signals">
        <Signals segment={segment} now={standing.now} />
      </Card>
      <Card title="The figures">
        <Figures segment={segment} />
      </Card>
    </>
  );
}

function Signals({ segment, now }: { readonly segment: BucketSegment; readonly now: number }) {
  const format = useFormat();
  const signals = segment.chart?.signals ?? [];
  if (segment.chart === null || segment.chart.basis === "too-few")
    return <p>Too few checks to tell a signal from normal scatter.</p>;
  if (signals.length === 0)
    return <p>None. Don’t correct a slurry inside its limits: that widens the scatter.</p>;
  const places = [...new Set(signals.map(({ index }) => index))].toSorted((one, other) => other - one);
  const list = (indexes: readonly number[]) => (
    <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["signals"]}`}>
      {indexes.map((index) => {
        const point = segment.charted[index];
        const fired = signals.filter((signal) => signal.index === index);
        const [first] = fired;
        if (point === undefined || first === undefined) return null;
        return (
          <li key={index}>
            <strong>
              {format.number(point.seconds, 1)} s, {dayTime(point.at, now, format.locale)}
            </strong>
            {fired.map((signal) => (
              <span key={signal.rule}>
                Rule {signal.rule}, {ruleName[signal.rule]}. {signalSays(signal)}
              </span>
            ))}
            <span className={sheet["pale"]}>{checkFirst(first)}</span>
          </li>
        );
      })}
    </ul>
  );
  return (
    <>
      {list(places.slice(0, newest))}
      {places.length > newest && (
        <details>
          <summary>Earlier ones ({places.length - newest})</summary>
          {list(places.slice(newest))}
        </details>
      )}
    </>
  );
}

/** Signals told at once; what came before has been seen. */
const newest = 2;

function SecondsTable({ segment, now }: { readonly segment: BucketSegment; readonly now: number }) {
  const format = useFormat();
  const { chart, points, charted } = segment;
  const indexOf = new Map(charted.map(({ id }, i) => [id, i]));
  const rangeTo = (id: string): number | null => chart?.movingRanges[indexOf.get(id) ?? -1] ?? null;
  return (
    <PlotTable
      summary="As a table"
      head={["No.", "Checked", "Viscosity (s)", "Moving range", "Note"]}
      rows={points.map(({ id, at, seconds: value, hollow, afterCorrection }, i) => {
        const range = rangeTo(id);
        const remarks = [
          hollow ? "carried to the bucket’s temperature, not charted" : null,
          afterCorrection ? "topped up before it" : null,
        ];
        return {
          key: id,
          cells: [
            i + 1,
            dayTime(at, now, format.locale),
            format.number(value, 1),
            range === null ? "–" : format.number(range, 1),
            remarks.filter((word) => word !== null).join("; "),
          ],
        };
      })}
    />
  );
}

function Figures({ segment: { chart } }: { readonly segment: BucketSegment }) {
  const format = useFormat();
  const seconds = (value: number): string => format.number(value, 2);
  return (
    <>
      {chart !== null && (
        <p>
          Middle {seconds(chart.centre)} s, limits {seconds(chart.limits.lower)} and{" "}
          {seconds(chart.limits.upper)} s, mean moving range {seconds(chart.meanRange)} s
          {chart.basis === "too-few" ? " (not yet used)" : ""}.
        </p>
      )}
      <details>
        <summary>How the limits are calculated</summary>
        <p>
          Middle ± 3 × mean moving range ÷ 1.128. Rules 1 to 4 are the usual control chart rules. Rule 5 is
          six in a row one way. The range across a top-up, a new batch or another cup is left out. Together
          the five rules give a false alarm about once in ninety checks. A signal means look first, then act.
        </p>
      </details>
    </>
  );
}
