import { Link, useLocation, useParams } from "wouter";
import { useBucket } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { Card } from "../parts/Card.tsx";
import { Empty } from "../parts/Empty.tsx";
import { Page } from "../parts/Page.tsx";
import { BucketForm } from "./BucketForm.tsx";
import { newBucketId } from "./newBucket.ts";
import { ReadingForm } from "./ReadingForm.tsx";
import { ReadingList } from "./ReadingList.tsx";

export function BucketPage() {
  const { id } = useParams<{ id: string }>();
  const found = useBucket(id);
  const [, goTo] = useLocation();
  if (id === newBucketId)
    return (
      <Page title="New bucket" back={paths.buckets}>
        <BucketForm bucket={null} onSaved={(saved) => goTo(paths.bucket(saved), { replace: true })} />
      </Page>
    );
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
  const { bucket, entries } = found;
  return (
    <Page title={bucket.name} back={paths.buckets}>
      {!bucket.retired && (
        <Card title="Reading">
          <ReadingForm key={id} bucketId={id} />
        </Card>
      )}
      <Card title="Readings so far">
        <ReadingList entries={entries} />
      </Card>
      <Card title="The bucket">
        <BucketForm key={id} bucket={bucket} onSaved={() => goTo(paths.buckets)} />
      </Card>
    </Page>
  );
}
