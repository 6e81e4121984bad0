import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("a shop with pieces at 4, 6 and 8 coats starts on the day it begins, and makes one of them again", async ({
  page,
}) => {
  test.setTimeout(180_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const rack = page.getByRole("list", { name: "Pieces in work" });
  const findings = page.getByRole("region", { name: "Findings" });
  const inWork = async (name: string, coats: number, lastAt: string): Promise<void> => {
    await maker.goTo("Rack");
    await tap(page.getByRole("link", { name: "Start a piece", exact: true }));
    await page.getByLabel("Name", { exact: true }).fill(name);
    await maker.chooseRecipe("General bronze (9 coats)");
    await tap(page.getByText("In work already"));
    await page.getByLabel("Coats on it").fill(String(coats));
    await tap(key("Start it"));
    await expect(page.getByRole("alert").first()).toContainText("no time for the last coat");
    await page.getByLabel("Last coat went on").fill(lastAt);
    await tap(key("Start it"));
    await maker.onScreen("Rack");
  };

  await test.step("three pieces in work, each with its coats", async () => {
    await inWork("Plaque", 4, "2026-03-01T16:00");
    await inWork("Sundial gnomon", 6, "2026-02-28T17:00");
    await inWork("Boot scraper", 8, "2026-03-01T10:00");
    for (const count of ["4/9 coats", "6/9 coats", "8/9 coats"]) await expect(rack).toContainText(count);
    expect(await linesOf(page, "coat-dipped")).toHaveLength(18);
  });

  await test.step("the log says that they were on before it began, and accuses of nothing", async () => {
    await maker.openPiece("Boot scraper");
    const whole = await maker.wholeLog();
    await expect(whole.filter({ hasText: "on before the log began" })).toHaveCount(8);
    await expect(page.getByRole("main")).toContainText("8 coats went on before the log began");
    await expect(findings).not.toContainText(/too early|damp when you dipped|not checked/);
  });

  await test.step("they are dipped like any other that day", async () => {
    await maker.readAir({ tempC: 21, rh: 0.5, moves: "Fan on the room" });
    await maker.dipCoat("Seal", "Boot scraper");
    await expect(rack).toContainText("9/9 coats");
    await maker.openPiece("Boot scraper");
    await expect(findings).not.toContainText(/too early|damp when you dipped/);
    await tap(page.getByRole("link", { name: "Review", exact: true }));
    await tap(page.getByText("Coats: 9 of 9 in General bronze"));
    await expect(page.getByRole("table").first()).toContainText("it hung before the log began");
  });

  await test.step("made again: its plan under another name, and no coat", async () => {
    await maker.openPiece("Plaque");
    await tap(key("Make it again"));
    await maker.onScreen("New piece");
    await expect(page.getByRole("region", { name: "The plan of Plaque" })).toBeVisible();
    await page.getByLabel("Name", { exact: true }).fill("Plaque 2");
    await tap(key("Start it"));
    await expect(rack).toContainText("0/9 coats");
  });
});
