import { Button } from "../parts/Button.tsx";
import css from "./backup.module.css";
import { percentOf, type Work } from "./useWork.ts";

/** How far a long piece of work is, with a key that stops it. */
export function WorkBar({ work, onCancel }: { readonly work: Work; readonly onCancel: () => void }) {
  const percent = percentOf(work);
  return (
    <div className={css["work"]}>
      <p role="status">
        {work.step}… {percent} %
      </p>
      <progress max={100} value={percent} aria-label={work.step} />
      <Button onPress={onCancel}>Cancel</Button>
    </div>
  );
}
