import { useState } from "react";
import { streamOf } from "../../logbook/entry.ts";
import type { Room } from "../../logbook/piece.ts";
import { airClasses } from "../../trade/airClasses.ts";
import { useFleeting } from "../app/fleeting.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { Choice } from "../parts/Choice.tsx";
import { Stepper } from "../parts/Stepper.tsx";
import { TextField } from "../parts/TextField.tsx";
import { WhenField } from "../parts/WhenField.tsx";
import { airClassOptions, readingWords } from "./airWords.ts";
import { prefill, tempStepC } from "./prefill.ts";
import styles from "./rooms.module.css";

/** A reading in two taps: what it was last is filled in, the steppers are for what has changed. */
export function ReadingForm({ room }: { readonly room: Room }) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [draft, setDraft] = useState(() => prefill(room.last, format));
  const [at, setAt] = useState<number | null>(null);
  const [note, setNote] = useState("");
  const save = async (): Promise<void> => {
    const result = await log({
      do: "log",
      stream: streamOf("room", room.id),
      type: "air-read",
      body: { ...draft, note: note.trim() === "" ? undefined : note.trim() },
      at: at ?? undefined,
    });
    if (result.ok) say(`Logged for ${room.name}: ${readingWords(draft, format)}`);
  };
  return (
    <Card title="Read the air">
      <div className={styles["steppers"]}>
        <Stepper
          label="Temperature"
          value={draft.airC}
          onChange={(airC) => setDraft({ ...draft, airC })}
          step={tempStepC(format)}
          min={-10}
          max={60}
          show={(value) => format.show("temp", value)}
        />
        <Stepper
          label="Humidity"
          value={draft.rh}
          onChange={(rh) => setDraft({ ...draft, rh })}
          step={0.01}
          min={0.05}
          max={1}
          show={(value) => format.show("percent", value)}
        />
      </div>
      <details>
        <summary>Air: {airClasses[draft.air].label.toLowerCase()}</summary>
        <div className={styles["more"]}>
          <Choice
            label="How the air moves about the pieces"
            options={airClassOptions}
            value={draft.air}
            onChange={(air) => setDraft({ ...draft, air })}
          />
        </div>
      </details>
      <Button kind="primary" size="big" onPress={save} debounceMs={700}>
        Log this reading
      </Button>
      <details>
        <summary>Read earlier, or a note</summary>
        <div className={styles["more"]}>
          <WhenField label="When it was read" at={at} onChange={setAt} />
          <TextField
            label="Note"
            value={note}
            onChange={setNote}
            hint="Heating on, door open, rain, dehumidifier full …"
          />
        </div>
      </details>
    </Card>
  );
}
