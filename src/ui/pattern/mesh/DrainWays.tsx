import { drainPath } from "../../../geometry/drainPath.ts";
import { length, minus, negated } from "../../../geometry/vector.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { touchMm } from "../../../logbook/casting/gatingTree.ts";
import { treeMisfit } from "./patternStudy.ts";
import type { SceneController } from "./useSceneController.ts";

/** Turned cup down for the burnout: how each opening's plastic gets out through the bars; nothing while they do not fit. */
export function DrainWays({ desk }: { readonly desk: SceneController }) {
  const format = useFormat();
  const { study, marks } = desk;
  const joined = marks.filter(({ mark }) =>
    study.bars.some(({ from, to }) => [from, to].some((end) => length(minus(end, mark.point)) <= touchMm)),
  );
  if (joined.length === 0 || treeMisfit(study) !== null) return null;
  return (
    <Card title="How the plastic drains, cup down">
      <table>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col">Narrowest</th>
            <th scope="col">On the way</th>
          </tr>
        </thead>
        <tbody>
          {joined.map(({ mark, label }) => {
            const way = drainPath({
              bars: study.bars,
              at: mark.point,
              outUp: negated(study.up),
              touch: touchMm,
            });
            return (
              <tr key={mark.id}>
                <td>{label}</td>
                <td>{way === null ? "–" : format.show("mm", way.narrowest)}</td>
                <td>
                  {way === null
                    ? mark.kind === "vent"
                      ? "Runs out at the vent's own open end."
                      : "No gating part leads out from here."
                    : way.climbs > 0.5
                      ? `It has to climb ${format.show("mm", way.climbs)}: plastic is trapped in that bend.`
                      : "Downhill all the way."}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Card>
  );
}
