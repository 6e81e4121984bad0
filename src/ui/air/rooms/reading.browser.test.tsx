import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, deskNow, freshDesk, showAt } from "../../../../tests/demoDesk.tsx";
import type { ShopDb } from "../../../storage/rows.ts";
import { RoomPage } from "./RoomPage.tsx";

afterEach(clearDesks);

const key = (name: string | RegExp) => page.getByRole("button", { name });
const readings = async (db: ShopDb) =>
  ((await db.entries.toArray()) as unknown as readonly { readonly type: string; readonly body: object }[])
    .filter(({ type }) => type === "air-read")
    .map(({ body }) => body);
const show = (shop: Parameters<typeof showAt>[0]) =>
  showAt(shop, "/rooms/first", { route: "/rooms/:id", screen: RoomPage });

test("the first form of a room is empty: one tap logs nothing and says what is missing", async () => {
  const { db, shop } = freshDesk();
  show(shop);
  await expect.element(page.getByText(/drying times assume 20.°C, 55.*still room/)).toBeVisible();
  await expect.element(key("Log this reading")).toHaveAttribute("aria-disabled", "true");
  await expect.element(page.getByText("Set the temperature, humidity and air movement first.")).toBeVisible();
  await key("Log this reading").click({ force: true });
  await key("Temperature: more").click();
  await key("Temperature: more").click();
  await expect.element(page.getByRole("spinbutton", { name: "Temperature" })).toHaveTextContent("20.5");
  await key("Humidity: less").click();
  await key("Log this reading").click({ force: true });
  await expect.element(page.getByText("Set the air movement first.")).toBeVisible();
  expect(await readings(db)).toEqual([]);
  await page.getByRole("radio", { name: "Still room" }).click();
  await key("Log this reading").click();
  await expect.poll(async () => await readings(db)).toMatchObject([{ airC: 20.5, rh: 0.55, air: "still" }]);
});

test("a form left as it came says that it is the last reading again, with that reading's own figures", async () => {
  const { db, shop } = freshDesk();
  const last = { airC: 20.3, rh: 0.504, air: "draught" } as const;
  await shop.log({ do: "log", stream: "room/first", type: "air-read", body: last, at: deskNow - 3_600_000 });
  show(shop);
  await expect.element(key("Log this reading")).not.toBeInTheDocument();
  await key(/^Same as last: 20.3.°C, 50/).click();
  await expect.poll(async () => (await readings(db)).length).toBe(2);
  expect(await readings(db)).toMatchObject([last, last]);
  await key("Temperature: more").click();
  await key("Log this reading").click();
  await expect.poll(async () => (await readings(db)).length).toBe(3);
  expect((await readings(db)).some((one) => "airC" in one && one.airC === 21)).toBe(true);
});
