/*
 * The part of Web Bluetooth that is used here, as the Web Bluetooth Community Group's draft has it; TypeScript's DOM
 * types do not know it.
 */

export type BluetoothApi = {
  readonly requestDevice: (wanted: DeviceWanted) => Promise<BluetoothDevice>;
  readonly getAvailability?: () => Promise<boolean>;
};

export type DeviceWanted = { readonly optionalServices: readonly number[] } & (
  | { readonly filters: readonly { readonly services: readonly number[] }[] }
  | { readonly acceptAllDevices: true }
);

export type BluetoothDevice = EventTarget & {
  readonly id: string;
  readonly name?: string | undefined;
  readonly gatt?: BluetoothServer | undefined;
};

export type BluetoothServer = {
  readonly connected: boolean;
  readonly connect: () => Promise<BluetoothServer>;
  readonly disconnect: () => void;
  readonly getPrimaryService: (service: number) => Promise<BluetoothService>;
};

export type BluetoothService = {
  readonly getCharacteristic: (characteristic: number) => Promise<BluetoothCharacteristic>;
};

export type BluetoothCharacteristic = EventTarget & {
  readonly value?: DataView | null | undefined;
  readonly properties: { readonly notify: boolean; readonly indicate: boolean; readonly read: boolean };
  readonly readValue: () => Promise<DataView>;
  readonly startNotifications: () => Promise<unknown>;
  readonly stopNotifications: () => Promise<unknown>;
};

/** The browser's own; null where it has none (as of 2026 that is every browser on an iPhone, and Firefox). */
export function browserBluetooth(): BluetoothApi | null {
  return "bluetooth" in navigator ? (navigator.bluetooth as BluetoothApi) : null;
}
