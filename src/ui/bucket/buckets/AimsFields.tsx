import { useState } from "react";
import { Link } from "wouter";
import { bucketCup } from "../../../logbook/bucket/bucketCups.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { cups } from "../../../trade/cups.ts";
import { flours } from "../../../trade/flours.ts";
import { slurryStarts } from "../../../trade/slurryTargets.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import type { AimsDraft, BucketForm } from "./bucketForm.ts";
import { startingAims } from "./startingAims.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, SelectOf } from "../../base/forms/BoundFields.tsx";
import css from "./BucketsPage.module.css";

type NumberKey = Exclude<keyof AimsDraft, "flourId" | "cupId">;

const bandRows: readonly (readonly [key: NumberKey, label: string])[] = [
  ["lowS", "Viscosity (s), from"],
  ["highS", "Viscosity (s), to"],
  ["densityGCm3", "Density"],
  ["slurryC", "Temperature"],
];
const mixRows: typeof bandRows = [
  ["flourGCm3", "Flour density"],
  ["ratio", "Flour to binder, by mass"],
  ["solSilica", "Silica in the binder"],
  ["solGCm3", "Binder density"],
];
const sizeRows: typeof bandRows = [
  ["fullL", "Full"],
  ["leastL", "Minimum volume to dip"],
  ["openM2", "Open surface"],
];

/** What the bucket should read and what it is made of; starting values are filled in only when asked for. */
export function AimsFields({ form, shop }: { readonly form: BucketForm; readonly shop: Pick<Shop, "cups"> }) {
  const { draft, set } = form;
  const format = useFormat();
  const [startId, setStartId] = useState<string | null>(null);
  const [isFilled, setFilled] = useState(false);
  const fill = (): void => {
    const cupKind = draft.cupId === null ? null : (bucketCup({ cupId: draft.cupId }, shop)?.kind ?? null);
    const aims = startId === null ? null : startingAims({ startId, use: draft.use, cupKind });
    if (aims === null) return;
    set({ ...aims, cupId: draft.cupId ?? "zahn-4" });
    setFilled(true);
  };
  const fields = (rows: typeof bandRows) => (
    <div className={`${sheet["halves"]} ${sheet["top"]}`}>
      {rows.map(([key, label]) => (
        <NumberOf key={key} form={form} at={key} label={label} />
      ))}
    </div>
  );
  // A round number in either system.
  const acrossMm = format.unit("mm") === "in" ? 304.8 : 300;
  const own = shop.cups.filter(({ retired, id }) => !retired || id === draft.cupId);
  return (
    <>
      <h2 className={css["part"]}>Targets</h2>
      <SelectField
        label="Starting values for"
        empty="Choose a mix"
        options={slurryStarts.map(({ id, label }) => ({ value: id, label }))}
        value={startId}
        onChange={setStartId}
      />
      <Button onPress={fill} disabledReason={startId === null ? "Choose a mix first." : null}>
        Fill in starting values
      </Button>
      {isFilled && (
        <p role="status" className={`${sheet["pale"]} ${sheet["breaks"]}`}>
          Typical values. Replace them with your supplier’s data sheet.{" "}
          <Link href={paths.figures} className={sheet["link"]}>
            Where they come from
          </Link>
        </p>
      )}
      <SelectOf
        form={form}
        at="cupId"
        label="Cup"
        empty="Not set"
        hint="Use one of your own named cups: no two run alike."
        options={[
          ...own.map(({ id, name }) => ({ value: id, label: name })),
          ...cups.map(({ id, label }) => ({ value: id, label: `Generic ${label}` })),
        ]}
      />
      {fields(bandRows)}
      <h2 className={css["part"]}>What it is made of</h2>
      <SelectOf
        form={form}
        at="flourId"
        label="Flour"
        options={flours.map(({ id, label }) => ({ value: id, label }))}
        also={(flourId) => ({
          flourGCm3: flours.find(({ id }) => id === flourId)?.densityGCm3.value ?? draft.flourGCm3,
        })}
      />
      {fields(mixRows)}
      <h2 className={css["part"]}>Drying time</h2>
      <NumberOf
        form={form}
        at="leastDryH"
        label="Minimum drying time"
        hint="Before the next coat, in any air. Empty: the shop’s minimum for this kind of coat."
      />
      <h2 className={css["part"]}>Size</h2>
      {fields(sizeRows)}
      <p className={`${sheet["pale"]} ${sheet["breaks"]}`}>
        A round bucket {format.show("mm", acrossMm)} across has an open surface of{" "}
        {format.show("m2", (Math.PI / 4) * (acrossMm / 1000) ** 2)}.
      </p>
    </>
  );
}
