import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { serveBuilt, type Site } from "./site.ts";
import { linesInStore } from "./store.ts";

/** From now on the browser says of its disk that so much of it is used. */
const sayUsed = (page: Page, usedShare: number): Promise<unknown> =>
  page.addInitScript((share) => {
    const estimate = { usage: share * 1e9, quota: 1e9 };
    Object.assign(window, { timesAsked: 0 });
    StorageManager.prototype.estimate = () => {
      Object.assign(window, { timesAsked: Number(Reflect.get(window, "timesAsked")) + 1 });
      return Promise.resolve(estimate);
    };
  }, usedShare);

/** Lets every write fail as on a full disk until the page is loaded again. */
const fillDisk = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const full = (): never => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    IDBObjectStore.prototype.put = full;
    IDBObjectStore.prototype.add = full;
  });

let site: Site;
test.beforeEach(async () => {
  site = await serveBuilt();
});
test.afterEach(() => site.close());

test("from 80 % of what the browser allows on, the rack says that room runs out", async ({ page }) => {
  await page.goto(site.url);
  const maker = makerAt(page, handsOn(page));
  await maker.startPiece("Gate finial");
  const warning = page.getByRole("heading", { name: "Storage is running out" });
  await sayUsed(page, 0.79);
  await page.reload();
  await expect(page.getByText("Gate finial", { exact: true })).toBeVisible();
  await expect.poll(() => page.evaluate(() => Number(Reflect.get(window, "timesAsked")))).toBeGreaterThan(0);
  await page.evaluate(
    () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
  );
  await expect(warning).toBeHidden();
  await sayUsed(page, 0.86);
  await page.reload();
  await expect(warning).toBeVisible();
  await expect(page.getByText(/^86 % of what the browser allows is used\. Save a backup/)).toBeVisible();
  await page.getByRole("link", { name: "Save a backup" }).click();
  await expect(page.getByRole("button", { name: "Save a backup" })).toBeVisible();
});

test("a full disk refuses the entry and keeps what was typed, on the screen and over a reload", async ({
  page,
}) => {
  await page.goto(site.url);
  const maker = makerAt(page, handsOn(page));
  await maker.startPiece("Gate finial");
  await maker.openPiece("Gate finial");
  await maker.openLog("A note");
  const note = page.getByLabel("Note", { exact: true });
  await note.fill("A bare edge under the left leaf");
  const before = await linesInStore(page);
  await expect.poll(() => draftsIn(page)).toContain("A bare edge under the left leaf");

  await fillDisk(page);
  await maker.tap(maker.key("Log it"));
  await expect(page.getByText(/^Not logged: this device has no room left\. Free some space/)).toBeVisible();
  await expect(note).toHaveValue("A bare edge under the left leaf");
  expect(await linesInStore(page)).toEqual(before);
  await note.fill("A bare edge under the left leaf, patched");
  await expect(note).toHaveValue("A bare edge under the left leaf, patched");

  // The page is opened again, and there is room again.
  await page.reload();
  await expect(note).toHaveValue(/^A bare edge under the left leaf/);
  await maker.tap(maker.key("Log it"));
  await expect(page.getByRole("region", { name: "What is next" })).toBeVisible();
  const written = (await linesInStore(page)).filter(({ type }) => type === "note-written");
  expect(written.map(({ body }) => body["text"])).toEqual([
    expect.stringMatching(/^A bare edge under the left leaf/),
  ]);
});

/** What half-written forms hold, as text, read past the app. */
const draftsIn = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((done, fail) => {
        const opening = indexedDB.open("dipbook");
        opening.addEventListener("error", () => fail(opening.error));
        opening.addEventListener("success", () => {
          const asking = opening.result.transaction("drafts").objectStore("drafts").getAll();
          asking.addEventListener("success", () => {
            opening.result.close();
            done(JSON.stringify(asking.result));
          });
        });
      }),
  );
