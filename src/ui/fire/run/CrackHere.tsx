import type { Run } from "../../../logbook/fire/fireStates.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { CrackKind } from "../../../logbook/entries/pieceBodies.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { crackFields } from "../../base/forms/crackFields.ts";
import { useEntryForm } from "../../base/forms/useEntryForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { PickOf, TextOf } from "../../base/forms/BoundFields.tsx";
import styles from "./run.module.css";

const kinds = [
  { value: "hairline", label: "Hairline", hint: "A nail slides over it." },
  { value: "open", label: "Open", hint: "Light shows through." },
  { value: "chip", label: "Chip", hint: "A piece broke off." },
  { value: "lift", label: "Lift", hint: "Coats have parted." },
] as const satisfies readonly { value: CrackKind; label: string; hint: string }[];

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
  const form = useEntryForm(`run/${run.id}/crack/${piece.id}`, crackFields);
  const save = (): Promise<void> =>
    form.save(
      (read) => {
        const stage = run.plan.purpose === "burnout" ? "burnout" : "firing";
        return log({
          do: "log",
          stream: streamOf("piece", piece.id),
          type: "crack-found",
          body: { ...read, stage, runId: run.id },
        });
      },
      () => {
        say(`${piece.plan.name} goes back to its coats with its whole log.`);
        onClose();
      },
    );
  return (
    <div className={styles["editor"]}>
      <p>
        Leave it until the kiln is cold. Taken out hot it cracks further, and opening the door harms the
        others.
      </p>
      <PickOf form={form} at="kind" label="Kind" options={kinds} />
      <TextOf form={form} at="where" label="Where" />
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
