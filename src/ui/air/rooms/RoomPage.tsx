import { millisecondsInHour as hourMs } from "date-fns/constants";
import { useParams } from "wouter";
import type { AirReading, Room } from "../../../logbook/piece/piece.ts";
import { useRoom } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { assumedAir } from "../../base/format/assumedWords.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { AirChart } from "./AirChart.tsx";
import { chartHours } from "../../../logbook/air/airSeries.ts";
import { readingWords, thirstWords } from "./airWords.ts";
import { NoRoom } from "./NoRoom.tsx";
import { ReadingForm } from "./ReadingForm.tsx";
import { ReadingList } from "./ReadingList.tsx";
import { RoomSettings } from "./RoomSettings.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./rooms.module.css";
import { SensorChip } from "./SensorChip.tsx";

export function RoomPage() {
  const { id = "" } = useParams();
  // By the hour, so that the clock alone does not have the readings read again.
  const hour = Math.floor(useNow() / hourMs) * hourMs;
  const found = useRoom(id, hour - chartHours * hourMs);
  if (found === undefined) return null;
  if (found === null) return <NoRoom />;
  return <OneRoom key={id} room={found.room} readings={found.readings} />;
}

function OneRoom({ room, readings }: { readonly room: Room; readonly readings: readonly AirReading[] }) {
  const format = useFormat();
  const { last } = room;
  return (
    <Page title={room.name} back={paths.rooms} actions={<SensorChip room={room} />}>
      {last === null ? (
        <p>No reading yet. Until there is one, drying times assume {assumedAir(format)}.</p>
      ) : (
        <p className={`${sheet["lines"]} ${styles["now"]}`}>
          <strong>{readingWords(last, format)}</strong>
          <span>
            Read <Ago at={last.at} />; {thirstWords(last, format)}
          </span>
        </p>
      )}
      <ReadingForm key={last?.id ?? "first"} room={room} />
      <div className={styles["ways"]}>
        <LinkButton href={paths.roomDay(room.id)}>Days</LinkButton>
        <LinkButton href={paths.roomSensor(room.id)}>Sensor</LinkButton>
        <LinkButton href={paths.roomImport(room.id)}>Import</LinkButton>
      </div>
      {last !== null && readings.length > 0 && (
        <Card title="The last two days">
          <AirChart readings={readings} />
        </Card>
      )}
      <ReadingList roomId={room.id} />
      <RoomSettings key={`${room.name}-${room.altitudeM}-${room.retired}`} room={room} />
    </Page>
  );
}
