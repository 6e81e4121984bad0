import type { SensorKind } from "../../../device/bluetoothSensor.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Button } from "../../base/parts/Button.tsx";
import {
  cannotConnect,
  sensorRefusedWords,
  sensorName,
  sensorStateWords,
  valueWords,
} from "./sensorWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import { useSensor, type ValueOf } from "./useSensor.ts";

/**
 * Connects a scale or a thermometer, shows what it says, and hands that over at a tap: never by itself, as a hand may
 * still lie on the pan.
 */
export function SensorButton<K extends SensorKind>({
  kind,
  onValue,
  place = "",
}: {
  readonly kind: K;
  readonly onValue: (value: ValueOf<K>) => void;
  readonly place?: string | undefined;
}) {
  const format = useFormat();
  const sensor = useSensor(kind, place);
  const { told, refused, state } = sensor;
  if (!sensor.canConnect)
    return (
      <details className={sheet["soft"]}>
        <summary>A Bluetooth {sensorName[kind]}?</summary>
        <p>{cannotConnect}</p>
      </details>
    );
  const isOff = state.is === "idle" || state.is === "stopped";
  const words = told === null ? null : valueWords(told.value, format);
  return (
    <div className={sheet["stack2"]}>
      <div className={`${sheet["row23"]} ${sheet["top"]}`}>
        {isOff && <Button onPress={() => sensor.connect()}>Connect a {sensorName[kind]}</Button>}
        {isOff && (refused === "cancelled" || refused === "no-service") && (
          <Button kind="quiet" onPress={() => sensor.connect({ anyDevice: true })}>
            Every device near
          </Button>
        )}
        {told !== null && words !== null && (
          <Button
            onPress={() => onValue(told.value)}
            disabledReason={sensor.isLinked ? null : "Out of reach."}
          >
            Take {words}
          </Button>
        )}
        {!isOff && (
          <Button kind="quiet" onPress={sensor.letGo}>
            Disconnect
          </Button>
        )}
      </div>
      {!isOff && (
        <p role="status" className={sheet["soft"]}>
          {sensorStateWords(sensor, kind)}
          {told !== null && words !== null ? (
            <>
              ; {words}, read <Ago at={told.at} />
            </>
          ) : (
            sensor.isLinked && ", waiting for a reading"
          )}
        </p>
      )}
      {isOff && refused !== null && (
        <p role="alert" className={sheet["soft"]}>
          {sensorRefusedWords(refused, kind)}
        </p>
      )}
    </div>
  );
}
