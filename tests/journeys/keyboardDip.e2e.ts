import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

const names = ["Oak-leaf hook", "Hare sitting", "Anchor cleat"];

/** A rack with three pieces that wait for their first coat, and the page of the bucket. */
async function atTheBucket(page: Page) {
  await visitOnceThenOffline(page, "2026-03-02T08:05:00+01:00");
  const maker = makerAt(page, handsOn(page));
  for (const name of names) await maker.startPiece(name, { recipe: "General bronze (9 coats)" });
  await maker.waitHours(1);
  await page.goto(new URL("/dip", page.url()).href);
  await maker.onScreen("What are you dipping?");
  return maker;
}

/** One press of a key or a pedal, long enough after the last that it is no bounce of it. */
async function press(page: Page, key: string): Promise<void> {
  await page.clock.fastForward(1_000);
  await page.keyboard.press(key);
}

test("three pieces get their coat by keyboard and pedal alone: choice, menu, timers, guide and the way out", async ({
  page,
}) => {
  const { key, onScreen, settled, tile } = await atTheBucket(page);

  // Another key than the main one, and back.
  await press(page, "PageUp");
  await expect(key("Another bucket or coat")).toBeFocused();
  await press(page, "PageDown");
  await onScreen("Which bucket?");
  await press(page, "PageDown");
  await expect(key(/^Prime/), "several are offered alike: the first press only marks one").toBeFocused();
  await press(page, "ArrowLeft");
  await expect(page.getByRole("link", { name: "Done dipping" })).toBeFocused();
  await press(page, "ArrowLeft");
  await expect(key(/^Back$/)).toBeFocused();
  await press(page, "Enter");
  await onScreen("What are you dipping?");

  await press(page, "Enter");
  await onScreen(/^Prime/);
  const toMenu = async (): Promise<void> => {
    await press(page, "ArrowUp");
    for (let moves = 0; moves < 6 && !(await isFocused(page, "Something else")); moves += 1)
      await press(page, "ArrowUp");
    await expect(key("Something else")).toBeFocused();
    await press(page, "Space");
    await onScreen("Something else");
  };
  const goToKey = async (name: RegExp): Promise<void> => {
    for (let moves = 0; moves < 12 && !(await isFocused(page, name)); moves += 1) await press(page, "PageUp");
    await expect(key(name)).toBeFocused();
  };

  await toMenu();
  await goToKey(/^Drain and stucco timers/);
  await press(page, "PageDown");
  await onScreen("Timers");
  await goToKey(/^Drain \d+ s/);
  await press(page, "PageDown");
  await onScreen("Draining");
  await press(page, "PageDown");
  await onScreen("Timers");
  await goToKey(/^Back to the pieces/);
  await press(page, "PageDown");
  await onScreen(/^Prime/);

  await toMenu();
  await goToKey(/^Guide me through the dip: no/);
  await press(page, "PageDown");
  await expect(key(/^Guide me through the dip: yes/)).toBeVisible();
  await goToKey(/^Back$/);
  await press(page, "Enter");
  await onScreen(/^Prime/);

  await expect(tile(names[0]!)).toBeVisible();
  const screen = () =>
    page.evaluate(() =>
      [...document.querySelectorAll("h1, [data-main]")].map((one) => one.textContent).join(),
    );
  const heading = page.getByRole("heading", { level: 1 });
  await press(page, "PageDown");
  await expect(heading).toHaveText(/Piece ready|Look the shell over/);
  for (let steps = 0; steps < 30 && !((await heading.textContent()) ?? "").startsWith("Prime"); steps += 1) {
    const before = await screen();
    await press(page, "PageDown");
    await expect.poll(screen).not.toBe(before);
  }
  const guided = page.getByRole("group").filter({ hasText: "Coat 1 done" });
  await expect(guided).toHaveCount(1);

  await toMenu();
  await goToKey(/^Guide me through the dip: yes/);
  await press(page, "PageDown");
  await expect(key(/^Guide me through the dip: no/)).toBeVisible();
  await goToKey(/^Back$/);
  await press(page, "Enter");
  await onScreen(/^Prime/);
  await press(page, "Enter");
  await expect(guided).toHaveCount(2);
  await press(page, "Space");
  await expect(guided).toHaveCount(3);
  for (const name of names) await expect(settled(name)).toContainText("Coat 1 done");

  await press(page, "PageDown");
  await onScreen("Rack");
  const coats = await linesOf(page, "coat-dipped");
  expect(coats).toHaveLength(3);
  expect(new Set(coats.map(({ stream }) => stream)).size).toBe(3);
});

const isFocused = (page: Page, name: string | RegExp): Promise<boolean> =>
  page.evaluate(
    ([source, isWhole]) => {
      const text = document.activeElement?.textContent ?? "";
      return isWhole === "yes" ? text === source : new RegExp(source!).test(text);
    },
    typeof name === "string" ? [name, "yes"] : [name.source, "no"],
  );

for (const height of [664, 844])
  test(`the main key, the way out and the state lie above the fold at 390 by ${height}`, async ({ page }) => {
    await page.setViewportSize({ width: 390, height });
    const { key, tap, onScreen, settled, tile, coatDone } = await atTheBucket(page);
    const out = page.getByText("Done dipping", { exact: true });

    /** Each named part is in sight as a whole, nothing lies over it; every key is as high as a glove needs. */
    const holds = async (screen: string): Promise<void> => {
      await expect(out, screen).toBeVisible();
      const found = await page.evaluate(() => {
        const boxOf = (part: Element) => part.getBoundingClientRect();
        const parts = [...document.querySelectorAll("h1, [data-main], footer button, footer a")];
        const main = document.querySelector("[data-main]");
        const wanted = parts.filter((part) => !part.matches("[data-main]") || part === main);
        const hidden = wanted.filter((part) => {
          const { top, bottom, left, width } = boxOf(part);
          const spots = [top + 4, bottom - 4].map((y) => document.elementFromPoint(left + width / 2, y));
          return (
            top < 0 || bottom > innerHeight || spots.some((spot) => spot === null || !part.contains(spot))
          );
        });
        const low = [...document.querySelectorAll("button, a[href]")].filter(
          (one) => boxOf(one).height > 0 && (boxOf(one).height < 72 || boxOf(one).width < 72),
        );
        return { hidden: hidden.map((one) => one.textContent), low: low.map((one) => one.textContent) };
      });
      expect(found, screen).toEqual({ hidden: [], low: [] });
    };

    await holds("what to dip");
    await tap(key("Another bucket or coat"));
    await onScreen("Which bucket?");
    await holds("which bucket");
    await tap(key(/^Back$/));
    await tap(key(/^Prime/));
    await onScreen(/^Prime/);
    await holds("tiles");
    for (const name of names) await coatDone(name);
    await holds("all tiles done");
    for (const name of names) await expect(settled(name)).toBeInViewport({ ratio: 1 });
    await tap(key("Something else"));
    await onScreen("Something else");
    await holds("menu");
    await tap(key(/^Guide me through the dip/));
    await tap(key(/^Drain and stucco timers/));
    await onScreen("Timers");
    await holds("timers");
    await tap(out);
    await onScreen("Rack");

    // The next visit comes too early: each tile leads with the time, and still fits.
    await page.clock.fastForward(30 * 60_000);
    await page.goto(new URL("/dip", page.url()).href);
    await tap(key(/^Prime/));
    await onScreen(/^Prime/);
    await expect(tile(names[0]!)).toContainText(
      /Drying: (check by touch from|the usual minimum runs to) .*Coat 2/,
    );
    await holds("tiles that dry");
    await tap(tile(names[0]!));
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(/Piece ready|Look the shell over/);
    await holds("guide");
  });
