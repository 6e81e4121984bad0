import { useState } from "react";
import type { Entry } from "../../../logbook/entries/entry.ts";
import { useFleeting } from "../state/fleeting.ts";
import { useShop } from "../state/shop.tsx";
import { Button } from "../parts/Button.tsx";
import sheet from "../styles/sheet.module.css";
import field from "../parts/field.module.css";
import { WhenField } from "../forms/WhenField.tsx";

type EntryTaskProps = { readonly stream: string; readonly entry: Entry; readonly onDone: () => void };

/** Strikes the entry and writes it again at its right time. */
export function CorrectTime({ stream, entry, onDone }: EntryTaskProps) {
  const { log, clock } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [at, setAt] = useState<number | null>(entry.at);
  const [fault, setFault] = useState<string | null>(null);
  const save = async (): Promise<void> => {
    const command = {
      do: "correct",
      stream,
      entryId: entry.id,
      at: at ?? clock(),
      reason: "time corrected",
    } as const;
    const result = await log(command, { quiet: true });
    if (!result.ok) return setFault(result.text);
    say("Time corrected.");
    onDone();
  };
  return (
    <>
      <WhenField label="When it happened" at={at} onChange={setAt} />
      {fault !== null && (
        <p className={field["error"]} role="alert">
          {fault}
        </p>
      )}
      <div className={sheet["row"]}>
        <Button
          kind="primary"
          onPress={save}
          disabledReason={at === entry.at ? "This is the time it has." : null}
        >
          Save the time
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </>
  );
}
