import { useParams } from "wouter";
import { wetPatches } from "../../../logbook/piece/crackStates.ts";
import type { FinalDry, FireAnswer, Standing } from "../../../logbook/piece/standing.ts";
import { coatsAreDone } from "../../../rules/stage.ts";
import { practice } from "../../../trade/practice.ts";
import { usePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./FinalDry.module.css";
import { leastWords, placeWords, fireReasonWords, usualWords } from "./finalDryWords.ts";
import { sentence } from "../../base/format/sentence.ts";
import { PatchesWait } from "./PatchesWait.tsx";
import { PlacesChart } from "./PlacesChart.tsx";

/** The last drying of a shell: its water, its slowest place and the least wait, with what sets it. */
export function FinalDryPage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  const standing = found?.item.standing;
  return (
    <Page title="Final dry before burnout" back={found === null ? paths.rack : paths.piece(id)}>
      {found === null && (
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      )}
      {standing !== undefined && <OfPiece standing={standing} />}
    </Page>
  );
}

function OfPiece({ standing }: { readonly standing: Standing }) {
  const { finalDry, forFire, next, coatsDone, coatsPlanned, piece } = standing;
  if (finalDry !== null && forFire !== null)
    return <Shell standing={standing} dry={finalDry} answer={forFire} />;
  const toGo = (coatsPlanned ?? 0) - coatsDone;
  return (
    <Empty title={next === null ? "Nothing to dry" : "More coats to come"}>
      <p>
        {piece.plan.name}:{" "}
        {next === null
          ? piece.coats.length === 0
            ? "no coat on it yet."
            : "already in the kiln."
          : `${toGo === 1 ? "one coat" : `${toGo} coats`} of the recipe ${toGo === 1 ? "is" : "are"} to come. Final drying starts after the last one.`}
      </p>
    </Empty>
  );
}

function Shell(props: { readonly standing: Standing; readonly dry: FinalDry; readonly answer: FireAnswer }) {
  const { standing, dry, answer } = props;
  const format = useFormat();
  const { now, piece, coatsDone, room } = standing;
  const { places, sumAt } = dry;
  const [slowest] = places;
  return (
    <>
      <Card
        title={piece.plan.name}
        tone={answer.state === "dry" && wetPatches(standing.cracks).length === 0 ? "clear" : "watch"}
      >
        <p className={css["least"]}>{sentence(leastWords(answer, now, format.locale))}</p>
        <p>{fireReasonWords(answer, now, format)}</p>
        <PatchesWait standing={standing} />
        {!coatsAreDone(standing) && (
          <p className={sheet["pale"]}>
            No recipe: this holds if coat {coatsDone} was the last. Another coat starts it again.
          </p>
        )}
        <p>
          A time is only an estimate. Steam in a damp shell can burst it and throw hot pattern material. Weigh
          it twice, hours apart: the weight must not change. Local codes come first.
        </p>
        <div>
          <LinkButton href={paths.logFor(piece.id, "dryness-seen")}>Log a check</LinkButton>
        </div>
      </Card>
      <Card title="Where it dries slowest">
        <p>
          {slowest === undefined ? null : `Slowest: ${placeWords(slowest.geometry)}. `}
          {usualWords(dry, format)}
        </p>
        <PlacesChart dry={dry} now={now} />
        {piece.plan.pockets === undefined && (
          <p>
            Only one kind of place is set for this piece. Add a cup, hollow or core that dries more slowly to
            its plan.
          </p>
        )}
        <div>
          <LinkButton href={paths.editPiece(piece.id)}>Places in the plan</LinkButton>
        </div>
      </Card>
      <Water standing={standing} dry={dry} />
      <Card title="How this is calculated">
        <details>
          <summary>Formula, inputs and sources</summary>
          <div className={`${sheet["stack2"]} ${sheet["small"]}`}>
            <p>
              The final dry ends at the later of two times: the slowest place dry by the air, and the minimum
              hours. A weighing of the whole shell ends it at once.
            </p>
            <p>
              Each place uses the same formula, dW/dt = −Δρ / (A + G + B·δ), from the first coat on, with its
              own G, the added resistance of a pocket. G is a starting value, good to about a factor of three.
              Water left under a coat moves up into it. Weighings, bag tests and a wet face can only move the
              other places later.
            </p>
            <p>
              {sumAt === null ? "No latest time can be given." : null} Room readings from{" "}
              {room === null ? "no room" : room.name}: {slowest?.drying.basis.readings ?? 0} since the last
              dip.
            </p>
            <p>
              Minimum hours: common practice, no source; set your own under figures. No end over{" "}
              {format.show("percent", practice.rhFinalDry.value)}: derived from the Kelvin radius of 2–5 nm
              pores. The formula: vapour and heat resistances in series, derived for this app; saturation by
              IAPWS SR1-86(1992).
            </p>
          </div>
        </details>
      </Card>
    </>
  );
}

function Water({ standing, dry }: { readonly standing: Standing; readonly dry: FinalDry }) {
  const format = useFormat();
  const { putOnKgM2, leftKgM2, beneathKgM2, leftG } = dry.water;
  const perArea = (kgM2: number): string => format.show("gM2", kgM2 * 1000);
  const { areaM2 } = standing.piece.plan;
  return (
    <Card title="Water in the whole shell">
      <dl className={css["facts"]}>
        <dt>Went on</dt>
        <dd>
          {perArea(putOnKgM2)} in {standing.coatsDone} {standing.coatsDone === 1 ? "coat" : "coats"}
        </dd>
        <dt>Left now</dt>
        <dd>
          {leftKgM2 === null ? "not known" : `about ${perArea(leftKgM2)} at the slowest place`}
          {leftG !== null && areaM2 !== undefined
            ? `; if all ${format.show("m2", areaM2)} were like it, ${format.show("g", leftG)}`
            : ""}
        </dd>
        <dt>Beneath</dt>
        <dd>at most {perArea(beneathKgM2)} more, under coats that were dry when covered</dd>
      </dl>
      {areaM2 === undefined && (
        <p className={sheet["pale"]}>Add its surface to the plan, and a weight counts too.</p>
      )}
    </Card>
  );
}
