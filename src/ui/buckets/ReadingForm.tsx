import { useState } from "react";
import { streamOf } from "../../logbook/entry.ts";
import { useFleeting } from "../app/fleeting.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { check, withoutEmpty } from "../log/gate.ts";
import { useForm } from "../log/useForm.ts";
import { Button } from "../parts/Button.tsx";
import { NumberField } from "../parts/NumberField.tsx";
import { TextField } from "../parts/TextField.tsx";
import { noReading, readingSchema, type ReadingDraft } from "./bucketForm.ts";
import css from "./BucketsPage.module.css";

export function ReadingForm({ bucketId }: { readonly bucketId: string }) {
  const shop = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const format = useFormat();
  const { draft, set, drop, errors, tell } = useForm<ReadingDraft>(`bucket/${bucketId}`, noReading);
  const [refused, setRefused] = useState<string | null>(null);

  const save = async () => {
    const read = check(readingSchema(format), draft);
    tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const done = await shop.log(
      {
        do: "log",
        stream: streamOf("bucket", bucketId),
        type: "bucket-read",
        body: withoutEmpty(read.value),
      },
      { quiet: true },
    );
    setRefused(done.ok ? null : done.text);
    if (!done.ok) return;
    set({ ...noReading, cup: draft.cup });
    await drop();
    say("Reading logged.");
  };

  return (
    <form
      className={css["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className={css["two"]}>
        <NumberField
          label="Cup time"
          quantity="s"
          min={0}
          value={draft.cupS}
          onChange={(cupS) => set({ cupS })}
          error={errors["cupS"]}
        />
        <TextField label="Cup" value={draft.cup} onChange={(cup) => set({ cup })} error={errors["cup"]} />
        <NumberField
          label="Slurry temperature"
          quantity="temp"
          value={draft.slurryC}
          onChange={(slurryC) => set({ slurryC })}
          error={errors["slurryC"]}
        />
        <NumberField
          label="Density"
          quantity="density"
          min={0}
          value={draft.densityGCm3}
          onChange={(densityGCm3) => set({ densityGCm3 })}
          error={errors["densityGCm3"]}
        />
        <NumberField
          label="pH"
          quantity="plain"
          min={0}
          value={draft.pH}
          onChange={(pH) => set({ pH })}
          error={errors["pH"]}
        />
      </div>
      <TextField
        label="Note"
        value={draft.note}
        onChange={(note) => set({ note })}
        hint="Water or binder added, stirred since when."
        error={errors["note"]}
      />
      {refused !== null && (
        <p role="alert" className={css["refused"]}>
          {refused}
        </p>
      )}
      <Button kind="primary" onPress={save}>
        Log the reading
      </Button>
    </form>
  );
}
