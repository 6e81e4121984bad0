import { useMemo } from "react";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { furnaceMemory, usefulPower } from "../../../logbook/fire/furnaceMemory.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { useAlarmSource } from "../../base/alarm/alarmSources.ts";
import type { AlarmSource } from "../../base/alarm/ringDue.ts";
import { WatcherGuard } from "../../base/parts/WatcherGuard.tsx";
import { useFigures, useMelts } from "../../base/state/live.ts";
import { sensedMelt } from "./pourParts.ts";
import { meltDues } from "./meltDues.ts";

/** The due times of every melt that is on the fire. Draws nothing. */
export function MeltDues() {
  const lit = useMelts("open")?.filter(({ startedAt }) => startedAt !== null) ?? [];
  return lit.length === 0 ? null : <LitMelts lit={lit} />;
}

function LitMelts({ lit }: { readonly lit: readonly Melt[] }) {
  const melts = useMelts();
  const shop = useFigures();
  if (melts === undefined || shop === undefined) return null;
  return lit.map((melt) => (
    <WatcherGuard key={melt.id} watches="Alarms for a melt">
      <OneMelt melt={melt} melts={melts} shop={shop} />
    </WatcherGuard>
  ));
}

function OneMelt({
  melt,
  melts,
  shop,
}: {
  readonly melt: Melt;
  readonly melts: readonly Melt[];
  readonly shop: Shop;
}): null {
  const source = useMemo((): AlarmSource => {
    const furnace = shop.furnaces.find(({ id }) => id === melt.plan.furnaceId) ?? null;
    const ended = melts.filter((other) => other.ended !== null);
    const power =
      furnace &&
      usefulPower({
        furnace,
        memory: furnaceMemory({ furnaceId: furnace.id, melts: ended, shop }),
        isHotStart: melt.hotFurnace ?? false,
      });
    const dues = meltDues(melt, sensedMelt({ melt, power, shop }), alloyName(melt.plan.alloyId, shop));
    return { key: `melt/${melt.id}`, dues, since: 0, missed: "rung" };
  }, [melt, melts, shop]);
  useAlarmSource(source);
  return null;
}
