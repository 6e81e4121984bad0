import { chromium, expect, test } from "@playwright/test";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { chromiumArgs, chromiumPath } from "../chromium.ts";
import { serveBuilt } from "../journeys/site.ts";
import { figuresOf, rawStrictAdds, show } from "./measure.ts";
import { fillShop } from "./shopOfPieces.ts";

const pieces = Number(process.env["BENCH_PIECES"] ?? 200);
const entries = Number(process.env["BENCH_ENTRIES"] ?? 100_000);
const taps = 24;
const starts = 15;

/** Waits, in the page, for the next paint after `found` holds; gives the time since `from` (or since navigation). */
const paintedWhen = `async (selector) => {
  while (document.querySelector(selector) === null) await new Promise((next) => requestAnimationFrame(next));
  await new Promise((next) => requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = () => next(); c.port2.postMessage(0); }));
  return performance.now();
}`;

test("a tap and a cold rack beside their floors", async () => {
  const profile = mkdtempSync(join(tmpdir(), "dipbook-bench-"));
  const floorDist = mkdtempSync(join(tmpdir(), "dipbook-floor-"));
  await build({
    configFile: false,
    root: "tests/bench/floor",
    logLevel: "error",
    build: { outDir: floorDist, emptyOutDir: true },
  });
  const site = await serveBuilt(process.env["DIPBOOK_DIST"] ?? "dist");
  const floorSite = await serveBuilt(floorDist);
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    args: [...chromiumArgs],
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    locale: "en-GB",
  });
  context.setDefaultTimeout(20_000);
  const page = await context.newPage();
  await page.goto(site.url);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await expect(page.getByRole("heading", { level: 1 }).first()).toBeVisible();
  const stored = await page.evaluate(fillShop, { pieces, entries, now: Date.now() });
  await page.goto(`${site.url}/settings`);
  await page.getByRole("button", { name: /make the summaries again/i }).click({ delay: 60 });
  await expect(page.getByText(/summaries made again/i)).toBeVisible({ timeout: 300_000 });
  console.log(`\n${pieces} pieces in work, ${stored} entries stored\n`);

  await page.goto(`${site.url}/dip`);
  await page.getByRole("button", { name: /^Backup/ }).click({ delay: 60 });
  const floor = await rawStrictAdds(page, 100);
  const tapped: number[] = [];
  while (tapped.length < taps) {
    const tile = page.getByRole("button", { name: /Coat 6 · backup/ }).first();
    if (!(await tile.isVisible())) {
      await page.getByRole("button", { name: "Next pieces" }).click({ delay: 60 });
      await page.waitForTimeout(800);
      continue;
    }
    const name = ((await tile.textContent()) ?? "").split("Coat 6")[0] ?? "";
    const taken = page.evaluate(
      (piece) =>
        new Promise<number>((done) => {
          addEventListener(
            "pointerup",
            () => {
              const start = performance.now();
              const isDone = (): boolean => document.body.textContent.includes(`${piece}Coat 6 done`);
              const watch = new MutationObserver(() => {
                if (!isDone()) return;
                watch.disconnect();
                requestAnimationFrame(() => {
                  const channel = new MessageChannel();
                  channel.port1.addEventListener("message", () => done(performance.now() - start));
                  channel.port1.start();
                  channel.port2.postMessage(0);
                });
              });
              watch.observe(document.body, { subtree: true, childList: true, characterData: true });
            },
            { once: true, capture: true },
          );
        }),
      name,
    );
    await tile.click({ delay: 60 });
    const late = new Promise<never>((_, fail) => {
      setTimeout(() => fail(new Error(`tap ${tapped.length + 1} was not done after 10 s`)), 10_000);
    });
    tapped.push(await Promise.race([taken, late]));
    await page.waitForTimeout(900);
  }
  const tap = figuresOf(tapped);
  const add = figuresOf(floor);
  console.log(show("raw IndexedDB strict add (floor)", add));
  console.log(show("finger up to durable and painted", tap));
  console.log(
    `  ratio of medians ${(tap.median / add.median).toFixed(1)}; tap less floor ${(tap.median - add.median).toFixed(1)} ms\n`,
  );

  await site.close();
  await context.setOffline(true);
  const cold: number[] = [];
  for (let i = 0; i < starts; i++) {
    await page.goto(site.url, { waitUntil: "commit" });
    cold.push(await page.evaluate(`(${paintedWhen})("main li a, main article")`));
  }
  await context.setOffline(false);
  const empty: number[] = [];
  for (let i = 0; i < starts; i++) {
    await page.goto(floorSite.url, { waitUntil: "commit" });
    empty.push(await page.evaluate(`(${paintedWhen})("#root p")`));
  }
  const rack = figuresOf(cold);
  const bare = figuresOf(empty);
  console.log(show("empty React page painted (floor)", bare));
  console.log(show(`rack of ${pieces} painted, offline`, rack));
  console.log(`  ratio of medians ${(rack.median / bare.median).toFixed(1)}\n`);

  await context.close();
  await floorSite.close();
  rmSync(profile, { recursive: true, force: true });
  rmSync(floorDist, { recursive: true, force: true });
});
