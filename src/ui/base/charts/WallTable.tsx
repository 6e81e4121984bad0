import type { Standing } from "../../../logbook/piece/standing.ts";
import { useFormat } from "../state/useFormat.ts";
import { kindWords, stuccoWords } from "../format/coatWords.ts";
import { neededBy, wallRange } from "../format/wallWords.ts";
import { wetnessWords, type WallBand } from "./wallBands.ts";

export function WallTable({
  bands,
  standing,
}: {
  readonly bands: readonly WallBand[];
  readonly standing: Standing;
}) {
  const format = useFormat();
  const { judged, basis } = standing.wall;
  const show = (mm: number): string => format.show("mm", mm);
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Coat</th>
          <th scope="col">Kind</th>
          <th scope="col">Stucco</th>
          <th scope="col">Thickness</th>
          <th scope="col">State</th>
        </tr>
      </thead>
      <tbody>
        {bands.map(({ coat, fromMm, toMm, wetness }) => (
          <tr key={coat.id}>
            <th scope="row">{coat.number}</th>
            <td>{kindWords[coat.kind]}</td>
            <td>{stuccoWords(coat.stuccoId)}</td>
            <td>{show(toMm - fromMm)}</td>
            <td>{wetnessWords[wetness]}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={3}>
            Shell, {basis === "measured" ? "by your calipers" : "by the table of coats"}
          </th>
          <td colSpan={2}>{wallRange(standing.wall, format)}</td>
        </tr>
        {judged !== null && (
          <tr>
            <th scope="row" colSpan={3}>
              Needed for {neededBy({ ...judged, floorMm: standing.wall.floorMm })}
            </th>
            <td colSpan={2}>{show(judged.neededMm)}</td>
          </tr>
        )}
      </tfoot>
    </table>
  );
}
