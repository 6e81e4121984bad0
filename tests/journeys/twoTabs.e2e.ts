import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

/** A tab the browser has put to sleep hears nothing of what other tabs write until it is looked at again. */
async function deafen(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const ears = BroadcastChannel.prototype;
    ears.addEventListener = () => undefined;
    Object.defineProperty(ears, "onmessage", { value: null, writable: true });
  });
}

test.beforeEach(async ({ page }) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
});

test("a coat tapped in one tab is done in the other", async ({ page, context }) => {
  const first = makerAt(page, handsOn(page));
  await first.startPiece("Heron", { recipe: "General bronze (9 coats)" });
  await first.beginDip("Prime");
  const other = await context.newPage();
  await other.goto(page.url());
  const second = makerAt(other, handsOn(other));
  await expect(second.tile("Heron")).toContainText("First coat");

  await first.coatDone("Heron");
  await expect(second.settled("Heron")).toContainText("Coat 1 done");
  expect(await linesOf(page, "coat-dipped")).toHaveLength(1);
});

test("two fingers on two tabs at the same moment give each piece one coat", async ({ page, context }) => {
  const names = ["Heron", "Otter", "Fox"];
  const first = makerAt(page, handsOn(page));
  for (const name of names) await first.startPiece(name, { recipe: "General bronze (9 coats)" });
  await first.beginDip("Prime");
  const other = await context.newPage();
  // Were it to hear of the first tap in time, its tile would be gone and the two would not meet in the store.
  await deafen(other);
  await other.goto(page.url());
  const second = makerAt(other, handsOn(other));

  for (const name of names) {
    await expect(second.tile(name)).toBeVisible();
    await Promise.all([first, second].map((maker) => maker.tile(name).click({ delay: 60, force: true })));
    await expect(first.settled(name)).toContainText("Coat 1 done");
    const told = second.settled(name).or(second.tile(name).filter({ hasText: "is in the log already" }));
    await expect(told).toBeVisible();
  }
  expect(await linesOf(page, "coat-dipped")).toHaveLength(names.length);
  expect(await linesOf(page, "entry-struck")).toHaveLength(0);
});

test("a tab that has heard nothing says that the coat is in the log already, and adds none", async ({
  page,
  context,
}) => {
  const first = makerAt(page, handsOn(page));
  await first.startPiece("Heron", { recipe: "General bronze (9 coats)" });
  await first.beginDip("Prime");
  const other = await context.newPage();
  await deafen(other);
  await other.goto(page.url());
  const second = makerAt(other, handsOn(other));
  await expect(second.tile("Heron")).toContainText("First coat");

  await first.coatDone("Heron");
  await expect(second.tile("Heron")).toContainText("First coat");
  await second.tap(second.tile("Heron"));
  await expect(other.getByRole("status").filter({ hasText: "already" })).toContainText(
    "Coat 1 is in the log already, just now",
  );
  expect(await linesOf(page, "coat-dipped")).toHaveLength(1);
});
