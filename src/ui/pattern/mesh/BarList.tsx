import { volumeText } from "../../base/format/figureText.ts";
import type { GatingBar, TreeSums } from "../../../geometry/gatingBars.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { barNames } from "./barNames.ts";
import { withBars } from "./patternStudy.ts";
import { diameterOf, lengthOf, withLength } from "../../../logbook/casting/gatingTree.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { SceneController } from "./useSceneController.ts";

const limits = { least: 1, most: 500, longest: 3000 } as const;

/** Each bar with its sizes to change, its volume, modulus and head; no figures while the tree does not fit. */
export function BarList({ desk, sums }: { readonly desk: SceneController; readonly sums: TreeSums | null }) {
  const format = useFormat();
  const change = (id: string, next: (bar: GatingBar) => GatingBar): void =>
    desk.act((now) =>
      withBars(
        now,
        now.bars.map((bar) => (bar.id === id ? next(bar) : bar)),
        null,
      ),
    );
  return (
    <ul className={css["spots"]} aria-label="Gating parts">
      {desk.study.bars.map((bar, n) => {
        const sum = sums?.bars.find(({ id }) => id === bar.id);
        const name = `${barNames[bar.kind]} ${n + 1}`;
        return (
          <li key={bar.id} className={css["spot"]}>
            <span className={css["chip"]} data-kind={bar.kind}>
              {n + 1}
            </span>
            <div>
              <p>
                <strong>{barNames[bar.kind]}</strong>, {format.show("mm", lengthOf(bar))} long,{" "}
                {format.show("mm", diameterOf(bar.fromSection))} to{" "}
                {format.show("mm", diameterOf(bar.toSection))}
              </p>
              {sum !== undefined && (
                <p className={sheet["soft"]}>
                  {volumeText(sum.volume / 1e6, format)}, modulus {format.show("mm", sum.modulus)}
                  {sum.head === null ? "" : `, head ${format.show("mm", sum.head)}`}
                </p>
              )}
              <details>
                <summary>Change {name}</summary>
                <div className={`${sheet["stack"]} ${css["panel"]}`}>
                  <NumberField
                    label={`${name}: diameter at its start`}
                    quantity="mm"
                    min={limits.least}
                    max={limits.most}
                    value={diameterOf(bar.fromSection)}
                    onChange={(mm) => {
                      if (isWithin(mm, limits.most))
                        change(bar.id, (one) => ({ ...one, fromSection: round(mm) }));
                    }}
                  />
                  <NumberField
                    label={`${name}: diameter at its end`}
                    quantity="mm"
                    min={limits.least}
                    max={limits.most}
                    value={diameterOf(bar.toSection)}
                    onChange={(mm) => {
                      if (isWithin(mm, limits.most))
                        change(bar.id, (one) => ({ ...one, toSection: round(mm) }));
                    }}
                  />
                  <NumberField
                    label={`${name}: long`}
                    quantity="mm"
                    min={limits.least}
                    max={limits.longest}
                    value={lengthOf(bar)}
                    onChange={(mm) => {
                      if (isWithin(mm, limits.longest)) change(bar.id, (one) => withLength(one, mm));
                    }}
                    hint="Its far end moves. Parts attached to that end stay where they are."
                  />
                </div>
              </details>
            </div>
            <div className={`${sheet["row"]} ${css["wrap"]}`}>
              <Button
                kind="quiet"
                label={`Remove ${name}`}
                onPress={() =>
                  desk.act((now) =>
                    withBars(
                      now,
                      now.bars.filter(({ id }) => id !== bar.id),
                      null,
                    ),
                  )
                }
              >
                Remove
              </Button>
            </div>
          </li>
        );
      })}
    </ul>
  );
}

const round = (diameter: number) => ({ kind: "round", diameter }) as const;
const isWithin = (mm: number | null, most: number): mm is number =>
  mm !== null && mm >= limits.least && mm <= most;
