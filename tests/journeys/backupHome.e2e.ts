import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test, type Page } from "@playwright/test";
import { fillShop, sumOfShop } from "../hand/fullShop.ts";
import { likeAPhone, restoreBackup, saveBackup } from "./backups.ts";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { untilStored } from "./offline.ts";
import { startBrowser } from "./ownBrowser.ts";
import { serveBuilt } from "./site.ts";
import { linesInStore } from "./store.ts";

const rack = (page: Page) => page.getByRole("list", { name: "Pieces in work" });

/** Removes the whole store, as a browser does that makes room. */
const clearStore = (page: Page) =>
  page.evaluate(
    () =>
      new Promise((done, fail) => {
        const asked = indexedDB.deleteDatabase("dipbook");
        asked.addEventListener("success", done);
        asked.addEventListener("error", fail);
      }),
  );

test("a log the browser has cleared is said to be gone, and its backup brings it back", async ({ page }) => {
  await likeAPhone(page);
  const site = await serveBuilt();
  try {
    await page.goto(site.url);
    const maker = makerAt(page, handsOn(page));
    await maker.startPiece("Gate finial");
    await maker.startPiece("Kelp lantern");
    await page.goto(`${site.url}/settings`);
    const file = await saveBackup(page);
    const before = await linesInStore(page);
    await expect.poll(() => page.evaluate(() => localStorage.getItem("dipbook-log"))).toMatch(/^2_\d+_\d+$/);

    await test.step("the open page stops taking taps and says why", async () => {
      await clearStore(page);
      await expect(
        page.getByRole("heading", { name: "The log was cleared while Dipbook was open" }),
      ).toBeVisible();
    });

    await page.goto(site.url);
    await expect(page.getByRole("heading", { name: "The log that was here is gone" })).toBeVisible();
    await expect(page.getByText(/There were 2 entries here until today\./)).toBeVisible();
    await expect(page.getByRole("button", { name: "Look at a demo shop" })).toBeHidden();
    await page.getByRole("link", { name: "Restore a backup" }).click();
    await restoreBackup(page, file);
    expect(await linesInStore(page)).toEqual(before);
    await maker.goTo("Rack");
    await expect(rack(page).getByText("Gate finial", { exact: true })).toBeVisible();
  } finally {
    await site.close();
  }
});

test("a log moves to another address, and the old one is read-only from then on", async ({ page }) => {
  await likeAPhone(page);
  const [old, fresh] = [await serveBuilt(), await serveBuilt()];
  try {
    await page.goto(old.url);
    const maker = makerAt(page, handsOn(page));
    await maker.startPiece("Gate finial");
    const own = await linesInStore(page);
    await page.goto(`${old.url}/settings`);
    const file = await saveBackup(page);

    await page.goto(`${fresh.url}/settings`);
    await restoreBackup(page, file);
    expect(await linesInStore(page)).toEqual(own);
    await page.goto(fresh.url);
    await expect(rack(page).getByText("Gate finial", { exact: true })).toBeVisible();

    await page.goto(`${old.url}/settings`);
    await page.getByText("How to move this log").click();
    await page.getByLabel("Moved to").fill("the new address");
    await page.getByRole("button", { name: "Make this place read-only" }).click();
    const moved = page.getByText("This log has moved to the new address. Here it can only be read.", {
      exact: true,
    });
    await expect(moved).toBeVisible();
    await page.goto(`${old.url}/piece/new`);
    await page.getByLabel("Name").fill("Too late");
    await page.getByRole("button", { name: "Start it" }).click();
    await expect(
      page.getByText(/^Not logged: this log has moved to the new address\./).first(),
    ).toBeVisible();
    expect(await linesInStore(page)).toEqual(own);
    await page.getByRole("button", { name: "Use it here again" }).click();
    await expect(moved).toBeHidden();
  } finally {
    await old.close();
    await fresh.close();
  }
});

test("where the browser lets a person choose the file, the saved file itself is read again", async ({
  page,
}) => {
  const site = await serveBuilt();
  try {
    await page.addInitScript(() => {
      Reflect.set(window, "showSaveFilePicker", async ({ suggestedName }: { suggestedName: string }) =>
        (await navigator.storage.getDirectory()).getFileHandle(suggestedName, { create: true }),
      );
    });
    await page.goto(site.url);
    await makerAt(page, handsOn(page)).startPiece("Gate finial");
    await page.goto(`${site.url}/settings`);
    await page.getByRole("button", { name: "Save a backup" }).click();
    await expect(page.getByText("Saved and checked where you put it: 1 entry, 0 photos.")).toBeVisible();
    await expect(page.getByText(/^Last backup: today /)).toBeVisible();
  } finally {
    await site.close();
  }
});

test("killed during a restore, the log is the old one or the whole new one", async () => {
  test.setTimeout(240_000);
  const profile = await mkdtemp(join(tmpdir(), "dipbook-restore-"));
  const site = await serveBuilt();
  let browser = await startBrowser(profile);
  const rows = 4000;
  try {
    await browser.page.goto(site.url);
    await untilStored(browser.page);
    const lines = Array.from({ length: rows }, (_, i) =>
      JSON.stringify({
        id: `r${String(i).padStart(5, "0")}`,
        stream: "room/first",
        type: "air-read",
        at: 1_770_000_000_000 + i * 60_000,
        recordedAt: 1_770_000_000_000 + i * 60_000,
        zone: "UTC",
        device: "d",
        version: 1,
        body: { airC: 20, rh: 0.5, air: "still" },
      }),
    );
    const backup = `{"format":"dipbook-log","version":1,"madeAt":5,\n"entries":[\n${lines.join(",\n")}\n],"setAside":[\n\n],"photos":[\n\n]}\n`;
    for (const waitMs of [20, 120, 350, 800]) {
      await browser.page.goto(`${site.url}/settings`);
      const before = (await linesInStore(browser.page)).length;
      await browser.page.getByLabel("Choose a backup file").setInputFiles({
        name: "old.json",
        mimeType: "application/json",
        buffer: Buffer.from(backup),
      });
      await browser.page.getByRole("button", { name: /^Add / }).click();
      // Each try is stopped somewhere else; where does not matter, what is left does.
      await new Promise((done) => setTimeout(done, waitMs));
      await browser.kill();
      browser = await startBrowser(profile);
      await browser.page.goto(site.url);
      await expect(browser.page.getByRole("navigation", { name: "Main" })).toBeVisible();
      const after = (await linesInStore(browser.page)).length;
      expect([before, rows]).toContain(after);
    }
  } finally {
    await browser.kill();
    await site.close();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});

/** Has the browser clear away all that nothing holds on to, over and over, while `work` goes on. */
async function whileClearingAway<T>(page: Page, work: () => Promise<T>): Promise<T> {
  const session = await page.context().newCDPSession(page);
  const over = new AbortController();
  const clearing = (async () => {
    while (!over.signal.aborted) await session.send("HeapProfiler.collectGarbage");
  })();
  try {
    return await work();
  } finally {
    over.abort();
    await clearing;
  }
}

test("a backup is read and restored to its end while the browser clears away what nothing holds", async ({
  page,
}) => {
  await likeAPhone(page);
  const [old, fresh] = [await serveBuilt(), await serveBuilt()];
  try {
    await page.goto(`${old.url}/settings`);
    await expect(page.getByRole("button", { name: "Save a backup" })).toBeVisible();
    await fillShop(page, { entries: 3000, photos: 40, photoBytes: 300_000 });
    const own = await sumOfShop(page);
    const file = await saveBackup(page);
    await page.goto(`${fresh.url}/settings`);
    await whileClearingAway(page, () => restoreBackup(page, file));
    expect(await sumOfShop(page)).toBe(own);
  } finally {
    await old.close();
    await fresh.close();
  }
});
