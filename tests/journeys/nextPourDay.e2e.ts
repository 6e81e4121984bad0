import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesInStore } from "./store.ts";

test("the next pour day is proposed, says why, and opens the plans with its pieces; nothing is written by it", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const region = (name: string | RegExp) => page.getByRole("region", { name });
  const workedOut = page.getByText(/^Calculated .*, for /);

  await maker.goTo("Shop");
  await tap(page.getByRole("link", { name: /^Settings/ }));
  await tap(key("Look at a demo shop"));
  await expect(page.getByText("Demo shop loaded.")).toBeVisible();
  const before = (await linesInStore(page)).length;

  await test.step("from the Fire page: the planned pour stands first, and its own piece goes", async () => {
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
    await tap(page.getByRole("link", { name: /^Next pour day/ }));
    await maker.onScreen("Next pour day");
    await expect(page.getByRole("radio", { name: /^Planned: / })).toBeChecked();
    await expect(workedOut).toBeVisible();
    await expect(region(/^Melt of A356/)).toContainText("Demo: dancer");
    await expect(region("Demo: electric kiln, 120 litres")).toContainText(/Preheat, .*: start by /);
    await expect(region(/^Melt of/)).toHaveCount(1);
  });

  await test.step("what is missing comes first, with the way to give it", async () => {
    const missing = region("Needed first");
    await expect(missing).toContainText(/Demo: wren on a twig.*No recipe is set/);
    await tap(missing.getByRole("link", { name: /^Set its recipe: Demo: wren/ }));
    await maker.onScreen("Plan");
    await page.goBack();
    await maker.onScreen("Next pour day");
  });

  await test.step("another day: a melt within the crucible, coats in order, and a reason for each that stays", async () => {
    await maker.choose("Which pour", "Another day");
    await page.getByLabel("Pour time").fill("2026-03-12T14:00");
    await expect(page.getByText(/^Calculated .*, for 12 March 14:00/)).toBeVisible();
    const melt = region(/^Melt of/);
    await expect(melt).toContainText(/Crucible takes\s*\d+(\.\d+)?\skg, filled to 75%/);
    await expect(region("Do first").getByRole("listitem").first()).toContainText(/Coat \d+: .*, on by /);
    await expect(region("Not on that day")).toContainText(/Demo: dancer.*It is in another planned pour/);
  });

  await test.step("its key opens the melt plan with alloy and pieces chosen", async () => {
    const melt = region(/^Melt of/);
    const names = await melt.getByRole("listitem").getByRole("link").allTextContents();
    expect(names.length).toBeGreaterThan(0);
    const alloy = (await melt.getByRole("heading").textContent())?.replace("Melt of ", "") ?? "";
    await tap(melt.getByRole("link", { name: "Open the melt plan with these" }));
    await maker.onScreen("Plan a melt");
    for (const name of names) await expect(page.getByRole("checkbox", { name })).toBeChecked();
    await expect(page.getByRole("checkbox", { checked: true })).toHaveCount(names.length);
    const chosen = page.getByLabel("Alloy", { exact: true }).first();
    await expect(chosen.locator("option:checked")).toContainText(alloy);
  });

  await test.step("the day asked about is kept on the device, and the log has no line more", async () => {
    await page.goBack();
    await maker.onScreen("Next pour day");
    await expect(page.getByText(/^Calculated .*, for 12 March 14:00/)).toBeVisible();
    expect((await linesInStore(page)).length).toBe(before);
  });
});
