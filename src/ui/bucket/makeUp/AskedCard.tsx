import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { bucketVoice } from "../../../logbook/bucket/bucketVoice.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { lackWords } from "../../base/format/bucketAdviceWords.ts";
import { firstAct, stepLines } from "../../base/format/bucketVoiceWords.ts";
import { readingLine } from "../../base/format/bucketReadingWords.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { DustNote } from "./DustNote.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./makeUp.module.css";

/** What the last reading asks for, one thing after another. */
export function AskedCard({ standing }: { readonly standing: BucketStanding }) {
  const format = useFormat();
  const { advice, readings, bucket, aim } = standing;
  if (!advice.ok) {
    const needsReading = advice.missing.includes("reading");
    const needsAims = [aim.bandS, aim.densityGCm3, aim.flourGCm3, aim.fullL].includes(null);
    return (
      <Card title="What to add">
        <p>
          {needsReading
            ? "Not checked since it was last mixed or added to. Check temperature, then density, then viscosity."
            : `No advice yet. Missing: ${advice.missing.map((lack) => lackWords[lack]).join("; ")}.`}
        </p>
        {needsAims && <LinkButton href={paths.bucketAims(bucket.id)}>Set its targets</LinkButton>}
      </Card>
    );
  }
  const reading = readings.find(({ reading: { id } }) => id === advice.readingId);
  if (!advice.correction.ok)
    return (
      <Card title="What to add">
        <p>The last viscosity is outside this cup’s range. Check it again.</p>
      </Card>
    );
  const voice = bucketVoice(standing);
  const { steps: acts } = voice;
  const none = firstAct(voice, format);
  const hasFlour = acts.some(({ code }) => code === "add-flour-and-binder");
  return (
    <Card title="What to add">
      {reading !== undefined && (
        <p className={sheet["soft"]}>
          {readingLine(reading, format)}, <Ago at={reading.at} />
        </p>
      )}
      {acts.length === 0 && <p>Add nothing now.{none === null ? "" : ` ${none}`}</p>}
      <ol className={`${sheet["stack3"]} ${sheet["list"]} ${css["order"]}`}>
        {stepLines(voice, format).map(({ title, says }) => (
          <li key={title}>
            <strong>{title}</strong>
            <span>{says}</span>
          </li>
        ))}
      </ol>
      {hasFlour && <DustNote />}
      <details>
        <summary>What the readings mean</summary>
        <p>
          Check temperature, density, viscosity, in this order. Thick and dense: water was lost. Thick at the
          right density: add no water, do a gel test. Thin and light: too much water, or settled flour. Light
          but not thin: air, or gelling.
        </p>
      </details>
    </Card>
  );
}
