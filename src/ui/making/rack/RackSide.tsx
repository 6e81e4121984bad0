import { Link, useLocation } from "wouter";
import { actionWords } from "../../base/format/actionWords.ts";
import { WallStrip } from "../../base/charts/WallStrip.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { useRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./RackSide.module.css";
import { useSteadyOrder } from "./useSteadyOrder.ts";

/** As a piece is opened its row comes into view. */
const reveal = (row: HTMLAnchorElement | null): void => row?.scrollIntoView({ block: "nearest" });

/** The rack as a list beside a piece: each with its next action, the open one marked. */
export function RackSide() {
  const { locale } = useFormat();
  const [location] = useLocation();
  const rack = useRack();
  const items = useSteadyOrder(rack ?? [], (item) => item.standing.piece.id);
  return (
    <nav className={styles["side"]} aria-label="Rack">
      <ul className={sheet["list"]}>
        {items.map((item) => {
          const { piece } = item.standing;
          const { verb, when, turn } = actionWords(item, item.standing.now, locale);
          const isOpen = location === paths.piece(piece.id);
          return (
            <li key={piece.id}>
              <Link
                ref={isOpen ? reveal : null}
                href={paths.piece(piece.id)}
                className={`${styles["one"]} ${turn === "hands" ? styles["hands"] : ""}`}
                aria-current={isOpen ? "page" : undefined}
              >
                <WallStrip standing={item.standing} />
                <span className={sheet["cell"]}>
                  <strong>{piece.plan.name}</strong>
                  <span className={styles["verb"]}>{verb}</span>
                  {when !== null && <small className={sheet["soft"]}>{when}</small>}
                  {item.worst === "hold" && <LevelMark level="hold" />}
                </span>
              </Link>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}
