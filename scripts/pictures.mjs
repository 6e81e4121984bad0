import { mkdirSync } from "node:fs";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { must, setUp } from "./setUp.mjs";

/*
 * Pictures of every screen, to be looked at: phone and desktop, light, dark and sun, metric and US, empty and with the
 * demo shop. They go to `.pictures`; with `--readme` only the README's are made, into `docs/pictures`.
 */
const forReadme = process.argv.includes("--readme");
/** Those the browser shows while it offers to install the app: named, with their sizes, in vite.config.ts. */
const forInstall = process.argv.includes("--install");
const out = forReadme ? "docs/pictures" : forInstall ? "public/screenshots" : ".pictures";
const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
];
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true };
const desk = { viewport: { width: 1280, height: 860 } };

setUp();
if (!process.argv.includes("--built")) must("npx", ["vite", "build", "--logLevel", "warn"]);
mkdirSync(out, { recursive: true });
const server = await preview({ preview: { port: 4180, strictPort: false } });
const url = server.resolvedUrls.local[0].replace(/\/$/, "");
const browser = await chromium.launch({
  executablePath: process.env.CHROME_PATH ?? "/usr/bin/chromium",
  args,
});

async function openShop(size, { demo, settings }) {
  const context = await browser.newContext({ ...size, locale: "en-GB", timezoneId: "Europe/Berlin" });
  const page = await context.newPage();
  // A Monday morning, so that the shop is at work whenever the pictures are made.
  await page.clock.setFixedTime(new Date("2026-05-04T09:30:00+02:00"));
  await page.goto(url);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  if (demo) {
    await page
      .getByRole("button", { name: /look at a demo shop/i })
      .first()
      .click();
    await page.getByText("Demo", { exact: false }).first().waitFor();
    await page.waitForTimeout(1500);
  }
  if (settings) {
    await page.goto(`${url}/settings`);
    for (const label of settings)
      await page.getByRole("radio", { name: label }).first().click({ force: true });
    await page.waitForTimeout(300);
  }
  return { context, page };
}

async function take(page, name, path, { full = !forReadme && !forInstall } = {}) {
  await page.goto(url + path);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  await page.waitForTimeout(700);
  await page.screenshot({ path: `${out}/${name}.png`, fullPage: full });
}

async function pieceLinks(page) {
  await page.goto(url);
  await page.waitForTimeout(1200);
  return page.$$eval("a[href^='/piece/']", (links) => [
    ...new Set(
      links.map((link) => link.getAttribute("href")).filter((href) => /^\/piece\/(?!new)[^/]+$/.test(href)),
    ),
  ]);
}

/** The drying picture of a piece's outer coat, by the link on the piece's own screen. */
async function coatLink(page, piece = "/") {
  await page.goto(url + piece);
  await page.waitForTimeout(1200);
  const [href = null] = await page.$$eval("main a[href*='/coat/']", (links) =>
    links.map((link) => link.getAttribute("href")),
  );
  return href;
}

/** The sample pattern, opened and worked out as far as it goes by itself. */
async function takePattern(page, look) {
  await page.goto(`${url}/patterns`);
  await page.getByRole("button", { name: "Try it on the sample" }).click({ delay: 60 });
  await page
    .getByRole("radio", { name: /^Millimetres/ })
    .first()
    .click({ force: true, timeout: 60_000 });
  await page.locator("canvas").waitFor({ timeout: 60_000 });
  await page.waitForTimeout(6_000);
  await page.screenshot({ path: `${out}/${look}-pattern-sample.png`, fullPage: true });
}

if (forReadme) {
  const { context, page } = await openShop(phone, { demo: true });
  const [first = "/"] = await pieceLinks(page);
  await take(page, "rack", "/");
  await take(page, "piece", first);
  await take(page, "review", `${first}/review`);
  await take(page, "dip", "/dip");
  await page.locator("main button, [class*=keys] button").first().click();
  await page.waitForTimeout(600);
  await page.screenshot({ path: `${out}/dip.png` });
  await context.close();
} else if (forInstall) {
  const onPhone = await openShop(phone, { demo: true });
  await take(onPhone.page, "phone-rack", "/");
  await take(onPhone.page, "phone-piece", "/piece/demo-carp");
  await onPhone.context.close();
  const atDesk = await openShop({ viewport: { width: 1280, height: 800 } }, { demo: true });
  await take(atDesk.page, "desk-piece", "/piece/demo-carp");
  await take(atDesk.page, "desk-board", "/board");
  await atDesk.context.close();
} else {
  const looks = [
    { look: "phone-light", size: phone, how: { demo: true } },
    { look: "phone-dark", size: phone, how: { demo: true, settings: ["Dark"] } },
    { look: "phone-sun-us", size: phone, how: { demo: true, settings: [/sun/i, /US/] } },
    { look: "desk-light", size: desk, how: { demo: true } },
    { look: "phone-empty", size: phone, how: { demo: false } },
  ];
  const ofBucket = ["", "/read", "/chart", "/make-up", "/card", "/aims"];
  const ofRoom = ["", "/day", "/import", "/sensor"];
  const plain = [
    "/",
    "/dip",
    "/piece/new",
    "/timeline",
    "/board",
    "/due",
    "/how-to",
    ...["weigh", "cup", "hygrometer", "bars", "caliper", "phone", "backup"].map((id) => `/how-to/${id}`),
    "/due/test",
    "/next-pour",
    "/rooms",
    "/buckets",
    "/buckets/new",
    "/recipes",
    "/recipes/start-general",
    "/fire",
    "/fire/kilns",
    "/fire/alloys",
    "/fire/alloys/c87300",
    "/fire/run/new",
    "/fire/melt/new",
    "/fire/pour/new",
    "/patterns",
    "/shop",
    "/shop/learned",
    "/shop/stock",
    "/shop/materials",
    "/shop/cups",
    "/shop/slurry-limits",
    "/settings",
    "/figures",
    "/archive",
  ];
  const inNewShop = [
    ...ofRoom.map((tail) => `/rooms/first${tail}`),
    ...ofBucket.map((tail) => `/buckets/first-prime${tail}`),
  ];
  const inDemoShop = [
    ...ofRoom.map((tail) => `/rooms/demo-room${tail}`),
    ...ofBucket.map((tail) => `/buckets/demo-prime${tail}`),
    ...ofBucket.map((tail) => `/buckets/demo-backup${tail}`),
    "/fire/alloys/demo-studio-bronze",
    "/fire/run/demo-burnout",
    "/fire/run/demo-preheat",
    "/fire/melt/demo-melt",
    "/fire/melt/demo-melt-1",
    "/fire/pour/demo-pour",
    "/fire/pour/demo-pour/sheet",
  ];
  const ofPiece = [
    "",
    "/plan",
    "/metal",
    "/gating",
    "/advice",
    "/final-dry",
    "/weigh",
    "/review",
    "/log/coat-dipped",
    "/log/metal-poured",
    "/log/crack-found",
    "/log/dryness-seen",
  ];
  for (const { look, size, how } of looks) {
    const { context, page } = await openShop(size, how);
    for (const path of [...plain, ...(how.demo ? inDemoShop : inNewShop)])
      await take(page, `${look}${path === "/" ? "-rack" : path.replaceAll("/", "-")}`, path);
    if (how.demo) {
      const pieces = await pieceLinks(page);
      for (const [i, piece] of pieces.entries())
        for (const tail of i === 0 ? ofPiece : [""])
          await take(page, `${look}-piece${i + 1}${tail.replaceAll("/", "-")}`, piece + tail);
      const coat = await coatLink(page, pieces[0]);
      if (coat !== null) await take(page, `${look}-piece1-coat`, coat);
      await takePattern(page, look);
    }
    await context.close();
  }
}
await browser.close();
await server.close();
