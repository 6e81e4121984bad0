import type { ReactNode } from "react";
import type { BucketHealth } from "../../../physics/slurry/bucketHealth.ts";
import { healthWords } from "../format/bucketHealthWords.ts";
import styles from "./HealthMark.module.css";

type Level = BucketHealth["level"];

/** A bucket's verdict as a shape and a word. `ink`: in the colour of the text around it, for the screens at the bucket. */
export function HealthMark(props: {
  readonly level: Level;
  readonly size?: "normal" | "large" | undefined;
  readonly ink?: boolean | undefined;
}) {
  const { level, size = "normal", ink = false } = props;
  const tone = ink ? styles["ink"] : styles[toneOf[level]];
  return (
    <span className={`${styles["mark"]} ${tone} ${size === "large" ? styles["large"] : ""}`}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        {shapes[level]}
      </svg>
      {healthWords[level]}
    </span>
  );
}

const toneOf: Record<Level, string> = {
  fit: "fit",
  watch: "watch",
  "do-not-dip": "stop",
  "not-checked": "unread",
};

const shapes: Record<Level, ReactNode> = {
  fit: (
    <>
      <circle className={styles["body"]} cx="10" cy="10" r="9" />
      <path className={styles["sign"]} d="m5.8 10.3 2.9 2.9 5.5-6" />
    </>
  ),
  watch: (
    <>
      <path className={styles["body"]} d="M10 1.5 19.2 18H.8z" />
      <path className={styles["sign"]} d="M10 7.2v4.6M10 14.6v.4" />
    </>
  ),
  "do-not-dip": (
    <>
      <path className={styles["body"]} d="M6.3 1h7.4L19 6.3v7.4L13.7 19H6.3L1 13.7V6.3z" />
      <path className={styles["sign"]} d="M5.5 10h9" />
    </>
  ),
  "not-checked": (
    <>
      <circle className={styles["ring"]} cx="10" cy="10" r="8.6" />
      <path className={styles["ask"]} d="M7.7 8a2.4 2.4 0 1 1 3.3 2.2c-.7.3-1 .7-1 1.5M10 14.4v.1" />
    </>
  ),
};
