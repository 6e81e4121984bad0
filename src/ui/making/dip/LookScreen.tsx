import { Link } from "wouter";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { bucketVoice } from "../../../logbook/bucket/bucketVoice.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { firstAct, reasonLines } from "../../base/format/bucketVoiceWords.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import sheet from "../../base/styles/sheet.module.css";
import { doneDipping } from "./doneDipping.ts";
import styles from "./LookScreen.module.css";
import type { Signals } from "../../base/glove/useSignals.ts";

/** Ways to go on, each with the reason the log then holds: one tap, no typing in a glove. */
const reasons = {
  "do-not-dip": ["Looks good to me", "This coat may be rough"],
  watch: ["Good enough"],
  "not-checked": ["Looked at it, not measured"],
} as const;

const most = 3;

/** The hold point before a visit: what speaks against this bucket, read it first, or go on with a reason. */
export function LookScreen(props: {
  readonly standing: BucketStanding;
  readonly signals: Signals;
  readonly onGoOn: () => void;
  readonly onBack: () => void;
}) {
  const { standing, signals, onGoOn, onBack } = props;
  const { bucket, health } = standing;
  const voice = bucketVoice(standing);
  const { log } = useShop();
  const [{ signName }] = useSettings();
  const format = useFormat();
  const goOn = async (reason: string): Promise<void> => {
    const done = await log(
      {
        do: "log",
        stream: streamOf("bucket", bucket.id),
        type: "bucket-passed",
        body: withoutEmpty({
          verdict: health.level,
          reason,
          name: signName === "" ? undefined : signName,
        }),
      },
      { quiet: true },
    );
    if (done.ok) onGoOn();
    else signals.refused(done.text);
  };
  const ways = health.level === "fit" ? [] : reasons[health.level];
  return (
    <BucketScreen
      title={`Check “${bucket.name}”`}
      way={{ text: "Back", onPress: onBack }}
      out={doneDipping}
      told={signals.told}
    >
      <div className={`${sheet["stack2"]} ${styles["said"]}`}>
        <HealthMark level={health.level} size="large" ink />
        <ul>
          {reasonLines(voice, format)
            .slice(0, most)
            .map(({ title }, place) => (
              <li key={title}>
                <strong>{title}</strong> {place === 0 && firstAct(voice, format)}
              </li>
            ))}
          {health.reasons.length > most && (
            <li>And {health.reasons.length - most} more: check the slurry.</li>
          )}
        </ul>
      </div>
      <Link href={paths.bucketRead(bucket.id)} className={styles["way"]} data-main>
        Check the slurry
      </Link>
      {ways.map((reason) => (
        <BigKey key={reason} onPress={() => goOn(reason)} under="Go on; it is logged">
          {reason}
        </BigKey>
      ))}
    </BucketScreen>
  );
}
