import type { BluetoothCharacteristic, BluetoothDevice, BluetoothService } from "./bluetoothApi.ts";

/** A value that is asked for or told: what is done with its bytes, and whether the sensor is none without it. */
export type Wanted = {
  readonly service: number;
  readonly characteristic: number;
  readonly isNeeded: boolean;
  readonly take: (bytes: DataView) => void;
};

export type Link = { readonly end: () => void };

/** What a sensor lacks; not a failure of the link, so that it is of no use to try again. */
export class MissingService extends Error {
  override readonly name = "MissingService";
}

/**
 * Connects and has every wanted value told, or asked for every `pollMs` where the sensor does not tell by itself. Each
 * is asked for once at the start. Rejects where the link fails, and with MissingService where a needed one is not there.
 */
export async function linkTo(
  device: BluetoothDevice,
  wanted: readonly Wanted[],
  { pollMs }: { pollMs: number },
): Promise<Link> {
  const { gatt } = device;
  if (gatt === undefined) throw new MissingService("the device takes no connections");
  const server = await gatt.connect();
  const ends: (() => void)[] = [];
  const end = (): void => {
    for (const one of ends) one();
  };
  try {
    const services = new Map<number, BluetoothService | null>();
    for (const one of wanted) {
      const service = services.get(one.service) ?? (await orMissing(server.getPrimaryService(one.service)));
      services.set(one.service, service);
      const characteristic = service && (await orMissing(service.getCharacteristic(one.characteristic)));
      if (characteristic) ends.push(await listen(characteristic, one.take, pollMs));
      else if (one.isNeeded) throw new MissingService(`no characteristic ${one.characteristic.toString(16)}`);
    }
  } catch (error) {
    end();
    throw error;
  }
  return { end };
}

/** Null where it is not there; a link that fails goes on failing. */
async function orMissing<T>(found: Promise<T>): Promise<T | null> {
  try {
    return await found;
  } catch (error) {
    if (error instanceof DOMException && error.name === "NotFoundError") return null;
    throw error;
  }
}

async function listen(
  characteristic: BluetoothCharacteristic,
  take: (bytes: DataView) => void,
  pollMs: number,
): Promise<() => void> {
  const { notify, indicate, read } = characteristic.properties;
  const changed = (): void => {
    if (characteristic.value) take(characteristic.value);
  };
  const ask = async (): Promise<void> => {
    await characteristic.readValue().then(take);
  };
  if (!(notify || indicate)) {
    if (read) await ask();
    // A question the sensor does not answer is asked again next time; if it is gone, that is told by itself.
    const timer = setInterval(() => void ask().catch(() => undefined), pollMs);
    return () => clearInterval(timer);
  }
  characteristic.addEventListener("characteristicvaluechanged", changed);
  const end = (): void => {
    characteristic.removeEventListener("characteristicvaluechanged", changed);
    void characteristic.stopNotifications().catch(() => undefined);
  };
  try {
    await characteristic.startNotifications();
    // What may be asked for need not be waited for.
    if (read) await ask();
  } catch (error) {
    end();
    throw error;
  }
  return end;
}
