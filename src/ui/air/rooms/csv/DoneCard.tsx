import { useState } from "react";
import type { AirFile } from "../../../../storage/roomLines.ts";
import type { BadLines as Bad } from "../../../../workers/airCsv/readAirCsv.ts";
import type { Merged } from "../../../../workers/airCsv/packAir.ts";
import type { Room } from "../../../../logbook/piece/piece.ts";
import { paths } from "../../../base/state/paths.ts";
import { useShop } from "../../../base/state/shop.tsx";
import { useFormat } from "../../../base/state/useFormat.ts";
import { Button } from "../../../base/parts/Button.tsx";
import { Card } from "../../../base/parts/Card.tsx";
import { LinkButton } from "../../../base/parts/LinkButton.tsx";
import { localText } from "../../../base/parts/localTime.ts";
import { useTakeBack } from "../useTakeBack.ts";
import sheet from "../../../base/styles/sheet.module.css";
import { counted, mergedWords, spanWords } from "./importWords.ts";

export type Done = AirFile & {
  readonly count: number;
  readonly from: number;
  readonly to: number;
  readonly bad: Bad;
  readonly merged: Merged;
};

/** Past so many the numbers of skipped lines are no longer told one by one. */
const mostNumbers = 12;

/** What was brought in, as a sentence, and the way back. */
export function DoneCard({
  done,
  room,
  onMore,
}: {
  readonly done: Done;
  readonly room: Room;
  readonly onMore: () => void;
}) {
  const format = useFormat();
  const { clock } = useShop();
  const takeBack = useTakeBack(room.id);
  const [gone, setGone] = useState(false);
  const { bad, merged, source } = done;
  const numbers = bad.first.slice(0, mostNumbers).map(({ line }) => String(line));
  const skipped =
    bad.count === 0
      ? ""
      : ` Skipped: ${bad.count === 1 ? "line" : "lines"} ${listed(bad.count > numbers.length ? [...numbers, counted(bad.count - numbers.length, "more", format, "more")] : numbers)}.`;
  if (gone)
    return (
      <Card title="Taken back">
        <p>{source} no longer counts. Its lines stay in the history as deleted.</p>
        <Button onPress={onMore}>Choose a file</Button>
      </Card>
    );
  return (
    <Card title="Imported" tone="clear">
      <p role="status" className={sheet["breaks"]}>
        {spanWords(done, format, clock())}, from {source} {done.count === 1 ? "is" : "are"} in the log of{" "}
        {room.name}.{skipped} {mergedWords(merged, format).join(" ")}
      </p>
      <div className={`${sheet["row23"]} ${sheet["top"]}`}>
        <LinkButton kind="primary" href={`${paths.roomDay(room.id)}?day=${localText(done.to).slice(0, 10)}`}>
          See the last day
        </LinkButton>
        <Button onPress={onMore}>Another file</Button>
        <Button kind="quiet" onPress={async () => setGone(await takeBack(done))}>
          Take it back
        </Button>
      </div>
    </Card>
  );
}

const listed = (parts: readonly string[]): string => new Intl.ListFormat("en-GB").format(parts);
