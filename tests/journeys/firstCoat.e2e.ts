import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("the first screen says what the app is, and by the red keys the first coat takes six taps and four screens at most", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const hands = handsOn(page);
  const maker = makerAt(page, hands);
  const { tap, key } = maker;
  const main = page.getByRole("main");
  const screens: (string | null)[] = [];
  const onScreen = async (title: string | RegExp): Promise<void> => {
    await maker.onScreen(title);
    screens.push(await page.getByRole("heading", { level: 1 }).textContent());
  };

  await onScreen("Dipbook");
  await expect(main).toContainText(/logbook of your ceramic shells.*dry in your own air.*hold the pour/);
  const pictures = await main.locator("figure").count();
  expect(pictures).toBeGreaterThan(0);
  expect(pictures).toBeLessThanOrEqual(3);
  const start = page.getByRole("link", { name: "Start a piece" });
  for (const way of [start, key("Look at a demo shop")]) {
    const box = await way.boundingBox();
    expect(box!.y + box!.height, "the key lies on the first screen").toBeLessThanOrEqual(664 - 64);
  }

  await tap(start);
  await onScreen("New piece");
  await page.getByLabel("Name").fill("Oak-leaf hook");
  await tap(key("Start and dip"));
  await onScreen("What are you dipping?");
  await tap(key(/^Prime/));
  await onScreen(/^Prime/);
  await maker.coatDone("Oak-leaf hook");
  expect(hands.taps()).toBeLessThanOrEqual(6);
  expect(screens.length, screens.join(", ")).toBeLessThanOrEqual(4);
  expect(await linesOf(page, "coat-dipped")).toHaveLength(1);

  await page.reload();
  await maker.coatIsOn("Oak-leaf hook");
  await maker.leaveBucket();
  await expect(page.getByRole("list", { name: "Pieces in work" })).toContainText("1 coat");
});
