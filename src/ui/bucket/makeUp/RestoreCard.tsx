import { useState } from "react";
import type { Makings } from "../../../logbook/entries/bucketBodies.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { binders } from "../../../trade/binders.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { DustNote } from "./DustNote.tsx";
import { byComposition, holdOf, massOf } from "../../../logbook/bucket/makeUpSums.ts";
import { holdWords, overWateredWords } from "./makeUpWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./makeUp.module.css";

/** Water, binder and flour that bring it back to how it was made, by all that went in and out. */
export function RestoreCard({
  standing,
  onPutIn,
}: {
  readonly standing: BucketStanding;
  readonly onPutIn: (makings: Makings, solSilica: number) => void;
}) {
  const format = useFormat();
  const { aim, ledger } = standing;
  const [silica, setSilica] = useState<number | null>(aim.solSilica.value);
  if (ledger === null) return null;
  const back = silica === null ? null : byComposition(standing, silica);
  const hold = holdOf(standing);
  const parts =
    back?.ok === true
      ? [
          { name: "Water", text: format.show("litre", back.waterKg), kg: back.waterKg },
          { name: "Binder", text: format.show("kg", back.solKg), kg: back.solKg },
          { name: "Flour", text: format.show("kg", back.flourKg), kg: back.flourKg },
        ].filter(({ kg }) => kg >= 0.005)
      : [];
  return (
    <Card title="Back to its first mix">
      {aim.ratio === null ? (
        <p>Set the flour to binder ratio of its mix to calculate this.</p>
      ) : (
        <NumberField
          label="Silica in the sol at hand"
          quantity="percent"
          value={silica}
          onChange={setSilica}
          min={0.02}
          max={0.6}
          hint={`Usual: ${binders.map(({ silica: { value } }) => format.show("percent", value)).join(", ")}`}
        />
      )}
      {back !== null && !back.ok && <p className={sheet["refused"]}>{overWateredWords(back, format)}</p>}
      {back?.ok === true && parts.length === 0 && <p>Nothing to add: it still matches its first mix.</p>}
      {parts.length > 0 && (
        <ol className={`${sheet["stack3"]} ${sheet["list"]} ${css["order"]}`}>
          {parts.map(({ name, text }) => (
            <li key={name}>
              <strong>
                {name}: {text}
              </strong>
            </li>
          ))}
        </ol>
      )}
      {back?.ok === true && back.flourKg >= 0.005 && <DustNote />}
      {hold !== null && parts.length > 0 && <p>{holdWords[hold]}</p>}
      {hold === null && back?.ok === true && massOf(back) >= 0.005 && silica !== null && (
        <Button onPress={() => onPutIn(back, silica)}>Add this</Button>
      )}
      <Reckoned
        formula="water: S·(1 − s₀)/s₀ − W; too much water: B = [s₀·(S + W) − S]/(s − s₀); then flour: R·(S + W + added) − F"
        given={[
          ["Flour in it F", format.show("kg", ledger.now.flourKg)],
          ["Silica of the binder in it S", format.show("kg", ledger.now.silicaKg)],
          ["Water in it W", format.show("kg", ledger.now.waterKg)],
          ["Used on pieces", format.show("kg", ledger.dippedKg)],
          ["Mix ratio R", aim.ratio === null ? "not set" : format.number(aim.ratio.value, 2)],
          ["Silica at the start s₀", format.show("share", ledger.startSilica)],
        ]}
        source="derived: a mass balance; dips take all parts in proportion, drying takes water alone"
      />
    </Card>
  );
}
