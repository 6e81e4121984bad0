import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { StandInValue } from "../../tests/bluetoothStandIn.ts";
import { bluetoothStandIn } from "../../tests/bluetoothStandIn.ts";
import type { Sensor, SensorOptions, LinkState, SensorValue } from "./bluetoothSensor.ts";
import { openSensor, retryWaitMs } from "./bluetoothSensor.ts";

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const airService = {
  0x181a: {
    0x2a6e: { how: "notify and read", bytes: [0xca, 0x08] },
    0x2a6f: { how: "notify", bytes: [] },
    0x2a6d: { how: "notify and read", bytes: [0x02, 0x76, 0x0f, 0x00] },
  },
  0x180f: { 0x2a19: { how: "notify and read", bytes: [87] } },
} satisfies Record<number, Record<number, StandInValue>>;

async function open(standIn: ReturnType<typeof bluetoothStandIn>, options: Partial<SensorOptions> = {}) {
  const values: SensorValue[] = [];
  const states: LinkState[] = [];
  const batteries: number[] = [];
  const faults: string[] = [];
  const result = await openSensor({
    kind: "air",
    bluetooth: standIn.bluetooth,
    onValue: (value) => values.push(value),
    onState: (state) => states.push(state),
    onBattery: (share) => batteries.push(share),
    onFault: (why) => faults.push(why),
    ...options,
  });
  return { result, values, states, batteries, faults, words: () => states.map(({ is }) => is) };
}
function sensorOf({ result }: Awaited<ReturnType<typeof open>>): Sensor {
  if (!result.ok) throw new Error(result.why);
  return result.sensor;
}

describe("an air sensor", () => {
  test("is asked for by its service, and tells temperature, humidity, pressure and battery", async () => {
    const standIn = bluetoothStandIn(airService, { name: "Shed north" });
    const opened = await open(standIn);
    expect(standIn.asked).toEqual([{ filters: [{ services: [0x181a] }], optionalServices: [0x180f] }]);
    expect(sensorOf(opened).name).toBe("Shed north");
    expect(opened.values.at(-1)).toEqual({ kind: "air", airC: 22.5, rh: null, pressurePa: 101_325 });
    standIn.play(0x2a6f, [0xde, 0x12]);
    expect(opened.values.at(-1)).toEqual({ kind: "air", airC: 22.5, rh: 0.483, pressurePa: 101_325 });
    expect(opened.batteries).toEqual([0.87]);
    expect(opened.words()).toEqual(["connecting", "connected"]);
    sensorOf(opened).stop();
  });

  test("that does not know a value says so, and it is not taken for the last one", async () => {
    const standIn = bluetoothStandIn(airService);
    const opened = await open(standIn);
    standIn.play(0x2a6f, [0xde, 0x12]);
    standIn.play(0x2a6f, [0xff, 0xff]);
    standIn.play(0x2a6e, [0x01]);
    expect(opened.values.at(-1)).toMatchObject({ airC: null, rh: null });
    expect(opened.faults).toEqual(["unknown", "short"]);
    sensorOf(opened).stop();
  });

  test("without pressure or battery is one all the same; without humidity it is none", async () => {
    const { 0x2a6e: temperature, 0x2a6f: humidity } = airService[0x181a];
    const plain = await open(bluetoothStandIn({ 0x181a: { 0x2a6e: temperature, 0x2a6f: humidity } }));
    expect(plain.result.ok).toBe(true);
    sensorOf(plain).stop();
    const half = bluetoothStandIn({ 0x181a: { 0x2a6e: temperature } });
    expect((await open(half)).result).toMatchObject({ ok: false, why: "no-service" });
    expect(half.connected()).toBe(false);
    expect((await open(bluetoothStandIn({}))).result).toMatchObject({ ok: false, why: "no-service" });
  });

  test("that only answers is asked again every minute", async () => {
    const read = (bytes: readonly number[]): StandInValue => ({ how: "read", bytes });
    const standIn = bluetoothStandIn({ 0x181a: { 0x2a6e: read([0xca, 0x08]), 0x2a6f: read([0xde, 0x12]) } });
    const opened = await open(standIn);
    expect(opened.values).toHaveLength(2);
    await vi.advanceTimersByTimeAsync(180_000);
    expect(opened.values).toHaveLength(8);
    sensorOf(opened).stop();
    await vi.advanceTimersByTimeAsync(180_000);
    expect(opened.values).toHaveLength(8);
  });
});

describe("a link that is lost", () => {
  test("is sought again, each time after a longer wait, and told from then on as before", async () => {
    const standIn = bluetoothStandIn(airService);
    const opened = await open(standIn);
    standIn.lose(3);
    expect(opened.states.at(-1)).toEqual({ is: "waiting", retryMs: 1000 });
    await vi.advanceTimersByTimeAsync(1000 + 2000 + 4000 + 7999);
    expect(standIn.connected()).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect(standIn.connected()).toBe(true);
    expect(opened.states.flatMap((state) => (state.is === "waiting" ? state.retryMs : []))).toEqual([
      1000, 2000, 4000, 8000,
    ]);
    expect(opened.states.at(-1)).toEqual({ is: "connected" });
    standIn.play(0x2a6f, [0x10, 0x27]);
    expect(opened.values.at(-1)).toMatchObject({ rh: 1 });
    // The next loss starts with a short wait again.
    standIn.lose();
    expect(opened.states.at(-1)).toEqual({ is: "waiting", retryMs: 1000 });
    sensorOf(opened).stop();
  });

  test("is not sought once the sensor is let go of", async () => {
    const standIn = bluetoothStandIn(airService);
    const opened = await open(standIn);
    standIn.lose(100);
    sensorOf(opened).stop();
    const tries = standIn.connects();
    await vi.advanceTimersByTimeAsync(600_000);
    expect(standIn.connects()).toBe(tries);
    expect(opened.words().at(-1)).toBe("stopped");
  });

  test("is never waited for longer than a minute", () => {
    expect([0, 1, 5, 6, 1000].map(retryWaitMs)).toEqual([1000, 2000, 32_000, 60_000, 60_000]);
  });
});

test("let go of, a sensor is disconnected, no longer listened to, and says nothing more", async () => {
  const standIn = bluetoothStandIn(airService);
  const opened = await open(standIn);
  const before = opened.values.length;
  sensorOf(opened).stop();
  sensorOf(opened).stop();
  expect(standIn.connected()).toBe(false);
  expect(standIn.listeners(0x2a6e)).toBe(0);
  standIn.play(0x2a6e, [0, 0]);
  await vi.advanceTimersByTimeAsync(600_000);
  expect(opened.values).toHaveLength(before);
  expect(opened.words()).toEqual(["connecting", "connected", "stopped"]);
});

describe("scales and thermometers", () => {
  test("a scale tells grams and its own clock, and nothing of a weighing that failed", async () => {
    const standIn = bluetoothStandIn({ 0x181d: { 0x2a9d: { how: "indicate" } } });
    const opened = await open(standIn, { kind: "scale" });
    standIn.play(0x2a9d, [0, 0xff, 0xff]);
    standIn.play(0x2a9d, [2, 0xec, 0, 0xe9, 7, 6, 2, 8, 5, 9]);
    expect(opened.values).toEqual([{ kind: "scale", massG: 1180, clockMs: Date.UTC(2025, 5, 2, 8, 5, 9) }]);
    expect(opened.faults).toEqual(["unknown"]);
    sensorOf(opened).stop();
  });

  test("a thermometer tells °C", async () => {
    const standIn = bluetoothStandIn({ 0x1809: { 0x2a1c: { how: "indicate" } } });
    const opened = await open(standIn, { kind: "thermometer" });
    standIn.play(0x2a1c, [1, 0xd5, 2, 0, 0xff]);
    expect(opened.values).toEqual([{ kind: "thermometer", tempC: 22.5, clockMs: null }]);
    sensorOf(opened).stop();
  });
});

describe("where there is no sensor to be had", () => {
  const requests = (error: DOMException) => ({
    requestDevice: async () => {
      throw error;
    },
  });

  test.each([
    ["missing", null],
    ["off", bluetoothStandIn(airService, { available: false }).bluetooth],
    ["cancelled", requests(new DOMException("User cancelled the chooser.", "NotFoundError"))],
    ["not-allowed", requests(new DOMException("Must be handling a user gesture.", "SecurityError"))],
    ["failed", requests(new DOMException("adapter", "NetworkError"))],
  ] as const)("it is said: %s", async (why, bluetooth) => {
    expect(await openSensor({ kind: "air", bluetooth, onValue: () => undefined })).toMatchObject({
      ok: false,
      why,
    });
  });

  test("a device that is away at the start is a failure at once, not a long wait", async () => {
    const standIn = bluetoothStandIn(airService);
    standIn.lose(1);
    const opened = await open(standIn);
    expect(opened.result).toMatchObject({ ok: false, why: "failed" });
    await vi.advanceTimersByTimeAsync(600_000);
    expect(standIn.connects()).toBe(1);
  });

  test("sensors that do not call out their service can be chosen from all devices near", async () => {
    const standIn = bluetoothStandIn(airService);
    sensorOf(await open(standIn, { anyDevice: true })).stop();
    expect(standIn.asked).toEqual([{ acceptAllDevices: true, optionalServices: [0x181a, 0x180f] }]);
  });
});
