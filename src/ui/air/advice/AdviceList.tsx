import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { AdvisedChange } from "../../../physics/drying/dryingAdvice.ts";
import type { CoatAdvice } from "../../../logbook/drying/coatAdvice.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import { practice } from "../../../trade/practice.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { duration } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import { readingWords } from "../rooms/airWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./Advice.module.css";
import { cautionWords, wholeHoursWords, meansWords, remedyWords } from "./adviceWords.ts";

type Said = Extract<CoatAdvice, { readonly kind: "advice" }>;

/** What would help, best first; each with a bar of its hours beside those of now. */
export function AdviceList({ said, piece }: { readonly said: Said; readonly piece: Piece }) {
  const format = useFormat();
  const { hoursNow, advice, reading, readingAgeMs, place } = said;
  const longest = Math.max(hoursNow ?? 0, ...advice.map(({ hours }) => hours ?? 0));
  return (
    <>
      <Card title={hoursNow === null ? "As it is: never" : `As it is: ${wholeHoursWords(hoursNow)} to go`}>
        {hoursNow === null && (
          <p>
            Over {format.show("percent", practice.rhNeverDry.value)} no coat gets dry, however the air moves.
            Only drier or warmer air helps.
          </p>
        )}
        <p>
          For the air as last read, {duration(readingAgeMs)} ago: {readingWords(reading, format)}. It is
          assumed to stay like this. The piece’s own drying time uses the room’s forecast and may differ.
        </p>
        {readingAgeMs > practice.readingOldH.value * hourMs && (
          <p>
            <strong>That is old. Log the air again before you act on this.</strong>
          </p>
        )}
      </Card>
      {advice.length === 0 ? (
        <Card title="Nothing helps much" tone="note">
          <p>
            {hoursNow === null
              ? "Not even warmer or drier air, as far as tried here. Move it to another room."
              : "The air is already good, or the coat is nearly dry. Wait."}
          </p>
        </Card>
      ) : (
        <ol
          className={`${sheet["stack3"]} ${sheet["list"]} ${css["list"]}`}
          aria-label="What would help, best first"
        >
          {advice.map((one) => (
            <Line
              key={one.remedy.kind === "air-class" ? one.remedy.id : one.remedy.kind}
              one={one}
              hoursNow={hoursNow}
              longest={longest}
            />
          ))}
        </ol>
      )}
      <Card title="How this is calculated">
        <details>
          <summary>Formula, inputs and sources</summary>
          <div className={`${sheet["stack2"]} ${sheet["small"]}`}>
            <p>
              The coat is dried again from the water in it now, in steady air with one thing changed at a
              time: dW/dt = −Δρ / (A + G + B·δ). Place: {geometryClasses[place].label.toLowerCase()}, G ={" "}
              {geometryClasses[place].pocketSM} s/m.{" "}
              {said.advice.some(({ cautions }) => cautions.length > 0) && piece.plan.material === undefined
                ? "The pattern material is not set, so the cautions assume wax, which moves most. "
                : ""}
              Hours are good to a factor of about 1.5. Their order is more certain.
            </p>
            <p>
              Sources: resistances in series, derived for this app; saturation by IAPWS SR1-86(1992); air
              films from memory of Incropera &amp; DeWitt, ch. 7 and 9; a room held within 1.7 K for prime
              coats, Investment Casting Institute, Atlas of Casting Defects; the rest of the cautions common
              practice, no source.
            </p>
          </div>
        </details>
      </Card>
    </>
  );
}

function Line(props: {
  readonly one: AdvisedChange;
  readonly hoursNow: number | null;
  readonly longest: number;
}) {
  const { one, hoursNow, longest } = props;
  const format = useFormat();
  const { remedy, hours, savedHours, cautions } = one;
  const share = (of: number): string => `${longest > 0 ? Math.max(1, (of / longest) * 100) : 0}%`;
  return (
    <li className={`${sheet["lines"]} ${sheet["panel"]} ${css["line"]}`}>
      <h2 className={`${sheet["title"]} ${css["what"]}`}>{remedyWords(remedy, format)}</h2>
      <p className={sheet["soft"]}>{meansWords(one, format)}</p>
      <p className={sheet["firm"]}>
        {hours === null
          ? "still never dry"
          : savedHours === null
            ? `dry in ${wholeHoursWords(hours)}`
            : `${wholeHoursWords(hours)} to go: saves ${wholeHoursWords(savedHours)}`}
      </p>
      {hours !== null && (
        <div className={css["bars"]} aria-hidden="true">
          {hoursNow !== null && <span className={css["was"]} style={{ width: share(hoursNow) }} />}
          <span className={css["is"]} style={{ width: share(hours) }} />
        </div>
      )}
      {cautions.length > 0 && (
        <ul className={`${sheet["stack1"]} ${css["cautions"]}`} aria-label="Cautions">
          {cautions.map((caution) => (
            <li key={caution.code}>{cautionWords(caution, format)}</li>
          ))}
        </ul>
      )}
    </li>
  );
}
