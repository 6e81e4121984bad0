import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt, type Kind } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

const recipe: readonly Kind[] = [
  "Prime",
  "Prime",
  "Intermediate",
  ...Array.from({ length: 5 }, () => "Backup" as const),
  "Seal",
];

test("a crack in a kiln run sends the piece back to its coats with all that is in its log", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-05-04T07:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const next = page.getByRole("region", { name: "What is next" });
  const atKiln = page.getByRole("region", { name: "Next at the kiln" });

  await test.step("nine coats, dried and reviewed", async () => {
    await maker.readAir({ tempC: 21, rh: 0.5, moves: "Fan on the room" });
    await maker.startPiece("Heron", { recipe: "General bronze (9 coats)" });
    await maker.openPiece("Heron");
    await tap(page.getByRole("link", { name: "Plan", exact: true }));
    await maker.fillPlan({ material: "PLA", flatMm: [60, 120], headMm: 300, alloy: "C87300 silicon bronze" });
    for (const kind of recipe) {
      await maker.dipCoat(kind, "Heron");
      await maker.waitHours(12);
      await maker.readAir({ tempC: 21, rh: 0.5 });
    }
    await maker.waitHours(36);
    await maker.readAir({ tempC: 21, rh: 0.5 });
    await maker.openPiece("Heron");
    await tap(next.getByRole("link", { name: "Review before burnout" }));
    await page.getByLabel("Name", { exact: true }).fill("Ada");
    await tap(key(/^Sign( with warnings)?$/));
    await expect(page.getByText("Signed by Ada")).toBeVisible();
    await tap(page.getByRole("link", { name: "Back" }));
    await maker.onScreen("Heron");
  });

  await test.step("a burnout is planned from its log, with the reason of every slope", async () => {
    await tap(next.getByRole("link", { name: "Plan the burnout" }));
    await maker.onScreen("Plan a kiln run");
    await expect(page.getByRole("checkbox", { name: /^Heron/ })).toBeChecked();
    await expect(page.getByText("Enter the mass of the patterns", { exact: false })).toBeVisible();
    await page.getByLabel("Mass of all patterns").fill("0.3");
    await maker.choose("The shell is", "Dry");
    const steps = page.getByRole("list", { name: "Steps of the plan" });
    await expect(steps).toContainText("The pattern softens and runs out");
    await expect(steps).toContainText("The pattern smokes");
    await expect(page.getByText("Dipbook does not control the kiln", { exact: false })).toBeVisible();
    await tap(key("Save this plan"));
    await maker.onScreen(/^Burnout/);
  });

  await test.step("started, its steps are ticked and the kiln is read as time goes on", async () => {
    await tap(key(/^Same as planned: /));
    await tap(key("Start the run"));
    await expect(atKiln).toContainText("Extraction on");
    for (const what of ["Extraction on", "Check that cup", "Place the shell cup down"]) {
      await expect(atKiln).toContainText(what);
      await tap(atKiln.getByRole("button", { name: "Done" }));
      // The next thing lies under the same key, which takes a second tap at once for a slip.
      await page.clock.fastForward(600);
    }
    await expect(atKiln).toContainText("Next");
    await maker.waitHours(1);
    // Nothing is logged that nobody set.
    await expect(key("Log the reading")).toHaveAttribute("aria-disabled", "true");
    const planned = /he plan has (\d+)\s°C now/.exec((await atKiln.textContent()) ?? "")?.[1] ?? "";
    await tap(page.getByText(/^More: type it/));
    await page.getByLabel("Kiln, typed").fill(planned);
    await tap(key(/^Log \d+\s°C$/));
    await expect(page.getByRole("main").getByText(/^Kiln read: /)).toBeVisible();
    await expect(atKiln).toContainText("On the plan.");
    expect(await linesOf(page, "run-step-done")).toHaveLength(3);
  });

  await test.step("rushed, it is told that it went too fast through a limit", async () => {
    await maker.waitHours(0.5);
    for (let i = 0; i < 8; i += 1) await tap(key("Kiln: 25 more"));
    await tap(key(/^Log \d+\s°C$/));
    await maker.waitHours(0.4);
    for (let i = 0; i < 8; i += 1) await tap(key("Kiln: 25 more"));
    await tap(key(/^Log \d+\s°C$/));
    await expect(page.getByRole("heading", { name: /Too fast through a limit/ }).first()).toBeVisible();
  });

  await test.step("a crack found there sends it back", async () => {
    await tap(key("Crack found in Heron"));
    await maker.choose("Kind", "Open");
    await page.getByLabel("Where", { exact: true }).fill("left wing");
    await tap(key("Log the crack, back to its coats"));
    await expect(page.getByText("cracked in this run (left wing)", { exact: false })).toBeVisible();
    await expect(page.getByRole("heading", { name: "In the kiln: 0 of 1" })).toBeVisible();
    await tap(key("End the run…"));
    await maker.choose("The run", "Stopped");
    await tap(key(/^End the run (with|and log) /));
    await maker.onScreen(/stopped$/);
  });

  await test.step("its log tells all of it, and the next thing is to mend", async () => {
    await maker.openPiece("Heron");
    await expect(next).toContainText("Repair before going on");
    await expect(page.getByRole("heading", { name: "Heated or cooled too fast" }).first()).toBeVisible();
    const lines = (await (await maker.wholeLog()).allInnerTexts()).join("\n");
    for (const words of ["Burnout stopped", "Open crack found", "Burnout started", "Review signed", "Coat 9"])
      expect(lines).toContain(words);
    const [crack] = await linesOf(page, "crack-found");
    const [run] = await linesOf(page, "run-ended");
    expect(`run/${String(crack?.body["runId"])}`).toBe(run?.stream);
  });
});
