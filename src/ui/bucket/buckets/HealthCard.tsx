import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { bucketLimitSources } from "../../../trade/bucketLimits.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { checkWords, reasonWords } from "../../base/format/bucketHealthWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./BucketsPage.module.css";

const tones = { fit: "clear", watch: "watch", "do-not-dip": "hold", "not-checked": "note" } as const;

/** The verdict, why, and what to do; which checks are due. */
export function HealthCard({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { health, checksDue, isUntold } = standing;
  return (
    <Card tone={tones[health.level]}>
      <h2 className={css["verdict"]}>
        <HealthMark level={health.level} size="large" />
      </h2>
      {isUntold ? (
        <p>Nothing was told of this bucket yet. Read it, and set what it should read.</p>
      ) : (
        <ul className={`${sheet["stack2"]} ${sheet["list"]}`}>
          {health.reasons.map((reason) => {
            const { says, act } = reasonWords(reason, format);
            return (
              <li key={reason.code}>
                <strong>{says}</strong> {act}
              </li>
            );
          })}
        </ul>
      )}
      {health.level === "fit" && <p>Nothing that was read speaks against dipping.</p>}
      {checksDue.length > 0 && (
        <p className={`${sheet["pale"]} ${sheet["breaks"]}`}>
          Due: {checksDue.map((check) => checkWords[check]).join(", ")}.
        </p>
      )}
      <details>
        <summary>What it is judged by</summary>
        <p>
          Limits are starting values: {bucketLimitSources.densityGCm3}. Silica sol: {bucketLimitSources.pH}. A
          cup reading counts for twelve hours, and only from the last addition on.
        </p>
      </details>
    </Card>
  );
}
