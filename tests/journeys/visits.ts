import { expect, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { untilStored } from "./offline.ts";
import type { Screen } from "./screens.ts";
import { serveBuilt } from "./site.ts";

/** Waits until lists are read and charts have their width: there is more than a heading, and it stands still. */
export const untilStill = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((done) => {
        const stillMs = 80;
        let changedAt = performance.now();
        const seen = new MutationObserver(() => (changedAt = performance.now()));
        seen.observe(document.body, { subtree: true, childList: true, characterData: true });
        const from = changedAt;
        const look = setInterval(() => {
          const now = performance.now();
          const said = document.querySelector("main")?.innerText.length ?? 0;
          const heading = document.querySelector("h1")?.innerText.length ?? 0;
          if ((said - heading < 20 || now - changedAt < stillMs) && now - from < 4_000) return;
          clearInterval(look);
          seen.disconnect();
          done();
        }, 25);
      }),
  );

/** The app's own way to an address, without loading it anew. */
export async function goToScreen(page: Page, [path, title]: Screen): Promise<void> {
  await page.evaluate((to) => {
    history.pushState(null, "", to);
    dispatchEvent(new PopStateEvent("popstate"));
  }, path);
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
  await untilStill(page);
}

/** One visit on a network; then the host is gone and the network too. */
export async function visitThenOffline(page: Page): Promise<void> {
  const site = await serveBuilt();
  page.setDefaultTimeout(60_000);
  await page.goto(site.url);
  await untilStored(page);
  await site.close();
  await page.context().setOffline(true);
}

/** Loads the demo shop from the rack; the addresses of its pieces. */
export async function loadDemo(page: Page): Promise<readonly string[]> {
  const maker = makerAt(page, handsOn(page));
  await maker.tap(maker.key("Look at a demo shop"));
  return piecesOnRack(page);
}

/** The addresses of the pieces on the rack that is open. */
export async function piecesOnRack(page: Page): Promise<readonly string[]> {
  const links = page.getByRole("list", { name: "Pieces in work" }).getByRole("link");
  await expect(links.first()).toBeVisible({ timeout: 30_000 });
  const hrefs = await links.evaluateAll((all) => all.map((link) => link.getAttribute("href") ?? ""));
  return [...new Set(hrefs.filter((href) => /^\/piece\/[^/]+$/.test(href)))];
}

/** The drying picture of the piece's outer coat, by the link on the piece's own screen. */
export async function coatOf(page: Page, piece: string): Promise<Screen> {
  await page.goto(new URL(piece, page.url()).href);
  const link = page.locator("main a[href*='/coat/']").first();
  await expect(link).toBeVisible();
  return [(await link.getAttribute("href")) ?? "", /^Coat \d+: /];
}
