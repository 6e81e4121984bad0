import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

type Maker = ReturnType<typeof makerAt>;

/** At the wet-glove screens nothing may call the phone's own keyboard. */
const noKeyboard = (page: Page) => expect(page.locator("input, textarea, select")).toHaveCount(0);

async function typed({ page, tap, key }: Maker, digits: string): Promise<void> {
  for (const digit of digits) await tap(digit === "." ? key("Decimal mark") : key(new RegExp(`^${digit}$`)));
  await noKeyboard(page);
}

type Reading = { readonly seconds: string; readonly slurryC?: string; readonly densityG?: string };

/** One reading by the big keys, from the bucket's screen and back to it. */
async function readBucket(maker: Maker, { seconds, slurryC, densityG }: Reading): Promise<void> {
  const { page, tap, key, onScreen } = maker;
  await tap(page.getByRole("link", { name: "Check the slurry" }).first());
  await onScreen("First dip");
  await tap(key("Type it in"));
  await typed(maker, seconds);
  await tap(key("Next"));
  await onScreen("Second dip");
  await tap(key("Skip"));
  await onScreen("Slurry temperature");
  if (slurryC === undefined) await tap(key("Skip"));
  else {
    await typed(maker, slurryC);
    await tap(key("Next"));
  }
  await onScreen("Density");
  if (densityG === undefined) await tap(key("Skip"));
  else {
    await tap(key(/^Weighed/));
    await typed(maker, densityG);
    await tap(key("Next"));
  }
  await tap(key("Skip"));
  await tap(key("Log the reading"));
  await onScreen(/: logged$/);
}

const done = async ({ tap, key, onScreen }: Maker): Promise<void> => {
  await tap(key(/^Done$/));
  await onScreen("Prime");
};

/** What the phone shows is no wider than the phone. */
const fits = async (page: Page): Promise<void> =>
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

test("a month of one bucket: mixed, read, dried off, topped up, a signal, and a gel that ends it", async ({
  page,
}) => {
  test.setTimeout(300_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key, goTo, onScreen, waitHours } = maker;

  await test.step("a cup on the wall, and what the bucket should read", async () => {
    await goTo("Shop");
    await tap(page.getByRole("link", { name: /^Cups/ }));
    await page.getByLabel("Name").fill("Blue tape");
    await tap(key("Save the cup"));
    await expect(page.getByText("Cup saved.")).toBeVisible();
    await goTo("Shop");
    await tap(page.getByRole("link", { name: /^Buckets/ }));
    await tap(page.getByRole("link", { name: /^Prime/ }));
    await tap(page.getByRole("link", { name: "Set targets" }));
    await page.getByLabel("Starting values for").selectOption({ label: "Fused silica prime" });
    await page.getByLabel("Cup", { exact: true }).selectOption({ label: "Blue tape" });
    await tap(key("Fill in starting values"));
    await page.getByLabel("Full", { exact: true }).fill("20");
    await page.getByLabel("Minimum volume to dip").fill("12");
    await tap(key("Save the bucket"));
    await onScreen("Prime");
    await expect(page.getByText(/18 to 30.s in Blue tape/)).toBeVisible();
  });

  await test.step("the first mix: binder, then flour under a mask", async () => {
    await tap(page.getByRole("link", { name: "Make up" }));
    await expect(page.getByText(/^Binder: 12\.45.kg/)).toBeVisible();
    await expect(page.getByText("Dry flour: mask on.").first()).toBeVisible();
    await tap(key("Mix this"));
    await noKeyboard(page);
    await expect(key(/^Flour: 21\.17.kg/)).toBeVisible();
    await tap(key("Log it as added"));
    await expect(page.getByText("Logged. Stir, then check the slurry again.")).toBeVisible();
    await tap(page.getByRole("link", { name: "Back" }));
  });

  await test.step("ten mornings set its own limits", async () => {
    for (const seconds of ["22.4", "22.7", "22.5", "22.9", "22.6", "22.8", "22.3", "22.6", "22.7", "22.5"]) {
      await waitHours(24);
      await readBucket(maker, { seconds });
      await done(maker);
    }
    await tap(page.getByRole("link", { name: "Chart" }));
    await expect(page.getByText("limit 23.3")).toBeVisible();
    await expect(page.getByText(/^None\. Don’t correct/)).toBeVisible();
    await fits(page);
    await tap(page.getByRole("link", { name: "Back" }));
  });

  await test.step("the lid was off: slower and denser, a signal and a litre of water", async () => {
    await waitHours(72);
    await readBucket(maker, { seconds: "28.9", slurryC: "22", densityG: "171.7" });
    await expect(page.getByText(/^Add (0\.9\d|1(\.0\d)?).L of distilled water/)).toBeVisible();
    await done(maker);
    await expect(
      page
        .getByText("Check", { exact: true })
        .or(page.getByText("Hold: do not dip", { exact: true }))
        .first(),
    ).toBeVisible();
    await tap(page.getByRole("link", { name: "Chart" }));
    await expect(page.getByText(/^Rule 1, beyond the limit\./)).toBeVisible();
    await expect(page.getByText(/Check the temperature/)).toBeVisible();
    await fits(page);
    await page.getByText("As a table").click();
    await expect(page.getByRole("row", { name: /28\.9/ })).toBeVisible();
    await tap(page.getByRole("link", { name: "Back" }));
  });

  await test.step("the water goes in, and the next reading is as foretold", async () => {
    await tap(page.getByRole("link", { name: "Make up" }));
    await expect(page.getByText("By composition")).toBeVisible();
    await fits(page);
    await tap(key("Add all of it"));
    await tap(key(/^Lid since the last top-up: on/));
    await noKeyboard(page);
    await expect(page.getByText(/^It should then weigh 1\.68\d?.g\/cm³/)).toBeVisible();
    await tap(key("Log it as added"));
    await expect(page.getByText("Not checked since.")).toBeVisible();
    await tap(page.getByRole("link", { name: "Back" }));
    await waitHours(1);
    await readBucket(maker, { seconds: "22.6", slurryC: "22", densityG: "168.2" });
    await expect(page.getByText(/^After the addition: density as expected/)).toBeVisible();
    await done(maker);
    await expect(page.getByText("As expected.")).toBeVisible();
  });

  await test.step("fresh readings, and a card to hang on it", async () => {
    await waitHours(24);
    await readBucket(maker, { seconds: "22.7", slurryC: "22", densityG: "168.3" });
    await expect(page.getByText("OK to dip")).toBeVisible();
    await done(maker);
    await tap(page.getByRole("link", { name: "Card to print" }));
    await onScreen("Bucket card");
    for (const format of ["A4", "Letter"])
      expect(pagesOf(await page.pdf({ format })), `the card on ${format}`).toBe(1);
    await tap(page.getByRole("link", { name: "Back" }));
  });

  await test.step("the vial gelled: it is not dipped from, and a dip session stops at it", async () => {
    await waitHours(14 * 24);
    await tap(page.getByRole("link", { name: "Check the slurry" }).first());
    for (const title of ["First dip", "Slurry temperature", "Density", "pH"]) {
      await onScreen(title);
      await tap(key("Skip"));
    }
    await tap(key(/^More checks/));
    await tap(key(/^Gel test/));
    await tap(key(/^Gelled/));
    await typed(maker, "20");
    await tap(key("Next"));
    await tap(key(/^Done$/));
    await noKeyboard(page);
    await tap(key("Log the reading"));
    await expect(page.getByText("Do not dip")).toBeVisible();
    await expect(page.getByText(/gelled/i).first()).toBeVisible();
    await done(maker);
    await expect(page.getByText("Do not dip").first()).toBeVisible();
    await fits(page);
    await maker.startPiece("Heron", { recipe: "General bronze (9 coats)" });
    await goTo("Dip");
    await tap(key(/^Prime/));
    await onScreen("Look at “Prime”");
    await expect(page.getByText("Do not dip")).toBeVisible();
    await expect(page.getByRole("link", { name: /read/i })).toBeVisible();
  });
});

/** Pages of a PDF by its page objects. */
const pagesOf = (pdf: Buffer): number =>
  (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
