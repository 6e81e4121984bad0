import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("the first screen says what the app is, and the first coat is logged in at most six taps by the red keys", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const hands = handsOn(page);
  const maker = makerAt(page, hands);
  const { tap, key } = maker;
  const main = page.getByRole("main");
  await expect(main).toContainText(/Dipbook.*ceramic shell.*Log every coat.*dry.*shell will hold the pour/s);
  const start = page.getByRole("link", { name: "Start the first piece" });
  const box = await start.boundingBox();
  expect(box!.y + box!.height, "the key lies on the first screen").toBeLessThanOrEqual(664);

  await tap(start);
  await maker.onScreen("New piece");
  await page.getByLabel("Name").fill("Oak-leaf hook");
  await tap(key("Start it"));
  await maker.onScreen("Rack");
  await maker.beginDipFrom("Prime", "Prime");
  await maker.coatDone("Oak-leaf hook");
  expect(hands.taps()).toBeLessThanOrEqual(6);
  expect(await linesOf(page, "coat-dipped")).toHaveLength(1);
});
