import { meltFor } from "../../../logbook/pour/meltTie.ts";
import { meltContents } from "../../../logbook/pour/meltContents.ts";
import { useMelts, usePours, type RackItem } from "../../base/state/live.ts";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import type { CautionStep } from "../../base/cautions/cautionWords.ts";
import { weightsOf } from "../../base/cautions/weightsOf.ts";

/** The cautions of a step for one piece: by the mix it was poured from where that is known, else by its alloy. */
export function PieceCautions({ step, item }: { readonly step: CautionStep; readonly item: RackItem }) {
  const melts = useMelts();
  const pours = usePours();
  // The mix may be worse than the alloy: nothing is said until the melts are read.
  if (melts === undefined || pours === undefined) return null;
  const { piece, shop } = item.standing;
  const melt = meltFor(piece, { melts, pours });
  return (
    <Cautions
      step={step}
      alloyId={piece.plan.alloyId}
      material={piece.plan.material}
      contents={melt === null ? null : meltContents(melt, shop)}
      weights={weightsOf(item)}
    />
  );
}
