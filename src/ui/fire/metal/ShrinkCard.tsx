import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { MeltFigures } from "../../../trade/metals/alloy.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { asGiven, checkFields, figure, type DraftOf } from "../../base/forms/formFields.ts";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Ago } from "../../base/parts/Ago.tsx";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { ownShrink } from "../../../logbook/casting/ownShrink.ts";
import { NumberOf, PickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const fields = {
  patternMm: figure("patternMm", { what: "length on the pattern", remedy: "Measure between two marks." }),
  castingMm: figure("castingMm", {
    what: "length on the casting",
    remedy: "Measure between the same two marks.",
  }),
  held: asGiven<"free" | "restrained">("free"),
};

const readShrink = (draft: DraftOf<typeof fields>, format: Format) =>
  checkFields(fields, draft, format, ({ patternMm, castingMm }) =>
    castingMm >= 0.9 * patternMm && castingMm <= 1.02 * patternMm
      ? {}
      : {
          castingMm: "A casting is a few percent smaller than its pattern. Check both lengths.",
        },
  );

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
  const form = useEntryForm(`shrink/${alloyId}`, fields, { check: readShrink });
  const add = async (): Promise<void> => {
    await form.save(
      (read) => log({ do: "log", stream: shopStream, type: "shrink-measured", body: { alloyId, ...read } }),
      { restart: () => say("Measured shrink logged.") },
    );
  };
  const seen = shop.shrinks.filter((shrink) => shrink.alloyId === alloyId);
  return (
    <Card title="Measured shrink">
      {(["free", "restrained"] as const).map((held) => (
        <Learned key={held} held={held} alloyId={alloyId} shop={shop} />
      ))}
      {seen.length === 0 && figures !== null && (
        <p>
          Starting value {format.show("share", figures.shrinkLow.value)}
          {figures.shrinkHigh.value > figures.shrinkLow.value &&
            ` to ${format.show("share", figures.shrinkHigh.value)}`}
          . Three of your own pieces give a better one.
        </p>
      )}
      <div className={css["fields"]}>
        <NumberOf form={form} at="patternMm" label="On the pattern" />
        <NumberOf form={form} at="castingMm" label="On the casting" />
      </div>
      <PickOf
        form={form}
        at="held"
        label="During cooling"
        options={[
          { value: "free", label: "Free to shrink" },
          { value: "restrained", label: "Held" },
        ]}
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
      for a mean.
    </p>
  );
}
