import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { holdWords, refusedWords } from "./makeUpWords.ts";
import { byComposition, holdOf, waterByDensity } from "../../../logbook/bucket/makeUpSums.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./makeUp.module.css";

/** Make-up water two ways, side by side: by the density just weighed, and by what went in and out. */
export function WaterCard({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { ledger, aim } = standing;
  const sum = waterByDensity(standing);
  const made = byComposition(standing, aim.solSilica.value);
  const hold = holdOf(standing);
  const litres = (kg: number): string => (kg < 0.005 ? "none" : format.show("litre", kg));
  return (
    <Card title="Make-up water">
      <div className={css["pair"]}>
        <p>
          <span className={sheet["soft"]}>By density</span>
          <strong className={css["figure"]}>
            {sum === null ? "–" : sum.water.ok ? litres(sum.water.waterL) : "no water"}
          </strong>
        </p>
        <p>
          <span className={sheet["soft"]}>By composition</span>
          <strong className={css["figure"]}>
            {made === null ? "–" : made.ok ? litres(made.waterKg) : "no water"}
          </strong>
        </p>
      </div>
      {hold !== null && (
        <p>
          <strong>{holdWords[hold]}</strong>
        </p>
      )}
      {sum === null && <p>By density: weigh it, set its target and log how much is in it.</p>}
      {sum !== null && !sum.water.ok && <p>{refusedWords(sum.water, format)}</p>}
      {made === null && (
        <p className={sheet["soft"]}>
          By composition: not known. Log a new batch with what went in, and set its mix ratio.
        </p>
      )}
      {made !== null && ledger?.waterLostKg === null && (
        <p className={sheet["soft"]}>Not weighed since the last addition: no loss is counted yet.</p>
      )}
      {hold === null &&
        sum?.water.ok === true &&
        made?.ok === true &&
        Math.abs(sum.water.waterL - made.waterKg) > 0.2 * Math.max(0.5, sum.water.waterL) && (
          <p>
            The two differ. Measure the volume and start with the smaller amount. “By density” is right only
            if evaporation raised the density.
          </p>
        )}
      <p>
        Distilled or deionised water only: hard water flocks out the silica. Add half, stir, check, then add
        the rest.
      </p>
      {sum !== null && (
        <Reckoned
          formula="ΔV = V · (ρ − ρ₀) ÷ (ρ₀ − 1)"
          given={[
            ["In the bucket V", format.show("litre", sum.volumeL)],
            ["Density read ρ", format.show("density", sum.densityGCm3)],
            ["Density aimed at ρ₀", format.show("density", sum.targetGCm3)],
          ]}
          source="derived: masses and volumes add up"
        />
      )}
      {made !== null && ledger !== null && (
        <Reckoned
          title="How composition is calculated"
          formula="W₊ = S · (1 − s₀) ÷ s₀ − W"
          given={[
            ["Silica in it S", format.show("kg", ledger.now.silicaKg)],
            ["Water in it W", format.show("kg", ledger.now.waterKg)],
            ["Silica of the liquid at the start s₀", format.show("share", ledger.startSilica)],
          ]}
          source="derived: a mass balance of all that was mixed, added, dipped out and lost; water lost by the last density"
        />
      )}
    </Card>
  );
}
