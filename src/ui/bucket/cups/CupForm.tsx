import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Cup } from "../../../logbook/shop/shopThings.ts";
import { cups } from "../../../trade/cups.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./CupsPage.module.css";

type CupDraft = { readonly name: string; readonly cup: string };

export function CupForm({ cup, onSaved }: { readonly cup: Cup | null; readonly onSaved: () => void }) {
  const { log, moment } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const form = useForm<CupDraft>(`cup/${cup?.id ?? "new"}`, {
    name: cup?.name ?? "",
    cup: cup?.cup ?? "zahn-4",
  });
  const { draft } = form;
  const bound = { ...form, errors: { name: form.refused ?? undefined } };
  const save = async (retired: boolean) => {
    const cupId = cup?.id ?? moment().newId();
    const body = { cupId, name: draft.name.trim(), cup: draft.cup };
    await form.send(
      () =>
        log(
          { do: "log", stream: shopStream, type: "cup-set", body: retired ? { ...body, retired } : body },
          { quiet: true },
        ),
      () => {
        say("Cup saved.");
        onSaved();
      },
    );
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
      <TextOf form={bound} at="name" label="Name" hint="What you call it, such as “blue tape”." />
      <SelectOf
        form={form}
        at="cup"
        label="Kind"
        empty={null}
        options={cups.map(({ id, label }) => ({ value: id, label }))}
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
            {isRetired ? "Use it again" : "No longer used"}
          </Button>
        )}
      </div>
    </form>
  );
}
