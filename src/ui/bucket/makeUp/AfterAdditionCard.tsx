import type { AfterAddition } from "../../../logbook/bucket/bucketAdvice.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { afterWords } from "./afterWords.ts";
import css from "./makeUp.module.css";

/** What the last addition was to bring, beside what was read after it. */
export function AfterAdditionCard({
  after,
  bucketId,
}: {
  readonly after: AfterAddition;
  readonly bucketId: string;
}) {
  const format = useFormat();
  const { expected, read } = after;
  const { verdict, says, tone } = afterWords(after, format);
  const density = read?.density?.densityGCm3;
  const seconds =
    read?.seconds === null || read === null ? undefined : (read.seconds.atReferenceS ?? read.seconds.seconds);
  return (
    <Card title="After the last addition" tone={tone}>
      <p>
        <strong>{verdict}.</strong> {says}
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">
              <Ago at={after.top.at} />
            </th>
            <th scope="col">Expected</th>
            <th scope="col">Measured</th>
          </tr>
        </thead>
        <tbody>
          {expected.densityGCm3 !== null && (
            <tr>
              <th scope="row">Density</th>
              <td>{format.show("density", expected.densityGCm3)}</td>
              <td>{density === undefined ? "–" : format.show("density", density)}</td>
            </tr>
          )}
          {expected.cupS !== null && (
            <tr>
              <th scope="row">Viscosity</th>
              <td>{format.show("s", expected.cupS)}</td>
              <td>{seconds === undefined ? "–" : format.show("s", seconds)}</td>
            </tr>
          )}
        </tbody>
      </table>
      {read === null && (
        <div className={css["ways"]}>
          <LinkButton href={paths.bucketRead(bucketId)}>Check the slurry</LinkButton>
        </div>
      )}
      <details>
        <summary>How this is calculated</summary>
        <p>
          Density: total mass divided by total volume (derived). It is met within the bucket’s own tolerance.
          Viscosity: Krieger and Dougherty’s law for suspensions (from memory), turned into cup seconds by the
          cup’s standard. It is a rough estimate, met within 10%.
        </p>
      </details>
    </Card>
  );
}
