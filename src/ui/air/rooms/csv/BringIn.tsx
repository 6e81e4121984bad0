import { useState } from "react";
import type { AirClass } from "../../../../trade/airClasses.ts";
import { useShop } from "../../../base/state/shop.tsx";
import { useFormat } from "../../../base/state/useFormat.ts";
import { SelectField } from "../../../base/forms/SelectField.tsx";
import { Button } from "../../../base/parts/Button.tsx";
import { Card } from "../../../base/parts/Card.tsx";
import { Choice } from "../../../base/forms/Choice.tsx";
import { airClassOptions } from "../airWords.ts";
import { BadLines } from "./BadLines.tsx";
import sheet from "../../../base/styles/sheet.module.css";
import styles from "./csv.module.css";
import { FilePlot } from "./FilePlot.tsx";
import { counted, mergedWords, spanWords } from "./importWords.ts";
import type { FileQuestion, FileResult } from "./readFile.ts";

const onBad = [
  { value: "skip", label: "Skip them" },
  { value: "refuse", label: "Refuse the whole file" },
] as const;

/** The file as read, what is wrong in it, and the last word before it goes into the log. */
export function BringIn(props: {
  readonly result: FileResult;
  readonly onBringIn: (result: FileResult, asked: FileQuestion) => Promise<void>;
}) {
  const { result, onBringIn } = props;
  const { air, bad, merged, lines } = result;
  const format = useFormat();
  const { clock } = useShop();
  const [forBad, setForBad] = useState<"skip" | "refuse" | null>(null);
  const [moves, setMoves] = useState<AirClass | null>(null);
  const [writing, setWriting] = useState(false);
  const unread = counted(bad.count, "line", format);
  const span = {
    count: air.count,
    from: (air.atS[0] ?? 0) * 1000,
    to: (air.atS.at(-1) ?? 0) * 1000,
  };
  const bring = async (): Promise<void> => {
    setWriting(true);
    await onBringIn(result, { moves });
    setWriting(false);
  };
  const reason =
    air.count === 0
      ? "All of these readings are in the log already."
      : bad.count === 0 || forBad === "skip"
        ? null
        : forBad === "refuse"
          ? `The whole file is refused, as ${unread} can’t be read. Correct it and choose it again.`
          : `First choose what to do with the ${unread} that can’t be read.`;
  return (
    <Card title="The whole file">
      <p>
        {air.count === 0
          ? `${counted(lines, "line", format)}, nothing new.`
          : `${spanWords(span, format, clock())}, from ${counted(lines, "line", format)}.`}
      </p>
      {mergedWords(merged, format).map((text) => (
        <p key={text}>{text}</p>
      ))}
      {air.count > 0 && <FilePlot air={air} />}
      {bad.count > 0 && (
        <section className={`${sheet["stack3"]} ${styles["badPart"]}`} aria-label="What can’t be read">
          <strong>{unread} can’t be read:</strong>
          <BadLines bad={bad} />
          <Choice label="What to do with them" options={onBad} value={forBad} onChange={setForBad} />
        </section>
      )}
      {air.count > 0 && (
        <SelectField
          label="Air movement around the pieces"
          options={airClassOptions}
          value={moves}
          empty="As logged in this room at the time"
          onChange={(value) =>
            setMoves(airClassOptions.find((option) => option.value === value)?.value ?? null)
          }
        />
      )}
      <Button kind="primary" size="big" onPress={bring} disabledReason={writing ? "Writing it…" : reason}>
        {air.count === 0 ? "Import" : `Import ${counted(air.count, "reading", format)}`}
      </Button>
    </Card>
  );
}
