import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, freshDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { backupOf } from "../../../../tests/fixtures/backups.ts";
import { readSettings, changeSettings } from "../../../storage/settings.ts";
import { PiecePage } from "../../making/piece/PiecePage.tsx";
import { RackPage } from "../../making/rack/RackPage.tsx";
import { FiguresPage } from "./FiguresPage.tsx";
import { SettingsPage } from "./SettingsPage.tsx";

afterEach(clearDesks);

const settings = { route: "/settings", screen: SettingsPage };
const figures = { route: "/figures", screen: FiguresPage };
const press = (name: string) => page.getByRole("button", { name }).click();

test("units change what is read at once", async () => {
  const { db, shop } = await demoDesk();
  showAt(shop, "/settings", settings);
  await expect.element(page.getByText(/a pour at 1,150.°C/)).toBeVisible();
  await page.getByRole("radio", { name: "US" }).click();
  await expect.element(page.getByText(/a pour at 2,102.°F/)).toBeVisible();
  expect((await readSettings(db)).units).toBe("us");
});

test("the demo goes without touching a real piece", async () => {
  const { db, shop, logged } = await demoDesk();
  await shop.log({
    do: "log",
    stream: "piece/own",
    type: "piece-started",
    body: { plan: { name: "Own" }, roomId: "first" },
  });
  showAt(shop, "/settings", settings);
  await press("Remove the demo shop");
  await expect.element(page.getByRole("button", { name: "Look at a demo shop" })).toBeVisible();
  expect(await logged("piece-started")).toHaveLength(1);
  expect(await db.entries.count()).toBe(1);
  await press("Look at a demo shop");
  await expect.element(page.getByText(/^Demo shop loaded\./)).toBeVisible();
});

test("a file that is no backup changes nothing and is explained", async () => {
  const { db, shop } = await demoDesk();
  const before = await db.entries.count();
  showAt(shop, "/settings", settings);
  await page
    .getByLabelText("Choose a backup file")
    .upload(new File(["not json"], "holiday.json", { type: "application/json" }));
  await expect.element(page.getByText(/^This is not a backup: found .*Nothing was changed\.$/)).toBeVisible();
  expect(await db.entries.count()).toBe(before);
});

test("a backup is shown before it is joined, and joined only when asked", async () => {
  const { shop: old, db: oldDb } = await demoDesk();
  await old.log({
    do: "log",
    stream: "piece/own",
    type: "piece-started",
    body: { plan: { name: "Own" }, roomId: "first" },
  });
  const file = new File([await backupOf(oldDb, { now: Date.now() })], "dipbook.zip");
  const count = await oldDb.entries.count();
  const { db, shop } = freshDesk();
  showAt(shop, "/settings", settings);
  await page.getByLabelText("Choose a backup file").upload(file);
  await expect.element(page.getByText("This backup is sound.")).toBeVisible();
  expect(await db.entries.count()).toBe(0);
  await page.getByRole("button", { name: /^Add \d+ entries and 0 photos$/ }).click();
  await expect
    .element(page.getByText(/entries added, 0 entries here already, 0 photos added\.$/))
    .toBeVisible();
  expect(await db.entries.count()).toBe(count);
});

test("a log that has moved takes no entry and says where it is", async () => {
  const { db, shop, logged } = await demoDesk({ movedTo: "the new phone" });
  const result = await shop.log({
    do: "log",
    stream: "piece/own",
    type: "piece-started",
    body: { plan: { name: "Own" }, roomId: "first" },
  });
  expect(result).toEqual({
    ok: false,
    text: "Not logged: this log has moved to the new phone. Here it can only be read.",
  });
  expect(await logged("piece-started")).not.toContainEqual(expect.objectContaining({ stream: "piece/own" }));
  expect((await readSettings(db)).movedTo).toBe("the new phone");
});

test("an own drying factor is an entry of the shop, and the figures page shows it in place of the starting value", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/figures", figures);
  await page.getByRole("textbox", { name: "Drying factor" }).fill("1.3");
  await press("Use these");
  await expect.poll(async () => (await logged("shop-figures-set"))[0]?.body.dryingFactor).toBe(1.3);
  await page.getByRole("textbox", { name: "Find" }).fill("actual hours");
  await expect.element(page.getByText(/^1\.3, the shop's own/)).toBeVisible();
});

test("a drying factor of 80 is refused with its range", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/figures", figures);
  await page.getByRole("textbox", { name: "Drying factor" }).fill("80");
  await press("Use these");
  await expect
    .element(page.getByText(/^Found 80 for the drying factor, expected 0\.1 to 10\./))
    .toBeVisible();
  expect(await logged("shop-figures-set")).toEqual([]);
});

test("a minimum drying time is an entry of the shop, is refused out of range, and stands on the figures page", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/figures", figures);
  await page.getByRole("textbox", { name: "Backup" }).fill("900");
  await press("Save the minimums");
  await expect.element(page.getByText(/^Found 900.h for the minimum drying time, expected/)).toBeVisible();
  await page.getByRole("textbox", { name: "Backup" }).fill("6.5");
  await page.getByRole("textbox", { name: "Open shell" }).fill("16");
  await press("Save the minimums");
  await expect
    .poll(async () => (await logged("shop-figures-set"))[0]?.body)
    .toMatchObject({
      leastDryH: { prime: null, backup: 6.5 },
      finalDryH: { open: 16, blind: null },
    });
  await page.getByRole("textbox", { name: "Find" }).fill("backup coat dries");
  await expect.element(page.getByText(/^6\.5.h, the shop's own/)).toBeVisible();
});

test("rows that can't be read are named with their piece, on its page too", async () => {
  const { db, shop } = await demoDesk();
  await db.entries.add({ id: "rotten", stream: "piece/demo-heron", type: "note-written", at: 5 } as never);
  showAt(shop, "/settings", settings);
  const card = page.getByRole("region", { name: "Rows that can't be read" });
  await expect.element(card.getByText(/a line, found .* expected /)).toBeVisible();
  await expect.element(card.getByRole("link")).toHaveAttribute("href", "/piece/demo-heron");
  showAt(shop, "/piece/demo-heron", { route: "/piece/:id", screen: PiecePage });
  await expect.element(page.getByText("Part of this piece can't be read")).toBeVisible();
});

test("what the browser said when it was asked to keep the log is shown with what it means", async () => {
  const { db, shop } = await demoDesk();
  await changeSettings(db, { askedToKeepAt: Date.now() });
  showAt(shop, "/settings", settings);
  await expect.element(page.getByText(/^Asked /)).toBeVisible();
  await expect.element(page.getByText(/^(Kept|Not promised)\./)).toBeVisible();
  await page.getByText("If the browser clears the log").click();
  await expect.element(page.getByText(/Dipbook can't know that there was a log/)).toBeVisible();
});

test("a newcomer with the demo in is not reminded of a backup, and hears the browser's answer on the rack until read", async () => {
  const { db, shop } = await demoDesk();
  await changeSettings(db, { askedToKeepAt: Date.now() });
  showAt(shop, "/", { route: "/", screen: RackPage });
  await expect.element(page.getByText("The browser was asked to keep this log")).toBeVisible();
  expect(page.getByText("Time for a backup").query()).toBeNull();
  await page.getByRole("button", { name: "Understood" }).click();
  await expect.element(page.getByText("The browser was asked to keep this log")).not.toBeInTheDocument();
  expect((await readSettings(db)).keepAnswerSeenAt).toBeGreaterThan(0);
});
