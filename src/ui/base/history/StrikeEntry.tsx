import { useState } from "react";
import type { Entry } from "../../../logbook/entries/entry.ts";
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
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const [reason, setReason] = useState("logged by mistake");
  const [fault, setFault] = useState<string | null>(null);
  const strike = async (): Promise<void> => {
    const result = await log(
      { do: "strike", stream, entryId: entry.id, reason: reason.trim() },
      { quiet: true },
    );
    if (!result.ok) return setFault(result.text);
    say("Entry struck. It stays in the log and can be brought back.");
    onDone();
  };
  return (
    <>
      <TextField label="Why it is struck" value={reason} onChange={setReason} error={fault} />
      <div className={sheet["row"]}>
        <Button
          kind="danger"
          onPress={strike}
          disabledReason={reason.trim() === "" ? "Say why, in a word or two." : null}
        >
          Strike it
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </>
  );
}
