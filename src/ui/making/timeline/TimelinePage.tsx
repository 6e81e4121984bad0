import { useMemo } from "react";
import { Link } from "wouter";
import { dipProposal } from "../../../logbook/dip/dipProposal.ts";
import { heldStandings } from "../../../rules/coverHold.ts";
import { useBuckets, useRack, useSettings, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import { BucketHoursFields } from "../../shop/settings/BucketHoursFields.tsx";
import { bucketSpans } from "./bucketSpans.ts";
import { dipWishes } from "../../../logbook/dip/dipWishes.ts";
import { ProposalCard } from "./ProposalCard.tsx";
import { TimelineChart } from "./TimelineChart.tsx";
import { TimelineKey } from "./TimelineKey.tsx";
import { roomRows } from "./timelineRows.ts";
import { timelineSpan } from "./timelineScale.ts";
import { TimelineTable } from "./TimelineTable.tsx";
import { bucketHoursWords } from "./timelineWords.ts";

/** The rack's next two days: when each piece comes ready, when the rooms are damp, and when to dip what. */
export function TimelinePage() {
  const rack = useRack();
  const buckets = useBuckets();
  return (
    <Page title="The next 48 hours" back={paths.rack}>
      {rack !== undefined && buckets !== undefined && <Timeline rack={rack} buckets={buckets} />}
    </Page>
  );
}

function Timeline({
  rack,
  buckets,
}: {
  readonly rack: readonly RackItem[];
  readonly buckets: readonly Bucket[];
}) {
  const tick = useNow();
  const [{ bucketHours }] = useSettings();
  const { locale } = useFormat();
  // Standings may be younger than the last tick of the clock.
  const now = rack.reduce((latest, { standing }) => Math.max(latest, standing.now), tick);
  const view = useMemo(() => {
    const standings = rack.map(({ standing }) => standing);
    const span = timelineSpan(now);
    const hours = bucketSpans(bucketHours, span);
    const held = heldStandings(rack);
    const wishes = dipWishes(standings, buckets, now, held);
    const proposal = dipProposal({ wishes: wishes.wanted.map(({ wish }) => wish), hours, now });
    const dips = new Map(
      proposal.visits.flatMap(({ at, dips: all }) =>
        all.flatMap(({ pieces }) => pieces.map(({ id }) => [id, at] as const)),
      ),
    );
    return { lanes: roomRows(standings, span, held), hours, wishes, proposal, dips };
  }, [rack, buckets, bucketHours, now]);
  const { lanes, hours, wishes, proposal, dips } = view;
  const drawn = lanes.reduce((sum, { rows }) => sum + rows.length, 0);
  if (drawn === 0)
    return (
      <Empty title="Nothing is drying">
        <p>
          Pieces show here from their first coat until their review.{" "}
          <Link href={paths.rack}>Back to the rack</Link>
        </p>
      </Empty>
    );
  return (
    <>
      <ProposalCard
        proposal={proposal}
        wishes={wishes}
        bucketNames={new Map(buckets.map(({ id, name }) => [id, name]))}
        now={now}
      />
      <TimelineChart lanes={lanes} now={now} hours={hours} dips={dips} />
      <TimelineKey />
      {rack.length > drawn && (
        <p>
          {rack.length - drawn === 1 ? "One more piece is" : `${rack.length - drawn} more pieces are`} not
          drawn: in repair, in the fire or past it.
        </p>
      )}
      <details>
        <summary>As a table</summary>
        <TimelineTable lanes={lanes} now={now} dips={dips} />
      </details>
      <Card title={`At the bucket ${bucketHoursWords(bucketHours, locale)}`}>
        <details>
          <summary>Change the hours</summary>
          <BucketHoursFields />
        </details>
      </Card>
    </>
  );
}
