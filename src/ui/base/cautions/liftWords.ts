import {
  crucibleLift,
  hoistAboveKg,
  needsTwo,
  shankAboveKg,
  shellTwoAboveKg,
} from "../../../trade/lifting.ts";
import type { Format } from "../format/units.ts";

/** What hangs on people's arms, kg; null where it isn't known. */
export type Weights = {
  /** Crucible with its metal. */
  readonly crucibleKg: number | null;
  /** The heaviest shell with its metal. */
  readonly shellKg: number | null;
};

export const noWeights: Weights = { crucibleKg: null, shellKg: null };

/** What is too heavy for one person or for two, and what to lift it with; empty where all of it is light or unknown. */
export function liftLines({ crucibleKg, shellKg }: Weights, format: Format): readonly string[] {
  return [...crucibleLine(crucibleKg, format), ...shellLine(shellKg, format)];
}

function crucibleLine(kg: number | null, format: Format): readonly string[] {
  if (kg === null) return [];
  const about = `Crucible and metal weigh about ${format.show("kg", Math.round(kg))}`;
  switch (crucibleLift(kg)) {
    case "hoist":
      return [`${about}. Above ${format.show("kg", hoistAboveKg.value)} use a hoist.`];
    case "shank":
      return [`${about}. Above ${format.show("kg", shankAboveKg.value)}: two people and a shank, not tongs.`];
    case "tongs":
      return [];
  }
}

const shellLine = (kg: number | null, format: Format): readonly string[] =>
  kg !== null && needsTwo(kg)
    ? [
        `A shell with its metal weighs about ${format.show("kg", Math.round(kg))}. Above ${format.show("kg", shellTwoAboveKg.value)}: two people or a hoist. Lift it only when the metal is frozen.`,
      ]
    : [];
