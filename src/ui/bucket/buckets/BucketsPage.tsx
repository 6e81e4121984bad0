import { Link, useLocation } from "wouter";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { reasonWords } from "../../base/format/bucketHealthWords.ts";
import { readingLine } from "../../base/format/bucketReadingWords.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { useBucketStandings } from "../useBucketStandings.ts";
import { lastMeasured } from "./bucketWords.ts";
import { bucketUses } from "./bucketForm.ts";
import { newBucketId } from "../../../logbook/bucket/newBucket.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./BucketsPage.module.css";

/** Every bucket at a glance: may it be dipped from, and why not. */
export function BucketsPage() {
  const [, goTo] = useLocation();
  const standings = useBucketStandings() ?? [];
  const open = standings.filter(({ bucket }) => !bucket.retired);
  const away = standings.filter(({ bucket }) => bucket.retired);
  return (
    <Page
      title="Buckets"
      back={paths.shop}
      actions={
        <>
          <LinkButton kind="quiet" href={paths.bucketLimits}>
            Limits
          </LinkButton>
          <LinkButton kind="quiet" href={paths.cups}>
            Cups
          </LinkButton>
          <Button onPress={() => goTo(paths.bucket(newBucketId))}>New bucket</Button>
        </>
      }
    >
      {open.length === 0 && standings.length > 0 && (
        <Empty title="No bucket is in use">
          <p>Add one, or use a retired one again.</p>
        </Empty>
      )}
      <ul className={css["list"]}>
        {open.map((standing) => (
          <BucketRow key={standing.bucket.id} standing={standing} />
        ))}
      </ul>
      {away.length > 0 && (
        <details>
          <summary>Retired ({away.length})</summary>
          <ul className={css["list"]}>
            {away.map(({ bucket }) => (
              <li key={bucket.id}>
                <Link
                  href={paths.bucket(bucket.id)}
                  className={`${sheet["stack1"]} ${sheet["panel"]} ${css["row"]}`}
                >
                  <strong className={css["name"]}>{bucket.name}</strong>
                </Link>
              </li>
            ))}
          </ul>
        </details>
      )}
    </Page>
  );
}

function BucketRow({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { bucket, health } = standing;
  const last = lastMeasured(standing);
  const use = bucketUses.find(({ value }) => value === bucket.use)?.label ?? bucket.use;
  const [worst] = health.reasons;
  const why =
    worst === undefined || worst.code === "not-checked-today" ? null : reasonWords(worst, format).says;
  return (
    <li>
      <Link href={paths.bucket(bucket.id)} className={`${sheet["stack1"]} ${sheet["panel"]} ${css["row"]}`}>
        <span className={`${sheet["row13"]} ${sheet["middle"]} ${sheet["between"]}`}>
          <strong className={css["name"]}>{bucket.name}</strong>
          <HealthMark level={health.level} />
        </span>
        {why !== null && <span>{why}</span>}
        <span className={`${sheet["pale"]} ${sheet["breaks"]}`}>
          {use}
          {bucket.slurry === "" ? "" : `: ${bucket.slurry}`}
        </span>
        <span className={`${sheet["pale"]} ${sheet["breaks"]}`}>
          {last === null ? (
            "Never checked."
          ) : (
            <>
              {readingLine(last, format)}, <Ago at={last.at} />
            </>
          )}
        </span>
      </Link>
    </li>
  );
}
