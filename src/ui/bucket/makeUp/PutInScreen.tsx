import { useState } from "react";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import type { Makings } from "../../../logbook/entries/bucketBodies.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { expectedText } from "../../base/format/bucketAdviceWords.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { useSignals } from "../../base/glove/useSignals.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import type { Form } from "../../base/forms/useForm.ts";
import { AmountScreen } from "./AmountScreen.tsx";
import { DustNote } from "./DustNote.tsx";
import { foretold, massOf } from "../../../logbook/bucket/makeUpSums.ts";
import { amountAsked, amountText, amountsOf, whyOf, type AmountKey, type PutInDraft } from "./putIn.ts";
import css from "./makeUp.module.css";

/** What was put into the bucket, by big keys; then it is in the log with what the next reading should say. */
export function PutInScreen(props: {
  readonly standing: BucketStanding;
  readonly form: Form<PutInDraft>;
  readonly onOver: (logged: boolean) => void;
}) {
  const { standing, form, onOver } = props;
  const { draft, set } = form;
  const { log } = useShop();
  const format = useFormat();
  const signals = useSignals();
  const [asking, setAsking] = useState<AmountKey | null>(null);
  const { bucket, aim } = standing;
  const makings: Makings = { flourKg: draft.flourKg, solKg: draft.solKg, waterKg: draft.waterKg };
  const isBatch = draft.what === "batch";

  if (asking !== null)
    return (
      <AmountScreen
        asked={amountAsked(asking, { isBatch })}
        value={draft[asking]}
        onNext={(value) => {
          set({ [asking]: value });
          setAsking(null);
        }}
        onBack={() => setAsking(null)}
      />
    );

  const why = whyOf(makings);
  const expected = isBatch ? null : foretold(standing, makings);
  const logIt = async (): Promise<void> => {
    const stream = streamOf("bucket", bucket.id);
    const silica = draft.solKg > 0 ? aim.solSilica.value : undefined;
    const solSilica = draft.solSilica ?? silica;
    const done = isBatch
      ? await log(
          {
            do: "log",
            stream,
            type: "bucket-mixed",
            body: withoutEmpty({
              ...makings,
              litre: draft.litre === 0 ? undefined : draft.litre,
              solSilica: draft.solKg > 0 ? solSilica : undefined,
            }),
          },
          { quiet: true },
        )
      : await log(
          {
            do: "log",
            stream,
            type: "bucket-topped",
            body: withoutEmpty({
              ...makings,
              why,
              lid: why === "evaporation" ? draft.lid : undefined,
              solSilica: draft.solKg > 0 ? solSilica : undefined,
              expected:
                expected === null
                  ? undefined
                  : withoutEmpty({
                      densityGCm3: rounded(expected.densityGCm3, 4),
                      cupS:
                        expected.secondsBand === null ? undefined : rounded(expected.secondsBand.likelyS, 1),
                    }),
            }),
          },
          { quiet: true },
        );
    if (!done.ok) return signals.refused(done.text);
    await form.restart();
    onOver(true);
  };
  const keys = amountsOf({ isBatch });
  return (
    <BucketScreen
      title={isBatch ? "New batch: what goes in" : "What goes in"}
      sub={isBatch ? "Liquids first, then the flour under stirring." : undefined}
      way={{ text: "Back", onPress: () => onOver(false) }}
      told={signals.told}
    >
      {draft.flourKg > 0 && <DustNote />}
      {keys.map((key) => (
        <BigKey key={key} onPress={() => setAsking(key)} under={amountAsked(key, { isBatch }).hint}>
          {amountAsked(key, { isBatch }).name}: {amountText(key, draft[key], format)}
        </BigKey>
      ))}
      {!isBatch && why === "evaporation" && (
        <BigKey
          onPress={() => set({ lid: draft.lid === "on" ? "off" : "on" })}
          under="The bucket’s own evaporation is learned from this"
        >
          Lid since the last top-up: {draft.lid}
        </BigKey>
      )}
      {expected !== null && <p className={css["expected"]}>{expectedText(expected, format)}</p>}
      {expected !== null && aim.fullL !== null && expected.newVolumeL > aim.fullL * 1.005 && (
        <p className={css["expected"]}>
          That makes {format.show("litre", expected.newVolumeL)}; full, it holds{" "}
          {format.show("litre", aim.fullL)}. Add less, or take some out first.
        </p>
      )}
      {isBatch && bucket.mixes.length > 0 && (
        <p className={css["expected"]}>New batch: what was in the bucket before no longer counts.</p>
      )}
      <div className={css["foot"]}>
        <BigKey main onPress={logIt} disabled={massOf(makings) <= 0}>
          Log it as added
        </BigKey>
      </div>
    </BucketScreen>
  );
}

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
