import { builtInShop } from "../../../logbook/piece/builtIns.ts";
import { alloyChoices, ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import { patternMaterials } from "../../../trade/patternMaterials.ts";
import { useFigures } from "../../base/state/live.ts";
import { volumeText } from "../../base/format/figureText.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { NumberOf, PickOf, SelectOf } from "../../base/forms/BoundFields.tsx";
import type { PlanForm } from "./planForm.ts";

const ways = [
  { value: "mass", label: "By weight" },
  { value: "volume", label: "By volume" },
] as const;

export function PlanMetal({ form }: { readonly form: PlanForm }) {
  const { draft } = form;
  const shop = useFigures() ?? builtInShop;
  const alloy = draft.alloyId === null ? null : ownAlloy(draft.alloyId, shop);
  return (
    <Card title="The metal">
      <SelectOf
        form={form}
        at="alloyId"
        label="Alloy"
        options={alloyChoices(shop, draft.alloyId).map(({ id, name, isOwn }) => ({
          value: id,
          label: isOwn ? `${name} (your own)` : name,
        }))}
        hint="Needed for the shell check: its weight presses on the shell."
      />
      <PickOf form={form} at="metalBy" label="How much metal, casting and gating" options={ways} />
      {draft.metalBy === "mass" ? (
        <NumberOf
          form={form}
          at="metalKg"
          label="Metal"
          hint={`For the charge on pour day. ${weighHint(draft, alloy)}`}
        />
      ) : (
        <NumberOf
          form={form}
          at="metalLitre"
          label="Volume"
          hint="Push the solid pattern under water in a full pail and measure what runs over."
        />
      )}
      <MetalOtherWay draft={draft} alloy={alloy} />
    </Card>
  );
}

/** What a solid pattern's weight times gives the metal's. */
function weighHint({ material }: PlanForm["draft"], alloy: Alloy | null): string {
  const pattern = material === null ? null : patternMaterials[material];
  const density = pattern?.densityKgM3 ?? null;
  if (alloy === null || pattern === null || density === null)
    return "Weigh a solid pattern with its gating; wax times about 9 is bronze, times about 3 aluminium.";
  const ratio = alloy.solidKgM3.value / density.value;
  return `Weigh the solid pattern with its gating: ${pattern.label} times ${ratio.toFixed(1)} is ${alloy.name}.`;
}

function MetalOtherWay({
  draft,
  alloy,
}: {
  readonly draft: PlanForm["draft"];
  readonly alloy: Alloy | null;
}) {
  const format = useFormat();
  if (alloy === null) return null;
  if (draft.metalBy === "volume" && draft.metalLitre !== null)
    return (
      <p>
        That is about {format.show("kg", (draft.metalLitre / 1000) * alloy.solidKgM3.value)} of {alloy.name}.
      </p>
    );
  if (draft.metalBy === "mass" && draft.metalKg !== null)
    return (
      <p>
        That is about {volumeText((draft.metalKg / alloy.solidKgM3.value) * 1000, format)} of {alloy.name}.
      </p>
    );
  return null;
}
