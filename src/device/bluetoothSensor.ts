import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { BluetoothApi, BluetoothDevice, DeviceWanted } from "./bluetoothApi.ts";
import { browserBluetooth } from "./bluetoothApi.ts";
import type { SensorFrame, ThermometerFrame, WeightFrame } from "./bluetoothFrames.ts";
import {
  batteryShare,
  humidityShare,
  pressurePa,
  temperatureC,
  thermometer,
  weight,
} from "./bluetoothFrames.ts";
import type { Link, Wanted } from "./bluetoothLink.ts";
import { linkTo, MissingService } from "./bluetoothLink.ts";

export type SensorKind = "air" | "scale" | "thermometer";

/** What a sensor tells. Of air, whatever is known by now: each value is told by itself, null until it is, or if the sensor does not know it. */
export type SensorValue =
  | {
      readonly kind: "air";
      readonly airC: number | null;
      readonly rh: number | null;
      readonly pressurePa: number | null;
    }
  | ({ readonly kind: "scale" } & WeightFrame)
  | ({ readonly kind: "thermometer" } & ThermometerFrame);

/** "waiting": lost, and tried again in `retryMs`. "stopped" is the last one. */
export type LinkState =
  | { readonly is: "connecting" | "connected" | "stopped" }
  | { readonly is: "waiting"; readonly retryMs: number };

export type Sensor = {
  /** As the sensor calls itself; "" where it does not. */
  readonly name: string;
  readonly id: string;
  /** Lets go of the sensor; nothing is told afterwards but "stopped". */
  readonly stop: () => void;
};

/**
 * "missing": this browser has no Web Bluetooth. "off": the phone's is switched off. "cancelled": the person chose
 * none. "not-allowed": the page may not. "no-service": it is no such sensor. "failed": the link did not stand.
 */
export type SensorResult =
  | { readonly ok: true; readonly sensor: Sensor }
  | {
      readonly ok: false;
      readonly why: "missing" | "off" | "cancelled" | "not-allowed" | "no-service" | "failed";
      readonly detail: string;
    };

export type SensorOptions = {
  readonly kind: SensorKind;
  readonly onValue: (value: SensorValue) => void;
  readonly onState?: ((state: LinkState) => void) | undefined;
  /** Battery left, 0–1; never called where the sensor does not tell it. */
  readonly onBattery?: ((share: number) => void) | undefined;
  /** A frame that says nothing, with the reason. */
  readonly onFault?: ((why: "short" | "unknown" | "out-of-range") => void) | undefined;
  /** Offers every device near, for sensors that do not call out their service. */
  readonly anyDevice?: boolean | undefined;
  readonly pollMs?: number | undefined;
  /** The browser's own unless a test hands in another. */
  readonly bluetooth?: BluetoothApi | null | undefined;
};

const services = { air: 0x181a, scale: 0x181d, thermometer: 0x1809, battery: 0x180f } as const;
const longestWaitMs = minuteMs;
const usualPollMs = minuteMs;

/** Wait before the next try, ms: 1 s, doubled up to a minute. A sensor with a flat battery is asked once a minute. */
export function retryWaitMs(failures: number): number {
  return Math.min(longestWaitMs, 1000 * 2 ** Math.max(0, Math.min(10, failures)));
}

/**
 * Lets the person choose a sensor (wants a tap before it), connects, and tells what it says until `stop`. A link that
 * is lost is sought again for as long as that takes. Never rejects.
 */
export async function openSensor(options: SensorOptions): Promise<SensorResult> {
  const bluetooth = options.bluetooth === undefined ? browserBluetooth() : options.bluetooth;
  if (bluetooth === null) return refused("missing", "navigator.bluetooth");
  if ((await bluetooth.getAvailability?.().catch(() => true)) === false)
    return refused("off", "getAvailability");
  try {
    const device = await bluetooth.requestDevice(wantedDevice(options));
    return await keepSensor(device, options);
  } catch (error) {
    return refused(reasonOf(error), error instanceof Error ? error.message : String(error));
  }
}

/** Connects once, so that a wrong device is told at once; from then on it is held. */
async function keepSensor(device: BluetoothDevice, options: SensorOptions): Promise<SensorResult> {
  const { onState = () => undefined, pollMs = usualPollMs } = options;
  let isStopped = false;
  let link: Link | null = null;
  let failures = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const wanted = wantedValues(options, () => isStopped);

  const connect = async (): Promise<void> => {
    onState({ is: "connecting" });
    const made = await linkTo(device, wanted, { pollMs });
    if (isStopped) return made.end();
    // Lost while it was being set up: the event has passed already.
    if (device.gatt?.connected !== true) {
      made.end();
      throw new Error("the link was lost while it was made");
    }
    link = made;
    failures = 0;
    onState({ is: "connected" });
  };
  const seek = (): void => {
    if (isStopped || timer !== undefined) return;
    const retryMs = retryWaitMs(failures);
    failures += 1;
    onState({ is: "waiting", retryMs });
    timer = setTimeout(() => {
      timer = undefined;
      connect().catch(seek);
    }, retryMs);
  };
  const lost = (): void => {
    // While a link is being made its own failure seeks again.
    if (link === null) return;
    link.end();
    link = null;
    seek();
  };
  const stop = (): void => {
    if (isStopped) return;
    isStopped = true;
    clearTimeout(timer);
    device.removeEventListener("gattserverdisconnected", lost);
    link?.end();
    device.gatt?.disconnect();
    onState({ is: "stopped" });
  };

  device.addEventListener("gattserverdisconnected", lost);
  try {
    await connect();
  } catch (error) {
    stop();
    throw error;
  }
  return { ok: true, sensor: { name: device.name ?? "", id: device.id, stop } };
}

function wantedDevice({ kind, anyDevice }: SensorOptions): DeviceWanted {
  const service = services[kind];
  return anyDevice === true
    ? { acceptAllDevices: true, optionalServices: [service, services.battery] }
    : { filters: [{ services: [service] }], optionalServices: [services.battery] };
}

function wantedValues(
  { kind, onValue, onBattery, onFault }: SensorOptions,
  isStopped: () => boolean,
): readonly Wanted[] {
  const of = <T>(
    [service, characteristic]: readonly [number, number],
    read: (bytes: DataView) => SensorFrame<T>,
    tell: (value: T | null) => void,
    isNeeded = true,
  ): Wanted => ({
    service,
    characteristic,
    isNeeded,
    take: (bytes) => {
      if (isStopped()) return;
      const frame = read(bytes);
      if (!frame.ok) onFault?.(frame.why);
      tell(frame.ok ? frame.value : null);
    },
  });
  const battery = of(
    [services.battery, 0x2a19],
    batteryShare,
    (share) => {
      if (share !== null) onBattery?.(share);
    },
    false,
  );
  switch (kind) {
    case "air": {
      let air = { kind: "air", airC: null, rh: null, pressurePa: null } as Extract<
        SensorValue,
        { kind: "air" }
      >;
      const tell = (change: Partial<typeof air>): void => {
        air = { ...air, ...change };
        onValue(air);
      };
      return [
        of([services.air, 0x2a6e], temperatureC, (airC) => tell({ airC })),
        of([services.air, 0x2a6f], humidityShare, (rh) => tell({ rh })),
        of([services.air, 0x2a6d], pressurePa, (pascals) => tell({ pressurePa: pascals }), false),
        battery,
      ];
    }
    case "scale": {
      const tell = (frame: WeightFrame | null): void => {
        if (frame) onValue({ kind: "scale", ...frame });
      };
      return [of([services.scale, 0x2a9d], weight, tell), battery];
    }
    case "thermometer": {
      const tell = (frame: ThermometerFrame | null): void => {
        if (frame) onValue({ kind: "thermometer", ...frame });
      };
      return [of([services.thermometer, 0x2a1c], thermometer, tell), battery];
    }
  }
}

type Why = Extract<SensorResult, { ok: false }>["why"];

function reasonOf(error: unknown): Why {
  if (error instanceof MissingService) return "no-service";
  const name = error instanceof DOMException ? error.name : "";
  if (name === "NotFoundError") return "cancelled";
  return name === "SecurityError" || name === "NotAllowedError" ? "not-allowed" : "failed";
}

const refused = (why: Why, detail: string): SensorResult => ({ ok: false, why, detail });
