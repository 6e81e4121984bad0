import { volumeText } from "../../base/format/figureText.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { HeldPockets } from "./patternResults.ts";
import { hollowsOf } from "./studyHollows.ts";
import { tipLimits } from "./patternStudy.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { SceneController } from "./useSceneController.ts";

/** What air and plastic stay with the openings that stand now; greyed while a newer answer is on its way. */
export function HeldAnswer({
  desk: { results, isStale, study, mmPerUnit, door },
}: {
  readonly desk: SceneController;
}) {
  const held = results?.held ?? null;
  if (hollowsOf(study, mmPerUnit)?.are === null)
    return <p>First choose above: closed void metal or core. This result depends on it.</p>;
  const has = (kind: string): boolean => study.marks.some((mark) => mark.kind === kind);
  return (
    <div role="status" aria-busy={isStale} className={isStale ? css["stale"] : undefined}>
      {held === null ? (
        <p>
          {door.trouble === null ? "Calculating…" : "It could not be calculated here. See the mesh below."}
        </p>
      ) : (
        <>
          <Line what="air" held={held.air} isOpen={has("vent")} />
          <Line what="plastic" held={held.plastic} isOpen={study.marks.length > 0} />
          {isDoubtful(Math.max(held.air.badShare, held.plastic.badShare)) && (
            <p className={sheet["soft"]}>This mesh has faults, so these amounts are uncertain.</p>
          )}
        </>
      )}
    </div>
  );
}

/** Columns through a fault may be told wrong; where they are most of all, nothing is told. */
const isDoubtful = (badShare: number): boolean => badShare > 0.01 && badShare <= 0.5;

function Line({
  what,
  held,
  isOpen,
}: {
  readonly what: "air" | "plastic";
  readonly held: HeldPockets;
  readonly isOpen: boolean;
}) {
  const format = useFormat();
  const pockets = held.pockets.filter(isTold);
  const ml = (value: number): string => volumeText(value / 1000, format);
  if (held.badShare > 0.5)
    return (
      <p className={css["answer"]}>
        Whether {what} is trapped is not known: the mesh is open or faulty. See the mesh below.
      </p>
    );
  const name = what === "air" ? "Air" : "Plastic";
  if (!isOpen)
    return (
      <p className={css["answer"]}>
        {name} stays: all {ml(held.totalMl)}, no {what === "air" ? "vent" : "opening"} yet.
      </p>
    );
  const told = pockets.reduce((sum, pocket) => sum + pocket.ml, 0);
  if (pockets.length === 0)
    return (
      <p className={css["answer"]}>
        No {what} stays
        {held.totalMl >= 0.05
          ? `, but for ${ml(held.totalMl)} in films thinner than ${format.show("mm", tipLimits.minRise)}`
          : ""}
        .
      </p>
    );
  return (
    <>
      <p className={css["answer"]}>
        {name} stays: {ml(told)} in {pockets.length === 1 ? "one place" : `${pockets.length} places`}.
      </p>
      <details>
        <summary>{name} trapped, by place</summary>
        <div className={sheet["scroll"]}>
          <table>
            <thead>
              <tr>
                <th scope="col">Amount</th>
                <th scope="col">From</th>
                <th scope="col">To</th>
                <th scope="col">Opening</th>
              </tr>
            </thead>
            <tbody>
              {pockets.map(({ ml: amount, levelMm, endMm, vented, point }) => (
                <tr key={point.join(" ")}>
                  <td>{ml(amount)}</td>
                  <td>{format.show("mm", levelMm)}</td>
                  <td>{format.show("mm", endMm)}</td>
                  <td>{vented ? "has one, but not at its end" : "none"}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <p className={sheet["soft"]}>Heights are from the lowest place of the piece.</p>
      </details>
    </>
  );
}

/** As with tips: what rises or holds less is noise. */
const isTold = ({ ml, endMm, levelMm }: HeldPockets["pockets"][number]): boolean =>
  ml >= tipLimits.minVolume / 1000 && Math.abs(endMm - levelMm) >= tipLimits.minRise;
