import { useState } from "react";
import { Link, useLocation, useParams } from "wouter";
import { compareEntries, streamOf, type Entry } from "../../../logbook/entries/entry.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { lackWords } from "../../base/format/bucketAdviceWords.ts";
import { readingLine, viscosityWords } from "../../base/format/bucketReadingWords.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { AfterAdditionCard } from "../makeUp/AfterAdditionCard.tsx";
import { leftText } from "../../shop/stock/leftText.ts";
import { bucketLeftOf } from "../../shop/stock/bucketLeftOf.ts";
import { Timeline } from "../../base/history/Timeline.tsx";
import { BucketForm } from "./BucketForm.tsx";
import { aimLines, lastMeasured, lifeLines } from "./bucketWords.ts";
import { HealthCard } from "./HealthCard.tsx";
import { Lines } from "./Lines.tsx";
import { newBucketId } from "../../../logbook/bucket/newBucket.ts";
import { useBucketStanding } from "../useBucketStanding.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./BucketsPage.module.css";

export function BucketPage() {
  const { id } = useParams<{ id: string }>();
  const [, goTo] = useLocation();
  if (id === newBucketId)
    return (
      <Page title="New bucket" back={paths.buckets}>
        <BucketForm bucket={null} onSaved={(saved) => goTo(paths.bucket(saved), { replace: true })} />
      </Page>
    );
  return <KnownBucket key={id} id={id} />;
}

function KnownBucket({ id }: { readonly id: string }) {
  const found = useBucketStanding(id);
  const format = useFormat();
  if (found === undefined) return <Page title="Bucket">{null}</Page>;
  if (found === null)
    return (
      <Page title="Bucket" back={paths.buckets}>
        <Empty title="No such bucket">
          <p>
            It is not in this device's log. <Link href={paths.buckets}>All buckets</Link>
          </p>
        </Empty>
      </Page>
    );
  const { standing, entries, dipped } = found;
  const { bucket } = standing;
  const last = lastMeasured(standing);
  const aims = aimLines(standing, format);
  const life = lifeLines(standing, format);
  const left = bucketLeftOf(standing, dipped);
  return (
    <Page title={bucket.name} back={paths.buckets}>
      {bucket.slurry !== "" && <p className={`${sheet["pale"]} ${sheet["breaks"]}`}>{bucket.slurry}</p>}
      <HealthCard standing={standing} />
      {!bucket.retired && (
        <LinkButton kind="primary" size="big" href={paths.bucketRead(id)}>
          Check the slurry
        </LinkButton>
      )}
      <div className={css["ways"]}>
        <LinkButton href={paths.bucketMakeUp(id)}>Make up</LinkButton>
        <LinkButton href={paths.bucketChart(id)}>Chart</LinkButton>
        <LinkButton href={paths.bucketCard(id)}>Card to print</LinkButton>
        <LinkButton href={paths.stock}>Stock</LinkButton>
      </div>
      <div className={css["cards"]}>
        <Card title="Last check">
          {last === null ? (
            <p>None yet. Check the viscosity before each session: thick slurry builds thick, weak shells.</p>
          ) : (
            <>
              <p>
                {readingLine(last, format)}, <Ago at={last.at} />
              </p>
              {last.seconds !== null && (
                <p className={`${sheet["pale"]} ${sheet["breaks"]}`}>
                  {viscosityWords(last.seconds, format)}
                </p>
              )}
            </>
          )}
          <Lacks standing={standing} />
        </Card>
        {standing.afterAddition !== null && (
          <AfterAdditionCard after={standing.afterAddition} bucketId={id} />
        )}
        <Card title="Targets">
          {aims.length === 0 ? (
            <p>Not set. Set a target range to get a warning when viscosity drifts.</p>
          ) : (
            <Lines lines={aims} />
          )}
          <LinkButton href={paths.bucketAims(id)}>
            {aims.length === 0 ? "Set targets" : "Change targets"}
          </LinkButton>
        </Card>
        {life.length > 0 && (
          <Card title="What is in it">
            <Lines lines={life} />
            {left !== null && <p>{leftText(left, format)}</p>}
          </Card>
        )}
      </div>
      <BucketLog id={id} entries={entries} />
    </Page>
  );
}

const listed = 30;

/** The newest lines; a month of a bucket fills many screens. */
function BucketLog({ id, entries }: { readonly id: string; readonly entries: readonly Entry[] }) {
  const [all, setAll] = useState(false);
  const lines = entries.filter(({ type }) => type !== "entry-struck").toSorted(compareEntries);
  const from = lines.at(-listed);
  const shown =
    all || from === undefined
      ? entries
      : entries.filter((entry) => entry.type === "entry-struck" || compareEntries(entry, from) >= 0);
  return (
    <>
      <Timeline stream={streamOf("bucket", id)} entries={shown} />
      {shown.length < entries.length && (
        <Button onPress={() => setAll(true)}>Show all {lines.length} lines</Button>
      )}
    </>
  );
}

/** What an advice from the last reading lacks; the advice itself stands with the verdict. */
function Lacks({ standing: { advice, last, isUntold } }: { readonly standing: BucketStanding }) {
  if (last === null || isUntold || advice.ok || advice.missing.includes("reading")) return null;
  return (
    <details>
      <summary>No advice on what to add yet</summary>
      <p>Missing: {advice.missing.map((lack) => lackWords[lack]).join("; ")}.</p>
    </details>
  );
}
