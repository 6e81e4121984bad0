import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { untilStored } from "./offline.ts";
import { startBrowser } from "./ownBrowser.ts";
import { serveBuilt } from "./site.ts";
import { linesOf } from "./store.ts";

const names = ["Ada", "Bea", "Cleo", "Dora", "Edda", "Fay", "Gina", "Hedy", "Iris", "June"];

test("ten times the browser is killed the moment the screen says done, and no coat is lost", async () => {
  test.setTimeout(240_000);
  const profile = await mkdtemp(join(tmpdir(), "dipbook-killed-"));
  const site = await serveBuilt();
  let browser = await startBrowser(profile);
  try {
    await browser.page.goto(site.url);
    await untilStored(browser.page);
    await site.close();
    const first = makerAt(browser.page, handsOn(browser.page));
    for (const name of names) await first.startPiece(name, { recipe: "General bronze (9 coats)" });
    await first.beginDip("Prime");

    for (const [done, name] of names.entries()) {
      const maker = makerAt(browser.page, handsOn(browser.page));
      await maker.turnTo(name);
      await maker.tile(name).click({ delay: 60 });
      await maker.settled(name).getByText("Coat 1 done").waitFor();
      await browser.kill();

      browser = await startBrowser(profile);
      await browser.page.goto(`${site.url}/dip`);
      const again = makerAt(browser.page, handsOn(browser.page));
      await again.turnTo(name);
      await expect(again.settled(name)).toContainText("Coat 1 done");
      expect((await linesOf(browser.page, "coat-dipped")).length).toBe(done + 1);
    }

    await browser.page.goto(site.url);
    const rack = browser.page.getByRole("list", { name: "Pieces in work" }).getByRole("listitem");
    await expect(rack.filter({ hasText: "1/9 coats" })).toHaveCount(names.length);
  } finally {
    await browser.kill();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
