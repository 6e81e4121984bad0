import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { untilStored } from "./offline.ts";
import { startBrowser, type OwnBrowser } from "./ownBrowser.ts";
import { serveBuilt } from "./site.ts";
import { linesOf } from "./store.ts";

const names = ["Ada", "Bea", "Cleo"];

/** Has the browser killed while the burnout of the `nth` piece is being written: the page stands still until then. */
async function killAt(browser: OwnBrowser, nth: number): Promise<{ readonly killed: () => Promise<void> }> {
  let isDone: () => void = () => undefined;
  const done = new Promise<void>((resolve) => (isDone = resolve));
  await browser.page.exposeFunction("killNow", () => void browser.kill().then(isDone));
  await browser.page.evaluate((count) => {
    let seen = 0;
    const { prototype } = IDBObjectStore;
    const add = Reflect.get(prototype, "add") as (this: IDBObjectStore, ...args: unknown[]) => IDBRequest;
    Reflect.set(prototype, "add", function (this: IDBObjectStore, ...args: unknown[]) {
      const asked = Reflect.apply(add, this, args);
      if ((args[0] as { readonly type?: string }).type !== "burnout-started") return asked;
      seen += 1;
      if (seen === count) {
        (window as unknown as { readonly killNow: () => void }).killNow();
        const until = performance.now() + 20_000;
        while (performance.now() < until);
      }
      return asked;
    });
  }, nth);
  return { killed: () => done };
}

const begun = async (page: Page) => [
  (await linesOf(page, "run-started")).length,
  (await linesOf(page, "burnout-started")).length,
];

test("a browser killed between two pieces of one burnout leaves none of it, and its start goes through when tapped again", async () => {
  test.setTimeout(480_000);
  const profile = await mkdtemp(join(tmpdir(), "dipbook-killed-"));
  const site = await serveBuilt();
  let browser = await startBrowser(profile);
  try {
    await browser.page.goto(site.url);
    await untilStored(browser.page);
    await site.close();
    const maker = makerAt(browser.page, handsOn(browser.page));
    for (const name of names) await maker.startPiece(name, { recipe: "General bronze (9 coats)" });
    await maker.beginDip("Prime");
    for (const name of names) {
      await maker.turnTo(name);
      await maker.coatDone(name);
    }
    await maker.leaveBucket();
    for (const name of names) {
      await maker.openPiece(name);
      await maker.tap(browser.page.getByRole("link", { name: "Plan", exact: true }));
      await maker.fillPlan({ material: "PLA" });
      await maker.logFor("Caliper reading", { "Shell thickness": "9" });
    }
    await browser.page.goto(`${site.url}/fire/run/new`);
    for (const name of names) await browser.page.getByRole("checkbox", { name }).check();
    await browser.page.getByLabel("Mass of all patterns").fill("0.3");
    await maker.choose("The shell is", "Dry");
    await maker.tap(maker.key("Save this plan"));
    await maker.onScreen(/^Burnout/);
    const plan = browser.page.url();

    const readKiln = () =>
      browser.page.getByRole("button", { name: /^Same as planned: / }).click({ delay: 60 });
    for (const nth of [2, 3]) {
      await readKiln();
      const { killed } = await killAt(browser, nth);
      await browser.page
        .getByRole("button", { name: "Start the run" })
        .click()
        .catch(() => undefined);
      await killed();
      browser = await startBrowser(profile);
      await browser.page.goto(plan);
      // By the page's text, so that a red run says what stood there instead.
      await expect(browser.page.locator("body")).toContainText("Start the run", { timeout: 60_000 });
      expect(await begun(browser.page)).toEqual([0, 0]);
    }

    await readKiln();
    await browser.page.getByRole("button", { name: "Start the run" }).click({ delay: 60 });
    await expect(browser.page.getByText(`In the kiln: ${names.length} of ${names.length}`)).toBeVisible();
    await expect(browser.page.getByRole("button", { name: /Log its burnout/ })).toHaveCount(0);
    expect(await begun(browser.page)).toEqual([1, names.length]);

    await browser.page.getByRole("button", { name: "Undo" }).click({ delay: 60 });
    await browser.page.getByRole("button", { name: "Start the run" }).waitFor();
    await browser.page.goto(site.url);
    const rack = browser.page.getByRole("list", { name: "Pieces in work" }).getByRole("listitem");
    await expect(rack.filter({ hasText: "1/9 coats" })).toHaveCount(names.length);
  } finally {
    await browser.kill();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
