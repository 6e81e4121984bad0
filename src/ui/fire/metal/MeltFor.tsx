import { alloyChoices, ownAlloy } from "../../../logbook/shop/ownAlloy.ts";
import type { Phase, Shop } from "../../../logbook/piece/piece.ts";
import { metalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { RackItem } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { AskPlan } from "../../base/ask/AskPlan.tsx";
import { Card } from "../../base/parts/Card.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import type { MeltDraft } from "../../../logbook/casting/meltDraft.ts";
import { Reckoned, Rows } from "../../base/parts/Reckoned.tsx";
import type { WantedCharge } from "../../../logbook/casting/wantedCharge.ts";
import type { LossKnown } from "../../../logbook/casting/chargeSum.ts";
import type { ChargeKind } from "../../../trade/metals/losses.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import { chargeKinds, lossHint } from "./chargeWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, SelectOf, TickOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const beforeMetal: readonly Phase[] = [
  "coating",
  "reviewed",
  "dewaxed",
  "burnout",
  "burnt-out",
  "fired",
  "preheated",
];

/** Which metal, for which pieces, and what they ask for together. */
export function MeltFor({
  form,
  shop,
  rack,
  wanted,
  loss,
  chargeKind,
  massKg,
}: {
  readonly form: SumForm<MeltDraft>;
  readonly shop: Shop;
  readonly rack: readonly RackItem[];
  readonly wanted: WantedCharge | null;
  readonly loss: LossKnown | null;
  readonly chargeKind: ChargeKind;
  readonly massKg: number;
}) {
  const { draft } = form;
  const format = useFormat();
  const alloy = draft.alloyId === null ? null : ownAlloy(draft.alloyId, shop);
  const pieces = rack
    .map(({ standing }) => standing.piece)
    .filter(({ phase }) => beforeMetal.includes(phase))
    .toSorted((a, b) => Number(b.plan.alloyId === draft.alloyId) - Number(a.plan.alloyId === draft.alloyId));
  const other = pieces.filter(
    ({ id, plan }) =>
      draft.pieceIds.includes(id) && plan.alloyId !== undefined && plan.alloyId !== draft.alloyId,
  );
  const short = wanted === null ? 0 : wanted.parts.chargeKg - massKg;
  return (
    <Card title="Alloy and pieces">
      <SelectOf
        form={form}
        at="alloyId"
        label="Alloy"
        options={alloyChoices(shop, draft.alloyId).map(({ id, name, isOwn }) => ({
          value: id,
          label: isOwn ? `${name} (your own)` : name,
        }))}
        empty="Choose one"
      />
      {pieces.length === 0 ? (
        <p>No piece is waiting for metal. You can plan a melt without one.</p>
      ) : (
        <TickOf
          form={form}
          at="pieceIds"
          label="Pieces"
          options={pieces.map((piece) => {
            const kg = metalOf(piece, alloy);
            return {
              value: piece.id,
              label: piece.plan.name,
              hint: kg === null ? "metal mass not set" : format.show("kg", kg),
            };
          })}
        />
      )}
      {alloy !== null &&
        pieces
          .filter((piece) => draft.pieceIds.includes(piece.id) && metalOf(piece, alloy) === null)
          .slice(0, 1)
          .map((piece) => <AskPlan key={piece.id} piece={piece} what="metal" />)}
      {other.length > 0 && (
        <p role="alert" className={css["warn"]}>
          Planned in another metal: {other.map(({ plan }) => plan.name).join(", ")}.
        </p>
      )}
      {alloy !== null && (
        <>
          <Choice
            label="Charged with"
            options={chargeKinds}
            value={chargeKind}
            onChange={(kind) => form.set({ chargeKind: kind })}
          />
          <NumberOf
            form={form}
            at="lossShare"
            label="Melt loss"
            quantity="share"
            hint={lossHint(loss, format)}
          />
        </>
      )}
      {wanted !== null && (
        <>
          <Rows
            rows={[
              ["Casting and gating", format.show("kg", wanted.parts.castingKg)],
              ["Margin", format.show("kg", wanted.parts.marginKg)],
              ["Loss", format.show("kg", wanted.parts.lossKg)],
              ["To weigh in", format.show("kg", wanted.parts.chargeKg)],
            ]}
          />
          <p role="status" className={short > 0.005 ? css["warn"] : sheet["soft"]}>
            {short > 0.005
              ? `${format.show("kg", short)} more to weigh in.`
              : `Enough is weighed in: ${format.show("kg", massKg)}.`}
          </p>
          {wanted.unknown.length > 0 && (
            <p className={css["warn"]}>Not counted, metal mass not set: {wanted.unknown.join(", ")}.</p>
          )}
          <Reckoned
            formula="charge = (casting and gating + margin) ÷ (1 − loss)"
            given={[
              ["Margin", format.show("percent", wanted.parts.marginKg / wanted.parts.castingKg)],
              ["Loss", format.show("share", wanted.lossShare)],
            ]}
            source="a mass balance, derived here; margin by the accuracy of each piece’s metal, as on its metal page"
          />
        </>
      )}
    </Card>
  );
}
