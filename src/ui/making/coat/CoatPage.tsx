import { useMemo, useState } from "react";
import { useParams } from "wouter";
import { shareToGo } from "../../../logbook/drying/waterToGo.ts";
import { coatPicture, type CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import type { CoatDrying, Standing } from "../../../logbook/piece/standing.ts";
import { usePiece, type OnePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import { coverLine, coverStateWords } from "../../base/format/coverWords.ts";
import { verdictWords } from "../../base/format/readyWords.ts";
import { saidThenWords } from "../../base/format/saidThenWords.ts";
import { dayTime } from "../../base/format/time.ts";
import { weighWords } from "../../base/format/weighWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { BeliefLines } from "../piece/BeliefLines.tsx";
import { DoseDetails } from "../piece/DoseDetails.tsx";
import { CoatChart } from "./CoatChart.tsx";
import { momentAt } from "./coatScene.ts";
import { PictureTable } from "./PictureTable.tsx";
import { PullTable } from "./PullTable.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./CoatPage.module.css";

/** One coat's drying as a picture, and what speaks for it. */
export function CoatPage() {
  const { id, coatId } = useParams<{ id: string; coatId: string }>();
  const found = usePiece(id);
  if (found === undefined) return <Page title="Coat">{null}</Page>;
  const place = found === null ? -1 : found.item.standing.drying.findIndex(({ coat }) => coat.id === coatId);
  const drying = found?.item.standing.drying[place];
  if (found === null || drying === undefined)
    return (
      <Page title="Coat" back={paths.piece(id)}>
        <Empty title="No such coat">
          <p>It is not on this piece, or it was deleted.</p>
        </Empty>
      </Page>
    );
  return <OneCoat key={coatId} found={found} drying={drying} place={place} />;
}

function OneCoat({
  found,
  drying,
  place,
}: {
  readonly found: OnePiece;
  readonly drying: CoatDrying;
  readonly place: number;
}) {
  const { standing } = found.item;
  const { piece, now, drying: all } = standing;
  const { coat, verdict, belief, saidAlone, said } = drying;
  const format = useFormat();
  const picture = useMemo(
    () => coatPicture(piece, coat.id, { surroundings: found.around, recipe: standing.recipe, now }),
    [piece, coat.id, found.around, standing.recipe, now],
  );
  const [before, after] = [all[place - 1], all[place + 1]];
  const cover = after === undefined ? standing.cover : null;
  const isBeforeLog = drying.reason === "before-log";
  const state = isBeforeLog
    ? "before the log"
    : cover === null
      ? verdictWords[verdict]
      : coverStateWords[cover.state];
  return (
    <Page
      title={`Coat ${coat.number}: ${state}`}
      back={paths.piece(piece.id)}
      actions={
        <>
          {before !== undefined && (
            <LinkButton href={paths.coat(piece.id, before.coat.id)}>Coat {before.coat.number}</LinkButton>
          )}
          {after !== undefined && (
            <LinkButton href={paths.coat(piece.id, after.coat.id)}>Coat {after.coat.number}</LinkButton>
          )}
        </>
      }
    >
      <p className={sheet["breaks"]}>
        {piece.plan.name} · {coatWords(coat)},{" "}
        {coat.beforeLog === "undated"
          ? "day not known"
          : `dipped ${dayTime(coat.dippedAt, now, format.locale)}`}
        .{cover === null ? " Covered since." : ` ${coverLine(cover, now, format.locale)}`}
      </p>
      {said !== undefined && (
        <p role="note" className={sheet["firm"]}>
          {saidThenWords(said, now, format)}
        </p>
      )}
      {drying.toTell !== null && <p>{weighWords(drying.toTell, now, format)}</p>}
      {isBeforeLog ? (
        <p>It hung before the log began, so its drying is not judged. Its thickness is an estimate.</p>
      ) : picture !== null && picture.points.length > 1 ? (
        <Scrubbed picture={picture} drying={drying} standing={standing} />
      ) : (
        <Empty title="Nothing to draw yet">
          <p>The room’s air was not logged while this coat dried.</p>
        </Empty>
      )}
      {belief !== null && (
        <Card title="Checks of this coat">
          <BeliefLines {...belief} />
          {picture !== null && picture.all !== null && <PullTable picture={picture} all={picture.all} />}
        </Card>
      )}
      {saidAlone !== null && (
        <Card title="Checks of this coat">
          <BeliefLines {...saidAlone} conflicts={[]} />
        </Card>
      )}
      {!isBeforeLog && (
        <Card title="The calculation">
          <DoseDetails drying={drying} />
        </Card>
      )}
    </Page>
  );
}

function Scrubbed(props: {
  readonly picture: CoatPicture;
  readonly drying: CoatDrying;
  readonly standing: Standing;
}) {
  const { picture, drying, standing } = props;
  const { now } = standing;
  const format = useFormat();
  const [chosen, setChosen] = useState<number | null>(null);
  const last = picture.points.at(-1)?.at ?? picture.judgedAt;
  const at = chosen ?? Math.min(now, picture.judgedAt, last);
  const moment = momentAt(picture, at);
  const share = (kgM2: number): string => format.show("percent", shareToGo(kgM2, picture));
  const when = dayTime(at, now, format.locale);
  const air =
    moment.airC === null || moment.rh === null
      ? at > picture.judgedAt
        ? "air forecast"
        : "air not logged"
      : `${format.show("temp", moment.airC)}, ${format.show("percent", moment.rh)} humidity`;
  const [low, high] = [share(moment.low), share(moment.high)];
  const water = `${share(moment.median)} of its water left${low === high ? "" : `, between ${low} and ${high}`}`;
  return (
    <Card>
      <p className={`${sheet["lines"]} ${styles["told"]}`}>
        <strong>{when}</strong>
        <span>{water}</span>
        <span>
          {air}
          {at > picture.judgedAt && moment.airC !== null ? ", forecast" : ""}
        </span>
      </p>
      <CoatChart
        picture={picture}
        drying={drying}
        now={now}
        at={at}
        onAt={setChosen}
        told={`${when}: ${water}; ${air}`}
        table={
          <details>
            <summary>As a table</summary>
            <PictureTable picture={picture} now={now} />
          </details>
        }
      />
      <p className={sheet["soft"]}>
        Line: the middle estimate. Band: eight in ten. Shaded: when it gets dry. Dotted: dry enough for the
        next coat.{" "}
        {drying.said !== undefined &&
          "Drawn with all that is known now, not only what was known at the dip. "}
        Letters: W weighed, A weighings carried forward, S surface, B bag, R resistance, T touch, C colour;
        filled where the check measures the water itself. Drag along the picture, or use the arrow keys.
      </p>
    </Card>
  );
}
