import { recipeCarries } from "../../../logbook/piece/recipeCarries.ts";
import { useFigures } from "../../base/state/live.ts";
import { headText } from "../../base/format/figureText.ts";
import { useFormat } from "../../base/state/useFormat.ts";

type Asked = Parameters<typeof recipeCarries>[0];

/** How broad a flat and how wide a tube a recipe's shell carries under a usual head of bronze. */
export function RecipeCarries({
  recipe: { id, coats, morMPa, safetyFactor },
}: {
  readonly recipe: {
    readonly id?: string | undefined;
    readonly coats: Asked["coats"];
    readonly morMPa: number | null;
    readonly safetyFactor: number | null;
  };
}) {
  const format = useFormat();
  const shop = useFigures();
  if (shop === undefined || morMPa === null || safetyFactor === null) return null;
  const carried = recipeCarries({ id, coats, morMPa, safetyFactor }, shop);
  if (carried === null) return null;
  return (
    <p>
      Under {headText(carried.headM, format)} of silicon bronze it carries a square flat up to{" "}
      {format.show("mm", carried.flatMm)}, a tube up to {format.show("mm", carried.tubeMm)} across.
    </p>
  );
}
