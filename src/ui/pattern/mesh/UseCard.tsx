import { volumeText } from "../../base/format/figureText.ts";
import { useState } from "react";
import { useLocation } from "wouter";
import { loweredFromLitre } from "../../../logbook/piece/pieceMetal.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { alloyName, ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Piece, Recipe, Shop } from "../../../logbook/piece/piece.ts";
import type { PiecePlan, PlanChanges } from "../../../logbook/entries/pieceBodies.ts";
import { writeDraft } from "../../../storage/drafts.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useFigures, useRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { planWords } from "../../base/format/planWords.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { measuredOf, planOfStudy } from "./planOfStudy.ts";
import type { PatternController } from "./usePatternController.ts";
import type { WallNeed } from "./wallNeeds.ts";
import { whatFirst } from "./whatFirst.ts";

/** From the pattern to a piece: a new one, or one that hangs already. */
export function UseCard({
  door: { study },
  need,
  recipe,
}: {
  readonly door: PatternController;
  readonly need: WallNeed | null;
  readonly recipe: Recipe | null;
}) {
  const shop = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const rack = useRack();
  const figures = useFigures();
  const [, goTo] = useLocation();
  const [pieceId, setPieceId] = useState<string | null>(null);
  // What a piece's plan is lowered from rests on both: no figure before they are read.
  if (rack === undefined || figures === undefined) return null;
  const names = {
    format,
    recipe: () => recipe?.name ?? "chosen",
    alloy: (id: string) => alloyName(id, figures),
  };
  const changes = changesBy(planOfStudy(study, need));
  const own = rack.find(({ standing }) => standing.piece.plan.patternId === study.id);
  const chosen = rack.find(({ standing }) => standing.piece.id === pieceId) ?? own;
  const piece = chosen?.standing.piece ?? null;
  const first = whatFirst(study);
  const isSaid = piece !== null && saysAlready(piece.plan, changes);
  const lowered = piece === null ? null : loweredMetal(piece, changes, figures);

  const start = async (): Promise<void> => {
    const draft = { name: study.name, recipeId: study.recipeId, patternId: study.id };
    await writeDraft(shop.db, "start", { about: "", draft });
    goTo(paths.newPiece);
  };
  const use = async (): Promise<void> => {
    const body = measuredOf(study);
    if (piece === null || body === null) return;
    const stream = streamOf("piece", piece.id);
    const done = await shop.logAll([
      { do: "log", stream, type: "piece-changed", body: { changes } },
      { do: "log", stream, type: "pattern-measured", body },
    ]);
    if (!done.ok) return;
    say(`${piece.plan.name} has the pattern’s figures.`);
    goTo(paths.piece(piece.id));
  };

  return (
    <Card title="Use it">
      <Button kind="primary" size="big" disabledReason={first} onPress={start}>
        Start a piece from it
      </Button>
      <SelectField
        label="Or use it for a piece on the rack"
        options={rack.map(({ standing }) => ({ value: standing.piece.id, label: standing.piece.plan.name }))}
        value={piece?.id ?? null}
        onChange={setPieceId}
        empty="Choose a piece"
      />
      {piece !== null && (
        <>
          {first === null && (
            <p className={sheet["soft"]}>
              {isSaid
                ? "Its plan has these figures already."
                : `Its plan becomes: ${planWords(changes, names).join(", ")}. The rest stays.`}
            </p>
          )}
          {first === null && lowered !== null && (
            <p role="alert">
              This lowers its metal from {volumeText(lowered.fromLitre, format)} to{" "}
              {volumeText(lowered.toLitre, format)}.
              {study.bars.length === 0
                ? " No tree is drawn on the pattern: sprue, cup and gates are not in it."
                : ""}
            </p>
          )}
          <Button disabledReason={first} onPress={use}>
            Use it for {piece.plan.name}
            {lowered === null ? "" : ", with less metal"}
          </Button>
        </>
      )}
    </Card>
  );
}

/** Metal the plan has now and would have, where that is less; null where it is not, or not known. */
function loweredMetal(
  piece: Piece,
  { metalLitre: toLitre }: PlanChanges,
  figures: Shop,
): { readonly fromLitre: number; readonly toLitre: number } | null {
  if (toLitre == null) return null;
  const { alloyId } = piece.plan;
  const alloy = alloyId === undefined ? null : ownAlloy(alloyId, figures);
  const fromLitre = loweredFromLitre(piece, alloy, toLitre);
  return fromLitre === null ? null : { fromLitre, toLitre };
}

const saysAlready = (plan: PiecePlan, changes: PlanChanges): boolean =>
  Object.entries(changes).every(
    ([name, value]) =>
      JSON.stringify(plan[name as keyof PiecePlan] ?? null) === JSON.stringify(value ?? null),
  );

/** Metal by volume takes the place of a weight written down before. */
const changesBy = (plan: Omit<PiecePlan, "name">): PlanChanges =>
  plan.metalLitre === undefined ? plan : { ...plan, metalKg: null };
