import { useLocation, useParams } from "wouter";
import { useBucket } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { BucketForm } from "./BucketForm.tsx";

/** What a bucket is and what it should read. */
export function BucketAimsPage() {
  const { id } = useParams<{ id: string }>();
  const found = useBucket(id);
  const [, goTo] = useLocation();
  if (found === undefined) return <Page title="Bucket">{null}</Page>;
  if (found === null)
    return (
      <Page title="Bucket" back={paths.buckets}>
        <Empty title="No such bucket">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  return (
    <Page title={`${found.bucket.name}: targets`} back={paths.bucket(id)}>
      <BucketForm key={id} bucket={found.bucket} onSaved={() => goTo(paths.bucket(id))} />
    </Page>
  );
}
