import { useState, type ReactNode } from "react";
import { useLocation } from "wouter";
import type { z } from "zod";
import type { Command } from "../../../logbook/log/command.ts";
import { streamOf, type EntryBodies, type EntryType } from "../../../logbook/entries/entry.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import type { RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { WhenField } from "../../base/forms/WhenField.tsx";
import { PieceCautions } from "./PieceCautions.tsx";
import { cautionOf } from "../../base/cautions/cautionWords.ts";
import { check, withoutEmpty } from "../../base/forms/fieldSchema.ts";
import { useForm, type Form } from "../../base/forms/useForm.ts";
import css from "./LogForm.module.css";

export type LogFormProps = { readonly item: RackItem };

/** One entry type as a form: fields, when it happened, one button. What is half written survives a reload. */
export function LogForm<T extends EntryType, D extends object>({
  item,
  type,
  title,
  save = "Log it",
  initial,
  schema,
  blocked = null,
  about,
  children,
}: LogFormProps & {
  readonly type: T;
  readonly title: string;
  readonly save?: string;
  readonly initial: D;
  readonly schema: z.ZodType<EntryBodies[T]>;
  /** Why it can't be logged at all now; null when it can. */
  readonly blocked?: string | null;
  /** The coat or step it speaks of, where a draft about an earlier one must not come back. */
  readonly about?: string | undefined;
  readonly children: (form: Form<D & { readonly at: number | null }>) => ReactNode;
}) {
  const shop = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [, goTo] = useLocation();
  const { piece } = item.standing;
  const form = useForm<D & { readonly at: number | null }>(
    `log/${piece.id}/${type}`,
    { ...initial, at: null },
    about,
  );
  const [refused, setRefused] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const caution = cautionOf[type];

  const submit = async () => {
    const read = check(schema, form.draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok || busy) return;
    setBusy(true);
    const { at } = form.draft;
    const done = await shop.log(logCommand(piece.id, type, withoutEmpty(read.value), at), { quiet: true });
    setBusy(false);
    if (!done.ok) return setRefused(done.text);
    await form.drop();
    say(`${title}: logged.`);
    goTo(paths.piece(piece.id));
  };

  return (
    <Page title={title} back={paths.piece(piece.id)}>
      <form
        className={css["form"]}
        onSubmit={(event) => {
          event.preventDefault();
          void submit();
        }}
      >
        <p className={css["piece"]}>{piece.plan.name}</p>
        {caution !== undefined && <PieceCautions step={caution} item={item} />}
        {children(form)}
        <WhenField
          label="When"
          at={form.draft.at}
          onChange={(at) => form.set({ at } as Partial<D & { at: number | null }>)}
        />
        {Object.values(form.errors).some(Boolean) && (
          <p role="alert" className={css["refused"]}>
            Not logged yet: see the marked {Object.keys(form.errors).length === 1 ? "field" : "fields"}.
          </p>
        )}
        {refused !== null && (
          <p role="alert" className={css["refused"]}>
            {refused}
          </p>
        )}
        <Button kind="primary" size="big" disabledReason={blocked} onPress={() => void submit()}>
          {save}
        </Button>
      </form>
    </Page>
  );
}

function logCommand<T extends EntryType>(
  pieceId: string,
  type: T,
  body: EntryBodies[T],
  at: number | null,
): Command {
  const command = {
    do: "log",
    stream: streamOf("piece", pieceId),
    type,
    body,
    ...(at === null ? {} : { at }),
  };
  return command as unknown as Command;
}
