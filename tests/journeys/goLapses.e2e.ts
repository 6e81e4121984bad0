import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("a go opens near the pour, lapses when a crack is logged, is given again, and asks nothing once the shell is out", async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.setViewportSize({ width: 390, height: 844 });
  await visitOnceThenOffline(page, "2026-05-09T09:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const waitMinutes = (minutes: number) => page.clock.fastForward(Math.round(minutes * 60_000));
  const line = (name: string) => page.getByRole("listitem", { name, exact: true });
  const atPour = page.getByRole("region", { name: "The pour", exact: true });
  const toFire = () =>
    tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
  /** The same key takes a second tap at once for a slip. */
  const press = async (name: string | RegExp): Promise<void> => {
    await tap(key(name));
    await page.clock.fastForward(800);
  };
  const toPour = async (): Promise<void> => {
    await toFire();
    await tap(page.getByRole("link", { name: /^Pour of 1 shell/ }));
    await maker.onScreen(/^Pour: Gate finial/);
  };
  const toSheet = async (): Promise<void> => {
    await toPour();
    await tap(page.getByRole("link", { name: "Pour sheet", exact: true }));
    await maker.onScreen("Pour sheet");
  };
  const settleLines = async (): Promise<void> => {
    await expect(line("Fumes blow away from you")).toBeVisible();
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
  };
  const giveGo = async (): Promise<void> => {
    await tap(page.getByRole("button", { name: "Go", exact: true }));
    await expect(page.getByText(/^Go given by Ada .*, holds until/)).toBeVisible();
  };
  const toMelt = async (): Promise<void> => {
    await toFire();
    await tap(page.getByRole("link", { name: /kg of C90300/ }));
    await maker.onScreen(/^Melt/);
  };

  await test.step("a fired shell stands in the log", async () => {
    await maker.startPiece("Gate finial", { recipe: "General bronze (9 coats)" });
    await maker.dipCoat("Prime", "Gate finial");
    await maker.openPiece("Gate finial");
    await tap(page.getByRole("link", { name: "Plan", exact: true }));
    await maker.fillPlan({ material: "PLA", alloy: "C90300 tin bronze", metalKg: 2 });
    await maker.logFor("Caliper reading", { "Shell thickness": "9" });
    await maker.logFor("Shell fired", { "Top temperature": "880", "Held for": "60" });
  });

  await test.step("a melt and a pour two hours ahead are planned: nothing of it is OK, and no go is open", async () => {
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
    await expect(page.getByText(/^Go opens at /).first()).toBeVisible();
    await toSheet();
    await expect(line("Shells are at temperature")).toContainText(/Planned.*planned: \d+.°C at/);
    await expect(line("Metal is at pouring temperature")).toContainText(/Planned.*planned: 1,180.°C at/i);
    await expect(line("Enough metal")).toContainText("Planned");
    await expect(key("Shells are at temperature: OK")).toHaveCount(0);
    await expect(page.getByRole("button", { name: "Go", exact: true })).toHaveAttribute(
      "aria-disabled",
      "true",
    );
  });

  await test.step("the shell is soaked and read, the charge is weighed, the metal is read", async () => {
    await toPour();
    await press("Kiln is on");
    await waitMinutes(75);
    await toMelt();
    await page.getByLabel("Charge on the scale").fill("3");
    await press("Furnace lit");
    await waitMinutes(30);
    await tap(key(/^It shows \d/));
    await press("Log this reading");
    expect(await linesOf(page, "melt-started")).toMatchObject([
      { body: { hotFurnace: false, weighedKg: 3 } },
    ]);
    await toPour();
    await tap(page.getByText(/^The other tracks: /));
    await tap(key("Kiln not read: set it"));
    await tap(key("Kiln, read: same as planned"));
    await press("Shell is soaked");
    await toSheet();
    await expect(line("Shells are at temperature")).toContainText(/OK, \d+.°C read/);
    await expect(line("Metal is at pouring temperature")).toContainText(/OK, 1,\d+.°C read/);
    await expect(line("Enough metal")).toContainText(/OK, .* weighed, less loss/);
  });

  await test.step("the lines are settled and the go is given: key, clock and stop rule fill the first screen", async () => {
    await settleLines();
    await giveGo();
    await tap(page.getByRole("link", { name: "Back to the pour" }));
    await maker.onScreen(/^Pour: Gate finial/);
    for (const one of [
      key(/^Out of the kiln/),
      page.getByRole("status", { name: "Stop rule" }),
      atPour.getByText(/^Pour \d/),
    ]) {
      const box = await one.boundingBox();
      expect(box!.y + box!.height).toBeLessThanOrEqual(844);
    }
  });

  await test.step("a crack is logged: the go lapses and says why", async () => {
    await maker.openPiece("Gate finial");
    await maker.openLog("Crack found");
    await maker.choose("Kind", "Open");
    await maker.logIt({ Where: "at the cup" });
    await toPour();
    const alert = page.getByRole("alert").first();
    await expect(alert).toHaveText(/^Go lapsed \d\d:\d\d\. Gate finial: .*crack.* Check again\.$/);
    await tap(page.getByText(/^Pour early/));
    await tap(key(/^Out of the kiln/));
    await expect(page.getByRole("group", { name: "No go given" })).toContainText("out anyway?");
    await tap(key("Leave it in the kiln"));
    expect(await linesOf(page, "shell-out-of-kiln")).toHaveLength(0);
  });

  await test.step("the crack turns out to be none: its entry is taken back, the lapsed go stays lapsed, a new one is given", async () => {
    await maker.openPiece("Gate finial");
    const entry = maker.logLines().filter({ hasText: "at the cup" }).first();
    await tap(entry.locator("summary"));
    await tap(entry.getByRole("button", { name: "Delete (kept in history)" }));
    await entry.getByRole("textbox").fill("a scratch in the stucco");
    await tap(entry.getByRole("button", { name: "Delete it" }));
    await expect(maker.logLines().filter({ hasText: "deleted: a scratch" })).toHaveCount(1);
    await toPour();
    await expect(page.getByText(/^Go lapsed/).first()).toBeVisible();
    await toSheet();
    await settleLines();
    await giveGo();
    await expect(page.getByRole("list", { name: "Decisions" })).toContainText(/lapsed .*crack/);
  });

  await test.step("from the first shell out nothing asks any more: only the stop rule", async () => {
    await toPour();
    await press(/^Out of the kiln/);
    await waitMinutes(90);
    await expect(page.getByText(/Go lapsed|No go given|Check again/)).toHaveCount(0);
    await expect(page.getByRole("status", { name: "Stop rule" })).toContainText(/^Stop/);
    await press(/^Pour start/);
    await waitMinutes(0.1);
    await press(/^Full/);
    await expect(page.getByRole("heading", { name: "All shells are full" })).toBeVisible();
    expect(await linesOf(page, "pour-decided")).toHaveLength(2);
  });
});
