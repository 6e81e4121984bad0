import { usualKinds } from "../../../logbook/acts/startPiece.ts";
import type { Recipe } from "../../../logbook/piece/piece.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { kindWords } from "../../base/format/coatWords.ts";
import { sentence } from "../../base/format/sentence.ts";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import { SelectField } from "../../base/forms/SelectField.tsx";
import type { EntryForm } from "../../base/forms/useEntryForm.ts";
import sheet from "../../base/styles/sheet.module.css";
import { DayField } from "./DayField.tsx";
import css from "./StartPage.module.css";
import type { startFields } from "./startForm.ts";

const kinds = Object.keys(kindWords) as readonly CoatKind[];
/** More rows than this are a slip of the finger; the form says so when it is saved. */
const mostRows = 30;

/** The kind of each coat that is on: by the recipe, where it was not put right by hand. */
export const kindsOn = (
  count: number,
  chosen: Readonly<Record<number, CoatKind>>,
  recipe: Recipe | null,
): readonly CoatKind[] => usualKinds(count, recipe).map((kind, place) => chosen[place] ?? kind);

/** For a piece that is in work already: its coats, the last one's time, and when it was begun. */
export function CoatsOn({
  form,
  recipe,
}: {
  readonly form: EntryForm<typeof startFields>;
  readonly recipe: Recipe | null;
}) {
  const { draft, errors, set } = form;
  const count = Math.min(mostRows, Math.floor(draft.coatsOn ?? 0));
  const rows = kindsOn(count, draft.kinds, recipe);
  return (
    <details className={css["on"]} open={draft.coatsOn !== null || draft.startedAt !== null || undefined}>
      <summary>In work already: coats on it, or begun earlier</summary>
      <div className={sheet["stack"]}>
        <NumberOf
          form={form}
          at="coatsOn"
          label="Coats on it"
          hint="They are logged as on before the log began. Their drying is not judged."
        />
        {count > 0 && (
          <>
            <DayField
              label="Last coat went on"
              hint="Its drying counts from then."
              at={draft.lastAt}
              onChange={(lastAt) => set({ lastAt })}
              error={errors["lastAt"]}
            />
            <details>
              <summary>{sentence(countedKinds(rows))}</summary>
              <div className={css["kinds"]}>
                {rows.map((kind, place) => (
                  <SelectField
                    key={`${place}`}
                    label={`Coat ${place + 1}`}
                    options={kinds.map((one) => ({ value: one, label: sentence(kindWords[one]) }))}
                    value={kind}
                    empty={null}
                    onChange={(chosen) =>
                      chosen !== null && set({ kinds: { ...draft.kinds, [place]: chosen } })
                    }
                  />
                ))}
              </div>
            </details>
          </>
        )}
        <DayField
          label="Begun"
          hint="Leave it empty for today."
          at={draft.startedAt}
          onChange={(startedAt) => set({ startedAt })}
        />
      </div>
    </details>
  );
}

/** "2 prime, 1 intermediate, 3 backup". */
const countedKinds = (rows: readonly CoatKind[]): string =>
  kinds
    .map((kind) => [rows.filter((one) => one === kind).length, kindWords[kind]] as const)
    .filter(([count]) => count > 0)
    .map(([count, name]) => `${count} ${name}`)
    .join(", ");
