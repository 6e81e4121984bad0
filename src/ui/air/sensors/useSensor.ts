import { useCallback } from "react";
import { browserBluetooth } from "../../../device/bluetoothApi.ts";
import type { SensorKind, SensorValue } from "../../../device/bluetoothSensor.ts";
import { useShop } from "../../base/state/shop.tsx";
import type { SensorLink } from "./sensorStore.ts";
import { connectSensor, letGoOfSensor, linkKey, noLink, useSensorLinks } from "./sensorStore.ts";

export type ValueOf<K extends SensorKind> = Extract<SensorValue, { readonly kind: K }>;

export type SensorInHand<K extends SensorKind> = Omit<SensorLink, "told"> & {
  /** The last it said, and when that came in, epoch ms. */
  readonly told: { readonly value: ValueOf<K>; readonly at: number } | null;
  /** False where this browser has no Web Bluetooth at all. */
  readonly canConnect: boolean;
  /** True while the link stands, and what was told last still holds. */
  readonly isLinked: boolean;
  /** Must follow a tap; `anyDevice` offers every device near, for sensors that do not call out what they are. */
  readonly connect: (options?: { readonly anyDevice?: boolean | undefined }) => Promise<void>;
  readonly letGo: () => void;
};

/**
 * A Bluetooth sensor as this page holds it, on whatever screen: its state, what it said last and when. `place` tells
 * sensors of one kind apart, such as the room an air sensor hangs in.
 */
export function useSensor<K extends SensorKind>(kind: K, place = ""): SensorInHand<K> {
  const { clock } = useShop();
  const link = useSensorLinks(({ links }) => links[linkKey(kind, place)] ?? noLink);
  const connect = useCallback(
    ({ anyDevice = false }: { readonly anyDevice?: boolean | undefined } = {}) =>
      connectSensor({ kind, place, clock, anyDevice }),
    [kind, place, clock],
  );
  const letGo = useCallback(() => letGoOfSensor(kind, place), [kind, place]);
  const { told } = link;
  return {
    ...link,
    told: told !== null && isOf(told.value, kind) ? { value: told.value, at: told.at } : null,
    canConnect: browserBluetooth() !== null,
    isLinked: link.state.is === "connected",
    connect,
    letGo,
  };
}

const isOf = <K extends SensorKind>(value: SensorValue, kind: K): value is ValueOf<K> => value.kind === kind;
