import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

/** Pages of a PDF by its page objects. */
const pagesOf = (pdf: Buffer): number =>
  (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

test("every review prints on one page, A4 and Letter", async ({ page }) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  await maker.goTo("Shop");
  await maker.tap(page.getByRole("link", { name: /^Settings/ }));
  await maker.tap(maker.key("Look at a demo shop"));
  await expect(page.getByText("Demo shop loaded.")).toBeVisible();
  await maker.goTo("Rack");
  const links = page.getByRole("list", { name: "Pieces in work" }).getByRole("link");
  await expect(links).toHaveCount(8);
  const pieces = await links.evaluateAll((all) => all.map((link) => link.getAttribute("href") ?? ""));
  const origin = new URL(page.url()).origin;
  for (const piece of pieces) {
    await page.goto(`${origin}${piece}/review`);
    await expect(page.getByRole("heading", { level: 1, name: "Review before burnout" })).toBeVisible();
    for (const format of ["A4", "Letter"])
      expect(pagesOf(await page.pdf({ format })), `${piece} on ${format}`).toBe(1);
  }
});
