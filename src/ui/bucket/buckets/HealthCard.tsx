import { Link } from "wouter";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { bucketVoice } from "../../../logbook/bucket/bucketVoice.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { AdviceText } from "../../base/format/bucketAdviceWords.ts";
import { checkWords } from "../../base/format/bucketHealthWords.ts";
import { reasonLines, stepLines } from "../../base/format/bucketVoiceWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./BucketsPage.module.css";

const tones = { fit: "clear", watch: "watch", "do-not-dip": "hold", "not-checked": "note" } as const;

/** The verdict, why, and what to do; which checks are due. */
export function HealthCard({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { health, checksDue, isUntold } = standing;
  const voice = bucketVoice(standing);
  return (
    <Card tone={tones[health.level]}>
      <h2 className={css["verdict"]}>
        <HealthMark level={health.level} size="large" />
      </h2>
      {isUntold ? (
        <p>Never checked. Check its viscosity before the next dip, and set its targets.</p>
      ) : (
        <>
          <Advice lines={reasonLines(voice, format)} />
          {voice.steps.length > 0 && <Advice lines={stepLines(voice, format)} label="What to do" />}
          {voice.level === "fit" && voice.steps.length === 0 && <p>In range. No change needed.</p>}
        </>
      )}
      {checksDue.length > 0 && (
        <p className={`${sheet["pale"]} ${sheet["breaks"]}`}>
          Due: {checksDue.map((check) => checkWords[check]).join(", ")}.
        </p>
      )}
      <details>
        <summary>What this is based on</summary>
        <p>
          Typical values, unless the shop has set its own.{" "}
          <Link href={paths.bucketLimits} className={sheet["link"]}>
            Slurry limits
          </Link>
        </p>
        <p>A viscosity check counts for twelve hours, or until something is added.</p>
      </details>
    </Card>
  );
}

function Advice({ lines, label }: { readonly lines: readonly AdviceText[]; readonly label?: string }) {
  if (lines.length === 0) return null;
  return (
    <ul className={`${sheet["stack2"]} ${sheet["list"]}`} aria-label={label}>
      {lines.map(({ title, says }) => (
        <li key={title}>
          <strong>{title}</strong> {says}
        </li>
      ))}
    </ul>
  );
}
