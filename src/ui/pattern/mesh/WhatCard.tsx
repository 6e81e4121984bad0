import { patternMaterials, type PatternMaterial } from "../../../trade/patternMaterials.ts";
import { alloyChoices } from "../../../logbook/shop/ownAlloy.ts";
import type { Recipe, Shop } from "../../../logbook/piece/piece.ts";
import { recipeOptions } from "../../base/format/recipeSizeWords.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import type { PatternController } from "./usePatternController.ts";

const materials = (Object.keys(patternMaterials) as PatternMaterial[]).map((value) => ({
  value,
  label: patternMaterials[value].label,
}));

export function WhatCard({
  door: { study, change },
  shop,
  recipes,
}: {
  readonly door: PatternController;
  readonly shop: Shop;
  readonly recipes: readonly Recipe[];
}) {
  const format = useFormat();
  const material = (value: string | null): PatternMaterial | null =>
    materials.find((one) => one.value === value)?.value ?? null;
  return (
    <Card title="Casting">
      <TextField
        label="Name"
        value={study.name}
        onChange={(name) => change((now) => ({ ...now, name: name.slice(0, 120) }))}
      />
      <SelectField
        label="Alloy"
        options={alloyChoices(shop, study.alloyId).map(({ id, name, isOwn }) => ({
          value: id,
          label: isOwn ? `${name} (your own)` : name,
        }))}
        value={study.alloyId}
        onChange={(alloyId) => change((now) => ({ ...now, alloyId }))}
        hint="For weight, shrink and pressure on the shell."
      />
      <SelectField
        label="Pattern made of"
        options={materials}
        value={study.material}
        onChange={(value) => change((now) => ({ ...now, material: material(value) }))}
      />
      <SelectField
        label="Recipe"
        options={recipeOptions(
          recipes.filter(({ id, retired }) => retired !== true || id === study.recipeId),
          format,
        )}
        value={study.recipeId}
        onChange={(recipeId) => change((now) => ({ ...now, recipeId }))}
        hint="For slurry and stucco use, and for the shell thickness."
        empty="None yet"
      />
    </Card>
  );
}
