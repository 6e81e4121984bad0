import { planGaps } from "../../../../workers/airCsv/airCsvPlan.ts";
import type { AirCsvProgress } from "../../../../workers/airCsv/readAirCsv.ts";
import { useFormat } from "../../../base/state/useFormat.ts";
import { Button } from "../../../base/parts/Button.tsx";
import { Card } from "../../../base/parts/Card.tsx";
import { BadLines } from "./BadLines.tsx";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";
import type { FileQuestion, FileResult } from "./readFile.ts";
import { BringIn } from "./BringIn.tsx";
import { counted, planGapWords, notGuessedWords } from "./importWords.ts";
import type { AirFileState, ReadResult } from "./useAirFile.ts";

/** What came of reading the whole file: on the way, not at all, or ready to be brought in. */
export function ReadCard(props: {
  readonly state: AirFileState;
  readonly onStop: () => void;
  readonly onAgain: () => void;
  readonly onBringIn: (result: FileResult, asked: FileQuestion) => Promise<void>;
}) {
  const { state, onStop, onAgain, onBringIn } = props;
  const { read, plan, isOrderOpen } = state;
  const gaps = planGaps(plan);
  if (read.is === "waiting")
    return (
      <Card title="The whole file" tone="watch">
        <p>
          {gaps.length > 0
            ? planGapWords(gaps)
            : isOrderOpen
              ? "Choose the date order above."
              : "One moment…"}
        </p>
      </Card>
    );
  if (read.is === "reading")
    return (
      <Card title="The whole file">
        <Progress progress={read.progress} bytes={state.file.size} />
        <div className={`${sheet["row23"]} ${sheet["top"]}`}>
          <Button onPress={onStop}>Cancel</Button>
        </div>
      </Card>
    );
  const { result } = read;
  if (result.ok) return <BringIn key={state.file.name} result={result} onBringIn={onBringIn} />;
  return (
    <Card title="The whole file" tone="watch">
      <p role="alert">{notReadWords(result)}</p>
      {"bad" in result && <BadLines bad={result.bad} />}
      <div className={`${sheet["row23"]} ${sheet["top"]}`}>
        <Button onPress={onAgain}>Read it again</Button>
      </div>
    </Card>
  );
}

function Progress({ progress, bytes }: { readonly progress: AirCsvProgress | null; readonly bytes: number }) {
  const format = useFormat();
  const done = progress?.bytesRead ?? 0;
  return (
    <>
      <p>Reading: {counted(progress?.lines ?? 0, "line", format)} so far.</p>
      <progress
        className={styles["progress"]}
        max={Math.max(1, bytes)}
        value={done}
        aria-label="How much of the file is read"
      />
    </>
  );
}

function notReadWords(result: Extract<ReadResult, { ok: false }>): string {
  switch (result.why) {
    case "plan-gaps":
      return planGapWords(result.gaps);
    case "unknown-zone":
      return "This browser does not know that time zone. Choose another.";
    case "bad-lines":
    case "no-readings":
      return "No line can be read like this. Check the columns and units above.";
    case "aborted":
    case "failed":
    case "no-worker":
      return notGuessedWords(result.why);
  }
}
