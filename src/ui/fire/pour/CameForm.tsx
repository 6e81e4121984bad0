import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { PourCame } from "../../../logbook/entries/shellFireBodies.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { useShop } from "../../base/state/shop.tsx";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { Choice } from "../../base/forms/Choice.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { cameKeys } from "../../base/format/pourCameWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { ofPourNote, pourNote } from "./pourNote.ts";
import styles from "./pour.module.css";

const ways = (["full", "short", "leaked", "frozen", "stopped"] as const).map((value) => ({
  value,
  label: cameKeys[value],
}));

/** How a pour came to its end put right, such as a shell that was full and then leaked, and a line of note. */
export function CameForm({ course }: { readonly course: ShellCourse }) {
  const { log } = useShop();
  const { poured, came, name, pieceId } = course;
  const before = ofPourNote(poured?.note);
  const [isOpen, setOpen] = useState(false);
  const [now, setNow] = useState<PourCame | null>(came);
  const [words, setWords] = useState(before.words);
  if (poured === null) return null;
  const keep = async (): Promise<void> => {
    const { id, at: _at, note: _note, came: _came, ...body } = poured;
    const done = await log({
      do: "correct",
      stream: streamOf("piece", pieceId),
      entryId: id,
      body: withoutEmpty({
        ...body,
        came: now === null || now === "full" ? undefined : now,
        note: pourNote(words, before.isEstimated),
      }),
      reason: now === came ? "a note was added" : "how it went was put right",
    });
    if (done.ok) setOpen(false);
  };
  if (!isOpen)
    return (
      <Button label={`Note, or change: ${name}`} onPress={() => setOpen(true)}>
        Note, or change
      </Button>
    );
  const isSame = now === came && words.trim() === before.words;
  return (
    <div className={styles["stack"]}>
      <Choice label={`How it went: ${name}`} options={ways} value={now} onChange={setNow} />
      <TextField label="Note" value={words} onChange={setWords} />
      <div className={styles["keys"]}>
        <Button onPress={keep} disabledReason={isSame ? "Nothing is changed." : null}>
          Save changes
        </Button>
        <Button kind="quiet" onPress={() => setOpen(false)}>
          Cancel
        </Button>
      </div>
    </div>
  );
}
