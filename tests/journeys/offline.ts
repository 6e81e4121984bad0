import { expect, type Page } from "@playwright/test";
import { serveBuilt } from "./site.ts";

/** Waits until the app lies on the phone as a whole and this page is served from there. */
export async function untilStored(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { serviceWorker } = navigator;
    await serviceWorker.ready;
    if (serviceWorker.controller === null)
      await new Promise((done) => serviceWorker.addEventListener("controllerchange", done, { once: true }));
  });
}

/**
 * One visit on a network at the given moment; then the host is gone and the network too, and the app is opened again
 * from what the phone has kept. Its clock runs on from there and can be put forward.
 */
export async function visitOnceThenOffline(page: Page, at: string): Promise<void> {
  const site = await serveBuilt();
  page.setDefaultTimeout(60_000);
  await page.clock.install({ time: new Date(at) });
  await page.goto(site.url);
  await untilStored(page);
  await site.close();
  await page.context().setOffline(true);
  await page.reload();
  await expect(page.getByRole("navigation", { name: "Main" })).toBeVisible();
}
