import { useLiveQuery } from "dexie-react-hooks";
import { useState } from "react";
import type { Entry } from "../../../logbook/entries/entry.ts";
import { readAct } from "../../../storage/run.ts";
import { useFleeting } from "../state/fleeting.ts";
import { useShop } from "../state/shop.tsx";
import { Button } from "../parts/Button.tsx";
import { TextField } from "../forms/TextField.tsx";
import sheet from "../styles/sheet.module.css";

/** Strikes the entry with a reason; it stays in the log, struck, and can be brought back. */
export function StrikeEntry(props: {
  readonly stream: string;
  readonly entry: Entry;
  readonly onDone: () => void;
}) {
  const { stream, entry, onDone } = props;
  const { db, log, takeBack } = useShop();
  const lines = useLiveQuery(() => readAct(db, entry.id), [db, entry.id]);
  const others = (lines?.length ?? 1) - 1;
  const say = useFleeting((fleeting) => fleeting.say);
  const [reason, setReason] = useState("logged by mistake");
  const [fault, setFault] = useState<string | null>(null);
  const strike = async (isWhole: boolean): Promise<void> => {
    const why = reason.trim();
    const result = isWhole
      ? await takeBack(entry.id, why, { quiet: true })
      : await log({ do: "strike", stream, entryId: entry.id, reason: why }, { quiet: true });
    if (!result.ok) return setFault(result.text);
    say(
      isWhole && others > 0
        ? "All deleted. They stay in the history and can be restored."
        : "Entry deleted. It stays in the history and can be restored.",
    );
    onDone();
  };
  const lacksReason = reason.trim() === "" ? "Say why, in a word or two." : null;
  return (
    <>
      {others > 0 && (
        <p>
          One tap wrote this and {others} more {others === 1 ? "line" : "lines"}, in other logs too.
        </p>
      )}
      <TextField label="Reason" value={reason} onChange={setReason} error={fault} />
      <div className={sheet["row"]}>
        <Button
          kind="danger"
          onPress={() => strike(true)}
          disabledReason={lines === undefined ? "The log is being read." : lacksReason}
        >
          {others > 0 ? `Delete all ${others + 1}` : "Delete it"}
        </Button>
        {others > 0 && (
          <Button onPress={() => strike(false)} disabledReason={lacksReason}>
            Delete only this one
          </Button>
        )}
        <Button kind="quiet" onPress={onDone}>
          Keep it
        </Button>
      </div>
    </>
  );
}
