import { expect, test, type Locator } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

/** A phone's browser with its bars, and the installed app. */
const screens = [
  { width: 390, height: 664 },
  { width: 390, height: 844 },
] as const;

test("through a pour day the key, the clock and the stop rule stand on the first screen", async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.setViewportSize(screens[1]);
  await visitOnceThenOffline(page, "2026-05-09T09:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const waitMinutes = (minutes: number) => page.clock.fastForward(Math.round(minutes * 60_000));
  const rule = page.getByRole("status", { name: "Stop rule" });
  const moment = page.getByRole("region", { name: "Pour time" });
  const atPour = page.getByRole("region", { name: "The pour", exact: true });
  const toFire = () =>
    tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
  const toPour = async (): Promise<void> => {
    await toFire();
    await tap(page.getByRole("link", { name: /^Pour of 1 shell/ }));
    await maker.onScreen(/^Pour: Gate finial/);
  };
  /** The same key takes a second tap at once for a slip. */
  const press = async (name: string | RegExp): Promise<void> => {
    await tap(key(name));
    await page.clock.fastForward(800);
  };
  /** Each lies whole on the glass, above the bar at its foot, with the page at its top. */
  const inView = async (stage: string, ...parts: readonly Locator[]): Promise<void> => {
    for (const size of screens) {
      await page.setViewportSize(size);
      for (const part of parts) await expect(part).toBeVisible();
      await page.evaluate(() => scrollTo(0, 0));
      const nav = page.getByRole("navigation", { name: "Main" });
      const foot = (await nav.isVisible()) ? (await nav.boundingBox())!.y : size.height;
      for (const part of parts) {
        const box = (await part.boundingBox())!;
        const name = `${stage}, ${size.height} px: ${part.toString()}`;
        expect(box.y, name).toBeGreaterThanOrEqual(0);
        expect(box.y + box.height, name).toBeLessThanOrEqual(foot);
      }
    }
  };

  await test.step("a fired shell, a melt and a pour are planned", async () => {
    await maker.startPiece("Gate finial", { recipe: "General bronze (9 coats)" });
    await maker.dipCoat("Prime", "Gate finial");
    await maker.openPiece("Gate finial");
    await tap(page.getByRole("link", { name: "Plan", exact: true }));
    await maker.fillPlan({ material: "PLA", alloy: "C90300 tin bronze", metalKg: 2 });
    await maker.logFor("Caliper reading", { "Shell thickness": "9" });
    await maker.logFor("Shell fired", { "Top temperature": "880", "Held for": "60" });
    await toFire();
    await tap(page.getByRole("link", { name: "Plan a melt" }));
    await page.getByRole("combobox", { name: "Alloy" }).selectOption({ label: "C90300 tin bronze" });
    await tap(key("Add ingot or returns"));
    await page.getByLabel("Weight").fill("3");
    await tap(key("Plan this melt"));
    await maker.onScreen(/^Melt/);
    await toFire();
    await tap(page.getByRole("link", { name: "Plan a pour" }));
    await page.getByRole("checkbox", { name: "Gate finial" }).check();
    await page.getByLabel("Thinnest section of Gate finial").fill("5");
    await page.getByLabel("From cold kiln to soaked shell").fill("120");
    await page.getByLabel("Melt", { exact: true }).selectOption({ index: 1 });
    await page.getByLabel("Metal at the pour").fill("1180");
    await page.getByLabel("To melt").fill("30");
    await tap(key("Plan this pour"));
    await maker.onScreen(/^Pour: Gate finial/);
    await inView("planned", key("Kiln is on"), moment.getByText(/^in \d+/), rule);
  });

  await test.step("the shell is in the kiln, then the melt is lit", async () => {
    await press("Kiln is on");
    await inView("shell in the kiln", key("Crucible is warming"), moment.getByText(/^in \d+/), rule);
    await waitMinutes(75);
    await toFire();
    await tap(page.getByRole("link", { name: /kg of C90300/ }));
    await maker.onScreen(/^Melt/);
    await page.getByLabel("Charge on the scale").fill("3");
    await press("Furnace lit");
    await toPour();
    await inView("melt lit", moment.getByRole("button").first(), moment.getByText(/^in \d+/), rule);
    await waitMinutes(30);
    await toFire();
    await tap(page.getByRole("link", { name: /kg of C90300/ }));
    await tap(key(/^It shows \d/));
    await press("Log this reading");
    await toPour();
    await tap(page.getByText(/^The other tracks: /));
    await tap(key("Kiln not read: set it"));
    await press("Shell is soaked");
    await inView("shell soaked", moment.getByRole("button").first(), moment.getByText(/^in \d+/), rule);
  });

  await test.step("the go is given", async () => {
    await tap(page.getByRole("link", { name: "Pour sheet", exact: true }));
    await maker.onScreen("Pour sheet");
    await expect(page.getByRole("listitem", { name: "Fumes blow away from you", exact: true })).toBeVisible();
    for (let rest = 40; rest > 0; rest -= 1) {
      const open = page.locator('button[aria-label$=": OK"][aria-pressed="false"]');
      const left = await open.count();
      if (left === 0) break;
      await tap(open.first());
      await expect(open).toHaveCount(left - 1);
    }
    for (const reason of await page.getByLabel(/^Reason to override/).all())
      await reason.fill("practice piece");
    await page.getByLabel("Name", { exact: true }).fill("Ada");
    await tap(page.getByRole("button", { name: "Go", exact: true }));
    await expect(page.getByText(/^Go given by Ada .*, holds until/)).toBeVisible();
    await tap(page.getByRole("link", { name: "Back to the pour" }));
    await maker.onScreen(/^Pour: Gate finial/);
    await inView("go", key(/^Out of the kiln/), atPour.getByText(/^Pour \d/), rule);
  });

  await test.step("the day has moved: the clock beside the key is the moved one", async () => {
    const moved = (await moment.getByRole("button", { name: /^Plan for/ }).textContent()) ?? "";
    const at = /\d\d:\d\d/.exec(moved)?.[0] ?? "no time";
    await expect(moment).toContainText("later than the plan");
    await expect(atPour.getByText(/^Pour \d/)).toContainText(`Pour ${at}, in`);
  });

  await test.step("out of the kiln, pouring, after", async () => {
    await press(/^Out of the kiln/);
    await waitMinutes(0.5);
    await inView("out of the kiln", key(/^Pour start/), page.getByRole("timer"), rule);
    await press(/^Pour start/);
    await waitMinutes(0.1);
    await inView("pouring", key(/^Full/), key(/^Short/), key(/^Stopped/), page.getByRole("timer"), rule);
    await press(/^Full/);
    await inView("after", key("End the pour"), page.getByText(/^Poured \d/), rule);
    await expect(rule).toHaveText(/^Do not break it out before /);
  });
});
