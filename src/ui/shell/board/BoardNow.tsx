import { actionWords } from "../../base/format/actionWords.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import type { RackItem } from "../../base/state/live.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { WallStrip } from "../../base/charts/WallStrip.tsx";
import styles from "./BoardPage.module.css";
import { useTurning } from "./useTurning.ts";

/** What waits for somebody, in the rack's own order and words. */
export function BoardNow({
  items,
  faults,
}: {
  readonly items: readonly RackItem[];
  /** Pieces that can't be worked out. */
  readonly faults: number;
}) {
  const { locale } = useFormat();
  const waiting = items.flatMap((item) => {
    const { verb, turn } = actionWords(item, item.standing.now, locale);
    return turn === "hands" || turn === "fire" ? [{ item, verb }] : [];
  });
  const { box, shown, fits, part } = useTurning<HTMLUListElement, (typeof waiting)[number]>(waiting);
  return (
    <section className={styles["now"]} aria-label="To do now">
      <h2>To do now{part !== null && <span>{part}</span>}</h2>
      {waiting.length === 0 && (
        <p>{items.length === 0 ? "No piece on the rack." : "Nothing. All is drying."}</p>
      )}
      <ul ref={box}>
        {shown.map(({ item, verb }, place) => (
          <li key={item.standing.piece.id} data-over={place >= fits || undefined}>
            <span className={styles["strip"]}>
              <WallStrip standing={item.standing} />
            </span>
            <span>
              <strong>{item.standing.piece.plan.name}</strong>
              <span className={styles["verb"]}>
                {item.worst === "hold" && <LevelMark level="hold" />} {verb}
              </span>
            </span>
          </li>
        ))}
      </ul>
      {faults > 0 && <p>{faults === 1 ? "1 piece" : `${faults} pieces`} can't be shown here.</p>}
    </section>
  );
}
