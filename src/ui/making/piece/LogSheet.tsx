import { X } from "lucide-react";
import { useRef } from "react";
import { Link } from "wouter";
import type { Phase, Piece } from "../../../logbook/piece/piece.ts";
import { paths } from "../../base/state/paths.ts";
import { logGroups, logWords } from "../../base/format/logWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./LogSheet.module.css";

/** The key that opens all that can be logged of the piece, over its page; the group of the work at hand stands open. */
export function LogSheet({ piece }: { readonly piece: Piece }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const open = openGroup[piece.phase];
  return (
    <>
      <Button onPress={() => dialog.current?.showModal()}>Log</Button>
      <dialog ref={dialog} className={styles["sheet"]} aria-labelledby="log-sheet-title">
        <div className={styles["inside"]}>
          <div className={`${sheet["line2"]} ${sheet["between"]}`}>
            <h2 id="log-sheet-title" className={sheet["title"]}>
              What happened to {piece.plan.name}?
            </h2>
            <Button kind="quiet" label="Close" onPress={() => dialog.current?.close()}>
              <X aria-hidden="true" />
            </Button>
          </div>
          {logGroups.map(({ name, types }, place) => (
            <details key={`${name} ${piece.phase}`} open={place === open}>
              <summary>{name}</summary>
              <div className={styles["grid"]}>
                {place === 0 && (
                  <Link href={paths.weigh(piece.id)} className={`${sheet["frame"]} ${styles["key"]}`}>
                    Weigh
                  </Link>
                )}
                {types.map((type) => (
                  <Link
                    key={type}
                    href={paths.logFor(piece.id, type)}
                    className={`${sheet["frame"]} ${styles["key"]}`}
                  >
                    {logWords[type]}
                  </Link>
                ))}
              </div>
            </details>
          ))}
        </div>
      </dialog>
    </>
  );
}

const openGroup: Record<Phase, number> = {
  coating: 0,
  reviewed: 2,
  dewaxed: 2,
  burnout: 2,
  "burnt-out": 2,
  fired: 2,
  preheated: 2,
  poured: 2,
  "knocked-out": 3,
  finished: 3,
  scrapped: 3,
};
