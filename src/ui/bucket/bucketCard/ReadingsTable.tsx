import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dateFormat } from "../../base/format/formatters.ts";
import { clockTime } from "../../base/format/time.ts";
import sheet from "../../base/styles/sheet.module.css";

const most = 10;

/** The readings that measured something, newest last; one taken after a correction says so. */
export function ReadingsTable({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { readings } = standing;
  const rows = readings
    .filter(({ seconds, density, reading: { pH, slurryC } }) => (seconds ?? density ?? pH ?? slurryC) != null)
    .slice(-most);
  if (rows.length === 0) return <p>Never checked.</p>;
  const day = dateFormat(format.locale, { day: "numeric", month: "short" });
  const number = (value: number | null | undefined, digits: number): string =>
    value === null || value === undefined ? "" : format.number(value, digits);
  return (
    <div className={sheet["scroll"]}>
      <table>
        <thead>
          <tr>
            <th scope="col">Checked</th>
            <th scope="col">{format.unit("temp")}</th>
            <th scope="col">Viscosity (s)</th>
            <th scope="col">g/cm³</th>
            <th scope="col">pH</th>
            <th scope="col">Note</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ reading, at, seconds, density }) => (
            <tr key={reading.id}>
              <td>
                {day.format(at)} {clockTime(at, format.locale)}
              </td>
              <td>
                {reading.slurryC === undefined ? "" : number(format.toShown("temp", reading.slurryC), 1)}
              </td>
              <td>{number(seconds?.seconds, 1)}</td>
              <td>{number(density?.densityGCm3, 3)}</td>
              <td>{number(reading.pH, 2)}</td>
              <td>
                {[
                  reading.asLeft === true ? "after a correction" : null,
                  reading.smell === "foul" ? "smells" : null,
                  reading.lumps === true ? "lumps" : null,
                  reading.skin === true ? "skin" : null,
                  reading.foam === true ? "foam" : null,
                  reading.name,
                ]
                  .filter((word) => word != null)
                  .join(", ")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
