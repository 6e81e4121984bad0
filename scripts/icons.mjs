// Draws the PNG icons from public/icons/icon.svg. Run it after changing the drawing: node scripts/icons.mjs
import { existsSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { delimiter, join } from "node:path";
import { chromium } from "playwright-core";

const folder = new URL("../public/icons/", import.meta.url);
const ground = "#2c2a28";

/** `bleed`: the ground runs to the edges, for places that cut the icon to a shape of their own. */
const icons = [
  { name: "icon-192.png", side: 192, bleed: false },
  { name: "icon-512.png", side: 512, bleed: false },
  { name: "maskable-512.png", side: 512, bleed: true },
  { name: "apple-touch-icon.png", side: 180, bleed: true },
];

function chromiumPath() {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome"];
  const found = names
    .flatMap((name) => folders.map((place) => join(place, name)))
    .find((path) => existsSync(path));
  return process.env.CHROME_PATH ?? found;
}

const drawing = await readFile(new URL("icon.svg", folder), "utf8");
const browser = await chromium.launch({
  executablePath: chromiumPath(),
  args: ["--no-sandbox", "--disable-gpu"],
});
try {
  for (const { name, side, bleed } of icons) {
    const page = await browser.newPage({ viewport: { width: side, height: side } });
    await page.setContent(
      `<style>html,body{margin:0;background:${bleed ? ground : "transparent"}}svg{display:block;width:100vw;height:100vh}</style>${drawing}`,
    );
    await writeFile(new URL(name, folder), await page.screenshot({ omitBackground: !bleed }));
    await page.close();
  }
} finally {
  await browser.close();
}
