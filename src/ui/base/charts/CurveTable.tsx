import type { CoatDrying } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../state/useFormat.ts";
import { dayTime } from "../format/time.ts";

const rows = 12;

export function CurveTable(props: {
  readonly points: CoatDrying["curve"];
  readonly startKgM2: number;
  readonly now: number;
}) {
  const { points, startKgM2, now } = props;
  const format = useFormat();
  const every = Math.max(1, Math.ceil(points.length / rows));
  const shown = points.filter((_, place) => place % every === 0 || place === points.length - 1);
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Water left</th>
        </tr>
      </thead>
      <tbody>
        {shown.map(({ at, waterKgM2 }, place) => (
          <tr key={`${at} ${place}`}>
            <td>
              {dayTime(at, now, format.locale)}
              {at > now ? " (forecast)" : ""}
            </td>
            <td>{format.show("percent", waterKgM2 / startKgM2)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
