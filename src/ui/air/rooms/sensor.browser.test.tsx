import { act } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { bluetoothStandIn } from "../../../../tests/bluetoothStandIn.ts";
import { clearDesks, demoDesk, deskNow, showAt } from "../../../../tests/demoDesk.tsx";
import { SensorButton } from "../sensors/SensorButton.tsx";
import { letGoOfSensor } from "../sensors/sensorStore.ts";
import { RoomPage } from "./RoomPage.tsx";
import { SensorPage } from "./SensorPage.tsx";

const screen = { route: "/rooms/:id/sensor", screen: SensorPage };
const path = "/rooms/first/sensor";
const air = {
  0x181a: {
    0x2a6e: { how: "notify and read", bytes: [0xca, 0x08] },
    0x2a6f: { how: "notify", bytes: [] },
    0x2a6d: { how: "notify and read", bytes: [0x02, 0x76, 0x0f, 0x00] },
  },
  0x180f: { 0x2a19: { how: "notify and read", bytes: [12] } },
} as const;
const has = (bluetooth: unknown) =>
  Object.defineProperty(navigator, "bluetooth", { value: bluetooth, configurable: true });
const connect = () => page.getByRole("button", { name: "Connect a sensor" }).click();

beforeEach(() => {
  Reflect.deleteProperty(navigator, "bluetooth");
});
afterEach(async () => {
  letGoOfSensor("air", "first");
  letGoOfSensor("scale", "");
  vi.useRealTimers();
  await clearDesks();
  Reflect.deleteProperty(navigator, "bluetooth");
});

test("what the sensor says is shown with its battery, logged at a tap, and stays linked on the room's page", async () => {
  const standIn = bluetoothStandIn(air, { name: "Shed north" });
  has(standIn.bluetooth);
  const { shop, logged } = await demoDesk();
  showAt(shop, path, screen);
  await connect();
  await expect.element(page.getByText("Connected to Shed north")).toBeVisible();
  await expect.element(page.getByText("Battery 12%: change it soon")).toBeVisible();
  await expect.element(page.getByText("No temperature and humidity from the sensor yet.")).toBeVisible();
  act(() => standIn.play(0x2a6f, [0xde, 0x12]));
  await expect.element(page.getByText("22.5 °C, 48%")).toBeVisible();
  await expect.element(page.getByText("Set the air movement first.")).toBeVisible();
  await page.getByRole("radio", { name: "Still room" }).click();
  await page.getByRole("button", { name: "Log it now" }).click();
  await expect
    .poll(() => logged("air-read"))
    .toMatchObject([
      {
        at: deskNow,
        body: { airC: 22.5, rh: 0.483, pressurePa: 101_325, air: "still", sensor: "Shed north" },
      },
    ]);
  showAt(shop, "/rooms/first", { route: "/rooms/:id", screen: RoomPage });
  await expect.element(page.getByRole("link", { name: /22\.5.°C, 48%/ }).first()).toBeVisible();
  expect(standIn.connected()).toBe(true);
});

test("a lost sensor is said, its last word kept with its age, and it comes back by itself", async () => {
  const standIn = bluetoothStandIn(air, { name: "Shed north" });
  has(standIn.bluetooth);
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  await connect();
  await expect.element(page.getByText("Connected to Shed north")).toBeVisible();
  act(() => standIn.play(0x2a6f, [0xde, 0x12]));
  act(() => standIn.lose());
  await expect.element(page.getByText("Lost Shed north, next try in 1 s")).toBeVisible();
  await expect.element(page.getByText(/^Last reading\./)).toBeVisible();
  await expect.element(page.getByText("No sensor is linked.")).toBeVisible();
  await expect.element(page.getByText("Connected to Shed north")).toBeVisible();
  await page.getByRole("button", { name: "Disconnect" }).click();
  expect(standIn.connected()).toBe(false);
  await expect.element(page.getByRole("button", { name: "Connect a sensor" })).toBeVisible();
});

test("every five minutes a reading is logged, and none while the sensor is away", async () => {
  const standIn = bluetoothStandIn(air, { name: "Shed north" });
  has(standIn.bluetooth);
  const { shop, logged } = await demoDesk();
  showAt(shop, path, screen);
  await connect();
  await expect.element(page.getByText("Connected to Shed north")).toBeVisible();
  act(() => standIn.play(0x2a6f, [0xde, 0x12]));
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval"] });
  await page.getByRole("radio", { name: "Still room" }).click();
  await page.getByRole("radio", { name: "Every 5 min" }).click();
  await expect.element(page.getByText(/while this screen is open/)).toBeVisible();
  act(() => void vi.advanceTimersByTime(299_000));
  expect(await logged("air-read")).toEqual([]);
  act(() => void vi.advanceTimersByTime(1000));
  await expect.poll(async () => (await logged("air-read")).length).toBe(1);
  act(() => standIn.lose(1000));
  act(() => void vi.advanceTimersByTime(300_000));
  await expect.element(page.getByText(/nothing logged, the sensor sent no air reading/)).toBeVisible();
  expect(await logged("air-read")).toHaveLength(1);
});

const refusing = (name: string) => ({
  requestDevice: async () => {
    throw new DOMException("no", name);
  },
});

test.each([
  ["NotFoundError", /^No air sensor was chosen\./],
  ["SecurityError", /^This page may not use Bluetooth\./],
])("a %s is said in words, with a way on", async (name, words) => {
  has(refusing(name));
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  await connect();
  await expect.element(page.getByText(words)).toBeVisible();
  await expect.element(page.getByRole("button", { name: "Look through every device near" })).toBeVisible();
});

test("a device that is no air sensor is said to be none", async () => {
  has(bluetoothStandIn({}).bluetooth);
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  await connect();
  await expect
    .element(page.getByText(/does not offer the standard “Environmental Sensing” service/))
    .toBeVisible();
});

test("a browser without Bluetooth says which have it, and offers nothing to tap", async () => {
  const { shop } = await demoDesk();
  Object.defineProperty(Navigator.prototype, "bluetooth", { value: undefined, configurable: true });
  Reflect.deleteProperty(Navigator.prototype, "bluetooth");
  showAt(shop, path, screen);
  await expect.element(page.getByText(/Chrome or Edge on Android or on a computer/)).toBeVisible();
  await expect.element(page.getByRole("button", { name: "Connect a sensor" })).not.toBeInTheDocument();
});

test("a scale hands its weight over at a tap, not before", async () => {
  const standIn = bluetoothStandIn({ 0x181d: { 0x2a9d: { how: "indicate" } } }, { name: "Bench scale" });
  has(standIn.bluetooth);
  const { shop } = await demoDesk();
  const taken: number[] = [];
  showAt(shop, "/", {
    route: "/",
    screen: () => <SensorButton kind="scale" onValue={({ massG }) => taken.push(massG)} />,
  });
  await page.getByRole("button", { name: "Connect a scale" }).click();
  await expect.element(page.getByText(/^Connected to Bench scale/)).toBeVisible();
  act(() => standIn.play(0x2a9d, [0, 0xec, 0]));
  await expect.element(page.getByRole("button", { name: "Take 1,180 g" })).toBeVisible();
  expect(taken).toEqual([]);
  await page.getByRole("button", { name: "Take 1,180 g" }).click();
  expect(taken).toEqual([1180]);
});
