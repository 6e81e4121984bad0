import { brimShare, crucibleFill, type CrucibleFill } from "../../physics/metal/crucible.ts";
import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import type { PourTold } from "../entries/fireBodies.ts";
import type { Melt } from "../fire/fireStates.ts";
import { lossFor, lossTaken } from "../casting/chargeSum.ts";
import { chargedKg, chargeKindOfMelt } from "../fire/furnaceMemory.ts";
import { ownAlloy, ownMeltFigures } from "../shop/ownAlloy.ts";
import type { Shop } from "../piece/piece.ts";
import { metalOf } from "../piece/pieceMetal.ts";
import { pourShell, type PourShell } from "./pourShells.ts";
import type { Furnace } from "../shop/shopThings.ts";
import type { Standing } from "../piece/standing.ts";

/** Shells, metal and crucible of one pour. */
export type PourSupply = {
  readonly shells: readonly PourShell[];
  readonly furnace: Furnace | null;
  readonly alloy: Alloy | null;
  readonly figures: MeltFigures | null;
  /** Metal there is or will be, less its loss, kg; null where neither a melt nor a person says. */
  readonly metalKg: number | null;
  /** `weighed`: off the scale, in a melt that has begun. All else is a plan. */
  readonly metalFrom: "weighed" | "planned" | null;
  /** What the shells hold together, kg; null where one of them isn't known. */
  readonly wantedKg: number | null;
  readonly fill: CrucibleFill | null;
};

type From = {
  readonly standings: readonly Standing[];
  readonly melt: Melt | null;
  readonly shop: Shop;
  readonly told: Pick<PourTold, "metalKg" | "thinnestMm">;
};

/** `told.thinnestMm` is in the order of the standings. */
export function pourSupply({ standings, melt, shop, told }: From): PourSupply {
  const alloyId =
    melt?.plan.alloyId ??
    standings.find(({ piece }) => piece.plan.alloyId !== undefined)?.piece.plan.alloyId ??
    "";
  const alloy = ownAlloy(alloyId, shop);
  const figures = ownMeltFigures(alloyId, shop);
  const furnaces = shop.furnaces.filter(({ retired }) => !retired);
  const furnace =
    shop.furnaces.find(({ id }) => id === melt?.plan.furnaceId) ??
    (melt === null && furnaces.length === 1 ? (furnaces[0] ?? null) : null);
  const shells = standings.map((standing, place) =>
    pourShell(standing, {
      toldMm: told.thinnestMm[place] ?? null,
      metalKg: metalOf(standing.piece, alloy),
      alloy,
    }),
  );
  const wantedKg = shells.reduce<number | null>(
    (sum, { metalKg }) => (sum === null || metalKg === null ? null : sum + metalKg),
    0,
  );
  const metalKg = melt === null ? told.metalKg : meltedKg(melt, alloy);
  const isWeighed = melt !== null && melt.startedAt !== null && (melt.weighedKg ?? null) !== null;
  const brimMl = furnace?.crucibleL === undefined ? null : furnace.crucibleL * 1000;
  return {
    shells,
    furnace,
    alloy,
    figures,
    metalKg,
    metalFrom: metalKg === null ? null : isWeighed ? "weighed" : "planned",
    wantedKg: shells.length === 0 ? null : wantedKg,
    fill:
      metalKg === null || brimMl === null || figures === null
        ? null
        : crucibleFill({
            meltKg: metalKg,
            liquidKgM3: figures.crucibleKgM3.value,
            brimMl,
            fillShare: brimShare.tongs,
          }),
  };
}

/** What is left of a charge once it is melted, kg: by the loss its plan was made with, in older logs by that of its kind of charge. */
function meltedKg(melt: Melt, alloy: Alloy | null): number {
  const { lossShare } = melt.plan;
  const chargeKind = chargeKindOfMelt(melt.plan);
  const loss = lossFor({
    draft: { lossShare: lossShare ?? null, chargeKind },
    alloyId: alloy?.id ?? "",
    learned: { kind: "nothing-weighed" },
  });
  return chargedKg(melt) * (1 - lossTaken(loss));
}
