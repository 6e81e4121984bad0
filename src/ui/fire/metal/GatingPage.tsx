import { metalContentsOf } from "../../../trade/metals/contents.ts";
import { hazardsOf } from "../../../trade/metals/hazards.ts";
import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { useParams } from "wouter";
import { ownAlloy, ownMeltFigures } from "../../../logbook/shop/ownAlloy.ts";
import { metalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { Piece, Recipe, Shop } from "../../../logbook/piece/piece.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import { usePiece, useRecipes } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useSumForm } from "../../base/forms/useForm.ts";
import { AskPlan } from "../../base/ask/AskPlan.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { isTaken, useGatingOf } from "../../pattern/mesh/useGatingOf.ts";
import { drawnHeadM } from "../../pattern/mesh/drawnHead.ts";
import { TakeGating } from "../../pattern/mesh/TakeGating.tsx";
import { chainSum } from "../../../logbook/casting/chainSum.ts";
import { FeedCard } from "./FeedCard.tsx";
import { FillCard } from "./FillCard.tsx";
import { fillTimes } from "../../../logbook/casting/fillTimes.ts";
import { gatingDraftOf, gatingLimits } from "../../../logbook/casting/gatingDraft.ts";
import { gatingSum } from "../../../logbook/casting/gatingSum.ts";
import { HeadCard } from "./HeadCard.tsx";
import { HeadSave, isSameHead } from "./HeadSave.tsx";
import { KnockoutCard } from "./KnockoutCard.tsx";
import { kept } from "../../../logbook/casting/limits.ts";
import { RunCard } from "./RunCard.tsx";
import { metalHot, mostFillS, runSum } from "../../../logbook/casting/runSum.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";

/** Sprue, gates and feeding of a piece: how fast it fills, whether it runs full, where it freezes early. */
export function GatingPage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  const recipes = useRecipes();
  if (found === undefined || recipes === undefined) return <Page title="Gating and feeding">{null}</Page>;
  if (found === null)
    return (
      <Page title="Gating and feeding" back={paths.rack}>
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  const { piece, shop, wall } = found.item.standing;
  const { alloyId } = piece.plan;
  const alloy = alloyId === undefined ? null : ownAlloy(alloyId, shop);
  const figures = alloyId === undefined ? null : ownMeltFigures(alloyId, shop);
  if (alloy === null || figures === null)
    return (
      <Page title="Gating and feeding" back={paths.piece(id)}>
        <Empty title="Which metal?">
          <p>All figures here depend on the alloy.</p>
          <AskPlan piece={piece} what="alloy" />
        </Empty>
      </Page>
    );
  return (
    <Gating
      key={id}
      piece={piece}
      shop={shop}
      recipes={recipes}
      alloy={alloy}
      figures={figures}
      shellMm={wall.reachedMm}
    />
  );
}

function Gating({
  piece,
  shop,
  recipes,
  alloy,
  figures,
  shellMm,
}: {
  readonly piece: Piece;
  readonly shop: Shop;
  readonly recipes: readonly Recipe[];
  readonly alloy: Alloy;
  readonly figures: MeltFigures;
  readonly shellMm: number;
}) {
  const { plan } = piece;
  const mesh = piece.patterns.at(-1) ?? null;
  const start = gatingDraftOf({ metalKg: metalOf(piece, alloy), headM: plan.headM, mesh, shellMm });
  const form = useSumForm(`gating/${piece.id}`, start, { limits: gatingLimits });
  const { draft } = form;
  const gating = useGatingOf(plan.patternId, alloy.solidKgM3.value);
  // Taken from the pattern, the plan's head may be the drawn cup's, over the part of the shell that asks most.
  const drawnM =
    gating !== null && gating.found !== null && isTaken(gating.found, draft)
      ? drawnHeadM(gating.study, { shop, recipes })
      : null;
  const isHeadDrawn = drawnM !== null && plan.headM !== undefined && isSameHead(plan.headM, drawnM);
  const { massKg, wallMm, fillS, runMm, runWidthMm } = kept(draft, gatingLimits);
  const { stream } = alloy;
  const heat = pourHeatOf({ alloy, figures, thinnestMm: wallMm });
  const hot = metalHot(draft, alloy, figures);
  const liquidKgM3 = figures.crucibleKgM3.value;
  const mostS =
    hot === null ? null : mostFillS({ hot, alloy, figures, massKg, wayMm: runMm, widthMm: runWidthMm });
  const times = massKg === null ? null : fillTimes({ massKg, gate: draft.gate, alloy, wallMm, mostS });
  const timeS = fillS ?? times?.plannedS ?? null;
  const quickestS = fillS === null ? (times?.leastS ?? null) : null;
  const sum = gatingSum({ draft, massKg, timeS, quickestS, liquidKgM3, stream });
  // Gates that give less than is poured set the pace.
  const takenS = timeS === null ? null : Math.min(3600, Math.max(timeS, sum.throughGates?.fillS ?? 0));
  const run = hot === null ? null : runSum({ draft, hot, alloy, figures, fillS: takenS });
  const chain = chainSum({
    draft,
    alloy,
    figures,
    metalC: hot?.metalC ?? heat.startC,
    shellC: hot?.shellC ?? 20,
  });
  return (
    <Page
      title="Gating and feeding"
      back={paths.piece(piece.id)}
      actions={<LinkButton href={paths.metal(piece.id)}>Metal</LinkButton>}
    >
      <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
        {plan.name}, in {alloy.name}. Entries here stay on this device, not in the log. All figures are
        estimates for planning.
      </p>
      {hazardsOf(metalContentsOf(alloy.id) ?? {}).includes("oxide-film") && (
        <Card tone="watch">
          <p>This metal forms a tough skin as it flows: fill it gently from below.</p>
        </Card>
      )}
      <div className={`${sheet["stack"]} ${sheet["top"]} ${css["columns"]}`}>
        <div className={sheet["stack"]}>
          {gating !== null && <TakeGating gating={gating} form={form} />}
          <HeadCard form={form} sum={sum} />
          {!isHeadDrawn && <HeadSave piece={piece} draft={draft} />}
          <FillCard form={form} times={times} timeS={timeS} sum={sum} />
          <RunCard form={form} hot={hot} run={run} alloy={alloy} heat={heat} limitMS={sum.limitMS} />
        </div>
        <div className={sheet["stack"]}>
          <FeedCard form={form} sum={chain} alloy={alloy} figures={figures} mesh={mesh} />
          <KnockoutCard
            sum={chain}
            thickestMm={mesh?.thickestMm ?? null}
            treeModulusMm={mesh?.treeModulusMm ?? null}
            alloy={alloy}
          />
        </div>
      </div>
    </Page>
  );
}
