import type { ReactNode } from "react";
import { useLocation } from "wouter";
import type { Command } from "../../../logbook/log/command.ts";
import { streamOf, type EntryBodies, type EntryType } from "../../../logbook/entries/entry.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import type { RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { PieceCautions } from "./PieceCautions.tsx";
import { cautionOf } from "../../base/cautions/cautionWords.ts";
import type { Bound } from "../../base/forms/bound.ts";
import {
  asGiven,
  checkFields,
  withoutEmpty,
  type Checked,
  type DraftOf,
  type Fields,
  type ReadOf,
} from "../../base/forms/formFields.ts";
import { Refused } from "../../base/forms/Refused.tsx";
import type { Format } from "../../base/format/units.ts";
import { useEntryForm, type EntryForm } from "../../base/forms/useEntryForm.ts";
import { WhenOf } from "../../base/forms/BoundFields.tsx";
import css from "./LogForm.module.css";

export type LogFormProps = { readonly item: RackItem };

/** One entry type as a form: fields, when it happened, one button. What is half written survives a reload. */
export function LogForm<T extends EntryType, F extends Fields, R = ReadOf<F>>({
  item,
  type,
  title,
  save = "Log it",
  fields,
  start,
  check,
  body,
  blocked = null,
  filledBy = null,
  about,
  children,
}: LogFormProps & {
  readonly type: T;
  readonly title: string;
  readonly save?: string;
  readonly fields: F;
  /** What is known to begin with. */
  readonly start?: Partial<DraftOf<F>>;
  /** How the fields are read, where that is not each by itself. */
  readonly check?: (draft: DraftOf<F>, format: Format) => Checked<R>;
  /** `at` is when it happened, epoch ms; null for now. */
  readonly body: (read: R, at: number | null) => EntryBodies[T];
  /** Why it can't be logged at all now; null when it can. */
  readonly blocked?: string | null;
  /** What filled in the answers it starts with: said on its key until something is touched. */
  readonly filledBy?: string | null;
  /** The coat or step it speaks of, where a draft about an earlier one must not come back. */
  readonly about?: string | undefined;
  readonly children: (form: EntryForm<F, unknown>) => ReactNode;
}) {
  const shop = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [, goTo] = useLocation();
  const { piece } = item.standing;
  const timed = { ...fields, at: asGiven<number | null>(null) };
  const form = useEntryForm<typeof timed, R>(`log/${piece.id}/${type}`, timed, {
    start,
    about,
    check: (draft, format) => (check?.(draft, format) ?? checkFields<F>(fields, draft, format)) as Checked<R>,
  });
  const timedForm = form as Bound<{ readonly at: number | null }>;
  const caution = cautionOf[type];

  const submit = () =>
    form.save(
      (read) => {
        const { at } = timedForm.draft;
        return shop.log(logCommand(piece.id, type, withoutEmpty(body(read, at)), at), { quiet: true });
      },
      () => {
        say(`${title}: logged.`);
        goTo(paths.piece(piece.id));
      },
    );

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
        <WhenOf form={timedForm} at="at" label="When" />
        <Refused form={form} notYet="Not logged yet" />
        <Button kind="primary" size="big" disabledReason={blocked} onPress={() => void submit()}>
          {filledBy === null || form.isTouched() ? save : `${save}, ${filledBy}`}
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
