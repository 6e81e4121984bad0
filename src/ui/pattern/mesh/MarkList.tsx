import { headAt } from "../../../geometry/attitude.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { cupLevelOf, withoutMark } from "./patternStudy.ts";
import { heightOf } from "./scenePlaces.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { SceneController } from "./useSceneController.ts";

const names = { gate: "Gate", vent: "Vent", drain: "Drain", feeder: "Feeder" } as const;

/** What stands on the piece, each with its height and the head of metal over it. */
export function MarkList({ desk }: { readonly desk: SceneController }) {
  const format = useFormat();
  const { marks, results, study, chosen } = desk;
  if (marks.length === 0)
    return <p>Nothing yet. Use the list above, or choose a tool and tap the picture.</p>;
  return (
    <ul className={css["spots"]} aria-label="Placed on the pattern">
      {marks.map(({ mark, label }) => (
        <li key={mark.id} className={css["spot"]}>
          <span className={css["chip"]} data-kind={mark.kind} data-put>
            {label}
          </span>
          <div>
            <p>
              <strong>{names[mark.kind]}</strong>
              {results !== null && `, ${format.show("mm", heightOf(mark.point, results))} up`}
            </p>
            {results !== null && (
              <p className={sheet["soft"]}>
                Metal head over it{" "}
                {format.show(
                  "mm",
                  headAt({ up: study.up, cupLevel: cupLevelOf(study, results.highMm), point: mark.point }),
                )}
              </p>
            )}
            {chosen === mark.id && <p role="status">Tap its place in the picture.</p>}
          </div>
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button
              kind="quiet"
              pressed={chosen === mark.id}
              label={`Move ${label}`}
              onPress={() => desk.setChosen(chosen === mark.id ? null : mark.id)}
            >
              Move
            </Button>
            <Button
              kind="quiet"
              label={`Remove ${label}`}
              onPress={() => desk.act((now) => withoutMark(now, mark.id))}
            >
              Remove
            </Button>
          </div>
        </li>
      ))}
    </ul>
  );
}
