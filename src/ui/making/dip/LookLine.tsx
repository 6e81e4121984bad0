import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./LookLine.module.css";

/** What a key is for, and how its bucket is: a shape and a word, and one sentence for a bucket that was never checked. */
export function LookLine(props: { readonly look: BucketStanding | undefined; readonly children: string }) {
  const { look, children } = props;
  return (
    <span className={`${sheet["row03"]} ${sheet["baseline"]} ${sheet["between"]} ${styles["line"]}`}>
      <span>{children}</span>
      {look !== undefined && !look.isUntold && <HealthMark level={look.health.level} ink />}
      {look?.isUntold === true && <strong>Never checked: check its viscosity first.</strong>}
    </span>
  );
}
