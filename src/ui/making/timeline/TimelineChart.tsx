import { Link } from "wouter";
import type { Span } from "../../../logbook/dip/dipProposal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { kindWords } from "../../base/format/coatWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./Timeline.module.css";
import { TimelineAxis } from "./TimelineAxis.tsx";
import type { RoomRow, TimelineRow } from "./timelineRows.ts";
import { timelineScale } from "./timelineScale.ts";
import { TimelineStrip } from "./TimelineStrip.tsx";
import { basisOfAir, dampNights, dampNightWords, rowWords } from "./timelineWords.ts";

/** Two days of the rack, time from left to right, a row a piece, by room. */
export function TimelineChart(props: {
  readonly lanes: readonly RoomRow[];
  readonly now: number;
  readonly hours: readonly Span[];
  /** By piece, when it is proposed to be dipped. */
  readonly dips: ReadonlyMap<string, number>;
}) {
  const { lanes, now, hours, dips } = props;
  const [ruler, width] = useWidth<HTMLDivElement>(340);
  const scale = timelineScale(now, width);
  return (
    <div className={sheet["stack3"]}>
      <div className={css["head"]}>
        <span className={sheet["firm"]}>
          Next 48 hours <span className={sheet["pale2"]}>and your hours at the bucket</span>
        </span>
        <div ref={ruler}>
          <TimelineAxis scale={scale} now={now} hours={hours} />
        </div>
      </div>
      {lanes.map((lane) => (
        <section key={lane.roomId} className={sheet["stack2"]} aria-label={lane.room?.name ?? "No room"}>
          <LaneHead lane={lane} now={now} />
          <ul className={css["rows"]} aria-label={`Pieces in ${lane.room?.name ?? "no room"}`}>
            {lane.rows.map((row) => (
              <li key={row.standing.piece.id} className={css["row"]}>
                <Link href={paths.piece(row.standing.piece.id)} className={css["whole"]}>
                  <RowText row={row} />
                  <TimelineStrip
                    row={row}
                    scale={scale}
                    now={now}
                    damp={lane.air?.damp ?? []}
                    hours={hours}
                    dipAt={dips.get(row.standing.piece.id) ?? null}
                  />
                </Link>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

function LaneHead({ lane: { roomId, room, air }, now }: { readonly lane: RoomRow; readonly now: number }) {
  const format = useFormat();
  return (
    <header className={`${sheet["lines"]} ${css["laneHead"]}`}>
      <h2>{room === null ? "No room" : <Link href={paths.room(roomId)}>{room.name}</Link>}</h2>
      {air === null ? (
        <p>Its air was never logged, so damp nights can’t be forecast.</p>
      ) : (
        <>
          <p className={sheet["pale2"]}>{basisOfAir(air, now, format)}.</p>
          {air.damp.length === 0 ? (
            <p>No damp stretch ahead.</p>
          ) : (
            <ul className={`${sheet["lines"]} ${sheet["list"]} ${css["damps"]}`} aria-label="Damp ahead">
              {dampNights(air.damp).map((night) => (
                <li key={night.from}>
                  <svg className={css["swatch"]} width="18" height="14" aria-hidden="true">
                    <rect className={css["damp"]} width="18" height="14" />
                    {night.tooDamp.length > 0 && <rect fill="url(#timeline-damp)" width="18" height="14" />}
                  </svg>
                  <span>{dampNightWords(night, now, format)}</span>
                </li>
              ))}
            </ul>
          )}
        </>
      )}
    </header>
  );
}

function RowText({ row }: { readonly row: TimelineRow }) {
  const { locale } = useFormat();
  const { piece, next } = row.standing;
  const coat =
    row.wants === "review"
      ? "all coats on"
      : next === null
        ? "next coat"
        : `coat ${next.number} ${kindWords[next.kind]}`;
  return (
    <span className={css["text"]}>
      <span className={css["name"]}>{piece.plan.name}</span>
      <span className={sheet["soft"]}>
        {coat}: {rowWords(row, locale)}
      </span>
    </span>
  );
}
