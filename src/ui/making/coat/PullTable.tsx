import type { WaterBand } from "../../../physics/evidence/waterPosterior.ts";
import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { shareToGo } from "../../../logbook/drying/waterToGo.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { methodWords } from "../../base/format/saidWords.ts";
import { dayTime } from "../../base/format/time.ts";

/** What each check does: the water believed left without it, and with all of them. */
export function PullTable({ picture, all }: { readonly picture: CoatPicture; readonly all: WaterBand }) {
  const format = useFormat();
  const share = (value: number): string => format.show("percent", Math.min(1, Math.max(0, value)));
  // The belief counts in shares of all the water; the page says what is left of the water that must go.
  const left = (ofAll: number): string => share(shareToGo(ofAll * picture.startKgM2, picture));
  const band = ({ low, median, high }: WaterBand): string => `${left(median)} (${left(low)}–${left(high)})`;
  return (
    <details>
      <summary>How each check changes the answer</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Based on</th>
            <th scope="col">Water left</th>
            <th scope="col">Chance that it is dry</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Calculation and all checks</th>
            <td>{band(all)}</td>
            <td>{share(all.dryChance)}</td>
          </tr>
          {picture.pulls.map(({ seenId, at, said, without }) => (
            <tr key={`${seenId} ${said.by}`}>
              <th scope="row">
                Without {methodWords[said.by].toLowerCase()}, {dayTime(at, picture.judgedAt, format.locale)}
              </th>
              <td>{band(without)}</td>
              <td>{share(without.dryChance)}</td>
            </tr>
          ))}
          {picture.model !== null && (
            <tr>
              <th scope="row">Calculation alone</th>
              <td>{band(picture.model)}</td>
              <td>{share(picture.model.dryChance)}</td>
            </tr>
          )}
        </tbody>
      </table>
      <p>
        Each check is compared with the drying curve at its time. Weighings count in full, the bag 70%,
        resistance 50%, touch and colour 30% (judgement, no source). Shares are of the water that must go: 0%
        is dry enough. Felt damp or wet, or a steady weight, moves the line at once.
      </p>
    </details>
  );
}
