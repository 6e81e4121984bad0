import type {
  BluetoothApi,
  BluetoothCharacteristic,
  BluetoothDevice,
  DeviceWanted,
} from "../src/device/bluetoothApi.ts";

export type StandInValue = {
  readonly how: "notify" | "indicate" | "read" | "notify and read";
  /** Bytes that a question is answered with. */
  readonly bytes?: readonly number[];
};

export type BluetoothStandIn = {
  readonly bluetooth: BluetoothApi;
  /** What the chooser was asked for, in order. */
  readonly asked: readonly DeviceWanted[];
  /** The sensor says these bytes; nothing happens where nobody listens. */
  readonly play: (characteristic: number, bytes: readonly number[]) => void;
  /** Out of range: the link is gone, and so many tries to connect fail. */
  readonly lose: (failures?: number) => void;
  readonly connected: () => boolean;
  /** How many listen to it now. */
  readonly listeners: (characteristic: number) => number;
  readonly connects: () => number;
};

/** A sensor that is not there, in place of `navigator.bluetooth`: services by number, in them values by number. */
export function bluetoothStandIn(
  services: Readonly<Record<number, Readonly<Record<number, StandInValue>>>>,
  { name, available = true }: { name?: string; available?: boolean } = {},
): BluetoothStandIn {
  const asked: DeviceWanted[] = [];
  const told = new Map<number, FakeCharacteristic>();
  let isConnected = false;
  let connects = 0;
  let failures = 0;
  const gone = (): DOMException => new DOMException("GATT Server is disconnected.", "NetworkError");

  class FakeCharacteristic extends EventTarget implements BluetoothCharacteristic {
    value: DataView | null = null;
    isListened = false;
    readonly properties;
    readonly #bytes: readonly number[];
    constructor({ how, bytes = [] }: StandInValue) {
      super();
      this.#bytes = bytes;
      this.properties = {
        notify: how.includes("notify"),
        indicate: how === "indicate",
        read: how.includes("read"),
      };
    }
    async readValue(): Promise<DataView> {
      if (!isConnected) throw gone();
      return viewOf(this.#bytes);
    }
    async startNotifications(): Promise<void> {
      if (!isConnected) throw gone();
      this.isListened = true;
    }
    async stopNotifications(): Promise<void> {
      this.isListened = false;
    }
    say(bytes: readonly number[]): void {
      if (!isConnected || !this.isListened) return;
      this.value = viewOf(bytes);
      this.dispatchEvent(new Event("characteristicvaluechanged"));
    }
  }

  const missing = (): DOMException => new DOMException("Not found in device.", "NotFoundError");
  const device: BluetoothDevice = Object.assign(new EventTarget(), {
    id: "stand-in",
    name,
    gatt: {
      get connected() {
        return isConnected;
      },
      connect: async () => {
        connects += 1;
        if (failures > 0) {
          failures -= 1;
          throw gone();
        }
        isConnected = true;
        return device.gatt ?? Promise.reject(gone());
      },
      disconnect: () => {
        if (!isConnected) return;
        isConnected = false;
        device.dispatchEvent(new Event("gattserverdisconnected"));
      },
      getPrimaryService: async (number: number) => {
        if (!isConnected) throw gone();
        const values = services[number];
        if (values === undefined) throw missing();
        return {
          getCharacteristic: async (characteristic: number) => {
            if (!isConnected) throw gone();
            const value = values[characteristic];
            if (value === undefined) throw missing();
            // After a new connection these are new objects, as in the browser.
            const made = new FakeCharacteristic(value);
            told.set(characteristic, made);
            return made;
          },
        };
      },
    },
  });
  return {
    bluetooth: {
      getAvailability: async () => available,
      requestDevice: async (wanted) => {
        asked.push(wanted);
        return device;
      },
    },
    asked,
    play: (characteristic, bytes) => told.get(characteristic)?.say(bytes),
    lose: (times = 0) => {
      failures = times;
      device.gatt?.disconnect();
    },
    connected: () => isConnected,
    listeners: (characteristic) => (told.get(characteristic)?.isListened === true ? 1 : 0),
    connects: () => connects,
  };
}

const viewOf = (bytes: readonly number[]): DataView => new DataView(Uint8Array.from(bytes).buffer);
