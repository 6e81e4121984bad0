import { act } from "@testing-library/react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { bluetoothStandIn } from "../../../../tests/bluetoothStandIn.ts";
import { clearDesks, demoDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { readSettings } from "../../../storage/settings.ts";
import { WeighPage } from "./WeighPage.tsx";

let desk: Desk;

async function pieceNamed(name: RegExp): Promise<string> {
  const row = (await desk.db.projections.toArray()).find(
    (one) => one.kind === "piece" && name.test(one.state.plan.name),
  );
  return row?.stream.replace("piece/", "") ?? "";
}
const show = (id: string) =>
  showAt(desk.shop, `/piece/${id}/weigh`, { route: "/piece/:id/weigh", screen: WeighPage });

beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(async () => {
  Reflect.deleteProperty(navigator, "bluetooth");
  await clearDesks();
});

test("a weighing is a number and one key; the moment is guessed and told on the key", async () => {
  const id = await pieceNamed(/heron/);
  const { places } = show(id);
  for (const key of ["1", "2", "4", "0", "Decimal mark", "5"])
    await page.getByRole("button", { name: key, exact: true }).click();
  await page.getByRole("button", { name: /^Log 1240\.5 g, while it dries/ }).click();
  await expect.poll(() => places.at(-1)).toBe(`/piece/${id}`);
  const [seen] = await desk.logged("dryness-seen");
  expect(seen?.body).toMatchObject({ method: "weight", massG: 1240.5, scaleG: 0.1 });
});

test("a form nobody touched logs nothing, and a weight of coats ago is no guide", async () => {
  const id = await pieceNamed(/heron/);
  const { places } = show(id);
  await expect.element(page.getByText("Hook and tag on, the same each time.")).toBeVisible();
  await expect.element(page.getByText(/is expected/)).not.toBeInTheDocument();
  await page.getByRole("button", { name: /^Log while it dries/ }).click({ force: true });
  expect(await desk.logged("dryness-seen")).toEqual([]);
  expect(places).toHaveLength(1);
});

test("kilograms and the scale's step are asked once and kept", async () => {
  const id = await pieceNamed(/heron/);
  show(id);
  await page.getByRole("radio", { name: "kg", exact: true }).click();
  await page.getByRole("radio", { name: /^1.g$/ }).click();
  for (const key of ["2", "Decimal mark", "4", "1"])
    await page.getByRole("button", { name: key, exact: true }).click();
  await page.getByRole("button", { name: /^Log 2\.41 kg, while it dries/ }).click();
  await expect
    .poll(async () => (await desk.logged("dryness-seen"))[0]?.body)
    .toMatchObject({
      massG: 2410,
      scaleG: 1,
    });
  expect(await readSettings(desk.db)).toMatchObject({ scaleG: 1, weighUnit: "kg" });
});

test("the next weighing begins where the last one stood", async () => {
  const id = await pieceNamed(/heron/);
  const row = await desk.db.projections.get(`piece/${id}`);
  const coatId = row?.kind === "piece" ? (row.state.coats.at(-1)?.id ?? "") : "";
  const body = { method: "weight", massG: 1240.5, coatId } as const;
  await desk.shop.log({ do: "log", stream: `piece/${id}`, type: "dryness-seen", body });
  show(id);
  await expect.element(page.getByText(/About 1,240\.5.g is expected/)).toBeVisible();
  await expect.element(page.getByText(/^Weigh it again/)).toBeVisible();
  await page.getByRole("button", { name: "Weight: 1 less" }).click();
  await expect.element(page.getByRole("button", { name: /^Log 124\d g/ })).toBeVisible();
});

function putScaleNear() {
  const standIn = bluetoothStandIn({ 0x181d: { 0x2a9d: { how: "indicate" } } }, { name: "Bench scale" });
  Object.defineProperty(navigator, "bluetooth", { value: standIn.bluetooth, configurable: true });
  return standIn;
}

test("a Bluetooth scale's number is taken at a tap and logged; its 5 g steps are held against the coat's water", async () => {
  const standIn = putScaleNear();
  const id = await pieceNamed(/heron/);
  show(id);
  const scale = page.getByRole("region", { name: "Bluetooth scale" });
  await expect.element(scale).toHaveTextContent(/a scale sends steps of 5.g at best/);
  await page.getByRole("button", { name: "Connect a scale" }).click();
  await expect.element(page.getByText(/^Connected to Bench scale/)).toBeVisible();
  // 0x00f8 = 248 steps of 5 g.
  act(() => standIn.play(0x2a9d, [0, 0xf8, 0]));
  await page.getByRole("button", { name: "Take 1,240 g" }).click();
  await page.getByRole("button", { name: /^Log 1240(\.0)? g, while it dries/ }).click();
  await expect.poll(async () => (await desk.logged("dryness-seen"))[0]?.body).toMatchObject({ massG: 1240 });
});

test("a small piece's coat wants a finer balance than the standard's scale, and the page says how fine", async () => {
  putScaleNear();
  const id = await pieceNamed(/heron/);
  await desk.shop.log({
    do: "log",
    stream: `piece/${id}`,
    type: "piece-changed",
    body: { changes: { areaM2: 0.02 } },
  });
  show(id);
  const scale = page.getByRole("region", { name: "Bluetooth scale" });
  await expect.element(scale).toHaveTextContent(/Too coarse for this coat/);
  await expect.element(scale).toHaveTextContent(/the balance must show \d/);
});

test("before a dip it is logged as the dry piece", async () => {
  const id = await pieceNamed(/heron/);
  show(id);
  await page.getByRole("radio", { name: "Before a dip" }).click();
  for (const key of ["9", "8", "0"]) await page.getByRole("button", { name: key, exact: true }).click();
  await page.getByRole("button", { name: /^Log 980 g, before a dip/ }).click();
  await expect.poll(async () => (await desk.logged("piece-weighed")).length).toBe(1);
  expect((await desk.logged("piece-weighed"))[0]?.body).toEqual({ massG: 980 });
});
