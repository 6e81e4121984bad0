import type { ReactNode } from "react";
import type { Level } from "../../../rules/finding.ts";
import { levelWords } from "../format/levelWords.ts";
import styles from "./LevelMark.module.css";

/** A shape and a word, so that the level is never shown by colour alone. */
export function LevelMark({ level }: { readonly level: Level | "clear" }) {
  return (
    <span className={`${styles["mark"]} ${styles[level]}`}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {shapes[level]}
      </svg>
      {levelWords[level]}
    </span>
  );
}

const shapes: Record<Level | "clear", ReactNode> = {
  hold: (
    <>
      <path className={styles["body"]} d="M6.3 1h7.4L19 6.3v7.4L13.7 19H6.3L1 13.7V6.3z" />
      <path className={styles["sign"]} d="M5.5 10h9" />
    </>
  ),
  watch: (
    <>
      <path className={styles["body"]} d="M10 1.5 19.2 18H.8z" />
      <path className={styles["sign"]} d="M10 7.2v4.6M10 14.6v.4" />
    </>
  ),
  note: (
    <>
      <circle className={styles["body"]} cx="10" cy="10" r="9" />
      <path className={styles["sign"]} d="M10 9v5.2M10 5.6V6" />
    </>
  ),
  clear: (
    <>
      <circle className={styles["body"]} cx="10" cy="10" r="9" />
      <path className={styles["sign"]} d="m5.8 10.3 2.9 2.9 5.5-6" />
    </>
  ),
};
