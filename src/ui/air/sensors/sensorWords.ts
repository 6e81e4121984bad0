import type { SensorKind, SensorValue } from "../../../device/bluetoothSensor.ts";
import { duration } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";
import type { SensorLink } from "./sensorStore.ts";

export const sensorName: Readonly<Record<SensorKind, string>> = {
  air: "air sensor",
  scale: "scale",
  thermometer: "thermometer",
};

const service: Readonly<Record<SensorKind, string>> = {
  air: "Environmental Sensing",
  scale: "Weight Scale",
  thermometer: "Health Thermometer",
};

/** Where Web Bluetooth is to be had, as of 2026. */
export const cannotConnect =
  "This browser can’t use Bluetooth sensors. Use Chrome or Edge on Android or on a computer. No browser on iPhone or iPad can, and Firefox can’t.";

/** How the link stands: "Connected to Shed north". */
export function sensorStateWords(
  { state, name }: Pick<SensorLink, "state" | "name">,
  kind: SensorKind,
): string {
  const called = name === "" ? `the ${sensorName[kind]}` : name;
  switch (state.is) {
    case "idle":
    case "stopped":
      return `No ${sensorName[kind]} connected`;
    case "choosing":
      return "Choose one in the browser’s list…";
    case "connecting":
      return `Connecting to ${called}…`;
    case "connected":
      return `Connected to ${called}`;
    case "waiting":
      return `Lost ${called}, next try in ${duration(state.retryMs)}`;
  }
}

/** Why there is none, and what to do. */
export function sensorRefusedWords(why: NonNullable<SensorLink["refused"]>, kind: SensorKind): string {
  switch (why) {
    case "missing":
      return cannotConnect;
    case "off":
      return "Bluetooth is switched off on this device. Switch it on and try again.";
    case "cancelled":
      return `No ${sensorName[kind]} was chosen. If yours was not in the list, switch it on, hold it near, or look through every device near.`;
    case "not-allowed":
      return "This page may not use Bluetooth. Allow it in the browser’s settings for this site.";
    case "no-service":
      return `That device does not offer the standard “${service[kind]}” service, so it can’t be read here. Log its readings by hand, or import its file.`;
    case "failed":
      return "Could not connect. Hold it nearer, close other apps that use it, and try again.";
  }
}

/** "21.4 °C, 53%": what it said last; null while it has said nothing that counts. */
export function valueWords(value: SensorValue, format: Format): string | null {
  switch (value.kind) {
    case "air": {
      const { airC, rh, pressurePa } = value;
      const parts = [
        airC === null ? null : format.show("temp", airC),
        rh === null ? null : format.show("percent", rh),
        pressurePa === null ? null : format.show("hPa", pressurePa / 100),
      ].filter((part) => part !== null);
      return parts.length === 0 ? null : parts.join(", ");
    }
    case "scale":
      return format.show("g", value.massG);
    case "thermometer":
      return format.show("temp", value.tempC);
  }
}
