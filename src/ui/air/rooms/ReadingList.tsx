import { useLiveQuery } from "dexie-react-hooks";
import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { AirReading } from "../../../logbook/piece/piece.ts";
import { readRoomLines, type RoomLine } from "../../../storage/roomLines.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { When } from "../../base/parts/When.tsx";
import { readingWords } from "./airWords.ts";
import { spanWords } from "./csv/importWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./rooms.module.css";
import { useTakeBack } from "./useTakeBack.ts";

const firstShown = 8;
const shownNext = 50;

/**
 * What was read here, newest first, a logger's file as one line. A wrong reading is struck, a wrong file taken back as a
 * whole; the log keeps them, the sums leave them out.
 */
export function ReadingList({ roomId }: { readonly roomId: string }) {
  const { db } = useShop();
  const [most, setMost] = useState(firstShown);
  const read = useLiveQuery(() => readRoomLines(db, roomId, most), [db, roomId, most]);
  if (read === undefined || read.lines.length === 0) return null;
  return (
    <Card title="Readings">
      <ul className={`${sheet["list"]} ${sheet["cell"]} ${styles["readings"]}`}>
        {read.lines.map((line) =>
          line.kind === "reading" ? (
            <ReadingItem key={line.reading.id} roomId={roomId} reading={line.reading} />
          ) : (
            <FileItem key={`${line.recordedAt} ${line.source}`} roomId={roomId} file={line} />
          ),
        )}
      </ul>
      {read.hasMore && (
        <Button kind="quiet" onPress={() => setMost(most < shownNext ? shownNext : most + shownNext)}>
          Show more
        </Button>
      )}
      {most > firstShown && (
        <Button kind="quiet" onPress={() => setMost(firstShown)}>
          Only the newest
        </Button>
      )}
    </Card>
  );
}

function ReadingItem({ roomId, reading }: { readonly roomId: string; readonly reading: AirReading }) {
  const { log } = useShop();
  const format = useFormat();
  const { sensor, note } = reading;
  const strike = () =>
    log({ do: "strike", stream: streamOf("room", roomId), entryId: reading.id, reason: "wrong reading" });
  return (
    <li>
      <span>
        <span className={sheet["soft"]}>
          <When at={reading.at} />
          {sensor !== undefined && ` by ${sensor}`}
        </span>
        <br />
        {readingWords(reading, format)}
        {note !== undefined && <em> “{note}”</em>}
      </span>
      <Button kind="quiet" label={`Delete the reading ${readingWords(reading, format)}`} onPress={strike}>
        Delete
      </Button>
    </li>
  );
}

function FileItem({
  roomId,
  file,
}: {
  readonly roomId: string;
  readonly file: Extract<RoomLine, { kind: "file" }>;
}) {
  const format = useFormat();
  const { clock } = useShop();
  const takeBack = useTakeBack(roomId);
  return (
    <li>
      <span>
        <span className={sheet["soft"]}>A logger’s file, brought in </span>
        <span className={sheet["soft"]}>
          <When at={file.recordedAt} />
        </span>
        <br />
        <span className={sheet["breaks"]}>{file.source}</span>: {file.isCut && "over "}
        {spanWords(file, format, clock())}
      </span>
      <Button kind="quiet" label={`Take back ${file.source}`} onPress={() => takeBack(file)}>
        Take back
      </Button>
    </li>
  );
}
