import { Link } from "wouter";
import type { Phase, Piece } from "../../../logbook/piece/piece.ts";
import { paths } from "../../base/state/paths.ts";
import { logGroups, logWords } from "../../base/format/logWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./LogGrid.module.css";

/** Everything that can be logged of the piece; the group of the work at hand stands open. */
export function LogGrid({ piece }: { readonly piece: Piece }) {
  const open = openGroup[piece.phase];
  return (
    <Card title="Log something">
      <div>
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
    </Card>
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
