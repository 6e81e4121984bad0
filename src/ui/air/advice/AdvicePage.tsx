import { useState } from "react";
import { Link, useParams } from "wouter";
import { coatAdvice, placesOfPiece } from "../../../logbook/drying/coatAdvice.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import { usePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import css from "./Advice.module.css";
import { AdviceList } from "./AdviceList.tsx";
import { noneWords } from "./adviceWords.ts";

/** The outer coat, reckoned again with each thing a shop can change about its air. */
export function AdvicePage() {
  const { id } = useParams<{ id: string }>();
  const found = usePiece(id);
  return (
    <Page title="What would help" back={found === null ? paths.rack : paths.piece(id)}>
      {found === null && (
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      )}
      {found && <OfPiece standing={found.item.standing} />}
    </Page>
  );
}

function OfPiece({ standing }: { readonly standing: Standing }) {
  const places = placesOfPiece(standing);
  const [chosen, choose] = useState(0);
  const place = places[chosen] ?? null;
  const said = coatAdvice(standing, place);
  const { piece, room, outer } = standing;
  return (
    <>
      <p className={css["whose"]}>
        <Link href={paths.piece(piece.id)}>{piece.plan.name}</Link>
        {outer !== null && `, coat ${outer.coat.number}`}
        {room !== null && (
          <>
            , in <Link href={paths.room(room.id)}>{room.name}</Link>
          </>
        )}
      </p>
      {places.length > 1 && (
        <Choice
          label="Which place"
          options={places.map(({ geometry }, i) => ({
            value: String(i),
            label: geometryClasses[geometry].label,
          }))}
          value={String(chosen)}
          onChange={(value) => choose(Number(value))}
        />
      )}
      {said.kind === "none" ? (
        <Empty title="Nothing to advise">
          <p>{noneWords[said.why]}</p>
          {said.why === "no-readings" && room !== null && (
            <p>
              <Link href={paths.room(room.id)}>Read the air of {room.name}</Link>
            </p>
          )}
        </Empty>
      ) : (
        <AdviceList said={said} piece={piece} />
      )}
    </>
  );
}
