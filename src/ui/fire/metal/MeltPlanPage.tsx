import { crucibleLiftKg } from "../../../logbook/bucket/liftWeights.ts";
import { alloyContents, chargeContents, mayHoldOf } from "../../../logbook/pour/meltContents.ts";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { useMemo } from "react";
import { useLocation, useSearch } from "wouter";
import { v7 as uuidv7 } from "uuid";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { furnaceMemory, usefulPower } from "../../../logbook/fire/furnaceMemory.ts";
import { alloyName, ownAlloy, ownMeltFigures, ownMeltHeat } from "../../../logbook/shop/ownAlloy.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { useFigures, useMelts, useRack, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { useSumForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { Refused } from "../../base/forms/Refused.tsx";
import { FumeLimits } from "./FumeLimits.tsx";
import { kept } from "../../../logbook/casting/limits.ts";
import {
  chargeKindOf,
  mayHoldBeryllium,
  meltLimits,
  newMelt,
  weighedIn,
  type MeltDraft,
} from "../../../logbook/casting/meltDraft.ts";
import { MeltFor } from "./MeltFor.tsx";
import { MeltHeatCard } from "./MeltHeatCard.tsx";
import { MeltItems } from "./MeltItems.tsx";
import { mixSum } from "../../../logbook/casting/meltSum.ts";
import { MixVerdict } from "./MixVerdict.tsx";
import { lossTaken, lossFor } from "../../../logbook/casting/chargeSum.ts";
import { lossMemory } from "../../../logbook/fire/furnaceMemory.ts";
import { wantedCharge } from "../../../logbook/casting/wantedCharge.ts";
import sheet from "../../base/styles/sheet.module.css";
import { TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

/** A melt for one or several pieces: what goes in, whether it makes the alloy, and how long it takes. */
export function MeltPlanPage() {
  const shop = useFigures();
  const rack = useRack();
  const melts = useMelts("ended");
  const search = useSearch();
  const asked = useMemo(() => askedIn(search), [search]);
  if (shop === undefined || rack === undefined || melts === undefined)
    return <Page title="Plan a melt">{null}</Page>;
  return <MeltPlan shop={shop} rack={rack} melts={melts} asked={asked} />;
}

function MeltPlan({
  shop,
  rack,
  melts,
  asked,
}: {
  readonly shop: Shop;
  readonly rack: readonly RackItem[];
  readonly melts: readonly Melt[];
  readonly asked: AskedMelt;
}) {
  const { log } = useShop();
  const format = useFormat();
  const [, goTo] = useLocation();
  const known = rack.filter(({ standing }) => asked.pieceIds.includes(standing.piece.id));
  const start: MeltDraft = {
    ...newMelt,
    pieceIds: known.map(({ standing }) => standing.piece.id),
    alloyId: known[0]?.standing.piece.plan.alloyId ?? null,
    furnaceId: asked.furnaceId,
  };
  const form = useSumForm("melt/new", start, { limits: meltLimits, about: asked.about });
  const { draft } = form;
  const alloyNamed = (id: string): string => alloyName(id, shop);
  const alloy = draft.alloyId === null ? null : ownAlloy(draft.alloyId, shop);
  const heat = draft.alloyId === null ? null : ownMeltHeat(draft.alloyId, shop);
  const figures = draft.alloyId === null ? null : ownMeltFigures(draft.alloyId, shop);
  const furnaces = shop.furnaces.filter(({ retired }) => !retired);
  const furnace =
    furnaces.find(({ id }) => id === draft.furnaceId) ??
    (furnaces.length === 1 ? (furnaces[0] ?? null) : null);
  const power =
    furnace === null
      ? null
      : usefulPower({
          furnace,
          memory: furnaceMemory({ furnaceId: furnace.id, melts, shop }),
          isHotStart: draft.start === "hot",
        });
  const mix = mixSum({ items: draft.items, tableId: alloy?.id ?? "", shop, alloyNamed });
  const contents = chargeContents({
    mix: mix.mix?.shares ?? null,
    isWhole: mix.unsaid.length === 0,
    alloy: alloyContents(alloy?.id, shop),
  });
  const thinnestMm = thinnestOf(rack, draft.pieceIds);
  const pourC =
    kept(draft, meltLimits).pourC ??
    (alloy === null ? null : pourHeatOf({ alloy, figures, thinnestMm }).startC);
  const chargeKind = chargeKindOf(draft);
  const { lossShare } = kept(draft, meltLimits);
  const pieces = rack.map(({ standing }) => standing.piece).filter(({ id }) => draft.pieceIds.includes(id));
  const wanted = alloy === null ? null : wantedCharge({ pieces, alloy, chargeKind, lossShare, melts, shop });
  const loss =
    alloy === null
      ? null
      : lossFor({
          draft: { lossShare, chargeKind },
          alloyId: alloy.id,
          learned: lossMemory({ family: alloy.family, melts, shop }),
        });
  const items = weighedIn(draft.items, alloyNamed);

  const reason =
    draft.alloyId === null || alloy === null
      ? "Choose the alloy first."
      : items.length === 0
        ? "Weigh something in first."
        : draft.items.some(mayHoldBeryllium)
          ? "Don’t melt scrap that may contain beryllium. Answer its question, or take it out."
          : pourC === null || pourC < alloy.liquidusC.value
            ? "The pouring temperature is below full melting."
            : null;

  const plan = async (): Promise<void> => {
    if (draft.alloyId === null || pourC === null || reason !== null) return;
    const id = uuidv7();
    const note = draft.note.trim();
    const body = withoutEmpty({
      furnaceId: furnace?.id ?? null,
      alloyId: draft.alloyId,
      pieceIds: draft.pieceIds,
      items,
      pourC,
      chargeKind,
      lossShare: lossTaken(loss),
      mayHold: mix.mix === null || contents === null ? undefined : mayHoldOf(contents),
      note: note === "" ? undefined : note,
    });
    await form.send(
      () => log({ do: "log", stream: streamOf("melt", id), type: "melt-planned", body }, { quiet: true }),
      () => goTo(paths.melt(id)),
    );
  };

  return (
    <Page title="Plan a melt" back={paths.fire}>
      <div className={`${sheet["stack"]} ${sheet["top"]} ${css["columns"]}`}>
        <div className={sheet["stack"]}>
          <MeltFor
            form={form}
            shop={shop}
            rack={rack}
            wanted={wanted}
            loss={loss}
            chargeKind={chargeKind}
            massKg={mix.massKg}
          />
          <MeltItems form={form} shop={shop} />
        </div>
        <div className={sheet["stack"]}>
          <MixVerdict form={form} mix={mix} alloy={alloy} />
          {alloy !== null && heat !== null && figures !== null && pourC !== null && (
            <MeltHeatCard
              form={form}
              alloy={alloy}
              heat={heat}
              figures={figures}
              massKg={mix.massKg}
              pourC={pourC}
              thinnestMm={thinnestMm}
              furnaces={furnaces}
              furnace={furnace}
              power={power}
            />
          )}
          {contents !== null && (
            <>
              <Cautions
                step="melt"
                alloyId={alloy?.id}
                contents={contents}
                weights={{
                  crucibleKg: crucibleLiftKg({ metalKg: mix.massKg, figures, furnace }),
                  shellKg: null,
                }}
              />
              <Card>
                <FumeLimits contents={contents} />
              </Card>
            </>
          )}
          <Card>
            <TextOf form={form} at="note" label="Note" multiline />
            <Refused form={form} plain />
            <Button kind="primary" size="big" disabledReason={reason} onPress={plan}>
              Plan this melt
            </Button>
            {mix.judged?.ok === true && mix.judged.verdict === "fail" && (
              <p className={sheet["soft"]}>
                As weighed it is not {alloy?.name}. You can still plan it, for ingot or a lesser piece.
              </p>
            )}
            <p className={sheet["soft"]}>
              {mix.massKg > 0 ? `${format.show("kg", mix.massKg)} weighed in. ` : ""}The log keeps the charge
              and its possible composition.
            </p>
          </Card>
        </div>
      </div>
    </Page>
  );
}

/** What the address asks for: the pieces, and the crucible they were counted into. */
type AskedMelt = {
  readonly pieceIds: readonly string[];
  readonly furnaceId: string | null;
  readonly about: string;
};

function askedIn(search: string): AskedMelt {
  const asked = new URLSearchParams(search);
  const pieceIds = asked.getAll("piece");
  return { pieceIds, furnaceId: asked.get("furnace"), about: pieceIds.join(" ") };
}

/** Thinnest section of the chosen pieces' meshes, mm; null where none has one. */
function thinnestOf(rack: readonly RackItem[], pieceIds: readonly string[]): number | null {
  const known = rack
    .filter(({ standing }) => pieceIds.includes(standing.piece.id))
    .flatMap(({ standing }) => standing.piece.patterns.at(-1)?.thinnestMm ?? [])
    .filter((mm) => mm > 0);
  return known.length === 0 ? null : Math.min(...known);
}
