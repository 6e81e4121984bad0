import { useFormat } from "../app/useFormat.ts";
import { Button } from "../parts/Button.tsx";
import { TextField } from "../parts/TextField.tsx";
import type { PourParts } from "./pourParts.ts";
import type { SheetLine } from "./sheetItems.ts";
import { lineFigure, lineName, stateMarks, whyWords } from "./sheetWords.ts";
import styles from "./pour.module.css";

/** One line of the sheet: ticked, blocked, or passed with a written reason. */
export function SheetLineRow({
  line,
  parts,
  isOpen,
  reason,
  onReason,
  onCheck,
}: {
  readonly line: SheetLine;
  readonly parts: PourParts;
  readonly isOpen: boolean;
  readonly reason: string;
  readonly onReason: (reason: string) => void;
  readonly onCheck: (ok: boolean) => unknown;
}) {
  const format = useFormat();
  const { id, kind, state, why } = line;
  const mark = stateMarks[state];
  const name = lineName(id);
  const figure = lineFigure(id, parts, format);
  // What is known to be wrong is not ticked away; what is not known can be looked at.
  const isTickable = isOpen && (kind === "hand" || state === "open" || (state === "ok" && why.length > 0));
  return (
    <li aria-label={name}>
      <div className={styles["itemHead"]}>
        <span
          className={`${styles["mark"]} ${state === "ok" ? styles["markOk"] : state === "blocked" ? styles["markBlocked"] : ""}`}
          aria-hidden="true"
        >
          {mark.sign}
        </span>
        <span>
          <strong>{name}</strong> <span className={styles["soft"]}>{mark.word}</span>
          {figure !== null && <span className={styles["soft"]}>, {figure}</span>}
        </span>
      </div>
      {state !== "ok" &&
        whyWords(line).map((text) => (
          <p key={text} className={styles["soft"]}>
            {text}
          </p>
        ))}
      {reason.trim() !== "" && state !== "ok" && <p className={styles["printOnly"]}>Passed: {reason}</p>}
      <div className={`${styles["item"]} ${styles["screen"]}`}>
        {isTickable && (
          <div className={styles["keys"]}>
            <Button pressed={state === "ok"} onPress={() => onCheck(true)} label={`${name}: in order`}>
              In order
            </Button>
            {kind === "hand" && (
              <Button pressed={state === "blocked"} onPress={() => onCheck(false)} label={`${name}: blocked`}>
                Blocked
              </Button>
            )}
          </div>
        )}
        {isOpen && state === "blocked" && (
          <TextField
            label={`Reason to pass “${name}”`}
            value={reason}
            onChange={onReason}
            hint="Only with a written reason, under a name."
          />
        )}
      </div>
    </li>
  );
}
