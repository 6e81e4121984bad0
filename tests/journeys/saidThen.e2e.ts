import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("what was said at an early dip stays said: beside a reading logged late, and in the archive", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const findings = page.getByRole("region", { name: "Findings" });
  const dips = page.getByRole("region", { name: "Dryness at each dip" });

  const saidOnCoatPage = async (): Promise<string> => {
    await tap(dips.getByText("1 coat", { exact: true }));
    const listed = (await dips.getByText(/^Said then: /).innerText()).trim();
    await tap(dips.getByRole("link", { name: "Coat 1" }));
    await maker.onScreen(/^Coat 1: /);
    await expect(page.getByRole("note")).toHaveText(listed);
    await tap(page.getByRole("link", { name: "Back" }));
    await maker.onScreen("Kelp");
    return listed;
  };

  let then = "";
  await test.step("a coat goes on too early, and the piece says what was said", async () => {
    await maker.readAir({ tempC: 20, rh: 0.55, moves: "Still room" });
    await maker.startPiece("Kelp", { recipe: "General bronze (9 coats)" });
    await maker.dipCoat("Prime", "Kelp");
    await maker.waitHours(0.75);
    await maker.beginDip("Prime");
    const tile = await maker.tile("Kelp").innerText();
    const onTile = Number(/about (\d+)\s?%/.exec(tile)?.[1]);
    await maker.coatDone("Kelp");
    await maker.leaveBucket();
    await maker.openPiece("Kelp");
    await expect(findings).toContainText(/Said then: not dry, \d+\s?% of its water left/);
    then = await saidOnCoatPage();
    const [, atTap] = /^Said then: not dry, (\d+)\s?% of its water left \(/.exec(then) ?? [];
    // Between the look at the tile and the tap a slow machine lets it dry on by a hundredth.
    expect(Math.abs(Number(atTap) - onTile)).toBeLessThanOrEqual(1);
    expect(await findings.textContent()).toMatch(new RegExp(`not dry, ${atTap}\\s?% of its water left`));
    const [, second] = await linesOf(page, "coat-dipped");
    expect(second?.body["said"]).toMatchObject({ cover: "drying", dryness: "wet", sumsVersion: 1 });
  });

  await test.step("readings made after the dip change nothing of it", async () => {
    await maker.waitHours(3);
    await maker.readAir({ tempC: 24, rh: 0.4 });
    await maker.openPiece("Kelp");
    expect(await saidOnCoatPage()).toBe(then);
  });

  await test.step("a reading of that time is logged late: both stand, with the reason", async () => {
    await maker.goTo("Rooms");
    await tap(page.getByRole("link", { name: /^Drying room/ }));
    await maker.onScreen("Drying room");
    const humid = page.getByRole("spinbutton", { name: "Humidity" });
    while (Number(await humid.getAttribute("aria-valuenow")) < 0.9) await tap(key("Humidity: more"));
    await tap(page.getByText("Earlier time, or a note"));
    await tap(key("Choose…"));
    await page.getByLabel("Day and time").fill("2026-03-02T08:20");
    await tap(key(/^Log this reading/));
    await expect(page.getByText(/^Logged for Drying room/)).toBeVisible();
    await maker.openPiece("Kelp");
    const both = await saidOnCoatPage();
    expect(both.startsWith(then)).toBe(true);
    expect(both).toMatch(/ With the reading logged later for 08:20: \d+\s?% of its water left\.$/);
    expect(both).not.toBe(then);
    await expect(findings).toContainText(both);
    then = both;
  });

  await test.step("poured, knocked out and put away, the archive says the same words", async () => {
    await maker.waitHours(20);
    await maker.openPiece("Kelp");
    await maker.logFor("Shell fired", { "Top temperature": "850", "Held for": "60" });
    await maker.logFor("Preheated", { Shell: "600" });
    await maker.openLog("Metal poured");
    await maker.choose("How it went", "Full");
    await maker.logIt({
      Metal: "1120",
      Shell: "580",
      "From kiln to metal": "2",
      "Metal poured": "1",
    });
    await expect(page.getByRole("region", { name: "Findings" }).getByText(/damp|shell is/)).toBeHidden();
    await maker.waitHours(3);
    await maker.logFor("Knocked out", {});
    await expect(page.getByText("With the coats to come")).toBeHidden();
    await tap(key("Put in the archive"));
    await expect(page.getByText("Put in the archive.")).toBeVisible();
    await maker.waitHours(24 * 100);
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Archive/ }));
    await tap(page.getByRole("list", { name: "Archived pieces" }).getByRole("link", { name: /Kelp/ }));
    await maker.onScreen("Kelp");
    expect(dayless(await saidOnCoatPage())).toBe(dayless(then));
    await tap(dips.getByText("1 coat", { exact: true }));
    await tap(dips.getByRole("link", { name: "Coat 1" }));
    await expect(page.getByText("Nothing to draw yet")).toBeHidden();
    await expect(page.getByRole("heading", { name: /^Coat 1: / })).toBeVisible();
  });
});

/** The day beside a clock is another word once it is no longer today. */
const dayless = (words: string): string => words.replace(/ for .*?(\d\d:\d\d)/, " for $1");
