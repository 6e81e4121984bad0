import { streamOf } from "../../../logbook/entries/entry.ts";
import type { PlanChanges } from "../../../logbook/entries/pieceBodies.ts";
import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { alloyChoices } from "../../../logbook/shop/ownAlloy.ts";
import { NumberOf, PickOf, SelectOf } from "../forms/BoundFields.tsx";
import { Refused } from "../forms/Refused.tsx";
import { useEntryForm } from "../forms/useEntryForm.ts";
import { Button } from "../parts/Button.tsx";
import { useFleeting } from "../state/fleeting.ts";
import { useFigures } from "../state/live.ts";
import { useShop } from "../state/shop.tsx";
import sheet from "../styles/sheet.module.css";
import css from "./AskPlan.module.css";
import { metalFields, partOf, partOptions, wallFields } from "./askFields.ts";

/** One thing a plan lacks. */
export type AskedOfPlan = "alloy" | "head" | "part" | "metal";

const fields = { ...wallFields, ...metalFields };

const notYet: Record<AskedOfPlan, string> = {
  alloy: "Choose the alloy first.",
  head: "Enter the head first.",
  part: "Choose the part and enter its size first.",
  metal: "Enter the metal first.",
};

/** One question at the place that needs the answer; it is saved in the plan of the piece. */
export function AskPlan({
  piece,
  what,
}: {
  readonly piece: Pick<Piece, "id" | "plan">;
  readonly what: AskedOfPlan;
}) {
  const shop = useShop();
  const figures = useFigures() ?? builtInShop;
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useEntryForm(`ask/${piece.id}/${what}`, fields);
  const { draft } = form;
  const changes = changesOf(what, draft);
  const save = () =>
    form.save(
      () =>
        shop.logAll(
          changes === null
            ? []
            : [{ do: "log", stream: streamOf("piece", piece.id), type: "piece-changed", body: { changes } }],
          { quiet: true },
        ),
      () => say("Saved in the plan."),
    );
  return (
    <div
      role="group"
      aria-label={`Asked of ${piece.plan.name}`}
      className={`${sheet["stack3"]} ${css["ask"]}`}
    >
      {what === "alloy" && (
        <SelectOf
          form={form}
          at="alloyId"
          label="Which alloy?"
          options={alloyChoices(figures, draft.alloyId).map(({ id, name, isOwn }) => ({
            value: id,
            label: isOwn ? `${name} (your own)` : name,
          }))}
          empty="Choose one"
        />
      )}
      {what === "metal" && (
        <NumberOf
          form={form}
          at="metalKg"
          label={`How much metal does ${piece.plan.name} take?`}
          hint="Casting and gating together. An estimate will do; weigh the pattern when you can."
        />
      )}
      {what === "head" && (
        <NumberOf
          form={form}
          at="headMm"
          label="How high is the head?"
          hint="From the lip of the cup straight down to the lowest part, as it will be poured."
        />
      )}
      {what === "part" && (
        <>
          <PickOf
            form={form}
            at="part"
            label="Which is the weakest part of the shell?"
            options={partOptions}
            hint="The broadest flat low down; if there is none, the widest tube."
          />
          {(draft.part === "flat" || draft.part === "rim") && (
            <>
              <NumberOf form={form} at="widthMm" label="Its short side" />
              <NumberOf form={form} at="lengthMm" label="Its long side" />
            </>
          )}
          {draft.part === "round" && <NumberOf form={form} at="diameterMm" label="Its diameter" />}
        </>
      )}
      <Refused form={form} plain />
      <div>
        <Button disabledReason={changes === null ? notYet[what] : null} onPress={save}>
          Save in the plan
        </Button>
      </div>
    </div>
  );
}

/** The answer as it changes the plan; null while it is not given. */
function changesOf(
  what: AskedOfPlan,
  draft: { readonly [K in keyof typeof fields]: (typeof fields)[K]["start"] },
): PlanChanges | null {
  switch (what) {
    case "alloy":
      return draft.alloyId === null ? null : { alloyId: draft.alloyId };
    case "metal":
      return draft.metalKg === null ? null : { metalKg: draft.metalKg };
    case "head":
      return draft.headMm === null ? null : { headM: draft.headMm / 1000 };
    case "part": {
      const part = partOf(draft);
      return part === null ? null : { part };
    }
  }
}
