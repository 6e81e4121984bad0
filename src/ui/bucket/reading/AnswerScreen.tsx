import { Link } from "wouter";
import type { DipOut } from "../../../logbook/bucket/bucketLedger.ts";
import { bucketStandingOf, type BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { bucketVoice } from "../../../logbook/bucket/bucketVoice.ts";
import type { ReadingStanding } from "../../../logbook/bucket/bucketReading.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Bucket, Shop } from "../../../logbook/piece/piece.ts";
import { cupOf } from "../../../trade/cups.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import type { AdviceText } from "../../base/format/bucketAdviceWords.ts";
import { reasonLines, stepLines } from "../../base/format/bucketVoiceWords.ts";
import {
  cupName,
  densityWords,
  viscosityText,
  viscosityWords,
} from "../../base/format/bucketReadingWords.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { useSignals } from "../../base/glove/useSignals.ts";
import { HealthMark } from "../../base/parts/HealthMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./reading.module.css";

/** What the reading says: the numbers, whether to dip, and what to do about it. */
export function AnswerScreen(props: {
  readonly bucket: Bucket;
  readonly shop: Shop;
  readonly dips: readonly DipOut[];
  readonly readingId: string;
  readonly onUndone: () => void;
  readonly onOver: () => void;
}) {
  const { bucket, shop, dips, readingId, onUndone, onOver } = props;
  const { log, clock } = useShop();
  const format = useFormat();
  const tick = useNow();
  const signals = useSignals();
  const standing = bucketStandingOf(bucket, shop, Math.max(tick, clock()), dips);
  const read = standing.readings.find(({ reading }) => reading.id === readingId);
  const {
    health,
    bucket: { id },
  } = standing;
  const undo = async (): Promise<void> => {
    const stream = streamOf("bucket", id);
    const done = await log({ do: "strike", stream, entryId: readingId, reason: "undo" }, { quiet: true });
    if (done.ok) onUndone();
    else signals.refused(done.text);
  };
  const voice = bucketVoice(standing);
  const acts = voice.steps;
  return (
    <BucketScreen
      title={`${bucket.name}: logged`}
      way={{ text: "Undo", onPress: () => void undo() }}
      told={signals.told}
    >
      <div className={`${sheet["stack3"]} ${styles["said"]}`}>
        <p>
          <HealthMark level={health.level} size="large" ink />
        </p>
        {voice.reasons.length > 0 && <Advice lines={reasonLines(voice, format)} />}
        {read !== undefined && <ReadFigures read={read} />}
        {acts.length > 0 && (
          <>
            <h2>What to do</h2>
            <Advice lines={stepLines(voice, format)} />
          </>
        )}
        <AfterWords standing={standing} />
      </div>
      <BigKey main onPress={onOver}>
        Done
      </BigKey>
      {acts.some(({ code }) => code.startsWith("add-")) && (
        <Link href={paths.bucketMakeUp(id)} className={`${sheet["bucketKey"]} ${styles["way"]}`}>
          Make-up
        </Link>
      )}
    </BucketScreen>
  );
}

function Advice({ lines }: { readonly lines: readonly AdviceText[] }) {
  return (
    <ul>
      {lines.map(({ title, says }) => (
        <li key={title}>
          <strong>{title}</strong> {says}
        </li>
      ))}
    </ul>
  );
}

function ReadFigures({ read: { seconds, cup, density, reading } }: { readonly read: ReadingStanding }) {
  const format = useFormat();
  return (
    <>
      {seconds !== null && (
        <p className={styles["figure"]}>
          {format.show("s", seconds.seconds)}
          {seconds.viscosity?.ok === true && <> ≈ {viscosityText(seconds.viscosity.viscosityMm2S, format)}</>}
          {cup !== null && <small>{cupName(cup)}</small>}
        </p>
      )}
      {seconds !== null && <p>{viscosityWords(seconds, format)}</p>}
      {seconds?.hollow === true && seconds.atReferenceS !== null && (
        <p>
          Read at {format.show("temp", reading.slurryC ?? 0)}; at its set temperature it would be about{" "}
          {format.show("s", seconds.atReferenceS)}. On the chart it is an open circle.
        </p>
      )}
      {seconds?.wantsThird === true && <p>The two dips differ by more than 8&nbsp;%. Time a third.</p>}
      {density !== null && <p>Density {densityWords(density, format)}.</p>}
      {cup?.kind != null && seconds !== null && <CupFormula kind={cup.kind} />}
    </>
  );
}

function CupFormula({ kind }: { readonly kind: string }) {
  const cup = cupOf(kind);
  if (cup === null) return null;
  return (
    <details>
      <summary>How it is calculated</summary>
      <p>
        {cup.label}: {cup.formula.value}, ν in mm²/s, t in seconds. {cup.formula.source}. Seconds are the mean
        of two dips; where they differ by more than 8&nbsp;%, of the nearest two of three.
      </p>
    </details>
  );
}

/** The first reading after an addition, beside what was expected of it. */
function AfterWords({ standing: { afterAddition, last } }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  if (afterAddition?.met == null || afterAddition.read !== last) return null;
  const { expected, met } = afterAddition;
  const parts = [
    met.density === null || expected.densityGCm3 === null
      ? null
      : `density ${met.density === "as-expected" ? "as" : met.density + " than"} expected (${format.show("density", expected.densityGCm3)})`,
    met.seconds === null || expected.cupS === null
      ? null
      : `seconds ${met.seconds === "as-expected" ? "as" : met.seconds + " than"} expected (${format.show("s", expected.cupS)})`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? null : <p>After the addition: {parts.join(", ")}.</p>;
}
