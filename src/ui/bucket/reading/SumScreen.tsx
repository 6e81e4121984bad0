import { useState } from "react";
import { bucketCup } from "../../../logbook/bucket/bucketCups.ts";
import { bucketReading } from "../../../logbook/bucket/bucketReading.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { densityWords } from "../../base/format/bucketReadingWords.ts";
import type { Format } from "../../base/format/units.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { useSignals } from "../../base/glove/useSignals.ts";
import type { Form } from "../../base/forms/useForm.ts";
import { bodyOf, isNothing, type ReadDraft } from "./readDraft.ts";
import styles from "./reading.module.css";

/** All that was read, before it goes into the log. */
export function SumScreen(props: {
  readonly standing: BucketStanding;
  readonly shop: Shop;
  readonly form: Form<ReadDraft>;
  readonly onBack: () => void;
  readonly onLogged: (readingId: string) => void;
}) {
  const { standing, shop, form, onBack, onLogged } = props;
  const { draft, set } = form;
  const { log, clock } = useShop();
  const [{ signName }] = useSettings();
  const format = useFormat();
  const signals = useSignals();
  const [openedAt] = useState(clock);
  const body = bodyOf(draft, signName === "" ? null : signName);
  const lines = sumLines({ draft, format, standing, shop, at: openedAt });
  const logIt = async (): Promise<void> => {
    const stream = streamOf("bucket", standing.bucket.id);
    const done = await log({ do: "log", stream, type: "bucket-read", body }, { quiet: true });
    if (!done.ok) return signals.refused(done.text);
    const [entry] = done.entries;
    await form.restart();
    if (entry !== undefined) onLogged(entry.id);
  };
  return (
    <BucketScreen
      title={standing.bucket.name}
      sub={lines.length === 0 ? "Nothing measured yet." : "Your readings:"}
      way={{ text: "Back", onPress: onBack }}
      told={signals.told}
    >
      {lines.length > 0 && (
        <dl className={styles["sum"]}>
          {lines.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
      <BigKey main onPress={logIt} disabled={isNothing(draft)}>
        Log the reading
      </BigKey>
      <BigKey onPress={() => set({ step: "more" })} under="Binder, plate, gel test, smell, photo">
        More checks
      </BigKey>
      <BigKey
        onPress={() => set({ asLeft: !draft.asLeft })}
        under={draft.asLeft ? "Kept off the chart" : "As found, before anything was added"}
      >
        After a correction: {draft.asLeft ? "yes" : "no"}
      </BigKey>
    </BucketScreen>
  );
}

function sumLines({
  draft,
  format,
  standing: { aim },
  shop,
  at,
}: {
  readonly draft: ReadDraft;
  readonly format: Format;
  readonly standing: BucketStanding;
  readonly shop: Shop;
  readonly at: number;
}): readonly (readonly [name: string, value: string])[] {
  const { seconds, density } = bucketReading({ ...bodyOf(draft, null), id: "draft", at }, { aim, shop });
  const cup = draft.cupId === null ? null : bucketCup({ cupId: draft.cupId }, shop);
  const line = (name: string, value: number | null, show: (value: number) => string) =>
    value === null ? null : ([name, show(value)] as const);
  const dips = draft.dips.map((s) => format.number(s, 1)).join(", ");
  const lines = [
    seconds === null
      ? null
      : ([
          cup?.name ?? "Cup",
          `${format.show("s", seconds.seconds)}${draft.dips.length > 1 ? ` (${dips})` : ""}`,
        ] as const),
    line("Slurry", draft.slurryC, (value) => format.show("temp", value)),
    density === null ? null : (["Density", densityWords(density, format)] as const),
    line("pH", draft.pH, (value) => format.number(value, 2)),
    line("Binder density", draft.liquorGCm3, (value) => format.show("density", value)),
    line(
      "Plate",
      draft.plateG,
      (value) => `${format.number(value, 1)}\u00a0g on ${format.number(draft.plateCm2, 0)}\u00a0cm²`,
    ),
    draft.gel === null
      ? null
      : line(draft.gel === "gelled" ? "Gelled after" : "Liquid for", draft.gelH, (value) =>
          format.show("h", value),
        ),
    line("Bacteria", draft.bacteriaPerMl, (value) => `${format.number(value, 0)}\u00a0/mL`),
    line("Oven solids", draft.ovenSolids, (value) => format.show("percent", value)),
    draft.looked
      ? (["Look", draft.signs.length === 0 ? "nothing odd" : draft.signs.join(", ")] as const)
      : null,
    draft.photos.length === 0 ? null : (["Photos", String(draft.photos.length)] as const),
  ];
  return lines.filter((one) => one !== null);
}
