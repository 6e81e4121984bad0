import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { shareToGo } from "../../../logbook/drying/waterToGo.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { momentAt } from "./coatScene.ts";

const rows = 16;

/** The picture's numbers at even steps of time. */
export function PictureTable({ picture, now }: { readonly picture: CoatPicture; readonly now: number }) {
  const format = useFormat();
  const to = picture.points.at(-1)?.at ?? picture.judgedAt;
  const times = Array.from({ length: rows + 1 }, (_, i) => picture.from + ((to - picture.from) * i) / rows);
  const share = (kgM2: number): string => format.show("percent", shareToGo(kgM2, picture));
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Water left</th>
          <th scope="col">Eight in ten</th>
          <th scope="col">Air</th>
        </tr>
      </thead>
      <tbody>
        {times.map((at) => {
          const { low, median, high, airC, rh } = momentAt(picture, at);
          return (
            <tr key={at}>
              <td>
                {dayTime(at, now, format.locale)}
                {at > picture.judgedAt ? " (forecast)" : ""}
              </td>
              <td>{share(median)}</td>
              <td>
                {share(low)}–{share(high)}
              </td>
              <td>
                {airC === null || rh === null
                  ? "–"
                  : `${format.show("temp", airC)}, ${format.show("percent", rh)}`}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
