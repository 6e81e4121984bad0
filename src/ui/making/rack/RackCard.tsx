import { Flame, Hand, Hourglass, Check } from "lucide-react";
import { memo } from "react";
import { Link } from "wouter";
import type { RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { WallStrip } from "../../base/charts/WallStrip.tsx";
import { actionWords } from "../../base/format/actionWords.ts";
import { AssumedAir } from "../../base/parts/AssumedAir.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./RackCard.module.css";
import { RackDryness } from "./RackDryness.tsx";

export const RackCard = memo(function RackCard({ item }: { readonly item: RackItem }) {
  const { locale } = useFormat();
  const { standing, worst } = item;
  const { piece, coatsDone, coatsPlanned, now } = standing;
  const { verb, when, turn } = actionWords(item, now, locale);
  const Icon = icons[turn];
  return (
    <li className={`${sheet["panel"]} ${styles["item"]}`}>
      <Link href={paths.piece(piece.id)} className={`${styles["card"]} ${styles[turn]}`}>
        <span className={styles["strip"]}>
          <WallStrip standing={standing} />
          <span className={styles["coats"]}>
            {coatsDone}
            {coatsPlanned === null ? "" : `/${coatsPlanned}`}{" "}
            {coatsPlanned === null && coatsDone === 1 ? "coat" : "coats"}
          </span>
        </span>
        <span className={`${sheet["lines"]} ${styles["text"]}`}>
          <span className={styles["head"]}>
            <strong className={styles["name"]}>{piece.plan.name}</strong>
            {worst !== null && <LevelMark level={worst} />}
          </span>
          <span className={styles["verb"]}>
            <Icon aria-hidden="true" size={18} />
            {verb}
          </span>
          {when !== null && <span className={styles["when"]}>{when}</span>}
        </span>
      </Link>
      {piece.phase === "coating" && (
        <div className={styles["air"]}>
          <AssumedAir standing={standing} />
        </div>
      )}
      <RackDryness standing={standing} />
    </li>
  );
});

const icons = { hands: Hand, drying: Hourglass, fire: Flame, rest: Check };
