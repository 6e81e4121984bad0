import { useState } from "react";
import type { BadLines as Told } from "../../../../workers/airCsv/readAirCsv.ts";
import { useShop } from "../../../base/state/shop.tsx";
import { useFormat } from "../../../base/state/useFormat.ts";
import { Button } from "../../../base/parts/Button.tsx";
import { badLineWords } from "./badLineWords.ts";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";
import { counted } from "./importWords.ts";

const firstShown = 10;

/** The lines that are no readings, each by its number, with what stands there and what was wanted. */
export function BadLines({ bad }: { readonly bad: Told }) {
  const format = useFormat();
  const { clock } = useShop();
  const [all, setAll] = useState(false);
  const shown = all ? bad.first : bad.first.slice(0, firstShown);
  const more = bad.count - shown.length;
  return (
    <>
      <ul className={`${sheet["stack1"]} ${styles["bad"]}`} aria-label="Lines that can’t be read">
        {shown.map((line) => (
          <li key={line.line}>{badLineWords(line, format, clock())}</li>
        ))}
      </ul>
      {bad.first.length > firstShown && (
        <Button kind="quiet" onPress={() => setAll(!all)}>
          {all ? "Only the first" : `Show ${counted(bad.first.length - firstShown, "more", format, "more")}`}
        </Button>
      )}
      {(all || bad.first.length <= firstShown) && more > 0 && (
        <p className={sheet["pale2"]}>And {counted(more, "line", format)} more.</p>
      )}
    </>
  );
}
