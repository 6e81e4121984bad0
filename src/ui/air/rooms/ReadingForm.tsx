import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { AirReading, Room } from "../../../logbook/piece/piece.ts";
import { airClasses } from "../../../trade/airClasses.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { Stepper } from "../../base/parts/Stepper.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { WhenField } from "../../base/forms/WhenField.tsx";
import { airClassOptions, readingWords } from "./airWords.ts";
import { prefill, readingOf, stepsFrom, tempStepC, type ReadingDraft } from "./prefill.ts";
import styles from "./rooms.module.css";

/**
 * A reading in two taps: what it was last is filled in, the steppers are for what has changed. Nothing is logged as
 * read that nobody set: the first form of a room is empty, and one left as it came says that it is the last reading
 * again.
 */
export function ReadingForm({ room }: { readonly room: Room }) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const { last } = room;
  const [draft, setDraft] = useState(() => prefill(last, format));
  // Set by hand: temperature or humidity. Another air movement alone is no new reading of the other two.
  const [isSet, setIsSet] = useState(false);
  const [at, setAt] = useState<number | null>(null);
  const [note, setNote] = useState("");
  const change = (next: Partial<ReadingDraft>): void => {
    setDraft({ ...draft, ...next });
    if (next.airC !== undefined || next.rh !== undefined) setIsSet(true);
  };
  const same = last === null ? null : { ...airOf(last), air: draft.air ?? last.air };
  const read = isSet || same === null ? readingOf(draft) : ({ ok: true, reading: same } as const);
  const save = async (): Promise<void> => {
    if (!read.ok) return;
    const result = await log({
      do: "log",
      stream: streamOf("room", room.id),
      type: "air-read",
      body: { ...read.reading, note: note.trim() === "" ? undefined : note.trim() },
      at: at ?? undefined,
    });
    if (result.ok) say(`Logged for ${room.name}: ${readingWords(read.reading, format)}`);
  };
  return (
    <Card title="Log the air">
      <div className={styles["steppers"]}>
        <Stepper
          label="Temperature"
          value={draft.airC}
          start={stepsFrom.airC}
          onChange={(airC) => change({ airC })}
          step={tempStepC(format)}
          min={-10}
          max={60}
          show={(value) => format.show("temp", value)}
        />
        <Stepper
          label="Humidity"
          value={draft.rh}
          start={stepsFrom.rh}
          onChange={(rh) => change({ rh })}
          step={0.01}
          min={0.05}
          max={1}
          show={(value) => format.show("percent", value)}
        />
      </div>
      <details open={last === null}>
        <summary>Air: {draft.air === null ? "not set" : airClasses[draft.air].label.toLowerCase()}</summary>
        <div className={styles["more"]}>
          <Choice
            label="Air movement around the pieces"
            options={airClassOptions}
            value={draft.air}
            onChange={(air) => change({ air })}
          />
        </div>
      </details>
      <Button
        kind="primary"
        size="big"
        onPress={save}
        debounceMs={700}
        disabledReason={read.ok ? null : read.missing}
      >
        {isSet || same === null ? "Log this reading" : `Same as last: ${readingWords(same, format)}`}
      </Button>
      <HowToLink to="hygrometer" />
      <details>
        <summary>Earlier time, or a note</summary>
        <div className={styles["more"]}>
          <WhenField label="Time of the reading" at={at} onChange={setAt} />
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

const airOf = ({ airC, rh, air }: AirReading) => ({ airC, rh, air });
