import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useFigures } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Refused } from "../../base/forms/Refused.tsx";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { AimsFields } from "./AimsFields.tsx";
import { bucketFields, bucketUses, draftOfBucket, readBucket } from "./bucketForm.ts";
import { PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./BucketsPage.module.css";

export function BucketForm({
  bucket,
  onSaved,
}: {
  readonly bucket: Bucket | null;
  readonly onSaved: (id: string) => void;
}) {
  const shop = useShop();
  const own = useFigures();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useEntryForm(`bucket-set/${bucket?.id ?? "new"}`, bucketFields, {
    start: draftOfBucket(bucket),
    check: readBucket,
  });

  const save = (retired: boolean) => {
    const id = bucket?.id ?? shop.moment().newId();
    return form.save(
      (read) => {
        const body = retired ? { ...read, retired } : read;
        return shop.log(
          { do: "log", stream: streamOf("bucket", id), type: "bucket-set", body },
          { quiet: true },
        );
      },
      () => {
        say("Bucket saved.");
        onSaved(id);
      },
    );
  };

  return (
    <form
      className={css["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save(bucket?.retired ?? false);
      }}
    >
      <TextOf form={form} at="name" label="Name" />
      <PickOf form={form} at="use" label="For" options={bucketUses} />
      <TextOf form={form} at="slurry" label="Slurry" hint="Flour and binder in your own words." />
      <AimsFields form={form} shop={own ?? { cups: [] }} />
      <Refused form={form} plain />
      <Button kind="primary" onPress={() => save(bucket?.retired ?? false)}>
        Save the bucket
      </Button>
      {bucket !== null && (
        <Button kind="quiet" onPress={() => save(!bucket.retired)}>
          {bucket.retired ? "Use it again" : "Retire this bucket"}
        </Button>
      )}
    </form>
  );
}
