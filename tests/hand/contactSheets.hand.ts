import { test, type Page } from "@playwright/test";
import { mkdirSync, writeFileSync } from "node:fs";
import { fillUp } from "../journeys/overfullShop.ts";
import {
  demoFire,
  demoShop,
  formsOf,
  howToScreens,
  newShop,
  sameInAnyShop,
  screensOf,
  screensOfPiece,
  type Screen,
} from "../journeys/screens.ts";
import { goToScreen, loadDemo, visitThenOffline } from "../journeys/visits.ts";

/**
 * Sheets to look at: every screen at once, for each device, theme and state of the shop, in the ignored folder
 * `.pictures/sheets`. Each picture waits for its screen to stand still, so a slow machine only takes longer. One of them:
 * `npm run sheets -- -g "phone, light, overfull"`.
 */
const folder = ".pictures/sheets";
const devices = {
  phone: { width: 390, height: 844 },
  tablet: { width: 1180, height: 820 },
  desktop: { width: 1280, height: 800 },
} as const;
const deviceNames = ["phone", "tablet", "desktop"] as const;
const themes = ["light", "dark", "sun"] as const;
const states = ["empty", "typical", "overfull"] as const;
const across = { phone: 8, tablet: 4, desktop: 4 } as const;
const thumbPx = { phone: 220, tablet: 440, desktop: 440 } as const;

const carp = "demo-carp";
const fromDemo: readonly Screen[] = [
  ...screensOf(demoShop),
  ...demoFire,
  [`/piece/${carp}`, /./],
  ...screensOfPiece(carp),
  ...formsOf(carp),
];
const screensIn = (state: (typeof states)[number]): readonly Screen[] =>
  [...sameInAnyShop, ...howToScreens, ...(state === "empty" ? screensOf(newShop) : fromDemo)].map(
    ([path]) => [path, /./],
  );

/** Pictures side by side on one page, each with its address. */
async function sheetOf(
  page: Page,
  {
    shots,
    wide,
    columns,
  }: {
    readonly shots: readonly (readonly [string, string])[];
    readonly wide: number;
    readonly columns: number;
  },
): Promise<Buffer> {
  const sheet = await page.context().newPage();
  await sheet.setViewportSize({ width: (wide + 12) * columns + 12, height: 900 });
  const cells = shots.map(
    ([path, image]) =>
      `<figure><img width="${wide}" src="data:image/jpeg;base64,${image}"><figcaption>${path}</figcaption></figure>`,
  );
  await sheet.setContent(
    `<style>body{margin:12px;display:flex;flex-wrap:wrap;gap:12px;background:#777;font:11px sans-serif}figure{margin:0;width:${wide}px}figcaption{color:#fff;overflow-wrap:anywhere}</style>${cells.join("")}`,
  );
  const picture = await sheet.screenshot({ fullPage: true, type: "jpeg", quality: 80 });
  await sheet.close();
  return picture;
}

for (const state of states)
  for (const device of deviceNames)
    for (const theme of themes)
      test(`${device}, ${theme}, ${state}`, async ({ page }) => {
        mkdirSync(folder, { recursive: true });
        await page.setViewportSize(devices[device]);
        await visitThenOffline(page);
        if (state !== "empty") await loadDemo(page);
        if (state === "overfull") {
          await fillUp(page);
          await page.reload();
        }
        const shots: [string, string][] = [];
        for (const screen of screensIn(state)) {
          await goToScreen(page, screen);
          await page.evaluate((to) => {
            document.documentElement.dataset["theme"] = to;
          }, theme);
          const picture = await page.screenshot({ type: "jpeg", quality: 70, animations: "disabled" });
          shots.push([screen[0], picture.toString("base64")]);
        }
        const perSheet = across[device] * 4;
        for (let first = 0; first < shots.length; first += perSheet) {
          const name = `${device}-${theme}-${state}-${first / perSheet + 1}`;
          const part = shots.slice(first, first + perSheet);
          const picture = await sheetOf(page, {
            shots: part,
            wide: thumbPx[device],
            columns: across[device],
          });
          writeFileSync(`${folder}/${name}.jpg`, picture);
        }
      });
