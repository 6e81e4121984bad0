import {
  coreLiftN,
  coreNeedsN,
  mouthResistanceSM,
  neckHoldN,
  pinHoldN,
  pinYieldMPa,
} from "../../physics/shell/coreLift.ts";
import { coreFigures } from "../../trade/coreFigures.ts";
import { geometryClasses, type GeometryClass } from "../../trade/geometryClasses.ts";
import { wallLimits } from "../../trade/wallFigures.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import { ranges, within, type NumberRange } from "../entries/ranges.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import type { Shop } from "./piece.ts";

export type CoreStanding = {
  readonly litre: number;
  /** Lift when it stands in liquid metal, N; null while the alloy is not known. */
  readonly liftN: number | null;
  /** What pins and neck hold together, N; null while neither is known. */
  readonly holdN: number | null;
  /** What must hold it, N, for the same doubt as a wall's; null while the lift is not known. */
  readonly needN: number | null;
  /** `holds` by the limit at which a wall carries; null while lift or hold is not known. */
  readonly verdict: "holds" | "floats" | null;
};

const known = (range: NumberRange, value: number | undefined): number | null =>
  within(range, value) ? value : null;

/** A core against its lift in the metal; null where the plan has none. */
export function coreStanding({ core, alloyId }: PiecePlan, shop: Shop): CoreStanding | null {
  const litre = known(ranges.coreLitre, core?.litre);
  if (core === undefined || litre === null) return null;
  const alloy = alloyId === undefined ? null : ownAlloy(alloyId, shop);
  const metalKgM3 = known(ranges.densityKgM3, alloy?.liquidKgM3.value);
  const coreKgM3 = known(ranges.coreKgM3, core.densityKgM3) ?? coreFigures.coreKgM3.value;
  const coreMPa = known(ranges.coreMPa, core.morMPa) ?? coreFigures.coreMPa.value;
  const liftN = metalKgM3 === null ? null : coreLiftN({ litre, metalKgM3, coreKgM3 });
  const [pins, pinMm] = [known(ranges.pins, core.pins), known(ranges.pinMm, core.pinMm)];
  const [mouthMm, depthMm] = [known(ranges.mouthMm, core.mouthMm), known(ranges.coreDepthMm, core.depthMm)];
  // Metal around a cold pin stands at its liquidus.
  const pinsN =
    pins === null || pinMm === null || alloy === null
      ? null
      : pinHoldN({
          pins,
          pinMm,
          seatMm: coreFigures.pinSeatMm.value,
          yieldMPa: pinYieldMPa(alloy.liquidusC.value),
          coreMPa,
        });
  const neckN = mouthMm === null || depthMm === null ? null : neckHoldN({ mouthMm, depthMm, coreMPa });
  const holdN = pinsN === null && neckN === null ? null : (pinsN ?? 0) + (neckN ?? 0);
  const needN =
    liftN === null
      ? null
      : coreNeedsN({ liftN, spread: coreFigures.holdSpread.value, least: wallLimits.carries.value });
  if (needN === null || holdN === null) return { litre, liftN, holdN, needN, verdict: null };
  return { litre, liftN, holdN, needN, verdict: holdN >= needN ? "holds" : "floats" };
}

/**
 * How the inside of a core dries through its mouth: the kind of place whose resistance is nearest, on a scale of ratios.
 * A core whose mouth or depth is not known counts as blind.
 */
export function corePlace(core: NonNullable<PiecePlan["core"]>): GeometryClass {
  const [litre, mouthMm, depthMm] = [
    known(ranges.coreLitre, core.litre),
    known(ranges.mouthMm, core.mouthMm),
    known(ranges.coreDepthMm, core.depthMm),
  ];
  if (litre === null || mouthMm === null || depthMm === null) return "blind";
  const here = Math.log(mouthResistanceSM({ litre, mouthMm, depthMm }));
  const away = (place: GeometryClass): number => Math.abs(Math.log(geometryClasses[place].pocketSM) - here);
  return (["blind", "recess", "corner"] as const).reduce((nearest, one) =>
    away(one) < away(nearest) ? one : nearest,
  );
}
