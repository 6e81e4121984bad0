import type { Standing } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Fold } from "./Fold.tsx";
import { shortDateTime } from "./coatLines.ts";
import {
  beforeLogWords,
  moreCoats,
  strengthFromWords,
  wallMissingWords,
  wallRange,
  wallWords,
} from "../../base/format/wallWords.ts";
import { WallWayList } from "../piece/WallWayList.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

export function WallSummary({ standing: { wall, piece } }: { readonly standing: Standing }) {
  const format = useFormat();
  const { judged } = wall;
  const earlier = beforeLogWords(piece.coats, wall.basis);
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-labelledby="review-wall">
      <h2 id="review-wall">Shell against the pour</h2>
      <dl className={css["facts"]}>
        <dt>Shell</dt>
        <dd>
          {wallRange(wall, format)}, {wall.basis === "measured" ? "by caliper" : "by the table of stuccos"}
          {earlier !== null && `. ${earlier}`}
        </dd>
        {judged === null ? (
          <>
            <dt>Needed</dt>
            <dd>not known; not entered: {wall.missing.map((one) => wallMissingWords[one]).join(", ")}</dd>
          </>
        ) : (
          <>
            <dt>Needed</dt>
            <dd>
              {format.show("mm", judged.neededMm)}
              {wall.floorMm > 0 && `; the recipe's minimum is ${format.show("mm", wall.floorMm)}`}
            </dd>
            <dt>Verdict</dt>
            <dd>
              {wallWords[judged.word]}
              {judged.coatsToAdd > 0 && `; ${moreCoats(judged.coatsToAdd)} would reach that`}
            </dd>
          </>
        )}
      </dl>
      <Fold title="What that is based on">
        <dl className={css["facts"]}>
          {judged !== null && (
            <>
              {judged.ways !== null && (
                <>
                  <dt>Ways out</dt>
                  <dd>
                    <WallWayList judged={judged} />
                  </dd>
                </>
              )}
              <dt>Based on</dt>
              <dd>
                {format.show("MPa", judged.morMPa)} bend strength, {strengthFromWords[judged.strengthFrom]}
                {judged.loadShare < 1 &&
                  `, ${format.show("percent", judged.loadShare)} of it left for a damp coat or too little firing`}
                , known to × or ÷ {format.number(judged.strengthSpread, 1)};{" "}
                {format.show("kPa", judged.headPressurePa / 1000)} of metal pressure
              </dd>
            </>
          )}
          <dt>Caliper</dt>
          <dd>
            {piece.wall.length === 0 ? "no reading" : null}
            {piece.wall.slice(-3).map(({ id, at, wallMm, where, coats }, place) => (
              <span key={id}>
                {place > 0 && "; "}
                {format.show("mm", wallMm)}
                {where === null ? "" : ` ${where}`} at {coats} coats, {shortDateTime(at, format.locale)}
              </span>
            ))}
          </dd>
        </dl>
      </Fold>
    </section>
  );
}
