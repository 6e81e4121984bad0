import { expect, test, type Page } from "@playwright/test";
import { layoutFaults } from "./layoutFaults.ts";
import { fillUp } from "./overfullShop.ts";
import {
  demoFire,
  demoShop,
  formsOf,
  howToScreens,
  sameInAnyShop,
  screensOf,
  screensOfPiece,
  type Screen,
} from "./screens.ts";
import { coatOf, goToScreen, loadDemo, untilStill, visitThenOffline } from "./visits.ts";

// Ends only what is stuck: four sizes of every screen take their time on a slow machine.
test.describe.configure({ mode: "parallel", timeout: 900_000 });

const carp = "demo-carp";
/** A small phone, a usual and a large one, and a desk. */
const sizes = [
  { width: 390, height: 844 },
  { width: 320, height: 640 },
  { width: 430, height: 932 },
  { width: 1280, height: 800 },
] as const;

const frames = (page: Page): Promise<void> =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(undefined)))),
  );

/** Faults of these screens at every size; a fault that is there at several is told once, with all of them. */
async function faultsOf(page: Page, screens: readonly Screen[]): Promise<readonly string[]> {
  const found = new Map<string, number[]>();
  for (const screen of screens) {
    await page.setViewportSize(sizes[0]);
    await goToScreen(page, screen);
    for (const size of sizes) {
      await page.setViewportSize(size);
      await frames(page);
      // Past this width more comes in: the rack beside a piece.
      if (size.width > 1000) await untilStill(page);
      for (const fault of await page.evaluate(layoutFaults)) {
        const line = `${screen[0]}: ${fault}`;
        found.set(line, [...(found.get(line) ?? []), size.width]);
      }
    }
  }
  return [...found].map(([line, widths]) => `${line} (${widths.join(", ")} px)`);
}

/** Whatever it is called there. */
const anyTitle = (screens: readonly Screen[]): readonly Screen[] => screens.map(([path]) => [path, /./]);

const plain: readonly Screen[] = [...sameInAnyShop, ...screensOf(demoShop), ...demoFire];

test("no text of a shop at work is cut, covered or pushed out, and every target can be hit", async ({
  page,
}) => {
  await visitThenOffline(page);
  await loadDemo(page);
  const coat = await coatOf(page, `/piece/${carp}`);
  const screens = [
    ...howToScreens,
    ...plain,
    [`/piece/${carp}`, /./] as const,
    ...screensOfPiece(carp),
    coat,
    ...formsOf(carp),
  ];
  expect(await faultsOf(page, anyTitle(screens))).toEqual([]);
});

test("names of German length and a full rack leave every screen whole", async ({ page }) => {
  await visitThenOffline(page);
  const pieces = await loadDemo(page);
  await fillUp(page);
  await page.reload();
  const ofPieces = pieces.map((piece): Screen => [piece, /./]);
  expect(await faultsOf(page, anyTitle([...plain, ...ofPieces, ...screensOfPiece(carp)]))).toEqual([]);
});

test("what is cut, covered, pushed out or too small is seen", async ({ page }) => {
  await visitThenOffline(page);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  const faultsWith = (css: string): Promise<readonly string[]> =>
    page
      .evaluate((rules) => {
        const planted = document.createElement("style");
        planted.textContent = rules;
        document.head.append(planted);
      }, css)
      .then(() => page.evaluate(layoutFaults));
  const before = await page.evaluate(layoutFaults);
  expect(before).toEqual([]);
  const planted: readonly (readonly [string, RegExp])[] = [
    ["main p { white-space: nowrap; }", /^past the screen's edge: /],
    ["main h1 { overflow: hidden; height: 0.4em; }", /^cut off in its h1: /],
    ["main p { margin-top: -4em; }", /^one over the other: /],
    [
      "main a[href], main button { min-height: 0 !important; height: 20px !important; }",
      /^too small to hit: /,
    ],
    ["nav[aria-label=Main] { bottom: 30px !important; }", /^the main places are not at the edge/],
  ];
  for (const [css, fault] of planted) {
    expect(await faultsWith(css), css).toContainEqual(expect.stringMatching(fault));
    await page.evaluate(() => document.head.querySelector("style:last-of-type")?.remove());
  }
});
