import { useState } from "react";
import { useParams } from "wouter";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Room } from "../../../logbook/piece/piece.ts";
import { airClasses, type AirClass } from "../../../trade/airClasses.ts";
import { useRoom } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { useAwake } from "../../base/alarm/useAwake.ts";
import { clockTime } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { airClassOptions, readingWords } from "./airWords.ts";
import { NoRoom } from "./NoRoom.tsx";
import { SensorState } from "./SensorState.tsx";
import { sensorReading } from "./sensorReading.ts";
import { useAutoLog } from "./useAutoLog.ts";
import { useSensor } from "../sensors/useSensor.ts";

const everyOptions = [
  { value: "0", label: "Only when I tap" },
  { value: "1", label: "Every minute" },
  { value: "5", label: "Every 5 min" },
  { value: "15", label: "Every 15 min" },
] as const;

export function SensorPage() {
  const { id = "" } = useParams();
  const [since] = useState(useShop().clock);
  const found = useRoom(id, since);
  if (found === undefined) return null;
  if (found === null) return <NoRoom />;
  return <RoomSensor key={id} room={found.room} />;
}

function RoomSensor({ room }: { readonly room: Room }) {
  const { log, clock } = useShop();
  const format = useFormat();
  const sensor = useSensor("air", room.id);
  const [every, setEvery] = useState<(typeof everyOptions)[number]["value"]>("0");
  const [moves, setMoves] = useState<AirClass | null>(room.last?.air ?? null);
  const [said, setSaid] = useState<string | null>(null);
  const { told, name, isLinked } = sensor;
  // While the link stands, what was told last still holds: many sensors speak only when something changes.
  const reading =
    isLinked && told !== null && moves !== null ? sensorReading(told.value, { name, moves }) : null;
  const isAuto = every !== "0" && sensor.canConnect;
  const awake = useAwake(isAuto);

  const logNow = async (): Promise<void> => {
    const at = clock();
    const when = clockTime(at, format.locale);
    if (moves === null) return setSaid(`${when}: nothing logged, set the air movement first.`);
    if (reading === null) return setSaid(`${when}: nothing logged, the sensor sent no air reading.`);
    const result = await log(
      { do: "log", stream: streamOf("room", room.id), type: "air-read", body: reading },
      { quiet: true },
    );
    setSaid(result.ok ? `${when}: logged ${readingWords(reading, format)}` : `${when}: ${result.text}`);
  };
  useAutoLog(isAuto ? Number(every) : 0, () => void logNow());

  return (
    <Page title={`Sensor in ${room.name}`} back={paths.room(room.id)}>
      <SensorState sensor={sensor} />
      {sensor.canConnect && (
        <Card title="Log">
          <details open={room.last === null}>
            <summary>Air: {moves === null ? "not set" : airClasses[moves].label.toLowerCase()}</summary>
            <Choice
              label="Air movement around the pieces"
              options={airClassOptions}
              value={moves}
              onChange={setMoves}
            />
          </details>
          <Button
            kind="primary"
            size="big"
            onPress={logNow}
            debounceMs={700}
            disabledReason={
              reading === null
                ? whyNot(isLinked, told !== null && told.value.airC !== null && told.value.rh !== null)
                : null
            }
          >
            Log it now
          </Button>
          <Choice label="Automatically" options={everyOptions} value={every} onChange={setEvery} />
          <p>
            {isAuto
              ? `Logged every ${every === "1" ? "minute" : `${every} minutes`} while this screen is open. It stops when you leave it, close the app or the phone sleeps. ${awake.words}`
              : "Readings are logged only while this screen is open. For days at a time use a data logger."}
          </p>
          {said !== null && <p role="status">{said}</p>}
        </Card>
      )}
    </Page>
  );
}

function whyNot(isLinked: boolean, hasAir: boolean): string {
  if (!isLinked) return "No sensor is linked.";
  return hasAir ? "Set the air movement first." : "No temperature and humidity from the sensor yet.";
}
