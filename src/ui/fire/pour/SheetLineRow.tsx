import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import type { SheetLine } from "../../../logbook/pour/pourSheet.ts";
import type { PourKnown } from "../../../rules/pourLog.ts";
import { lineFigure, lineName, stateMarks, whyText } from "./sheetWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

/** One line of the sheet: OK, planned, to check, or passed with a written reason. */
export function SheetLineRow({
  line,
  known,
  now,
  isOpen,
  reason,
  onReason,
  onCheck,
}: {
  readonly line: SheetLine;
  readonly known: PourKnown;
  readonly now: number;
  readonly isOpen: boolean;
  readonly reason: string;
  readonly onReason: (reason: string) => void;
  readonly onCheck: (ok: boolean) => unknown;
}) {
  const format = useFormat();
  const { id, state, why, check } = line;
  const mark = stateMarks[state];
  const name = lineName(id);
  const say = { format, now };
  const figure = lineFigure(line, known, say);
  const isTickable = isOpen && line.isTickable;
  const isNo = state === "not-ok" && check?.ok === false;
  // The mark itself says that nobody has looked yet.
  const texts = why.filter(({ code }) => code !== "not-looked-at").map((one) => whyText(one, known, say));
  return (
    <li aria-label={name}>
      <div className={styles["itemHead"]}>
        <span
          className={`${styles["mark"]} ${state === "ok" ? styles["markOk"] : state === "not-ok" ? sheet["alert"] : ""}`}
          aria-hidden="true"
        >
          {mark.sign}
        </span>
        <span>
          <strong>{name}</strong> <span className={`${sheet["soft"]} ${styles["soft"]}`}>{mark.word}</span>
          {figure !== null && <span className={`${sheet["soft"]} ${styles["soft"]}`}>, {figure}</span>}
        </span>
      </div>
      {state !== "ok" &&
        [...new Set(texts)].map((text) => (
          <p key={text} className={`${sheet["soft"]} ${styles["soft"]}`}>
            {text}
          </p>
        ))}
      {reason.trim() !== "" && state !== "ok" && <p className={styles["printOnly"]}>Overridden: {reason}</p>}
      <div className={`${sheet["stack2"]} ${styles["item"]} ${styles["screen"]}`}>
        {isTickable && (
          <div className={styles["keys"]}>
            <Button pressed={state === "ok"} onPress={() => onCheck(true)} label={`${name}: OK`}>
              OK
            </Button>
            <Button pressed={isNo} onPress={() => onCheck(false)} label={`${name}: Not OK`}>
              Not OK
            </Button>
          </div>
        )}
        {isOpen && (state === "not-ok" || state === "planned") && (
          <TextField
            label={`Reason to override “${name}”`}
            value={reason}
            onChange={onReason}
            hint="Needs a written reason and a name."
          />
        )}
      </div>
    </li>
  );
}
