import type { PourTold } from "../../../logbook/entries/fireBodies.ts";
import type { Melt, Run } from "../../../logbook/fire/fireStates.ts";
import {
  chargedKg,
  furnaceMemory,
  usefulPower,
  type PowerKnown,
} from "../../../logbook/fire/furnaceMemory.ts";
import { crucibleLiftKg, shellLiftKg } from "../../../logbook/bucket/liftWeights.ts";
import { alloyContents, meltContents } from "../../../logbook/pour/meltContents.ts";
import { ownMeltHeat } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { airAround, type ShellBed } from "../../../logbook/fire/shellOut.ts";
import type { Sensed } from "../../../logbook/pour/pourStanding.ts";
import { pourSupply, type PourSupply } from "../../../logbook/pour/pourSupply.ts";
import { plannedSegments } from "../../../logbook/fire/runStanding.ts";
import { scheduleCurve } from "../../../physics/heat/firingSegments.ts";
import { meltEnergyJ, meltTimeS } from "../../../physics/metal/melt.ts";
import type { Contents } from "../../../physics/metal/scrap.ts";
import type { RackItem } from "../../base/state/live.ts";
import type { Weights } from "../../base/cautions/liftWords.ts";
import { meltExpected } from "../../../logbook/casting/meltCourse.ts";

/** All that a pour rests on beside its own log. */
export type PourParts = PourSupply & {
  readonly items: readonly RackItem[];
  readonly run: Run | null;
  readonly melt: Melt | null;
  readonly power: PowerKnown | null;
  readonly airC: number;
  readonly shop: Shop;
};

type From = {
  readonly items: readonly RackItem[];
  readonly run: Run | null;
  readonly melt: Melt | null;
  readonly melts: readonly Melt[];
  readonly shop: Shop;
  readonly told: Pick<PourTold, "metalKg" | "thinnestMm">;
};

export function pourParts({ items, run, melt, melts, shop, told }: From): PourParts {
  const supply = pourSupply({ standings: items.map(({ standing }) => standing), melt, shop, told });
  const { furnace } = supply;
  return {
    ...supply,
    items,
    run,
    melt,
    power:
      furnace === null
        ? null
        : usefulPower({
            furnace,
            memory: furnaceMemory({ furnaceId: furnace.id, melts, shop }),
            isHotStart: melt?.hotFurnace ?? false,
          }),
    airC: airAround(items[0]?.standing ?? { room: null }),
    shop,
  };
}

/** What the metal of a pour may hold: the melt's mix, else the alloy planned; null where none is named. */
export const pourContents = ({ melt, alloy, shop }: PourParts): Contents | null =>
  melt === null ? alloyContents(alloy?.id, shop) : meltContents(melt, shop);

/** What is lifted at a pour, and broken out after it: the crucible, and the heaviest shell. */
export function pourWeights({ items, shells, metalKg, figures, furnace }: PourParts): Weights {
  const kilograms = items.flatMap(
    ({ standing }, at) => shellLiftKg(standing, shells[at]?.metalKg ?? null) ?? [],
  );
  return {
    crucibleKg: crucibleLiftKg({ metalKg, figures, furnace }),
    shellKg: kilograms.length === 0 ? null : Math.max(...kilograms),
  };
}

/** How the shells stand, for the cooling sums. */
export const bedOf = (
  { airC }: Pick<PourParts, "airC">,
  { bed, sandC, family }: Pick<ShellBed, "bed" | "sandC" | "family">,
): ShellBed => ({ bed, sandC, airC, family });

/** Minutes of a run's plan from its start to its end. */
export const runMinutes = (run: Run): number =>
  scheduleCurve(plannedSegments(run.segments), run.plan.startC).at(-1)?.endMin ?? 0;

/** A charge goes in as cold as a room, °C: starting value. */
const chargeC = 20;

/** Minutes to melt so much by the furnace's own figures; null where one of them isn't known. */
export function meltMinutes(
  { alloy, power, shop, melt }: Pick<PourParts, "alloy" | "power" | "shop" | "melt">,
  { massKg, pourC }: { readonly massKg: number | null; readonly pourC: number },
): number | null {
  const heat = alloy === null ? null : ownMeltHeat(melt?.plan.alloyId ?? alloy.id, shop);
  if (heat === null || power === null || massKg === null || !(massKg > 0)) return null;
  if (pourC < heat.liquidusC || pourC > 2500) return null;
  const energyJ = meltEnergyJ({ ...heat, massKg, fromC: chargeC, pourC });
  return meltTimeS({ energyJ, usefulW: power.likelyW }) / 60;
}

/** What a started melt says of its step; null before its start. */
export function sensedMelt({ melt, power, shop }: Pick<PourParts, "melt" | "power" | "shop">): Sensed | null {
  if (melt === null || melt.startedAt === null) return null;
  const { startedAt, readings, plan, ended } = melt;
  const heat = ownMeltHeat(plan.alloyId, shop);
  const massKg = chargedKg(melt);
  const hot = readings.find(({ metalC }) => metalC >= plan.pourC);
  const expected =
    heat === null || power === null || !(massKg > 0) || plan.pourC < heat.liquidusC
      ? null
      : meltExpected({ startedAt, readings, power, massKg, heat, pourC: plan.pourC });
  return {
    step: "metal-melted",
    startedAt,
    endsAt: expected?.likelyAt ?? null,
    doneAt: hot?.at ?? ended?.at ?? null,
  };
}
