import type { Standing } from "../../../logbook/piece/standing.ts";
import { paths } from "../state/paths.ts";
import { useFormat } from "../state/useFormat.ts";
import { assumedWords } from "../format/assumedWords.ts";
import styles from "./AssumedAir.module.css";
import { LinkButton } from "./LinkButton.tsx";

/** While a coat dries in air nobody read: what is assumed, and the way to the room's form. Nothing else is shown. */
export function AssumedAir({ standing: { outer, cover, room } }: { readonly standing: Standing }) {
  const format = useFormat();
  if (outer === null || cover === null || room === null) return null;
  if (!outer.basis.assumed || cover.state === "dry") return null;
  return (
    <div className={styles["assumed"]}>
      <p>{assumedWords(outer.basis, format)}</p>
      <LinkButton href={paths.room(room.id)}>Log temperature and humidity</LinkButton>
    </div>
  );
}
