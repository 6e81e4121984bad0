import { AxeBuilder } from "@axe-core/playwright";
import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import {
  demoFire,
  demoShop,
  formsOf,
  howToScreens,
  newShop,
  routesOfApp,
  sameInAnyShop,
  screensOf,
  screensOfPiece,
  type Screen,
} from "./screens.ts";
import { draftsInStore } from "./store.ts";
import { coatOf, goToScreen, loadDemo, untilStill, visitThenOffline } from "./visits.ts";

test.describe.configure({ mode: "parallel" });

/** The looks beside the light one, by what the page's root calls them. */
const otherThemes = ["dark", "sun"] as const;
type Theme = "light" | (typeof otherThemes)[number];

/** What is serious or critical on the screen as it stands, one line each; of another theme only what is its own. */
async function faultsOn(page: Page, where: string, theme: Theme = "light"): Promise<readonly string[]> {
  // Legacy mode opens no second page for the report; it sees less only where there are frames, and here are none.
  // Its half a megabyte of rules goes into a page once, not once a look: the app changes screens within one page.
  const isThere = await page.evaluate(() => "axe" in window);
  const builder = new AxeBuilder(isThere ? { page, axeSource: ";" } : { page }).setLegacyMode().options({
    resultTypes: ["violations"],
    ...(theme === "light" ? {} : { runOnly: { type: "rule", values: ["color-contrast"] } }),
  });
  const { violations, passes } = await builder.analyze();
  const judged = violations.length + passes.length;
  expect(judged, `rules that found something to judge at ${where}`).toBeGreaterThan(
    theme === "light" ? 5 : 0,
  );
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, html }) => `${where} (${theme}): ${id} at ${target.join(" ")}: ${html}`),
    );
}

const setTheme = (page: Page, theme: Theme) =>
  page.evaluate((to) => {
    document.documentElement.dataset["theme"] = to;
  }, theme);

/** One of them after the other, so that each screen is seen in two looks and each look on many screens. */
const inTurn = (place: number): readonly Theme[] => otherThemes.filter((_, turn) => turn === place % 2);

async function faultsAt(
  page: Page,
  screens: readonly Screen[],
  themes: (place: number) => readonly Theme[] = inTurn,
): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const [place, screen] of screens.entries()) {
    const [path] = screen;
    await goToScreen(page, screen);
    faults.push(...(await faultsOn(page, path)));
    for (const theme of themes(place)) {
      await setTheme(page, theme);
      faults.push(...(await faultsOn(page, path, theme)));
    }
    await setTheme(page, "light");
  }
  return faults;
}

const lightOnly = (): readonly Theme[] => [];

const carp = "demo-carp";

test("no screen of the app is left out here", () => {
  const visited = [
    ...sameInAnyShop,
    ...howToScreens,
    ...screensOf(demoShop),
    ...demoFire,
    ...screensOfPiece(carp),
    ...formsOf(carp),
    ["/piece/demo-carp/coat/any", /./] as const,
  ].map(([path]) => path);
  const routes = routesOfApp();
  expect(routes.length).toBeGreaterThan(40);
  const isVisited = (route: string): boolean => {
    const shape = new RegExp(`^${route.replaceAll(/:\w+/g, "[^/]+")}$`);
    return visited.some((path) => shape.test(path));
  };
  expect(routes.filter((route) => !isVisited(route))).toEqual([]);
});

test("every screen of an empty shop can be read and worked by all", async ({ page }) => {
  test.setTimeout(180_000);
  await visitThenOffline(page);
  expect(await faultsAt(page, screensOf(newShop), lightOnly)).toEqual([]);
});

test("every page of work by hand can be read by all, in light, dark and sun", async ({ page }) => {
  test.setTimeout(180_000);
  await visitThenOffline(page);
  expect(await faultsAt(page, howToScreens)).toEqual([]);
});

test("every screen of a shop at work can be read and worked by all, in light, dark and sun", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitThenOffline(page);
  await loadDemo(page);
  const screens = [...sameInAnyShop, ...screensOf(demoShop), ...demoFire];
  expect(await faultsAt(page, screens)).toEqual([]);
});

test("every screen of a piece and every form can be read and worked by all, in light, dark and sun", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitThenOffline(page);
  const pieces = await loadDemo(page);
  const coat = await coatOf(page, `/piece/${carp}`);
  const ofPieces = pieces.map((piece): Screen => [piece, /^Demo/]);
  const ofDone = screensOfPiece("demo-medals").slice(1);
  const faults = [
    ...(await faultsAt(page, [...ofPieces, ...screensOfPiece(carp), coat, ...ofDone])),
    ...(await faultsAt(page, formsOf(carp), lightOnly)),
  ];
  expect(faults).toEqual([]);
});

test("a bucket is read and a coat tapped where all can read it, in light, dark and sun", async ({ page }) => {
  test.setTimeout(240_000);
  await page.clock.install();
  await visitThenOffline(page);
  await loadDemo(page);
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const faults: string[] = [];
  for (const theme of ["Light", "Dark", "Sunlight"]) {
    const judge = async (what: string): Promise<void> => {
      await untilStill(page);
      faults.push(...(await faultsOn(page, `${what}, ${theme}`)));
    };
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Settings/ }));
    await maker.choose("Theme", theme);
    await expect(page.locator("html")).toHaveAttribute("data-theme", /./);
    await maker.goTo("Rack");
    await judge("rack");

    await page.goto(new URL("/buckets/demo-backup/read", page.url()).href);
    await maker.onScreen("First dip");
    await tap(key("Skip"));
    await maker.onScreen("Slurry temperature");
    await judge("a number in a wet glove");
    // What was answered outlives the screen: the next time begins here again only once it is taken back.
    await tap(page.getByRole("button", { name: "Back", exact: true }));
    await maker.onScreen("First dip");
    // The draft goes to the store behind the screen; a page left in the same breath would begin where it was before.
    await expect.poll(async () => JSON.stringify(await draftsInStore(page))).toMatch(/"step":"dip-1"/);

    await page.goto(new URL("/dip", page.url()).href);
    await maker.onScreen("What are you dipping?");
    await tap(key(/^Backup/).first());
    const look = page.getByRole("heading", { level: 1, name: /^Check “/ });
    await expect(look.or(key("Something else"))).toBeVisible();
    if (await look.isVisible()) {
      await judge("look at the bucket");
      await tap(key(/^(Looks good|Good enough|Looked at it)/).first());
    }
    await expect(key("Something else")).toBeVisible();
    await judge("tiles");
    const tile = page.getByRole("button", { name: /Coat \d+ · / }).first();
    await tap(tile);
    await expect(page.getByRole("button", { name: /^Change the time/ }).first()).toBeVisible();
    // The keys in a tile that is done take no tap in their first moments.
    await page.clock.fastForward(1_800);
    await judge("tile done");
    await tap(page.getByRole("button", { name: /^Change the time/ }).first());
    await judge("time put right");
    await tap(key("Back"));
    await tap(key("Something else"));
    await judge("something else");
    await tap(key(/^Drain and stucco timers/));
    await judge("timers");
    await tap(key("Back"));
    await maker.leaveBucket();
  }
  expect(faults).toEqual([]);
});
