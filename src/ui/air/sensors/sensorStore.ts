import { create } from "zustand";
import type {
  Sensor,
  SensorKind,
  SensorResult,
  LinkState,
  SensorValue,
} from "../../../device/bluetoothSensor.ts";
import { openSensor } from "../../../device/bluetoothSensor.ts";

/** What is known of one sensor. "idle": none was chosen yet, or it was let go of. */
export type SensorLink = {
  readonly state: { readonly is: "idle" | "choosing" } | LinkState;
  /** As the sensor calls itself; "" where it does not. */
  readonly name: string;
  /** 0–1; null where it is not told. */
  readonly battery: number | null;
  /** The last it said, and when that came in, epoch ms. */
  readonly told: { readonly value: SensorValue; readonly at: number } | null;
  /** Why there is none; null while all is well. */
  readonly refused: Extract<SensorResult, { ok: false }>["why"] | null;
};

export const noLink: SensorLink = {
  state: { is: "idle" },
  name: "",
  battery: null,
  told: null,
  refused: null,
};

type Sensors = {
  /** By kind and by what the sensor is for: each room can have its own. */
  readonly links: Readonly<Record<string, SensorLink>>;
};

/** Links last as long as the page, whatever screen is open; a browser gives them back to no other page. */
export const useSensorLinks = create<Sensors>()(() => ({ links: {} }));

const held = new Map<string, Sensor>();
/** Sought now; true once it is no longer wanted. */
const sought = new Map<string, { isDropped: boolean }>();

export const linkKey = (kind: SensorKind, place: string): string => `${kind}/${place}`;

function change(key: string, changes: Partial<SensorLink>): void {
  useSensorLinks.setState(({ links }) => ({
    links: { ...links, [key]: { ...(links[key] ?? noLink), ...changes } },
  }));
}

/** Lets the person choose a sensor and holds it. Must follow a tap. A second call while one is sought does nothing. */
export async function connectSensor(options: {
  readonly kind: SensorKind;
  readonly place: string;
  readonly clock: () => number;
  readonly anyDevice: boolean;
}): Promise<void> {
  const { kind, place, clock, anyDevice } = options;
  const key = linkKey(kind, place);
  if (held.has(key) || sought.has(key)) return;
  const seeking = { isDropped: false };
  sought.set(key, seeking);
  const tell = (changes: Partial<SensorLink>): void => {
    if (!seeking.isDropped) change(key, changes);
  };
  tell({ ...noLink, state: { is: "choosing" } });
  const result = await openSensor({
    kind,
    anyDevice,
    onValue: (value) => tell({ told: { value, at: clock() } }),
    onState: (state) => tell({ state }),
    onBattery: (battery) => tell({ battery }),
  });
  sought.delete(key);
  if (seeking.isDropped) return result.ok ? result.sensor.stop() : undefined;
  if (!result.ok) return change(key, { ...noLink, refused: result.why });
  held.set(key, result.sensor);
  change(key, { name: result.sensor.name });
}

/** Lets go of a sensor, or of the search for one; what it said last is forgotten. */
export function letGoOfSensor(kind: SensorKind, place: string): void {
  const key = linkKey(kind, place);
  const seeking = sought.get(key);
  if (seeking) seeking.isDropped = true;
  held.get(key)?.stop();
  held.delete(key);
  change(key, noLink);
}
