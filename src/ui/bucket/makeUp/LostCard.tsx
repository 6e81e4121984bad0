import { useState } from "react";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import { massCheck } from "../../../physics/slurry/stock.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./makeUp.module.css";

type What = "counted" | "lost" | "thrown-away";
type LostDraft = { readonly what: What; readonly litre: number | null };

/** What is in it as measured, and what was spilt or thrown away. A count far off what was written asks first. */
export function LostCard({ standing }: { readonly standing: BucketStanding }) {
  const { bucket, volume } = standing;
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<LostDraft>(`bucket-lost/${bucket.id}`, { what: "counted", litre: null });
  const { draft } = form;
  const [asked, setAsked] = useState(false);
  const off =
    draft.what === "counted" && volume !== null && volume.volumeL > 0 && within(ranges.bucketL, draft.litre)
      ? massCheck({ reckonedKg: volume.volumeL, weighedKg: draft.litre })
      : null;
  const mustAsk = off?.ask === true && volume?.basis !== "full";
  const change = (changes: Partial<LostDraft>): void => {
    setAsked(false);
    form.set(changes);
  };
  const bound = { ...form, set: change, errors: { litre: form.refused ?? undefined } };
  const save = async (): Promise<void> => {
    const { what, litre } = draft;
    if (litre === null) return form.refuse("Measure the volume with a dip stick, then enter it.");
    if (mustAsk && !asked) return setAsked(true);
    const stream = streamOf("bucket", bucket.id);
    await form.send(
      () =>
        what === "counted"
          ? log({ do: "log", stream, type: "bucket-counted", body: { litre } }, { quiet: true })
          : log({ do: "log", stream, type: "bucket-lost", body: { litre, how: what } }, { quiet: true }),
      {
        restart: () => {
          setAsked(false);
          say("In the log.");
        },
      },
    );
  };
  return (
    <details className={`${sheet["panel"]} ${css["fold"]}`}>
      <summary>Measured, lost, thrown away</summary>
      <div className={`${sheet["stack3"]} ${css["inside"]}`}>
        <PickOf
          form={bound}
          at="what"
          label="What"
          options={[
            { value: "counted", label: "Measured", hint: "What is in it now" },
            { value: "lost", label: "Lost", hint: "Spilt, dripped" },
            { value: "thrown-away", label: "Thrown away" },
          ]}
        />
        <NumberOf
          form={bound}
          at="litre"
          label={draft.what === "counted" ? "In the bucket" : "How much"}
          quantity="litre"
          min={0}
          max={ranges.bucketL.high}
        />
        {volume !== null && (
          <p className={sheet["soft"]}>
            By the log there should be {format.show("litre", volume.volumeL)} in it.
          </p>
        )}
        {asked && off !== null && (
          <p role="alert" className={sheet["refused"]}>
            That is {format.show("percent", Math.abs(off.share))} {off.share < 0 ? "less" : "more"} than the
            log gives. Is a mix, a top-up or a spill missing? Log that first. If not, log the volume as
            measured.
          </p>
        )}
        <Button onPress={save}>{asked ? "Log it as measured" : "Log it"}</Button>
      </div>
    </details>
  );
}
