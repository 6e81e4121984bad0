import { ArrowDown, ArrowUp, CopyPlus, Trash2 } from "lucide-react";
import { useState } from "react";
import { leastDryH as startingH } from "../../../trade/dryMinimums.ts";
import { stuccos } from "../../../trade/stuccos.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import type { FieldErrors } from "../../base/forms/formFields.ts";
import { Button } from "../../base/parts/Button.tsx";
import { coatKinds } from "../../base/format/coatKinds.ts";
import { coatAdded, coatFields, coatMoved, coatRemoved, type CoatDraft } from "./recipeForm.ts";
import { recipeCoatMm } from "../../../logbook/piece/recipeWall.ts";
import { useFigures } from "../../base/state/live.ts";
import sheet from "../../base/styles/sheet.module.css";
import { NumberOf, SelectOf } from "../../base/forms/BoundFields.tsx";
import css from "./CoatRows.module.css";

/** The coats of a recipe in order; one at a time is open to be changed, moved, copied or taken out. */
export function CoatRows({
  coats,
  errors,
  onChange,
}: {
  readonly coats: readonly CoatDraft[];
  readonly errors: FieldErrors;
  readonly onChange: (coats: readonly CoatDraft[]) => void;
}) {
  const [open, setOpen] = useState<number | null>(null);
  const add = (after: number) => {
    const next = coatAdded(coats, after);
    onChange(next);
    setOpen(next[after + 1]?.key ?? null);
  };
  return (
    <>
      <ol className={`${sheet["list"]} ${sheet["closed"]} ${sheet["cell"]}`}>
        {coats.map((coat, at) => {
          const dryError = errors[`coats.${at}.targetDryness`];
          const leastError = errors[`coats.${at}.leastDryH`];
          const isOpen = open === coat.key || (dryError ?? leastError) !== undefined;
          return (
            <li key={coat.key} className={`${sheet["stack3"]} ${css["row"]}`}>
              <button
                type="button"
                className={css["head"]}
                aria-expanded={isOpen}
                onClick={() => setOpen(isOpen ? null : coat.key)}
              >
                <CoatHead coat={coat} number={at + 1} />
              </button>
              {isOpen && (
                <>
                  <CoatFields
                    coat={coat}
                    error={dryError}
                    leastError={leastError}
                    onChange={(changes) => onChange(coats.with(at, { ...coat, ...changes }))}
                  />
                  <div className={`${sheet["row"]} ${css["keys"]}`}>
                    {at > 0 && (
                      <Button
                        label={`Move coat ${at + 1} up`}
                        onPress={() => onChange(coatMoved(coats, at, -1))}
                      >
                        <ArrowUp aria-hidden="true" />
                      </Button>
                    )}
                    {at < coats.length - 1 && (
                      <Button
                        label={`Move coat ${at + 1} down`}
                        onPress={() => onChange(coatMoved(coats, at, 1))}
                      >
                        <ArrowDown aria-hidden="true" />
                      </Button>
                    )}
                    <Button label={`Another like coat ${at + 1}`} onPress={() => add(at)}>
                      <CopyPlus aria-hidden="true" />
                    </Button>
                    <Button
                      label={`Take out coat ${at + 1}`}
                      onPress={() => onChange(coatRemoved(coats, at))}
                    >
                      <Trash2 aria-hidden="true" />
                    </Button>
                  </div>
                </>
              )}
            </li>
          );
        })}
      </ol>
      {errors["coats"] !== undefined && (
        <p role="alert" className={sheet["refused"]}>
          {errors["coats"]}
        </p>
      )}
      <Button kind="secondary" onPress={() => add(coats.length - 1)}>
        Add a coat
      </Button>
    </>
  );
}

function CoatHead({ coat, number }: { readonly coat: CoatDraft; readonly number: number }) {
  const format = useFormat();
  const figures = useFigures();
  const builds = figures === undefined ? null : recipeCoatMm(coat, figures.buildMm);
  const dry =
    coat.targetDryness === null ? "dryness not set" : `dry at ${format.show("percent", coat.targetDryness)}`;
  return (
    <>
      <span className={sheet["strong"]}>{number}</span>
      <span className={css["words"]}>
        {coatWords(coat)}
        <small>
          {figures !== undefined &&
            (builds === null ? "shell not known, " : `${format.show("mm", builds)} of shell, `)}
          {dry}
          {typeof coat.leastDryH === "number" && `, at least ${format.show("h", coat.leastDryH)}`}
        </small>
      </span>
    </>
  );
}

function CoatFields({
  coat,
  error,
  leastError,
  onChange,
}: {
  readonly coat: CoatDraft;
  readonly error: string | undefined;
  readonly leastError: string | undefined;
  readonly onChange: (changes: Partial<CoatDraft>) => void;
}) {
  const format = useFormat();
  const form = {
    draft: coat,
    set: onChange,
    fields: coatFields,
    errors: { targetDryness: error, leastDryH: leastError },
  };
  return (
    <div className={css["fields"]}>
      <SelectOf
        form={form}
        at="kind"
        label="Kind"
        options={coatKinds}
        empty={null}
        also={(kind) => (kind === "seal" ? { stuccoId: null } : {})}
      />
      <SelectOf
        form={form}
        at="stuccoId"
        label="Stucco"
        options={stuccos.map(({ id, label }) => ({ value: id, label }))}
        empty="None"
      />
      <NumberOf
        form={form}
        at="targetDryness"
        label="Dry at"
        hint="Share of its water gone before the next coat. 95% suits most, 99% the last."
      />
      <NumberOf
        form={form}
        at="leastDryH"
        label="Minimum drying time"
        hint={`Before the next coat, in any air. Empty: the bucket’s or the shop’s; else ${format.show("h", startingH[coat.kind].value)}.`}
      />
    </div>
  );
}
