import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

/** Pages of a PDF by its page objects. */
const pagesOf = (pdf: Buffer): number =>
  (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

test("two printed shells are poured from one crucible: a late melt moves the day, and both are broken out", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-05-09T09:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const waitMinutes = (minutes: number) => page.clock.fastForward(Math.round(minutes * 60_000));
  const moment = page.getByRole("region", { name: "Pour time" });
  const atPour = page.getByRole("region", { name: "The pour", exact: true });
  const track = (name: string) =>
    page.getByRole("list", { name: /^(Tracks|Next step)$/ }).getByRole("listitem", { name, exact: true });
  /** One big key; the same key takes a second tap at once for a slip. */
  const press = async (name: string | RegExp): Promise<void> => {
    await tap(key(name));
    await page.clock.fastForward(800);
  };

  await test.step("two fired shells stand in the log", async () => {
    for (const name of ["Crane", "Vase"])
      await maker.startPiece(name, { recipe: "General bronze (9 coats)" });
    await maker.dipCoat("Prime", "Crane", "Vase");
    for (const [name, metalKg] of [
      ["Crane", 2.2],
      ["Vase", 1.8],
    ] as const) {
      await maker.openPiece(name);
      await tap(page.getByRole("link", { name: "Plan", exact: true }));
      await maker.fillPlan({ material: "PLA", alloy: "C90300 tin bronze", metalKg });
      await maker.logFor("Caliper reading", { "Shell thickness": "9" });
      await maker.logFor("Shell fired", { "Top temperature": "880", "Held for": "60" });
    }
  });

  await test.step("the day is planned backwards from the pour, the thinner shell first", async () => {
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
    await tap(page.getByRole("link", { name: "Plan a pour" }));
    await maker.onScreen("Plan a pour");
    for (const name of ["Crane", "Vase"]) await page.getByRole("checkbox", { name }).check();
    await page.getByLabel("Thinnest section of Crane").fill("6");
    await page.getByLabel("Thinnest section of Vase").fill("4.5");
    await maker.choose("Placed in", "Hot sand");
    await page.getByLabel("From cold kiln to soaked shell").fill("40");
    await page.getByLabel("To heat the sand").fill("40");
    await page.getByLabel("Metal in the crucible").fill("5");
    await page.getByLabel("Metal at the pour").fill("1180");
    await page.getByLabel("To melt").fill("30");
    await expect(page.getByText("Metal and heat last.")).toBeVisible();
    await expect(page.getByRole("img", { name: /^5 tracks for the pour at / })).toBeVisible();
    await tap(key("Plan this pour"));
    await maker.onScreen("Pour of 2 shells");
    const [plan] = await linesOf(page, "pour-planned");
    expect(plan?.body).toMatchObject({ bed: "hot-sand", metalC: 1180 });
  });

  await test.step("each track is begun and done with a big key", async () => {
    await expect(moment).toContainText(/in 5\d min/);
    await press("Crucible is warming");
    await tap(page.getByText(/^The other tracks: /));
    await press("Laying out");
    await waitMinutes(14);
    await press("Kiln is on");
    await press("Sand is on the heat");
    await press("Laid out");
    await waitMinutes(6);
    await press("Crucible is hot");
    await press("Melting");
    await press("Tools are on the heat");
    await expect(track("Metal")).toContainText("under way since");
  });

  await test.step("the metal is late: the others are planned again, and the shell is to be kept", async () => {
    await waitMinutes(14);
    await press("Dressing");
    await waitMinutes(14);
    await press("Dressed");
    await tap(track("Metal").getByRole("button", { name: "15 min more" }));
    await expect(moment).toContainText("the metal is late");
    await waitMinutes(5);
    await tap(key("Kiln not read: set it"));
    await tap(key("Kiln, read: same as planned"));
    await press("Shell is soaked");
    await press("Sand is hot");
    await expect(moment).toContainText(/Shell soaked at .*, pour at .*: keep it in the kiln \d+ min/);
    await tap(key(/^Plan for .* from now on$/));
    await expect(moment).not.toContainText("later than the plan");
    await expect(page.getByText(/deleted: moved \d+ min/)).toBeAttached();
    await press("Checking");
  });

  await test.step("no go while lines are open; each ticked, or overridden with a reason, it is a go", async () => {
    await tap(page.getByRole("link", { name: "Pour sheet", exact: true }));
    await maker.onScreen("Pour sheet");
    await expect(page.getByText("no review is signed").first()).toBeVisible();
    await page.getByLabel("Name", { exact: true }).fill("Ada");
    await expect(key("Go").and(page.locator("[aria-disabled]"))).toBeVisible();
    // By the kiln reading of a moment ago, and by nothing that was planned.
    await expect(page.getByRole("listitem", { name: "Shells are at temperature" })).toContainText(
      /OK, .* read/,
    );
    await expect(page.getByRole("listitem", { name: "Enough metal" })).toContainText("not weighed");
    for (let rest = 40; rest > 0; rest -= 1) {
      const open = page.locator('button[aria-label$=": OK"][aria-pressed="false"]');
      const left = await open.count();
      if (left === 0) break;
      await tap(open.first());
      await expect(open).toHaveCount(left - 1);
    }
    const because = "built before this log began";
    await page.getByLabel("Reason to override “Every shell is reviewed”").fill(because);
    await page.getByLabel("Reason to override “No stop warning: recipe not followed”").fill(because);
    expect(pagesOf(await page.pdf({ format: "A4" }))).toBe(1);
    expect(pagesOf(await page.pdf({ format: "Letter" }))).toBe(1);
    await tap(page.getByRole("button", { name: "Go", exact: true }));
    await expect(page.getByText(/^Go given by Ada/)).toBeVisible();
    await tap(page.getByRole("link", { name: "Back", exact: true }));
    await maker.onScreen("Pour of 2 shells");
  });

  await test.step("shell by shell: out of the kiln, pour start, full", async () => {
    await expect(moment).toContainText("Go given by Ada");
    await tap(page.getByText(/^The other tracks: /));
    await press("Sheet done");
    await press("Metal is at temperature");
    await expect(atPour).toContainText("Vase");
    for (const name of ["Vase", "Crane"]) {
      await expect(atPour).toContainText(name);
      await press(/^Out of the kiln/);
      await waitMinutes(1);
      await expect(page.getByRole("timer")).toContainText("1:0");
      await tap(key("Metal not read: set it"));
      await tap(key("Metal, read: same as planned"));
      await press(/^Pour start/);
      await waitMinutes(0.1);
      await press(/^Full/);
    }
    await expect(page.getByRole("heading", { name: "All shells are full" })).toBeVisible();
    await tap(key("End the pour"));
    await expect(page.getByText(/^This pour ended/)).toBeVisible();
  });

  await test.step("not before their time, then both are broken out", async () => {
    await expect(page.getByText(/^Not out of the shell before/)).toHaveCount(2);
    await waitMinutes(6 * 60);
    await tap(page.getByRole("link", { name: "Log the knock-out" }).first());
    await expect(page.getByRole("region", { name: "Cautions" })).toContainText("respirator");
    await maker.logIt({ Note: "came off in plates" });
    const poured = await linesOf(page, "metal-poured");
    expect(poured.map(({ body }) => body["outOfKilnMin"])).toEqual([
      expect.closeTo(1, 0),
      expect.closeTo(1, 0),
    ]);
    expect(await linesOf(page, "shell-knocked-out")).toHaveLength(1);
    expect(await linesOf(page, "pour-decided")).toHaveLength(1);
  });
});
