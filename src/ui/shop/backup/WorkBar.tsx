import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./backup.module.css";
import { percentOf, type WorkProgress } from "./useWork.ts";

/** How far a long piece of work is, with a key that stops it. */
export function WorkBar({ work, onCancel }: { readonly work: WorkProgress; readonly onCancel: () => void }) {
  const percent = percentOf(work);
  return (
    <div className={`${sheet["stack2"]} ${css["work"]}`}>
      <p role="status">
        {work.step}… {percent} %
      </p>
      <progress max={100} value={percent} aria-label={work.step} />
      <Button onPress={onCancel}>Cancel</Button>
    </div>
  );
}
