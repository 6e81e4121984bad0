import { mkdtemp, readdir, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test, type Page } from "@playwright/test";
import { likeAPhone } from "../journeys/backups.ts";
import { startBrowser } from "../journeys/ownBrowser.ts";
import { serveBuilt } from "../journeys/site.ts";
import { chooseFile, untilSaid } from "./chooseFile.ts";
import { fillShop, sumOfShop } from "./fullShop.ts";
import { memoryOf, watchMemory, type Megabytes } from "./processMemory.ts";

const sizes = [
  { name: "10 entries", entries: 10, photos: 0, photoBytes: 0 },
  { name: "10,000 entries, 500 photos", entries: 10_000, photos: 500, photoBytes: 300_000 },
  { name: "10,000 entries, 2 GB of photos", entries: 10_000, photos: 6700, photoBytes: 300_000 },
];
/**
 * While saving, looking and restoring the browser may hold so much more than when idle, all its processes together.
 * Measured is what a phone has to find room for: `processMemory.ts` says what counts. A machine with much
 * room lets the garbage of scripts lie longer than a small one, so these figures are on the high side; no phone was
 * measured.
 */
const mostOverIdleMB = 150;

const rest = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** Before the first page is shown a browser still loads; then it rests. */
async function idle(processId: number): Promise<Megabytes> {
  await rest(8000);
  return memoryOf(processId);
}

const told = (name: string, { all, largest }: Megabytes, over?: Megabytes): string =>
  `  ${name}: ${all.toFixed(0)} MB in all, largest process ${largest.toFixed(0)} MB` +
  (over === undefined
    ? ""
    : `; over idle ${(all - over.all).toFixed(0)} and ${(largest - over.largest).toFixed(0)} MB`);

async function downloadTo(page: Page, folder: string): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Browser.setDownloadBehavior", { behavior: "allow", downloadPath: folder });
}

async function downloaded(folder: string): Promise<string> {
  for (;;) {
    const [name, ...others] = await readdir(folder);
    if (name !== undefined && others.length === 0 && !name.endsWith(".crdownload")) return join(folder, name);
    await rest(500);
  }
}

for (const size of sizes)
  test(`backup, wipe, restore on another profile: ${size.name}`, async () => {
    const folder = await mkdtemp(join(tmpdir(), "dipbook-sizes-"));
    const [from, to, out] = [join(folder, "from"), join(folder, "to"), join(folder, "out")];
    const site = await serveBuilt();
    let browser = await startBrowser(from);
    const reopened = async (profile: string): Promise<void> => {
      browser = await startBrowser(profile);
      browser.page.setDefaultTimeout(120_000);
      await likeAPhone(browser.page);
      await browser.page.goto(`${site.url}/settings`);
      await browser.page.getByRole("button", { name: "Save a backup" }).waitFor();
    };
    const lines: string[] = [];
    try {
      await browser.page.goto(`${site.url}/settings`);
      await browser.page.getByRole("button", { name: "Save a backup" }).waitFor();
      await fillShop(browser.page, size);
      const before = await sumOfShop(browser.page);
      await rest(3000);
      await browser.kill();

      await reopened(from);
      await downloadTo(browser.page, out);
      const idleSaving = await idle(browser.processId);
      let watch = watchMemory(browser.processId);
      let start = Date.now();
      await browser.page.getByRole("button", { name: "Save a backup" }).click();
      const said = await untilSaid(browser.page, /Made and checked: |Not saved|The file does not/);
      expect(said).toContain("Made and checked");
      const saving = watch.stop();
      lines.push(told("idle", idleSaving), told(`saving, ${Date.now() - start} ms`, saving, idleSaving));
      const file = await downloaded(out);
      lines.push(`  file: ${((await stat(file)).size / 1e6).toFixed(1)} MB`);
      await browser.kill();
      await rm(from, { recursive: true, force: true, maxRetries: 5 });

      await reopened(to);
      const idleRestoring = await idle(browser.processId);
      watch = watchMemory(browser.processId);
      start = Date.now();
      await chooseFile(browser.page, file);
      await untilSaid(browser.page, /This backup is (sound|damaged)\./);
      const looking = watch.stop();
      lines.push(
        told("idle", idleRestoring),
        told(`looking, ${Date.now() - start} ms`, looking, idleRestoring),
      );
      watch = watchMemory(browser.processId);
      start = Date.now();
      await browser.page.getByRole("button", { name: /^Add / }).click();
      await untilSaid(browser.page, /added, .* here already|Nothing was changed/);
      const restoring = watch.stop();
      lines.push(told(`restoring, ${Date.now() - start} ms`, restoring, idleRestoring));
      expect(await sumOfShop(browser.page)).toBe(before);
      for (const [most, least] of [
        [saving, idleSaving],
        [looking, idleRestoring],
        [restoring, idleRestoring],
      ] as const)
        expect.soft(most.all - least.all).toBeLessThan(mostOverIdleMB);
    } finally {
      console.log([size.name, ...lines].join("\n"));
      await browser.kill();
      await site.close();
      await rm(folder, { recursive: true, force: true, maxRetries: 5 });
    }
  });
