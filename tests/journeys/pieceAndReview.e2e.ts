import { expect, test, type Locator, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

/** A phone with the app installed, and the same phone with a browser's bars. */
const screens = [
  { width: 390, height: 844 },
  { width: 390, height: 664 },
] as const;
const [installed] = screens;

/** What of it lies in view above the tabs, with nothing over its middle. */
async function isInView(page: Page, target: Locator): Promise<boolean> {
  const tabs = await page.getByRole("navigation", { name: "Main" }).boundingBox();
  const box = await target.boundingBox();
  if (tabs === null || box === null) return false;
  const isOnTop = await target.evaluate((element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const hit = document.elementFromPoint(left + width / 2, top + height / 2);
    return hit !== null && element.contains(hit);
  });
  return isOnTop && box.y >= 0 && box.y + box.height <= tabs.y && box.x >= 0 && box.x + box.width <= 390;
}

const heightOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight);

test("a piece is read in three screens, and its next action, its log and the key to sign are in view at once", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:05:00+01:00");
  const maker = makerAt(page, handsOn(page));
  await maker.goTo("Shop");
  await maker.tap(page.getByRole("link", { name: /^Settings/ }));
  await maker.tap(maker.key("Look at a demo shop"));
  await expect(page.getByText("Demo shop loaded.")).toBeVisible();
  await maker.goTo("Rack");
  const links = page.getByRole("list", { name: "Pieces in work" }).getByRole("link");
  await expect(links).toHaveCount(8);
  const pieces = await links.evaluateAll((all) =>
    all.map((link) => ({
      href: link.getAttribute("href") ?? "",
      coats: Number(/(\d+)(?:\/\d+)?\s*coat/.exec(link.textContent)?.[1] ?? 0),
    })),
  );
  expect(pieces.filter(({ coats }) => coats >= 8).length).toBeGreaterThan(2);
  const origin = new URL(page.url()).origin;
  const next = page.getByRole("region", { name: "What is next" });
  const log = page.getByRole("button", { name: "Log", exact: true });

  for (const { href, coats } of pieces) {
    await page.setViewportSize(installed);
    await page.goto(`${origin}${href}`);
    await expect(page.getByRole("region", { name: "Log", exact: true })).toBeVisible();
    // The coats of a whole recipe and what is usually found on it; mending has put more on another.
    if (coats <= 9) expect(await heightOf(page), href).toBeLessThanOrEqual(3 * installed.height);
    for (const screen of screens) {
      await page.setViewportSize(screen);
      await expect
        .poll(() => isInView(page, log), { message: `${href}: Log at ${screen.height}` })
        .toBe(true);
      const keys = next.getByRole("link").last();
      const isDone = await next.getByText("Nothing left to do").isVisible();
      if (!isDone)
        await expect
          .poll(() => isInView(page, keys), { message: `${href}: next at ${screen.height}` })
          .toBe(true);
    }
    // At its end the page's last line lies above the bar.
    const last = page.getByRole("button", { name: "Put in the archive" });
    await last.scrollIntoViewIfNeeded();
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await expect.poll(() => isInView(page, last), { message: `${href}: its last line` }).toBe(true);

    await page.goto(`${origin}${href}/review`);
    await maker.onScreen("Review before burnout");
    const sign = page.getByRole("button", { name: /^(Sign|Sign with warnings|Override and sign)$/ });
    const past = page.getByText(/^A review is signed before burnout/);
    await expect(sign.or(past)).toBeVisible();
    if (await past.isVisible()) continue;
    for (const screen of screens) {
      await page.setViewportSize(screen);
      await expect
        .poll(() => isInView(page, sign), { message: `${href}: Sign at ${screen.height}` })
        .toBe(true);
    }
  }
});

test("a screen too low for a bar, as at 200 % zoom, shows the keys in their place and nothing over the text", async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 422 });
  await visitOnceThenOffline(page, "2026-03-02T08:05:00+01:00");
  const maker = makerAt(page, handsOn(page));
  await maker.startPiece("Heron", { recipe: "General bronze (9 coats)" });
  await maker.openPiece("Heron");
  const log = page.getByRole("button", { name: "Log", exact: true });
  const to = page.getByRole("link", { name: "Go to the bucket" });
  for (const key of [to, log]) {
    await key.scrollIntoViewIfNeeded();
    await expect(key).toBeInViewport();
  }
  expect(
    await log.evaluate((key) => getComputedStyle(key.closest("[data-action-bar]") ?? key).position),
  ).toBe("static");
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await maker.tap(log);
  await maker.tap(page.getByRole("dialog").getByRole("link", { name: "Dryness", exact: true }));
  await maker.onScreen("How dry is it?");
});
