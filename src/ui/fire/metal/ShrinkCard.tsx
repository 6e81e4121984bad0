import { z } from "zod";
import { shopStream } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { MeltFigures } from "../../../trade/metals/alloy.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { check, figure } from "../../base/forms/fieldSchema.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { Ago } from "../../base/parts/Ago.tsx";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { ownShrink } from "./ownShrink.ts";
import css from "./metal.module.css";

type Draft = {
  readonly patternMm: number | null;
  readonly castingMm: number | null;
  readonly held: "free" | "restrained";
};

const schemaOf = (format: Format) =>
  z
    .object({
      patternMm: figure(format, {
        what: "length on the pattern",
        quantity: "mm",
        range: ranges.gaugeMm,
        remedy: "Measure between two marks.",
      }),
      castingMm: figure(format, {
        what: "length on the casting",
        quantity: "mm",
        range: ranges.gaugeMm,
        remedy: "Measure between the same two marks.",
      }),
      held: z.enum(["free", "restrained"]),
    })
    .refine(({ patternMm, castingMm }) => castingMm >= 0.9 * patternMm && castingMm <= 1.02 * patternMm, {
      path: ["castingMm"],
      message: "A casting comes out a few percent smaller than its pattern. Look at both lengths again.",
    });

const heldWords = { free: "shrinking freely", restrained: "held by a core or its shape" } as const;

/** Shrink as this shop has measured it, with its spread once three pieces are in. */
export function ShrinkCard({
  alloyId,
  shop,
  figures,
}: {
  readonly alloyId: string;
  readonly shop: Shop;
  readonly figures: MeltFigures | null;
}) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<Draft>(`shrink/${alloyId}`, { patternMm: null, castingMm: null, held: "free" });
  const { draft, set, errors } = form;
  const add = async (): Promise<void> => {
    const read = check(schemaOf(format), draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const body = { alloyId, ...read.value };
    const result = await log({ do: "log", stream: shopStream, type: "shrink-measured", body });
    if (!result.ok) return;
    await form.restart();
    say("Measured shrink logged.");
  };
  const seen = shop.shrinks.filter((shrink) => shrink.alloyId === alloyId);
  return (
    <Card title="Shrink as you measured it">
      {(["free", "restrained"] as const).map((held) => (
        <Learned key={held} held={held} alloyId={alloyId} shop={shop} />
      ))}
      {seen.length === 0 && figures !== null && (
        <p>
          Starting value {format.show("share", figures.shrinkLow.value)}
          {figures.shrinkHigh.value > figures.shrinkLow.value &&
            ` to ${format.show("share", figures.shrinkHigh.value)}`}
          . Three pieces of your own do better.
        </p>
      )}
      <div className={css["fields"]}>
        <NumberField
          label="On the pattern"
          quantity="mm"
          min={0}
          value={draft.patternMm}
          onChange={(patternMm) => set({ patternMm })}
          error={errors["patternMm"]}
        />
        <NumberField
          label="On the casting"
          quantity="mm"
          min={0}
          value={draft.castingMm}
          onChange={(castingMm) => set({ castingMm })}
          error={errors["castingMm"]}
        />
      </div>
      <Choice
        label="It was"
        options={[
          { value: "free", label: "Free to shrink" },
          { value: "restrained", label: "Held" },
        ]}
        value={draft.held}
        onChange={(held) => set({ held })}
      />
      <Button onPress={add}>Log the shrink</Button>
      {seen.length > 0 && (
        <details>
          <summary>{seen.length === 1 ? "1 measurement" : `${seen.length} measurements`}</summary>
          <ul>
            {seen.toReversed().map(({ id, at, patternMm, castingMm, held }) => (
              <li key={id}>
                {format.show("mm", patternMm)} became {format.show("mm", castingMm)},{" "}
                {format.show("share", patternMm / castingMm - 1)}, {heldWords[held]}, <Ago at={at} />
              </li>
            ))}
          </ul>
        </details>
      )}
      <Reckoned
        formula="shrink by the rule = pattern ÷ casting − 1; mean and sample deviation from three pieces on"
        source="derived here; pattern maker's rule"
      />
    </Card>
  );
}

function Learned({
  held,
  alloyId,
  shop,
}: {
  readonly held: "free" | "restrained";
  readonly alloyId: string;
  readonly shop: Shop;
}) {
  const format = useFormat();
  const learned = ownShrink({ shop, alloyId, held });
  if (learned.kind === "learned")
    return (
      <p>
        <strong>
          {format.show("share", learned.meanShare)} ± {format.show("share", learned.sdShare)}
        </strong>{" "}
        {heldWords[held]}, mean of {learned.pieces} pieces
      </p>
    );
  return learned.pieces === 0 ? null : (
    <p>
      {learned.pieces} of {learned.needed} pieces {heldWords[held]}: {learned.needed - learned.pieces} more
      and a mean stands here.
    </p>
  );
}
