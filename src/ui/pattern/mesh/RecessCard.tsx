import { volumeText } from "../../base/format/figureText.ts";
import { geometryClasses } from "../../../trade/geometryClasses.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { pocketClass } from "../../../logbook/casting/pocketClass.ts";
import { pocketsOf } from "./planOfStudy.ts";
import { hollowsOf } from "./studyHollows.ts";
import type { PatternController } from "./usePatternController.ts";

const shown = 8;

/** Slow-drying hollows, as the drying classes the plan knows. */
export function RecessCard({ door: { study, mmPerUnit } }: { readonly door: PatternController }) {
  const format = useFormat();
  const recesses = study.shape?.recesses ?? null;
  if (mmPerUnit === null || recesses === null) return null;
  const telling = recesses.filter((recess) => pocketClass(recess) !== null);
  const hollows = hollowsOf(study, mmPerUnit);
  const classes = pocketsOf(study, hollows);
  return (
    <Card title="Slow-drying hollows">
      {hollows?.are === "core" && (
        <p>
          The closed void, once it is opened, dries like {geometryClasses.blind.label.toLowerCase()}: it is
          deep for its mouth.
        </p>
      )}
      {telling.length === 0 && hollows?.are !== "core" && <p>No deep hollow found.</p>}
      {telling.length > 0 && (
        <div className={`${sheet["scroll"]} ${css["wide"]}`}>
          <table>
            <thead>
              <tr>
                <th scope="col">Deep</th>
                <th scope="col">Mouth</th>
                <th scope="col">Holds</th>
                <th scope="col">Dries as</th>
              </tr>
            </thead>
            <tbody>
              {telling.slice(0, shown).map((recess) => (
                <tr key={recess.point.join(" ")}>
                  <td>{format.show("mm", recess.depth)}</td>
                  <td>{format.show("mm", recess.mouth)}</td>
                  <td>{volumeText(recess.volume / 1e6, format)}</td>
                  <td>{geometryClasses[pocketClass(recess) ?? "open"].label}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {classes.length > 0 && (
        <p className={sheet["soft"]}>
          A piece started from this pattern gets{" "}
          {classes.map((one) => geometryClasses[one].label.toLowerCase()).join(" and ")} as places that dry
          last.
        </p>
      )}
    </Card>
  );
}
