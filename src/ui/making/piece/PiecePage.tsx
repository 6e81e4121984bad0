import { useParams } from "wouter";
import { dryingAsked } from "../../../logbook/drying/dryingAsked.ts";
import { isPastPour } from "../../../rules/stage.ts";
import { usePiece, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { WallSection } from "../../base/charts/WallSection.tsx";
import { FinalDryCard } from "../finalDry/FinalDryCard.tsx";
import { WithActionBar } from "../../base/parts/ActionBar.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { PieceMelt } from "../../fire/metal/PieceMelt.tsx";
import { KnockoutWaits } from "../../fire/pour/KnockoutWaits.tsx";
import { CracksCard } from "./CracksCard.tsx";
import { DryingCard } from "./DryingCard.tsx";
import { FindingList } from "./FindingList.tsx";
import { NextCard } from "./NextCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./PiecePage.module.css";
import { PieceGuard } from "./PieceGuard.tsx";
import { PiecePhotos } from "./PiecePhotos.tsx";
import { PutAway } from "./PutAway.tsx";
import { SaidAtDips } from "./SaidAtDips.tsx";
import { Timeline } from "../../base/history/Timeline.tsx";
import { UnreadNote } from "./UnreadNote.tsx";
import { WallVerdict } from "./WallVerdict.tsx";

export function PiecePage() {
  const { id } = useParams<{ id: string }>();
  return (
    <PieceGuard key={id} id={id}>
      <WholePiece id={id} />
    </PieceGuard>
  );
}

function WholePiece({ id }: { readonly id: string }) {
  const found = usePiece(id);
  if (found === undefined)
    return (
      <Page title="Piece" back={paths.rack}>
        {null}
      </Page>
    );
  if (found === null)
    return (
      <Page title="Piece" back={paths.rack}>
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  const { item, entries, around, unread } = found;
  const { standing, findings } = item;
  const { piece, outer } = standing;
  return (
    <Page
      title={piece.plan.name}
      back={piece.archived ? paths.archive : paths.rack}
      actions={
        <>
          <LinkButton href={paths.editPiece(id)}>Plan</LinkButton>
          <LinkButton href={paths.metal(id)}>Metal</LinkButton>
          <LinkButton href={paths.review(id)}>Review</LinkButton>
        </>
      }
    >
      <WithActionBar>
        <UnreadNote {...unread} />
        <NextCard item={item} />
        {piece.phase === "poured" && <KnockoutWaits items={[item]} isOwn />}
        <div className={`${sheet["stack"]} ${styles["columns"]}`}>
          <div className={`${sheet["stack"]} ${styles["column"]}`}>
            <Wall item={item} />
            {outer !== null && dryingAsked(standing).card && (
              <DryingCard item={item} drying={outer} around={around} />
            )}
            <FinalDryCard standing={standing} />
            <PieceMelt piece={piece} shop={standing.shop} />
            <CracksCard standing={standing} />
            <FindingList findings={findings} />
          </div>
          <div className={`${sheet["stack"]} ${styles["column"]}`}>
            <SaidAtDips standing={standing} />
            <Timeline stream={`piece/${id}`} entries={entries} shows={5} />
            <PiecePhotos entries={entries} />
            <PutAway piece={piece} />
          </div>
        </div>
      </WithActionBar>
    </Page>
  );
}

/** Once metal is in, the shell is what it was: folded away, with nothing of it to come. */
function Wall({ item: { standing, findings } }: { readonly item: RackItem }) {
  const isFound = findings.some(({ rule }) => rule === "wall-too-thin");
  const drawn = (
    <>
      <WallSection standing={standing} />
      <WallVerdict standing={standing} isFound={isFound} />
    </>
  );
  if (!isPastPour(standing.piece)) return <Card title="The shell in section">{drawn}</Card>;
  return (
    <Card title="The shell as it was">
      <details>
        <summary>The shell in section</summary>
        {drawn}
      </details>
    </Card>
  );
}
