import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useFigures } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { check } from "../../base/forms/fieldSchema.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { AimsFields } from "./AimsFields.tsx";
import { bucketSchema, bucketUses, draftOfBucket, type BucketDraft } from "./bucketForm.ts";
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
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<BucketDraft>(`bucket-set/${bucket?.id ?? "new"}`, draftOfBucket(bucket));
  const { draft, drop, tell } = form;
  const [refused, setRefused] = useState<string | null>(null);

  const save = async (retired: boolean) => {
    const read = check(bucketSchema(format), draft);
    tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const id = bucket?.id ?? shop.moment().newId();
    const body = retired ? { ...read.value, retired } : read.value;
    const done = await shop.log(
      { do: "log", stream: streamOf("bucket", id), type: "bucket-set", body },
      { quiet: true },
    );
    if (!done.ok) return setRefused(done.text);
    await drop();
    say("Bucket saved.");
    onSaved(id);
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
      {refused !== null && (
        <p role="alert" className={css["refused"]}>
          {refused}
        </p>
      )}
      <Button kind="primary" onPress={() => save(bucket?.retired ?? false)}>
        Save the bucket
      </Button>
      {bucket !== null && (
        <Button kind="quiet" onPress={() => save(!bucket.retired)}>
          {bucket.retired ? "In use again" : "It is emptied: put it away"}
        </Button>
      )}
    </form>
  );
}
