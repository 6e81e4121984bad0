import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import {
  allEntries,
  choose,
  clearDesk,
  coatsLogged,
  doneOf,
  now,
  rack,
  settle,
  show,
  tileOf,
} from "../../../../tests/dipRack.tsx";
import type { ShopDoor } from "../../base/state/shop.tsx";

afterEach(clearDesk);

const stream = "bucket/first-backup";
const setUp = (shop: ShopDoor) =>
  shop.log({
    do: "log",
    stream,
    type: "bucket-set",
    body: { name: "Backup", use: "backup", slurry: "fused silica", cupId: "zahn-4", lowS: 12, highS: 16 },
    at: now - 5 * hourMs,
  });
const read = (shop: ShopDoor, cupS: number) =>
  shop.log({ do: "log", stream, type: "bucket-read", body: { cupId: "zahn-4", cupS }, at: now - hourMs });

describe("a look at the bucket before a visit", () => {
  test("a bucket that was read fit today is chosen with one tap, and says so", async () => {
    const { shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    await setUp(shop);
    await read(shop, 14);
    show(shop);
    await expect.element(page.getByRole("button", { name: /^Backup.*OK to dip/ })).toBeVisible();
    await choose(/^Backup/);
    await expect.element(tileOf("Heron")).toBeVisible();
  });

  test("one that was never told of only says that nobody checked it", async () => {
    const { shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    show(shop);
    await expect
      .element(page.getByRole("button", { name: /^Backup.*Never checked: check its viscosity first/ }))
      .toBeVisible();
    await choose(/^Backup/);
    await expect.element(tileOf("Heron")).toBeVisible();
  });

  test("an unfit one tells why; going on takes one tap more, and its reason is in the log and on the piece", async () => {
    const { db, shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    await setUp(shop);
    await read(shop, 20);
    show(shop);
    await choose(/^Backup/);
    await expect.element(page.getByText(/Viscosity out of range: 20.s/)).toBeVisible();
    await expect.element(page.getByRole("link", { name: "Check the slurry" })).toBeVisible();
    await choose(/^Looks good to me/);
    await tileOf("Heron").click();
    await expect.element(doneOf("Heron")).toHaveTextContent("Coat 4 done");
    await settle();
    const passed = (await allEntries(db)).find(({ type }) => type === "bucket-passed");
    expect(passed?.body).toEqual({ verdict: "do-not-dip", reason: "Looks good to me" });
    expect((await coatsLogged(db)).map(({ body }) => body.number)).toEqual([4]);
  });

  test("the look holds for the visit: another coat from it asks no more", async () => {
    const { shop } = await rack([{ name: "Heron", coats: 3, lastH: 40 }]);
    await setUp(shop);
    show(shop);
    await choose(/^Backup/);
    await choose(/^Looked at it, not measured/);
    await expect.element(tileOf("Heron")).toBeVisible();
    await settle();
    await choose(/^Something else/);
    await choose(/^Another bucket or coat/);
    await settle();
    await choose(/^Backup/);
    await expect.element(tileOf("Heron")).toBeVisible();
  });
});
