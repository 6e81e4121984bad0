import { useState } from "react";
import type { Makings } from "../../../logbook/entries/bucketBodies.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import { firstMix, type FirstMix } from "../../../physics/slurry/slurry.ts";
import { flourVolumeFractions } from "../../../trade/slurryTargets.ts";
import { flours } from "../../../trade/flours.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { DustNote } from "./DustNote.tsx";
import { cannotFlowWords } from "./makeUpWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, PickOf, SelectOf } from "../../base/forms/BoundFields.tsx";
import css from "./makeUp.module.css";

type MixDraft = {
  readonly litres: number | null;
  readonly by: "ratio" | "fraction";
  readonly ratio: number | null;
  readonly fraction: number | null;
  readonly flourId: string | null;
  readonly flourGCm3: number | null;
};

/** A first mix of so many litres, of any flour: by its ratio, or by the share of volume that makes a slurry flow. */
export function FirstMixCard(props: {
  readonly standing: BucketStanding;
  readonly isOpen: boolean;
  readonly onPutIn: (makings: Makings, litre: number) => void;
}) {
  const { standing, isOpen, onPutIn } = props;
  const { aim, bucket } = standing;
  const format = useFormat();
  const seed = flourVolumeFractions[bucket.use === "prime" || bucket.use === "single" ? "prime" : "backup"];
  const form = useForm<MixDraft>(`first-mix/${bucket.id}`, {
    litres: aim.fullL ?? 20,
    by: aim.ratio === null ? "fraction" : "ratio",
    ratio: aim.ratio?.value ?? null,
    fraction: seed.value,
    flourId: bucket.targets.flourId ?? null,
    flourGCm3: aim.flourGCm3?.value ?? null,
  });
  const { draft } = form;
  const [open, setOpen] = useState(isOpen);
  const mix = mixOf(draft, { binderGCm3: aim.solGCm3.value, binderSilica: aim.solSilica.value });
  return (
    <details
      className={`${sheet["panel"]} ${css["fold"]}`}
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>A first mix</summary>
      <div className={`${sheet["stack3"]} ${css["inside"]}`}>
        <div className={css["two"]}>
          <NumberOf
            form={form}
            at="litres"
            label="How much"
            quantity="litre"
            min={0.1}
            max={ranges.bucketL.high}
          />
          <SelectOf
            form={form}
            at="flourId"
            label="Flour"
            empty="Another flour"
            options={flours.map(({ id, label }) => ({ value: id, label }))}
            also={(flourId) => ({
              flourGCm3: flours.find(({ id }) => id === flourId)?.densityGCm3.value ?? draft.flourGCm3,
            })}
          />
          <NumberOf
            form={form}
            at="flourGCm3"
            label="Flour density"
            quantity="density"
            min={ranges.flourGCm3.low}
            max={ranges.flourGCm3.high}
          />
          {draft.by === "ratio" ? (
            <NumberOf
              form={form}
              at="ratio"
              label="Flour to binder, by mass"
              quantity="plain"
              min={ranges.ratio.low}
              max={ranges.ratio.high}
            />
          ) : (
            <NumberOf
              form={form}
              at="fraction"
              label="Flour, of the volume"
              quantity="percent"
              min={0.05}
              max={0.6}
              hint={`Starting value ${format.show("share", seed.value)}`}
            />
          )}
        </div>
        <PickOf
          form={form}
          at="by"
          label="Calculate by"
          options={[
            { value: "ratio", label: "Mix ratio" },
            { value: "fraction", label: "Flour without a known mix ratio" },
          ]}
        />
        {mix === null && <p>Fill in the volume, the flour density and the mix.</p>}
        {mix !== null && !mix.ok && <p className={sheet["refused"]}>{cannotFlowWords(mix, format)}</p>}
        {mix?.ok === true && <Mix mix={mix} />}
        {mix?.ok === true && (
          <Button
            onPress={() => onPutIn({ flourKg: mix.flourKg, solKg: mix.solKg, waterKg: 0 }, draft.litres ?? 0)}
          >
            Mix this
          </Button>
        )}
        <Reckoned
          formula="B = N ÷ (1/ρb + R/ρf); F = R · B; by volume: R = φ·ρf ÷ [(1 − φ)·ρb]"
          given={[
            ["Binder density ρb", format.show("density", aim.solGCm3.value)],
            ["Silica in it", format.show("share", aim.solSilica.value)],
          ]}
          source="derived: volumes add up; typical shares of volume stand on the figures page"
        />
      </div>
    </details>
  );
}

function Mix({ mix }: { readonly mix: Extract<FirstMix, { readonly ok: true }> }) {
  const format = useFormat();
  return (
    <>
      <ol className={`${sheet["stack3"]} ${sheet["list"]} ${css["order"]}`}>
        <li>
          <strong>
            Binder: {format.show("kg", mix.solKg)} ({format.show("litre", mix.solL)})
          </strong>
          <span>First, into a clean bucket with the stirrer running.</span>
        </li>
        <li>
          <strong>Flour: {format.show("kg", mix.firstFlourKg)}</strong>
          <span>90% of it, slowly, as fast as it wets. Then let it stir.</span>
        </li>
        <li>
          <strong>Flour: up to {format.show("kg", mix.flourKg - mix.firstFlourKg)} more</strong>
          <span>Add the rest by the cup. Stop at the target viscosity.</span>
        </li>
      </ol>
      <DustNote />
      <p className={sheet["soft"]}>
        {format.show("density", mix.densityGCm3)}, {format.number(mix.ratio, 2)} of flour to one of binder,{" "}
        {format.show("percent", mix.solids)} solids, {format.show("percent", mix.flourVolumeFraction)} of the
        volume flour.
      </p>
    </>
  );
}

function mixOf(
  { litres, by, ratio, fraction, flourGCm3 }: MixDraft,
  binder: { readonly binderGCm3: number; readonly binderSilica: number },
): FirstMix | null {
  if (litres === null || litres <= 0 || litres > ranges.bucketL.high) return null;
  if (!within(ranges.flourGCm3, flourGCm3)) return null;
  const from = { volumeL: litres, flourGCm3, ...binder };
  if (by === "ratio") return within(ranges.ratio, ratio) ? firstMix({ ...from, ratio }) : null;
  return within(ranges.share, fraction) ? firstMix({ ...from, flourVolumeFraction: fraction }) : null;
}
