import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { ago } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { cannotConnect, sensorRefusedWords, sensorStateWords, valueWords } from "../sensors/sensorWords.ts";
import type { SensorInHand } from "../sensors/useSensor.ts";
import { thirstWords } from "./airWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./rooms.module.css";

/** The link to a room's sensor: how it stands, what was said last and how long ago, the battery, and the ways on. */
export function SensorState({ sensor }: { readonly sensor: SensorInHand<"air"> }) {
  const format = useFormat();
  const now = useNow(5000);
  const { state, told, refused, battery } = sensor;
  if (!sensor.canConnect)
    return (
      <Empty title="No Bluetooth in this browser">
        <p>{cannotConnect}</p>
        <p>Import a data logger’s file, or log readings by hand.</p>
      </Empty>
    );
  const isOff = state.is === "idle" || state.is === "stopped";
  const words = told === null ? null : valueWords(told.value, format);
  const { airC = null, rh = null } = told?.value ?? {};
  return (
    <Card
      title={sensorStateWords(sensor, "air")}
      tone={sensor.isLinked ? "clear" : isOff ? "plain" : "watch"}
    >
      {isOff && (
        <p>
          Any sensor with the standard Environmental Sensing service works here. The browser lists what is
          near and asks you to choose.
        </p>
      )}
      {refused !== null && <p role="alert">{sensorRefusedWords(refused, "air")}</p>}
      {told !== null && words !== null && (
        <>
          <p className={styles["live"]}>{words}</p>
          <p>
            {sensor.isLinked ? "" : "Last reading. "}Read {ago(told.at, Math.max(now, told.at))}
            {airC !== null && rh !== null && `; ${thirstWords({ airC, rh }, format)}`}
          </p>
        </>
      )}
      {state.is === "waiting" && <p>It reconnects when it is near and switched on.</p>}
      {sensor.isLinked && words === null && <p>Waiting for a reading…</p>}
      {battery !== null && (
        <p>
          Battery {format.show("percent", battery)}
          {battery < 0.15 && ": change it soon"}
        </p>
      )}
      <div className={`${sheet["row23"]} ${sheet["top"]}`}>
        {isOff ? (
          <>
            <Button onPress={() => sensor.connect()}>Connect a sensor</Button>
            {refused !== null && (
              <Button kind="quiet" onPress={() => sensor.connect({ anyDevice: true })}>
                Look through every device near
              </Button>
            )}
          </>
        ) : (
          <Button onPress={sensor.letGo}>Disconnect</Button>
        )}
      </div>
    </Card>
  );
}
