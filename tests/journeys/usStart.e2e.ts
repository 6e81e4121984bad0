import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

test.use({ locale: "en-US", timezoneId: "America/New_York" });

test("a browser of the United States starts in its units; whoever chooses metric keeps it", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00-05:00");
  const maker = makerAt(page, handsOn(page));
  const toSettings = async (): Promise<void> => {
    await maker.goTo("Shop");
    await maker.tap(page.getByRole("link", { name: /^Settings/ }));
    await maker.onScreen("Settings");
  };
  await toSettings();
  const units = page.getByRole("group", { name: "Units" });
  await expect(units.getByRole("radio", { name: /^US/ })).toBeChecked();
  await maker.goTo("Rooms");
  await maker.tap(page.getByRole("link", { name: /^Drying room/ }));
  await expect(page.getByText("°F").first()).toBeVisible();
  await toSettings();
  await maker.tap(units.getByRole("radio", { name: /^Metric/ }));
  await page.reload();
  await expect(units.getByRole("radio", { name: /^Metric/ })).toBeChecked();
});
