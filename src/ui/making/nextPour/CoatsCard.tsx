import { sentence } from "../../base/format/sentence.ts";
import { Link } from "wouter";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { coatLine } from "../../base/format/coatWords.ts";
import { dayTime, duration } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import type { PieceTimes } from "./lookAhead.ts";
import css from "./nextPour.module.css";

/** Which coats to do first: by when the next one of each piece must be on, least time to spare first. */
export function CoatsCard({ times, now }: { readonly times: readonly PieceTimes[]; readonly now: number }) {
  return (
    <Card title="Do first">
      <ol className={`${sheet["stack3"]} ${sheet["bullets"]}`}>
        {times.map((one) => (
          <li key={one.of.id}>
            <PieceLine one={one} now={now} />
          </li>
        ))}
      </ol>
      <p className={sheet["soft"]}>
        Cautious times allow for slow drying. At the likely times a coat may still be damp: check it first.
      </p>
    </Card>
  );
}

function PieceLine({ one, now }: { readonly one: PieceTimes; readonly now: number }) {
  const { of, late, middle, verdict, slackMs } = one;
  const { locale } = useFormat();
  const when = (at: number): string => dayTime(at, now, locale);
  const [coat] = of.coats;
  const [lateFirst] = late ?? [];
  const [middleFirst] = middle ?? [];
  return (
    <div className={sheet["lines"]}>
      <Link href={paths.piece(of.id)} className={`${sheet["link"]} ${sheet["strong"]} ${sheet["breaks"]}`}>
        {of.name}
      </Link>
      {coat === undefined ? (
        <span>{lastDrying(one, when)}</span>
      ) : (
        <>
          <span>
            {sentence(coatLine(coat))}, on by{" "}
            <strong>{when(lateFirst ?? middleFirst ?? verdict.dryBy)}</strong>
            {lateFirst === undefined
              ? ", at the likely times only."
              : middleFirst !== undefined && middleFirst > lateFirst
                ? `; at the latest ${when(middleFirst)} at the likely times.`
                : "."}
          </span>
          <span className={sheet["soft"]}>
            {slackMs >= 60_000 ? `${duration(slackMs)} to spare.` : "Nothing to spare."} Shell dry by{" "}
            {when(verdict.dryBy)}.
          </span>
          <details>
            <summary>All {of.coats.length} coats to come</summary>
            <CoatTable one={one} when={when} />
          </details>
        </>
      )}
    </div>
  );
}

function lastDrying({ of, verdict }: PieceTimes, when: (at: number) => string): string {
  const { late } = of.ways;
  const due = `${when(verdict.dryBy)}.`;
  if (of.standing.piece.phase !== "coating") return `Ready for fire. Its first run starts by ${due}`;
  return late.ok && late.dryAt > of.standing.now
    ? `All coats on. Dry for fire ${when(late.dryAt)}; needed by ${due}`
    : `All coats on and dry. Review it. Its first run starts by ${due}`;
}

function CoatTable({ one, when }: { readonly one: PieceTimes; readonly when: (at: number) => string }) {
  const { of, late, middle } = one;
  return (
    <div className={css["scroll"]}>
      <table className={css["table"]}>
        <thead>
          <tr>
            <th scope="col">Coat</th>
            <th scope="col">Cautious time</th>
            <th scope="col">Likely time</th>
          </tr>
        </thead>
        <tbody>
          {of.coats.map(({ number, kind }, place) => (
            <tr key={number}>
              <th scope="row">
                {number}, {kind}
              </th>
              <td>{timeOf(late, place, when)}</td>
              <td>{timeOf(middle, place, when)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function timeOf(times: readonly number[] | null, place: number, when: (at: number) => string): string {
  const at = times?.[place];
  return at === undefined ? "too late" : when(at);
}
