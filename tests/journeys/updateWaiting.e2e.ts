import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test, type Page } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { untilStored } from "./offline.ts";
import { builtFolder, serveBuilt, type Site } from "./site.ts";

let folder = "";
let site: Site;

test.beforeEach(async ({ page }) => {
  folder = await mkdtemp(join(tmpdir(), "dipbook-update-"));
  await cp(builtFolder(), folder, { recursive: true });
  site = await serveBuilt(folder);
  page.setDefaultTimeout(60_000);
  await page.goto(site.url);
  await untilStored(page);
});

test.afterEach(async () => {
  await site.close();
  await rm(folder, { recursive: true, force: true });
});

/** Puts a newer version on the host: another index.html, and the list of files to keep that knows of it. */
async function deployNewer(): Promise<void> {
  const index = join(folder, "index.html");
  const html = (await readFile(index, "utf8")).replace(
    "</head>",
    '<meta name="build" content="newer"></head>',
  );
  await writeFile(index, html);
  const worker = join(folder, "sw.js");
  const script = await readFile(worker, "utf8");
  const old = /"revision":"([0-9a-f]+)","url":"index\.html"/.exec(script)?.[1];
  if (old === undefined) throw new Error("sw.js does not list index.html with a revision");
  await writeFile(worker, script.replaceAll(old, createHash("md5").update(html).digest("hex")));
}

const askForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });
const runs = (page: Page) =>
  page.evaluate(() => document.querySelector<HTMLMetaElement>("meta[name=build]")?.content ?? "first");
/** A mark that a reload would wipe off. */
const mark = (page: Page) => page.evaluate(() => document.body.setAttribute("data-mark", "untouched"));
const isUntouched = (page: Page) => page.evaluate(() => document.body.hasAttribute("data-mark"));

const isWaiting = (page: Page) =>
  page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null);

const waiting = (page: Page) => page.getByText("A new version of Dipbook is ready.");

test("a new version waits while a form is half filled, and the draft is there after it is let in", async ({
  page,
  context,
}) => {
  const maker = makerAt(page, handsOn(page));
  await maker.startPiece("Heron");
  await maker.openPiece("Heron");
  await maker.openLog("A note");
  await page.getByLabel("Note").fill("vent by the left ear is thin, look again");
  await mark(page);

  await deployNewer();
  await askForUpdate(page);
  await expect(waiting(page)).toBeVisible();
  await expect(page.getByText("What you are writing is kept")).toBeVisible();
  // A second look for an update goes there and back through all that the first one set off.
  await askForUpdate(page);
  expect(await isWaiting(page)).toBe(true);
  expect(await isUntouched(page)).toBe(true);
  expect(await runs(page)).toBe("first");

  await maker.tap(maker.key("Use it now"));
  await expect(async () => expect(await runs(page)).toBe("newer")).toPass({ timeout: 30_000 });
  await expect(page.getByLabel("Note")).toHaveValue("vent by the left ear is thin, look again");
  await maker.logIt();
  await expect(maker.logLines().first()).toContainText("vent by the left ear is thin, look again");

  await context.setOffline(true);
  await page.reload();
  expect(await runs(page)).toBe("newer");
  await expect(maker.logLines().first()).toContainText("vent by the left ear is thin");
});

test("a version let in at one tab leaves the half-filled form of another alone", async ({
  page,
  context,
}) => {
  const maker = makerAt(page, handsOn(page));
  await maker.goTo("Rack");
  await maker.tap(page.getByRole("link", { name: "Start a piece" }));
  await page.getByLabel("Name").fill("Small tor");
  await mark(page);
  const other = await context.newPage();
  await other.goto(site.url);

  await deployNewer();
  await askForUpdate(other);
  await expect(waiting(other)).toBeVisible();
  await other.getByRole("button", { name: "Use it now" }).click({ delay: 60 });
  await expect(async () => expect(await runs(other)).toBe("newer")).toPass({ timeout: 30_000 });
  // The new version answers this tab too by now: a reload by it would have begun.
  await askForUpdate(page);
  await page.waitForLoadState("load");
  expect(await isUntouched(page)).toBe(true);
  await expect(page.getByLabel("Name")).toHaveValue("Small tor");
  await expect(waiting(page)).toBeVisible();

  await maker.tap(maker.key("Use it now"));
  await expect(async () => expect(await runs(page)).toBe("newer")).toPass({ timeout: 30_000 });
  await expect(page.getByLabel("Name")).toHaveValue("Small tor");
});
