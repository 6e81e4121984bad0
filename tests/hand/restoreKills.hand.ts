import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test, type Page } from "@playwright/test";
import { likeAPhone, saveBackup } from "../journeys/backups.ts";
import { startBrowser } from "../journeys/ownBrowser.ts";
import { serveBuilt } from "../journeys/site.ts";
import { linesInStore } from "../journeys/store.ts";
import { chooseFile } from "./chooseFile.ts";
import { fillShop } from "./fullShop.ts";

const kills = 20;
const size = { entries: 4000, photos: 40, photoBytes: 200_000 };

const rest = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Ids of the photos that lie in the store, read past the app. */
const photosIn = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done, fail) => {
        const opening = indexedDB.open("dipbook");
        opening.addEventListener("error", fail);
        opening.addEventListener("success", () => {
          const asking = opening.result.transaction("photos").objectStore("photos").count();
          asking.addEventListener("success", () => {
            opening.result.close();
            done(asking.result);
          });
        });
      }),
  );

test(`${kills} kills during a restore: each leaves the old log or the whole new one`, async () => {
  const folder = await mkdtemp(join(tmpdir(), "dipbook-kills-"));
  const site = await serveBuilt();
  const browser = await startBrowser(join(folder, "from"));
  const left = { old: 0, whole: 0 };
  try {
    browser.page.setDefaultTimeout(120_000);
    await likeAPhone(browser.page);
    await browser.page.goto(`${site.url}/settings`);
    await browser.page.getByRole("button", { name: "Save a backup" }).waitFor();
    await fillShop(browser.page, size);
    const file = await saveBackup(browser.page);
    const expected = JSON.stringify(await linesInStore(browser.page));
    for (let i = 0; i < kills; i += 1) {
      const profile = join(folder, `to-${i}`);
      const other = await startBrowser(profile);
      other.page.setDefaultTimeout(120_000);
      await other.page.goto(`${site.url}/settings`);
      await other.page.getByRole("button", { name: "Save a backup" }).waitFor();
      await chooseFile(other.page, file);
      await other.page.getByRole("button", { name: /^Add / }).click({ timeout: 60_000 });
      // Spread over a restore, which takes some seconds; where it stops does not matter, what is left does.
      await rest(i * 250);
      await other.kill();
      const again = await startBrowser(profile);
      again.page.setDefaultTimeout(120_000);
      await again.page.goto(site.url);
      await expect(again.page.getByRole("navigation", { name: "Main" })).toBeVisible({ timeout: 60_000 });
      // The sweep of what was put in for nothing runs beside the first drawing.
      await expect
        .poll(async () => [0, size.photos].includes(await photosIn(again.page)), { timeout: 60_000 })
        .toBe(true);
      const lines = await linesInStore(again.page);
      if (lines.length > 0) expect(JSON.stringify(lines)).toBe(expected);
      expect(await photosIn(again.page)).toBe(lines.length === 0 ? 0 : size.photos);
      left[lines.length === 0 ? "old" : "whole"] += 1;
      await again.kill();
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  } finally {
    console.log(`old log ${left.old}, whole new log ${left.whole}`);
    await browser.kill();
    await site.close();
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});
