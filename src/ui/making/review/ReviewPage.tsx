import { Link, useParams } from "wouter";
import { reviewFindingsFor, reviewVerdict } from "../../../rules/all.ts";
import { alloyName, ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import { usePiece, type RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { headText, pieceMetalText } from "../../base/format/figureText.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { WallSection } from "../../base/charts/WallSection.tsx";
import { FinalDrySummary } from "../finalDry/FinalDrySummary.tsx";
import { Cautions } from "../../base/cautions/Cautions.tsx";
import { WithActionBar } from "../../base/parts/ActionBar.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { crackLine, cracksWords } from "../../base/format/crackStateWords.ts";
import { PatchKeys } from "../piece/PatchKeys.tsx";
import { shortDateTime } from "./coatLines.ts";
import { CoatTable } from "./CoatTable.tsx";
import { Fold } from "./Fold.tsx";
import { FindingLines } from "./FindingLines.tsx";
import { Signature } from "./Signature.tsx";
import { SignForm } from "./SignForm.tsx";
import { Verdict } from "./Verdict.tsx";
import { WallSummary } from "./WallSummary.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

/** All that bears on one shell before it goes in the kiln, on one page. */
export function ReviewPage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  if (found === undefined) return <Page title="Review">{null}</Page>;
  if (found === null)
    return (
      <Page title="Review" back={paths.rack}>
        <Empty title="No such piece">
          <p>
            It is not in this device's log. <Link href={paths.rack}>To the rack</Link>
          </p>
        </Empty>
      </Page>
    );
  return <Review item={found.item} />;
}

function Review({ item }: { readonly item: RackItem }) {
  const { standing } = item;
  const { piece } = standing;
  const isBefore = piece.phase === "coating" || piece.phase === "reviewed";
  const findings = isBefore ? reviewFindingsFor(standing) : item.findings;
  const verdict = reviewVerdict(findings);
  return (
    <Page
      title="Review before burnout"
      back={paths.piece(piece.id)}
      actions={<Button onPress={() => window.print()}>Print</Button>}
    >
      <WithActionBar>
        <div className={css["sheet"]}>
          <Facts item={item} />
          <Verdict verdict={verdict} findings={findings} />
          <FindingLines findings={findings} />
          <div className={`${sheet["stack"]} ${css["pair"]}`}>
            <WallSummary standing={standing} />
            <div className={css["picture"]}>
              <Fold title="The wall in section">
                <WallSection standing={standing} />
              </Fold>
            </div>
          </div>
          <CoatTable standing={standing} />
          <Cracks item={item} />
          <FinalDrySummary standing={standing} />
          <Signature piece={piece} />
        </div>
        <div className={css["screen"]}>
          <Cautions
            step="burnout"
            alloyId={piece.plan.alloyId}
            material={piece.plan.material}
            saysCodes={false}
          />
        </div>
        <SignForm key={piece.id} standing={standing} findings={findings} verdict={verdict} />
      </WithActionBar>
    </Page>
  );
}

function Facts({ item: { standing } }: { readonly item: RackItem }) {
  const format = useFormat();
  const { piece, recipe, room, now, shop } = standing;
  const { plan } = piece;
  const facts = [
    plan.alloyId === undefined ? "alloy not known" : alloyName(plan.alloyId, shop),
    pieceMetalText(piece, plan.alloyId === undefined ? null : ownAlloy(plan.alloyId, shop), format),
    plan.headM === undefined ? "head not known" : `head ${headText(plan.headM, format)}`,
    recipe === null ? "no recipe" : `recipe ${recipe.name}`,
    room === null ? null : `in ${room.name}`,
  ];
  return (
    <header>
      <p className={css["name"]}>{plan.name}</p>
      <p>{facts.filter((fact) => fact !== null).join(" · ")}</p>
      <p className={css["soft"]}>As it stood {shortDateTime(now, format.locale, { year: true })}</p>
    </header>
  );
}

function Cracks({ item: { standing } }: { readonly item: RackItem }) {
  const { cracks } = standing;
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-labelledby="review-cracks">
      <h2 id="review-cracks">Cracks</h2>
      <p>{cracks.length === 0 ? "None in the log." : `${cracksWords(cracks)}.`}</p>
      {cracks.length > 0 && (
        <ul className={sheet["bullets"]}>
          {cracks.map((one) => (
            <li key={one.crack.id}>{crackLine(one)}.</li>
          ))}
        </ul>
      )}
      <PatchKeys standing={standing} />
    </section>
  );
}
