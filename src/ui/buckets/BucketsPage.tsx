import { Link, useLocation } from "wouter";
import type { Bucket } from "../../logbook/piece.ts";
import { useBuckets } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { Ago } from "../parts/Ago.tsx";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { Page } from "../parts/Page.tsx";
import { bucketUses } from "./bucketForm.ts";
import { newBucketId } from "./newBucket.ts";
import { ReadingLine } from "./ReadingLine.tsx";
import css from "./BucketsPage.module.css";

export function BucketsPage() {
  const buckets = useBuckets() ?? [];
  const [, goTo] = useLocation();
  const away = buckets.filter(({ retired }) => retired);
  return (
    <Page
      title="Buckets"
      back={paths.shop}
      actions={<Button onPress={() => goTo(paths.bucket(newBucketId))}>New bucket</Button>}
    >
      <div className={css["list"]}>
        {buckets
          .filter(({ retired }) => !retired)
          .map((bucket) => (
            <BucketCard key={bucket.id} bucket={bucket} />
          ))}
      </div>
      {away.length > 0 && (
        <details>
          <summary>Emptied ({away.length})</summary>
          <div className={css["list"]}>
            {away.map((bucket) => (
              <BucketCard key={bucket.id} bucket={bucket} />
            ))}
          </div>
        </details>
      )}
    </Page>
  );
}

function BucketCard({ bucket }: { readonly bucket: Bucket }) {
  const use = bucketUses.find(({ value }) => value === bucket.use)?.label ?? bucket.use;
  return (
    <Card>
      <h2 className={css["name"]}>
        <Link href={paths.bucket(bucket.id)}>{bucket.name}</Link>
      </h2>
      <p>
        {use}
        {bucket.slurry === "" ? "" : `: ${bucket.slurry}`}
      </p>
      {bucket.last === null ? (
        <p className={css["soft"]}>No reading yet.</p>
      ) : (
        <p>
          <ReadingLine reading={bucket.last} />, <Ago at={bucket.last.at} />
        </p>
      )}
    </Card>
  );
}
