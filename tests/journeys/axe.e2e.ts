import { AxeBuilder } from "@axe-core/playwright";
import { expect, test, type Page } from "@playwright/test";
import type { LoggedByHand } from "../../src/ui/format/logWords.ts";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { untilStored } from "./offline.ts";
import { serveBuilt } from "./site.ts";

const screens: readonly (readonly [path: string, title: string | RegExp])[] = [
  ["/", "Rack"],
  ["/dip", /^(Which bucket|What are you dipping)\?$/],
  ["/piece/new", "New piece"],
  ["/rooms", "Rooms"],
  ["/rooms/first", "Drying room"],
  ["/buckets", "Buckets"],
  ["/buckets/first-prime", "Prime"],
  ["/recipes", "Recipes"],
  ["/recipes/start-general", "General bronze"],
  ["/due", "Due"],
  ["/due/test", "What rings on this device"],
  ["/shop", "Shop"],
  ["/settings", "Settings"],
  ["/figures", "Figures"],
  ["/archive", "Archive"],
  ["/piece/none-such", "Piece"],
  ["/nowhere", "Nothing here"],
];

const shownInThemes = ["/", "/rooms/first", "/due", "/settings"];

/** Every form of the log by its heading; one more type that can be logged does not compile until it is here. */
const formTitles: Readonly<Record<LoggedByHand, string | RegExp>> = {
  "coat-dipped": /^Coat \d+$/,
  "coat-redipped": "Dip the same coat again",
  "coat-skipped": "Skip a coat",
  "dryness-seen": "How dry is it?",
  "wall-measured": "Caliper reading",
  "crack-found": "A crack",
  "crack-patched": "Crack patched",
  "wire-wrapped": "Wire wrapped",
  "burnout-started": "Burnout begins",
  "burnout-read": "Kiln reading",
  "burnout-ended": "Burnout ends",
  "shell-fired": "Shell fired",
  "shell-preheated": "Shell preheated",
  "metal-poured": "Metal poured",
  "shell-knocked-out": "Shell knocked out",
  "piece-finished": "Piece finished",
  "outcome-told": "How it came out",
  "note-written": "Note",
  "piece-moved": "Move to another room",
  "piece-scrapped": "Give the piece up",
};

/** What is serious or critical on the screen as it stands, one line each. */
async function faultsOn(page: Page, where: string): Promise<readonly string[]> {
  // Legacy mode opens no second page for the report; it sees less only where there are frames, and here are none.
  const { violations, passes } = await new AxeBuilder({ page }).setLegacyMode().analyze();
  expect(passes.length, `rules that found something to judge at ${where}`).toBeGreaterThan(5);
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, html }) => `${where}: ${id} at ${target.join(" ")}: ${html}`),
    );
}

async function faultsAt(
  page: Page,
  [path, title]: readonly [path: string, title: string | RegExp],
  how = "",
): Promise<readonly string[]> {
  await page.evaluate((to) => {
    history.pushState(null, "", to);
    dispatchEvent(new PopStateEvent("popstate"));
  }, path);
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
  // Charts are drawn once their width is known, and lists once they are read.
  await page.waitForTimeout(200);
  return faultsOn(page, path + how);
}

async function visit(page: Page): Promise<void> {
  const site = await serveBuilt();
  page.setDefaultTimeout(10_000);
  await page.goto(site.url);
  await untilStored(page);
  await site.close();
  await page.context().setOffline(true);
}

async function loadDemo(page: Page): Promise<readonly string[]> {
  const maker = makerAt(page, handsOn(page));
  await maker.tap(maker.key("Load the demo shop"));
  const links = page.getByRole("list", { name: "Pieces in work" }).getByRole("link");
  await expect(links.first()).toBeVisible();
  return links.evaluateAll((all) => all.map((link) => link.getAttribute("href") ?? ""));
}

test("every screen of an empty shop can be read and worked by all", async ({ page }) => {
  test.setTimeout(180_000);
  await visit(page);
  const faults: string[] = [];
  for (const screen of screens) faults.push(...(await faultsAt(page, screen)));
  expect(faults).toEqual([]);
});

test("every screen of a shop at work can be read and worked by all", async ({ page }) => {
  test.setTimeout(300_000);
  await visit(page);
  const pieces = await loadDemo(page);
  const faults: string[] = [];
  for (const screen of screens) faults.push(...(await faultsAt(page, screen)));
  for (const piece of pieces) {
    faults.push(...(await faultsAt(page, [piece, /^Demo/])));
    faults.push(...(await faultsAt(page, [`${piece}/review`, "Review before burnout"])));
  }
  const one = pieces[0] ?? "";
  faults.push(...(await faultsAt(page, [`${one}/plan`, "Plan"])));
  for (const [type, title] of Object.entries(formTitles))
    faults.push(...(await faultsAt(page, [`${one}/log/${type}`, title])));
  expect(faults).toEqual([]);
});

for (const theme of ["Light", "Dark", "Sunlight"])
  test(`rack, bucket, piece and review can be read in the ${theme.toLowerCase()} theme`, async ({ page }) => {
    test.setTimeout(240_000);
    await visit(page);
    const pieces = await loadDemo(page);
    const maker = makerAt(page, handsOn(page));
    await maker.goTo("Shop");
    await maker.tap(page.getByRole("link", { name: /^Settings/ }));
    await maker.choose("Theme", theme);
    await expect(page.locator("html")).toHaveAttribute("data-theme", /./);
    const faults: string[] = [];
    for (const screen of screens.filter(([path]) => shownInThemes.includes(path)))
      faults.push(...(await faultsAt(page, screen, ` (${theme})`)));
    for (const piece of pieces.filter((_, place) => place % 3 === 0)) {
      faults.push(...(await faultsAt(page, [piece, /^Demo/], ` (${theme})`)));
      faults.push(...(await faultsAt(page, [`${piece}/review`, "Review before burnout"], ` (${theme})`)));
    }

    await page.goto(new URL("/dip", page.url()).href);
    await maker.onScreen("What are you dipping?");
    faults.push(...(await faultsOn(page, `/dip choice (${theme})`)));
    await maker.tap(page.getByRole("button").first());
    await expect(maker.key("Something else")).toBeVisible();
    faults.push(...(await faultsOn(page, `/dip tiles (${theme})`)));
    await maker.tap(page.getByRole("button", { name: /Coat \d+ · / }).first());
    await expect(page.getByRole("button", { name: /^Change the time/ })).toBeVisible();
    await page.waitForTimeout(1_800);
    faults.push(...(await faultsOn(page, `/dip tile done (${theme})`)));
    await maker.tap(page.getByRole("button", { name: /^Change the time/ }));
    faults.push(...(await faultsOn(page, `/dip time (${theme})`)));
    await maker.tap(maker.key("Back"));
    await maker.tap(maker.key("Something else"));
    faults.push(...(await faultsOn(page, `/dip menu (${theme})`)));
    await maker.tap(maker.key(/^Drain and stucco timers/));
    faults.push(...(await faultsOn(page, `/dip timers (${theme})`)));
    expect(faults).toEqual([]);
  });
