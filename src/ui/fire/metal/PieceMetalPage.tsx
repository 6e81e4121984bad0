import { Link, useParams } from "wouter";
import { furnaceMemory, lossMemory } from "../../../logbook/fire/furnaceMemory.ts";
import { ownAlloy, ownMeltFigures } from "../../../logbook/shop/ownAlloy.ts";
import { metalKnownOf, metalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { Piece, Shop } from "../../../logbook/piece/piece.ts";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { patternMaterials } from "../../../trade/patternMaterials.ts";
import { useMelts, usePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useSumForm } from "../../base/forms/useForm.ts";
import { AskPlan } from "../../base/ask/AskPlan.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { ChargeCard } from "./ChargeCard.tsx";
import { chargeFor, gatingKgOf, lossFor, lossTaken, marginFor } from "../../../logbook/casting/chargeSum.ts";
import { CrucibleCard } from "./CrucibleCard.tsx";
import { HeatCard } from "./HeatCard.tsx";
import { massDraftOf, massLimits } from "../../../logbook/casting/massDraft.ts";
import { massByRoutes } from "../../../logbook/casting/massRoutes.ts";
import { MetalSave } from "./MetalSave.tsx";
import { RoutesCard } from "./RoutesCard.tsx";
import { ScaleCard } from "./ScaleCard.tsx";
import { StudioRatio } from "./StudioRatio.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** How much metal a piece takes, by every way there is, and what to weigh in for it. */
export function PieceMetalPage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  const melts = useMelts("ended");
  if (found === undefined || melts === undefined) return <Page title="Metal">{null}</Page>;
  if (found === null)
    return (
      <Page title="Metal" back={paths.rack}>
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  const { piece, shop } = found.item.standing;
  const { alloyId } = piece.plan;
  const alloy = alloyId === undefined ? null : ownAlloy(alloyId, shop);
  const figures = alloyId === undefined ? null : ownMeltFigures(alloyId, shop);
  if (alloyId === undefined || alloy === null || figures === null)
    return (
      <Page title="Metal" back={paths.piece(id)}>
        <Empty title="Which metal?">
          <p>All figures here depend on the alloy.</p>
          <AskPlan piece={piece} what="alloy" />
        </Empty>
      </Page>
    );
  return (
    <PieceMetal
      key={`${id} ${alloyId}`}
      piece={piece}
      shop={shop}
      melts={melts}
      alloyId={alloyId}
      alloy={alloy}
      figures={figures}
    />
  );
}

type Props = {
  readonly piece: Piece;
  readonly shop: Shop;
  readonly melts: readonly Melt[];
  readonly alloyId: string;
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
};

function PieceMetal({ piece, shop, melts, alloyId, alloy, figures }: Props) {
  const { plan } = piece;
  const mesh = piece.patterns.at(-1) ?? null;
  const form = useSumForm(`metal/${piece.id}`, massDraftOf(plan, mesh), { limits: massLimits });
  const { draft } = form;
  const metalKgM3 = alloy.solidKgM3.value;
  const routes = massByRoutes({ draft, mesh, metalKgM3 });
  const used = routes.lines.find(({ route }) => route === routes.chosen?.used.route) ?? null;
  const planKg = metalOf(piece, alloy);
  const castingKg = used?.mass?.likelyKg ?? planKg;
  const fromPlan = used === null && planKg !== null;
  const waxKgM3 = patternMaterials.wax.densityKgM3?.value ?? 930;
  const gatingKg = fromPlan ? 0 : gatingKgOf({ draft, mesh, metalKgM3, waxKgM3 });
  const loss = lossFor({
    draft,
    alloyId: alloy.id,
    learned: lossMemory({ family: alloy.family, melts, shop }),
  });
  const margin = marginFor(draft, used?.route ?? null, metalKnownOf(piece, alloy));
  const charge =
    castingKg === null ? null : chargeFor({ draft, castingKg, gatingKg, margin, lossShare: lossTaken(loss) });
  const furnaces = shop.furnaces.filter(({ retired }) => !retired);
  const furnace =
    furnaces.find(({ id }) => id === draft.furnaceId) ??
    (furnaces.length === 1 ? (furnaces[0] ?? null) : null);
  const memory = furnaceMemory({ furnaceId: furnace?.id ?? "", melts, shop });
  const volumeCm3 = routes.chosen?.used.volumeCm3 ?? null;
  return (
    <Page
      title="Metal"
      back={paths.piece(piece.id)}
      actions={<LinkButton href={paths.gating(piece.id)}>Gating and feeding</LinkButton>}
    >
      <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
        {plan.name}, in <Link href={paths.alloy(alloyId)}>{alloy.name}</Link>. Entries here stay on this
        device until you save the metal to the plan.
      </p>
      <div className={`${sheet["stack"]} ${sheet["top"]} ${css["columns"]}`}>
        <div className={sheet["stack"]}>
          <RoutesCard form={form} routes={routes} mesh={mesh} material={plan.material ?? null} />
          <StudioRatio draft={draft} material={plan.material ?? null} alloy={alloy} />
          <ScaleCard
            form={form}
            shop={shop}
            alloyId={alloyId}
            figures={figures}
            material={plan.material ?? null}
          />
        </div>
        <div className={sheet["stack"]}>
          {fromPlan && (
            <Card tone="note">
              <p>Nothing measured here yet. The charge uses the plan’s metal, casting and gating together.</p>
            </Card>
          )}
          <ChargeCard
            form={form}
            charge={charge}
            margin={margin}
            loss={loss}
            mesh={mesh}
            isWhole={fromPlan || draft.withGating === "yes"}
          />
          {used !== null && castingKg !== null && volumeCm3 !== null && (
            <MetalSave
              piece={piece}
              alloy={alloy}
              metalKg={castingKg + gatingKg}
              metalKnown={margin}
              hasGating={gatingKg > 0 || draft.withGating === "yes"}
            />
          )}
          <HeatCard
            form={form}
            alloy={alloy}
            figures={figures}
            thinnestMm={mesh?.thinnestMm ?? null}
            chargeKg={charge?.chargeKg ?? null}
            furnaces={furnaces}
            furnace={furnace}
            memory={memory}
          />
          <CrucibleCard form={form} meltKg={charge?.meltKg ?? null} figures={figures} furnace={furnace} />
        </div>
      </div>
    </Page>
  );
}
