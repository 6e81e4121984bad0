import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useMemo } from "react";
import { dryingAsked } from "../../../logbook/drying/dryingAsked.ts";
import { coatPicture } from "../../../logbook/drying/coatPicture.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import type { Surroundings } from "../../../logbook/piece/surroundings.ts";
import type { RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { DryingCurve } from "../../base/charts/DryingCurve.tsx";
import { basisWords, plainWords } from "../../base/format/basisWords.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import { coverLine, coverStateWords } from "../../base/format/coverWords.ts";
import { soonTime } from "../../base/format/time.ts";
import { weighWords } from "../../base/format/weighWords.ts";
import { AssumedAir } from "../../base/parts/AssumedAir.tsx";
import { Ago } from "../../base/parts/Ago.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { BeliefLines } from "./BeliefLines.tsx";
import { DoseDetails } from "./DoseDetails.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { DrynessTaps } from "./DrynessTaps.tsx";

/** The outermost coat: how dry, who says so, ready when, and what that is calculated from. */
export function DryingCard(props: {
  readonly item: RackItem;
  readonly drying: CoatDrying;
  readonly around: Surroundings;
}) {
  const { drying, around } = props;
  const { standing, findings } = props.item;
  const { piece, now } = standing;
  const format = useFormat();
  const { coat, belief, evidence, saidAlone } = drying;
  const { cover } = standing;
  if (cover === null) return null;
  const isDry = cover.state === "dry";
  // A finding on the same page says when to weigh.
  const isSaidBelow = findings.some(({ weigh }) => weigh !== undefined);
  const asks = dryingAsked(standing);
  return (
    <Card title={`Coat ${coat.number}: ${coverStateWords[cover.state]}`}>
      <p>
        {coatWords(coat)}, dipped <Ago at={coat.redips.at(-1)?.at ?? coat.dippedAt} />.{" "}
        {!isDry && <WaterLeft drying={drying} />}
      </p>
      <p className={sheet["firm"]}>{coverLine(cover, now, format.locale)}</p>
      <AssumedAir standing={standing} />
      {evidence !== null && isPlain(evidence, belief !== null) && <p>{plainWords(evidence, format)}</p>}
      {belief !== null && <BeliefLines {...belief} />}
      {saidAlone !== null && <BeliefLines {...saidAlone} conflicts={[]} />}
      {asks.touch && <DrynessTaps pieceId={piece.id} coatId={coat.id} />}
      <div className={sheet["row"]}>
        {asks.weigh && <LinkButton href={paths.weigh(piece.id)}>Weigh</LinkButton>}
        <LinkButton href={paths.logFor(piece.id, "dryness-seen")}>Other check</LinkButton>
        <LinkButton href={paths.coat(piece.id, coat.id)}>Picture</LinkButton>
        {!isDry && <LinkButton href={paths.advice(piece.id)}>What would help</LinkButton>}
      </div>
      {asks.weigh && drying.toTell !== null && !isSaidBelow && (
        <p>{weighWords(drying.toTell, now, format)}</p>
      )}
      {!isDry && drying.toTell === null && (
        <NextWeighing piece={piece} coatId={coat.id} around={around} now={now} />
      )}
      <details>
        <summary>The curve, and what it is based on</summary>
        <DryingCurve drying={drying} now={now} />
        <ul className={`${sheet["stack1"]} ${sheet["bullets"]}`}>
          {basisWords(drying, format).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <DoseDetails drying={drying} />
      </details>
    </Card>
  );
}

/** What a touch found dry stands in the line above; the belief tells what was found wet. */
const isPlain = (evidence: NonNullable<CoatDrying["evidence"]>, hasBelief: boolean): boolean =>
  evidence.says === "dry" ? evidence.by !== "felt" : !hasBelief;

/** Water left with its band, where anything was seen of the coat; else the sum's share. */
function WaterLeft({ drying }: { readonly drying: CoatDrying }) {
  const format = useFormat();
  const { belief, leftShare, leftLow, leftHigh } = drying;
  if (leftShare === null) return null;
  const share = (value: number): string => format.show("percent", value);
  if (belief === null)
    return leftShare <= 0.005 ? null : <>By the estimate alone, {share(leftShare)} of its water left.</>;
  const [low, high] = [share(leftLow ?? leftShare), share(leftHigh ?? leftShare)];
  return (
    <>
      Estimate and checks together: {share(leftShare)} of its water left
      {low === high ? "" : `, between ${low} and ${high}`}; {share(belief.dryChance)} that it is dry.
    </>
  );
}

/** When a weighing would tell most of the water left. */
function NextWeighing(props: {
  readonly piece: Piece;
  readonly coatId: string;
  readonly around: Surroundings;
  readonly now: number;
}) {
  const { piece, coatId, around, now } = props;
  const { locale } = useFormat();
  const next = useMemo(() => {
    const recipe = around.recipes.get(piece.plan.recipeId ?? "") ?? null;
    return coatPicture(piece, coatId, { surroundings: around, recipe, now })?.next ?? null;
  }, [piece, coatId, around, now]);
  if (next === null) return null;
  if (next.kind === "refused") return <p>Another weighing adds little now.</p>;
  const at = next.from + next.afterS * 1000;
  return (
    <p>A weighing helps most {at <= now + 10 * minuteMs ? "now" : `about ${soonTime(at, now, locale)}`}.</p>
  );
}
