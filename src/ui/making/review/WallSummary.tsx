import type { Standing } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { shortDateTime } from "./coatLines.ts";
import { bandWords, factorWords, missingWords, neededWords } from "./wallWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./ReviewPage.module.css";

export function WallSummary({ standing: { wall, piece } }: { readonly standing: Standing }) {
  const format = useFormat();
  const { judged } = wall;
  return (
    <section className={`${sheet["stack2"]} ${css["section"]}`} aria-labelledby="review-wall">
      <h2 id="review-wall">Wall against head</h2>
      <dl className={css["facts"]}>
        <dt>Reached</dt>
        <dd>
          {format.show("mm", wall.reachedMm)},{" "}
          {wall.basis === "measured" ? "by caliper" : "by the table of stuccos"}
        </dd>
        {judged === null ? (
          <>
            <dt>Needed</dt>
            <dd>cannot judge: not known {wall.missing.map((one) => missingWords[one]).join(", ")}</dd>
          </>
        ) : (
          <>
            <dt>Needed</dt>
            <dd>
              {neededWords(judged, format)}, never under {format.show("mm", judged.floorMm)}
            </dd>
            <dt>Safety factor</dt>
            <dd>
              {factorWords(judged.safety, format)} ({factorWords(judged.safetyLow, format)} to{" "}
              {factorWords(judged.safetyHigh, format)}): {bandWords[judged.band]}
              {judged.coatsToAdd > 0 &&
                `; ${judged.coatsToAdd} more ${judged.coatsToAdd === 1 ? "coat" : "coats"} of the kind on it`}
            </dd>
            <dt>Reckoned with</dt>
            <dd>
              {format.show("MPa", judged.morMPa)} bend strength
              {judged.morHalved &&
                `, ${format.show("percent", judged.loadShare)} of it left for a damp coat or too little firing`}
              , {format.show("kPa", judged.headPressurePa / 1000)} of metal pressure
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
    </section>
  );
}
