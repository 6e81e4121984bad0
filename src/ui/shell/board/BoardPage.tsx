import { useEffect, useState } from "react";
import { Link } from "wouter";
import { bell, unlockBells } from "../../base/alarm/bell.ts";
import { useAwake } from "../../base/alarm/useAwake.ts";
import { dateFormat } from "../../base/format/formatters.ts";
import { clockTime } from "../../base/format/time.ts";
import { useSettings, useWholeRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { BoardNext } from "./BoardNext.tsx";
import { BoardNow } from "./BoardNow.tsx";
import { BoardShop } from "./BoardShop.tsx";
import styles from "./BoardPage.module.css";
import { leastText } from "./legible.ts";
import { isNight } from "./night.ts";

/** The shop on its wall: what to do, what comes when, air, slurry and pour, to be read across the room without a touch. */
export function BoardPage() {
  const { locale } = useFormat();
  const [{ bucketHours }] = useSettings();
  const rack = useWholeRack();
  const now = useNow(10_000);
  const awake = useAwake(true);
  useEffect(() => {
    document.title = "Wall board · Dipbook";
  }, []);
  const day = dateFormat(locale, { weekday: "long", day: "numeric", month: "long" });
  const hungIn = new Set(
    rack?.items.flatMap(({ standing }) =>
      standing.piece.phase === "coating" ? (standing.piece.rooms.at(-1)?.roomId ?? []) : [],
    ),
  );
  const clock = new Date(now);
  const isDark = isNight(clock.getHours() * 60 + clock.getMinutes(), bucketHours);
  const sizes: Record<`--${string}`, string> = { "--least": `${leastText.toFixed(2)}vmin` };
  return (
    <div
      className={styles["board"]}
      style={sizes}
      data-board=""
      data-night={isDark || undefined}
      aria-busy={rack === undefined}
    >
      <h1 className="visually-hidden">Wall board</h1>
      <header className={styles["clock"]}>
        <Link href={paths.rack} aria-label={`${clockTime(now, locale)}. Back to the rack`}>
          {clockTime(now, locale)}
        </Link>
        <span className={styles["day"]}>{day.format(now)}</span>
        <SoundKey />
      </header>
      {rack !== undefined && <BoardNow items={rack.items} faults={rack.faults.length} />}
      <BoardNext now={now} />
      {rack !== undefined && <BoardShop now={now} hungIn={hungIn} />}
      {(awake.state === "denied" || awake.state === "missing") && (
        <p className={styles["awake"]}>{awake.words}</p>
      )}
    </div>
  );
}

/** Browsers let no page sound before a touch: the one key of the board, gone once it has rung. */
function SoundKey() {
  const [{ tone }, change] = useSettings();
  const [state, setState] = useState(bell.state);
  if (state === "missing") return null;
  if (tone && state === "ready") return null;
  const ring = async (): Promise<void> => {
    if (!tone) await change({ tone: true });
    await unlockBells();
    setState(bell.ring({ inS: 0, rounds: 1 }));
  };
  return (
    <button type="button" className={styles["sound"]} onClick={() => void ring()}>
      Sound on
    </button>
  );
}
