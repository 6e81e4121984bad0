import { crucibleLiftKg } from "../../../logbook/bucket/liftWeights.ts";
import { meltContents } from "../../../logbook/pour/meltContents.ts";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import { useParams } from "wouter";
import { streamOf, type Entry } from "../../../logbook/entries/entry.ts";
import { isPutAway, type Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg, furnaceMemory, usefulPower } from "../../../logbook/fire/furnaceMemory.ts";
import { alloyName, ownMeltFigures, ownMeltHeat } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFigures, useMelt, useMelts } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { WasPutAway } from "../../base/parts/WasPutAway.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { Timeline } from "../../base/history/Timeline.tsx";
import { MeltEndForm } from "./MeltEndForm.tsx";
import { MeltFills } from "./MeltFills.tsx";
import { MeltLearned } from "./MeltLearned.tsx";
import { MeltLive } from "./MeltLive.tsx";
import { MeltStart } from "./MeltStart.tsx";
import { Rows, type Given } from "../../base/parts/Reckoned.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** One melt: planned, on the fire, or through. */
export function MeltPage() {
  const { id } = useParams<{ id: string }>();
  const found = useMelt(id);
  const shop = useFigures();
  const melts = useMelts("ended");
  if (found === undefined || shop === undefined || melts === undefined)
    return <Page title="Melt">{null}</Page>;
  if (found === null)
    return (
      <Page title="Melt" back={paths.fire}>
        <Empty title="No such melt">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  return <OneMelt key={id} melt={found.melt} entries={found.entries} shop={shop} melts={melts} />;
}

function OneMelt({
  melt,
  entries,
  shop,
  melts,
}: {
  readonly melt: Melt;
  readonly entries: readonly Entry[];
  readonly shop: Shop;
  readonly melts: readonly Melt[];
}) {
  const { plan, startedAt, ended } = melt;
  const heat = ownMeltHeat(plan.alloyId, shop);
  const furnace = shop.furnaces.find(({ id }) => id === plan.furnaceId) ?? null;
  const memory = furnaceMemory({
    furnaceId: plan.furnaceId ?? "",
    melts: melts.filter(({ id }) => id !== melt.id),
    shop,
  });
  const powerFor = (isHotStart: boolean) =>
    furnace === null ? null : usefulPower({ furnace, memory, isHotStart });
  return (
    <Page title={`Melt: ${alloyName(plan.alloyId, shop)}`} back={paths.fire}>
      <div className={`${sheet["stack"]} ${sheet["top"]} ${css["columns"]}`}>
        <div className={sheet["stack"]}>
          {startedAt === null && ended === null && (
            <MeltStart melt={melt} heat={heat} furnace={furnace} powerFor={powerFor} />
          )}
          {startedAt !== null && (
            <MeltLive melt={melt} heat={heat} power={powerFor(melt.hotFurnace ?? false)} />
          )}
          {startedAt !== null && ended === null && <MeltEndForm melt={melt} furnace={furnace} />}
          {ended !== null && isPutAway(melt) && (
            <WasPutAway stream={streamOf("melt", melt.id)} ended={ended} />
          )}
          {ended !== null && !isPutAway(melt) && <MeltLearned melt={melt} furnace={furnace} shop={shop} />}
          {ended === null && (
            <Cautions
              step="melt"
              alloyId={plan.alloyId}
              contents={meltContents(melt, shop)}
              weights={{
                crucibleKg: crucibleLiftKg({
                  metalKg: chargedKg(melt),
                  figures: ownMeltFigures(plan.alloyId, shop),
                  furnace,
                }),
                shellKg: null,
              }}
            />
          )}
        </div>
        <div className={sheet["stack"]}>
          <Plan melt={melt} furnaceName={furnace?.name ?? null} />
          <MeltFills melt={melt} />
          <Timeline stream={`melt/${melt.id}`} entries={entries} />
        </div>
      </div>
    </Page>
  );
}

function Plan({ melt, furnaceName }: { readonly melt: Melt; readonly furnaceName: string | null }) {
  const format = useFormat();
  const { plan } = melt;
  return (
    <Card title="Plan">
      <Rows
        rows={[
          [
            (melt.weighedKg ?? null) === null ? "Charge, planned" : "Charge, weighed",
            format.show("kg", chargedKg(melt)),
          ],
          ["To pour at", format.show("temp", plan.pourC)],
          ["Furnace", furnaceName ?? "none"],
          ...(plan.lossShare === undefined
            ? []
            : [["Melt loss, planned", format.show("share", plan.lossShare)] as Given]),
        ]}
      />
      <ul>
        {plan.items.map(({ name, massKg }, at) => (
          <li key={`${at} ${name}`}>
            {name}, {format.show("kg", massKg)}
          </li>
        ))}
      </ul>
      {plan.note !== undefined && <p>{plan.note}</p>}
    </Card>
  );
}
