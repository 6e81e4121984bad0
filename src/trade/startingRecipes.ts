import type { RecipeBody, RecipeCoat } from "./coats.ts";
import { usualFactor, wallFigures } from "./wallFigures.ts";

const prime = (stuccoId: string): RecipeCoat => ({ kind: "prime", stuccoId, targetDryness: 0.95 });
const intermediate = (stuccoId: string): RecipeCoat => ({
  kind: "intermediate",
  stuccoId,
  targetDryness: 0.95,
});
const backups = (count: number, stuccoId: string): readonly RecipeCoat[] =>
  Array.from({ length: count }, () => ({ kind: "backup", stuccoId, targetDryness: 0.95 }));
/** The seal is the last coat before fire, so it asks for more than a coat that another one covers. */
const seal: RecipeCoat = { kind: "seal", stuccoId: null, targetDryness: 0.99 };
const usual = { morMPa: wallFigures.strengthMPa.value, safetyFactor: usualFactor.value };

/**
 * Recipes to start from, until a shop has its own. Stacks and least walls: common practice, no source. Strength
 * 4 MPa: fired fused silica, from memory of Jones & Yuan 2003 and Beeley & Smart, Investment Casting (1995), known
 * to a factor of 2. Factor 3: judgement, the usual limit of the verdict.
 */
export const startingRecipes: readonly (RecipeBody & { readonly id: string })[] = [
  {
    id: "start-small",
    name: "Small fine work",
    coats: [
      prime("80-120"),
      prime("80-120"),
      intermediate("50-100"),
      ...backups(2, "30-50"),
      ...backups(2, "20-40"),
      seal,
    ],
    ...usual,
    floorMm: 4.5,
    note: "Up to about 1 kg of bronze.",
  },
  {
    id: "start-general",
    name: "General bronze",
    coats: [prime("80-120"), prime("80-120"), intermediate("30-80"), ...backups(5, "16-30"), seal],
    ...usual,
    floorMm: 6.5,
    note: "About 1 to 10 kg of bronze.",
  },
  {
    id: "start-large",
    name: "Large or high head",
    coats: [
      prime("80-120"),
      prime("80-120"),
      intermediate("30-80"),
      ...backups(2, "16-30"),
      ...backups(5, "10-20"),
      seal,
    ],
    ...usual,
    floorMm: 10,
    note: "About 10 to 50 kg of bronze, or a tall sprue.",
  },
];

/** The metal a starting recipe is meant for, kg of bronze, casting and gating: common practice, no source. */
export const startingSizeKg: Readonly<Record<string, { readonly low: number; readonly high: number }>> = {
  "start-small": { low: 0, high: 1 },
  "start-general": { low: 1, high: 10 },
  "start-large": { low: 10, high: 50 },
};

export function startingRecipeOf(id: string): (RecipeBody & { readonly id: string }) | null {
  return startingRecipes.find((recipe) => recipe.id === id) ?? null;
}
