import { useState } from "react";
import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Cup } from "../../../logbook/shop/shopThings.ts";
import { cups } from "../../../trade/cups.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import css from "./CupsPage.module.css";

type CupDraft = { readonly name: string; readonly cup: string };

export function CupForm({ cup, onSaved }: { readonly cup: Cup | null; readonly onSaved: () => void }) {
  const { log, moment } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const { draft, set, drop } = useForm<CupDraft>(`cup/${cup?.id ?? "new"}`, {
    name: cup?.name ?? "",
    cup: cup?.cup ?? "zahn-4",
  });
  const [refused, setRefused] = useState<string | null>(null);
  const save = async (retired: boolean) => {
    const cupId = cup?.id ?? moment().newId();
    const body = { cupId, name: draft.name.trim(), cup: draft.cup };
    const done = await log(
      { do: "log", stream: shopStream, type: "cup-set", body: retired ? { ...body, retired } : body },
      { quiet: true },
    );
    if (!done.ok) return setRefused(done.text);
    await drop();
    say("Cup saved.");
    onSaved();
  };
  const isRetired = cup?.retired ?? false;
  return (
    <form
      className={css["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        void save(isRetired);
      }}
    >
      <TextField
        label="Name"
        value={draft.name}
        onChange={(name) => set({ name })}
        hint="As it is marked: “blue tape”."
        error={refused}
      />
      <SelectField
        label="Kind"
        empty={null}
        options={cups.map(({ id, label }) => ({ value: id, label }))}
        value={draft.cup}
        onChange={(kind) => set({ cup: kind ?? draft.cup })}
      />
      <div className={css["keys"]}>
        <Button
          onPress={() => save(isRetired)}
          disabledReason={draft.name.trim() === "" ? "Give it a name first." : null}
        >
          Save the cup
        </Button>
        {cup !== null && (
          <Button kind="quiet" onPress={() => save(!isRetired)}>
            {isRetired ? "In use again" : "No longer used"}
          </Button>
        )}
      </div>
    </form>
  );
}
