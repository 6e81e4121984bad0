import { useParams } from "wouter";
import type { AirReading, Room } from "../../logbook/piece.ts";
import { useRoom } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { useFormat } from "../app/useFormat.ts";
import { Ago } from "../parts/Ago.tsx";
import { Card } from "../parts/Card.tsx";
import { Empty } from "../parts/Empty.tsx";
import { Page } from "../parts/Page.tsx";
import { AirChart } from "./AirChart.tsx";
import { readingWords, thirstWords } from "./airWords.ts";
import { ReadingForm } from "./ReadingForm.tsx";
import { ReadingList } from "./ReadingList.tsx";
import { RoomSettings } from "./RoomSettings.tsx";
import styles from "./rooms.module.css";

export function RoomPage() {
  const { id = "" } = useParams();
  const found = useRoom(id);
  if (found === undefined) return null;
  if (found === null)
    return (
      <Page title="No such room" back={paths.rooms}>
        <Empty title="There is no such room">
          <p>It may be in another shop’s log.</p>
        </Empty>
      </Page>
    );
  return <OneRoom key={id} room={found.room} readings={found.readings} />;
}

function OneRoom({ room, readings }: { readonly room: Room; readonly readings: readonly AirReading[] }) {
  const format = useFormat();
  const { last } = room;
  return (
    <Page title={room.name} back={paths.rooms}>
      {last === null ? (
        <p>No reading yet. Without one no ready time can be given for what hangs here.</p>
      ) : (
        <p className={styles["now"]}>
          <strong>{readingWords(last, format)}</strong>
          <span>
            Read <Ago at={last.at} />; {thirstWords(last, format)}
          </span>
        </p>
      )}
      <ReadingForm key={last?.id ?? "first"} room={room} />
      {readings.length > 0 && (
        <Card title="The last two days">
          <AirChart readings={readings} />
        </Card>
      )}
      {readings.length > 0 && <ReadingList roomId={room.id} readings={readings} />}
      <RoomSettings key={`${room.name}-${room.altitudeM}-${room.retired}`} room={room} />
    </Page>
  );
}
