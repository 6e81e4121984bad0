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
            <th scope="col">Read</th>
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
              <th scope="row">Seconds</th>
              <td>{format.show("s", expected.cupS)}</td>
              <td>{seconds === undefined ? "–" : format.show("s", seconds)}</td>
            </tr>
          )}
        </tbody>
      </table>
      {read === null && (
        <div className={css["ways"]}>
          <LinkButton href={paths.bucketRead(bucketId)}>Read the bucket</LinkButton>
        </div>
      )}
      <details>
        <summary>How it is worked out</summary>
        <p>
          Density: mass over volume of what was in it and what went in (derived). Seconds: Krieger and
          Dougherty’s thickness of a suspension (from memory), carried into the cup by its standard’s law; a
          guess, taken as met within a tenth. Density is met within the bucket’s own tolerance.
        </p>
      </details>
    </Card>
  );
}
