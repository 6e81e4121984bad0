import { useFormat } from "../../base/state/useFormat.ts";
import css from "./Timeline.module.css";
import type { RoomRow } from "./timelineRows.ts";
import { rowWords, clockOrDay } from "./timelineWords.ts";

/** The timeline's numbers. */
export function TimelineTable(props: {
  readonly lanes: readonly RoomRow[];
  readonly now: number;
  readonly dips: ReadonlyMap<string, number>;
}) {
  const { lanes, now, dips } = props;
  const { locale } = useFormat();
  const say = (at: number | null): string => (at === null ? "–" : clockOrDay(at, now, locale));
  return (
    <table className={css["table"]}>
      <thead>
        <tr>
          <th scope="col">Piece</th>
          <th scope="col">Check from</th>
          <th scope="col">Dry at the latest</th>
          <th scope="col">Dip</th>
        </tr>
      </thead>
      <tbody>
        {lanes.flatMap(({ room, rows }) =>
          rows.map((row) => (
            <tr key={row.standing.piece.id}>
              <th scope="row">
                {row.standing.piece.plan.name}
                {lanes.length > 1 && room !== null ? `, ${room.name}` : ""}
              </th>
              {row.isReady || row.isHeld ? (
                <td colSpan={2}>{rowWords(row, locale)}</td>
              ) : (
                <>
                  <td>{say(row.window.from)}</td>
                  <td>{say(row.window.late)}</td>
                </>
              )}
              <td>{say(dips.get(row.standing.piece.id) ?? null)}</td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}
