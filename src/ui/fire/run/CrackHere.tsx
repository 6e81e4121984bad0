import { z } from "zod";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { CrackKind } from "../../../logbook/entries/pieceBodies.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { check, oneOf, words } from "../../base/forms/fieldSchema.ts";
import { PickField } from "../../base/forms/PickField.tsx";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

const kinds = [
  { value: "hairline", label: "Hairline", hint: "A nail slides over it." },
  { value: "open", label: "Open", hint: "Light shows through." },
  { value: "chip", label: "Chip", hint: "A piece is gone." },
  { value: "lift", label: "Lift", hint: "Coats have parted." },
] as const satisfies readonly { value: CrackKind; label: string; hint: string }[];

const schema = z.object({
  kind: oneOf(["hairline", "open", "chip", "lift"], "the kind of crack"),
  where: words("place", "Say where, so that you find it again: left ear, cup edge, back flat."),
});

/** A crack that shows in this run, on one piece. */
export function CrackHere({
  run,
  piece,
  onClose,
}: {
  readonly run: Run;
  readonly piece: Piece;
  readonly onClose: () => void;
}) {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const initial: { readonly kind: CrackKind | null; readonly where: string } = { kind: null, where: "" };
  const form = useForm(`run/${run.id}/crack/${piece.id}`, initial);
  const { draft, set, errors } = form;
  const save = async (): Promise<void> => {
    const read = check(schema, draft);
    form.tell(read.ok ? {} : read.errors);
    if (!read.ok) return;
    const stage = run.plan.purpose === "burnout" ? "burnout" : "firing";
    const done = await log({
      do: "log",
      stream: streamOf("piece", piece.id),
      type: "crack-found",
      body: { ...read.value, stage, runId: run.id },
    });
    if (!done.ok) return;
    await form.drop();
    say(`${piece.plan.name} goes back to its coats, with all that is in its log.`);
    onClose();
  };
  return (
    <div className={styles["editor"]}>
      <p>
        Leave it where it is until the kiln is cold: a shell taken out hot cracks further, and opening the
        door hurts the others.
      </p>
      <PickField
        label="Kind"
        options={kinds}
        value={draft.kind}
        onChange={(kind) => set({ kind })}
        error={errors["kind"]}
      />
      <TextField
        label="Where"
        value={draft.where}
        onChange={(where) => set({ where })}
        error={errors["where"]}
      />
      <div className={`${sheet["row"]} ${sheet["middle"]}`}>
        <Button kind="danger" onPress={save} debounceMs={500}>
          Log the crack, back to its coats
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Not now
        </Button>
      </div>
    </div>
  );
}
