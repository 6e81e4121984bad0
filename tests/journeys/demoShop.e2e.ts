import { expect, test } from "@playwright/test";
import { likeAPhone, restoreBackup, saveBackup } from "./backups.ts";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesInStore } from "./store.ts";

const pieces = "Pieces in work";

test("the demo shop comes and goes, and the maker's own piece stays as it was", async ({ page }) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const rack = page.getByRole("list", { name: pieces }).getByRole("listitem");
  await maker.readAir({ tempC: 20, rh: 0.5 });
  await maker.startPiece("Badger", { recipe: "General bronze (9 coats)" });
  await maker.dipCoat("Prime", "Badger");
  const own = await linesInStore(page);
  expect(own.map(({ type }) => type).toSorted()).toEqual(["air-read", "coat-dipped", "piece-started"]);

  await maker.goTo("Shop");
  await maker.tap(page.getByRole("link", { name: /^Settings/ }));
  await maker.tap(maker.key("Look at a demo shop"));
  await expect(page.getByText("Demo shop loaded.")).toBeVisible();
  await maker.goTo("Rack");
  await expect(rack.filter({ hasText: /Demo/ }).first()).toBeVisible();
  await expect(rack.filter({ hasText: "Badger" })).toContainText("1/9 coats");
  const withDemo = await linesInStore(page);
  expect(
    new Set(withDemo.filter(({ type }) => type === "piece-started").map(({ stream }) => stream)).size,
  ).toBe(14);

  await test.step("a dip of one's own beside the demo goes on as ever", async () => {
    await maker.waitHours(8);
    await maker.goTo("Dip");
    await maker.tap(maker.key(/^Prime/));
    await maker.turnTo("Badger");
    await maker.coatDone("Badger");
    await maker.leaveBucket();
  });
  const before = (await linesInStore(page)).filter(
    ({ stream, device }) => device !== "demo" && !stream.includes("/demo-"),
  );
  expect(before.length).toBe(own.length + 1);

  await maker.goTo("Shop");
  await maker.tap(page.getByRole("link", { name: /^Settings/ }));
  await maker.tap(maker.key("Remove the demo shop"));
  await expect(maker.key("Look at a demo shop")).toBeVisible();
  await maker.goTo("Rack");
  await expect(rack).toHaveCount(1);
  await expect(rack).toContainText("2/9 coats");
  expect(await linesInStore(page)).toEqual(before);
});

test("a backup from one phone is read on another, where the piece is as it was, once", async ({
  page,
  browser,
}) => {
  await likeAPhone(page);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  await maker.readAir({ tempC: 20, rh: 0.5 });
  await maker.startPiece("Badger", { recipe: "General bronze (9 coats)" });
  await maker.dipCoat("Prime", "Badger");
  await maker.openPiece("Badger");
  await maker.logFor("A note", { Note: "left ear thin; Ø 3 mm “vent”" });
  await expect(maker.logLines()).toHaveCount(3);
  await expect(maker.logLines().last()).toContainText("recipe General bronze");
  const told = await maker.logLines().allInnerTexts();
  const own = await linesInStore(page);
  await maker.goTo("Shop");
  await maker.tap(page.getByRole("link", { name: /^Settings/ }));
  const file = await saveBackup(page);

  const context = await browser.newContext();
  try {
    const second = await context.newPage();
    await visitOnceThenOffline(second, "2026-03-02T08:30:00+01:00");
    const other = makerAt(second, handsOn(second));
    await other.goTo("Shop");
    await other.tap(second.getByRole("link", { name: /^Settings/ }));
    await restoreBackup(second, file);
    await expect(second.getByText(`${own.length} entries added, 0 entries here already,`)).toBeVisible();
    await restoreBackup(second, file);
    await expect(second.getByText(`0 entries added, ${own.length} entries here already,`)).toBeVisible();
    await other.openPiece("Badger");
    await expect(other.logLines()).toHaveCount(3);
    await expect.poll(() => other.logLines().allInnerTexts()).toEqual(told);
    expect(await linesInStore(second)).toEqual(own);
  } finally {
    await context.close();
  }
});
