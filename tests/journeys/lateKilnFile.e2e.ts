import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

const start = Date.parse("2026-05-04T07:00:00+02:00");

test("a logger's file read in the day after a run moves its hottest, its energy and its findings on every screen", async ({
  page,
}) => {
  test.setTimeout(180_000);
  await visitOnceThenOffline(page, "2026-05-04T07:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const next = page.getByRole("region", { name: "What is next" });
  const atKiln = page.getByRole("region", { name: "Next at the kiln" });
  const hottest = page.getByText("Hottest", { exact: true }).locator("xpath=following-sibling::dd");
  const energy = page.getByText(/^Energy, /).locator("xpath=following-sibling::dd");
  let runAddress = "";
  let startedMs = 0;

  await test.step("a shell with two coats, its metal and material in the plan", async () => {
    await maker.readAir({ tempC: 21, rh: 0.5, moves: "Fan on the room" });
    await maker.startPiece("Heron", { recipe: "General bronze (9 coats)" });
    await maker.openPiece("Heron");
    await tap(page.getByRole("link", { name: "Plan", exact: true }));
    await maker.fillPlan({ material: "PLA", alloy: "C87300 silicon bronze", metalKg: 3 });
    for (let i = 0; i < 2; i += 1) {
      await maker.dipCoat("Prime", "Heron");
      await maker.waitHours(12);
    }
  });

  await test.step("its burnout is planned with the pattern's mass estimated from its plan", async () => {
    await page.goto(new URL("/fire/run/new", page.url()).href);
    await maker.onScreen("Plan a kiln run");
    await tap(page.getByRole("checkbox", { name: /^Heron/ }));
    await expect(page.getByText(/estimate: solid, from the metal’s volume/)).toBeVisible();
    await expect(page.getByLabel("Mass of all patterns")).toHaveValue(/^0\.4\d*$/);
    // Two coats are no wall yet: the figure is given, as by a caliper.
    await page.getByLabel("Shell thickness, the thickest").fill("8");
    await maker.choose("The shell is", "Dry");
    await tap(key("Save this plan"));
    await maker.onScreen(/^Burnout/);
    runAddress = page.url();
  });

  await test.step("it is started, read twice by hand and ended", async () => {
    await tap(key(/^Same as planned: /));
    await tap(key("Start the run"));
    await expect(atKiln).toBeVisible();
    startedMs = (await linesOf(page, "run-started"))[0]?.at ?? 0;
    expect(startedMs).toBeGreaterThan(start);
    const read = async (shownC: string): Promise<void> => {
      const typed = page.getByLabel("Kiln, typed");
      if (!(await typed.isVisible())) await tap(page.getByText(/^More: type it/));
      await typed.fill(shownC);
      await tap(key(`Log ${shownC} °C`));
      await expect(
        page
          .getByRole("main")
          .getByText(/^Kiln read: /)
          .last(),
      ).toBeVisible();
    };
    await maker.waitHours(2);
    await expect(key("Log the reading")).toHaveAttribute("aria-disabled", "true");
    await read("200");
    await maker.waitHours(7);
    await read("690");
    await maker.waitHours(3);
    await tap(key("End the run…"));
    await expect(page.getByLabel("Hottest")).toHaveValue("690");
    // Nobody saw it clean until somebody says so.
    await maker.choose("Heron, inside", "Clean");
    await tap(key(/^End the run with 690\s°C/));
    await maker.onScreen(/over$/);
    await expect(hottest).toHaveText(/^690\s°C$/);
  });

  await test.step("so the piece was fired too cool", async () => {
    await maker.openPiece("Heron");
    await expect(page.getByText(/Fired to 690\s°C for/).first()).toBeVisible();
  });

  await test.step("the day after, its logger's file is read in from the run's page", async () => {
    await maker.waitHours(20);
    await page.goto(runAddress);
    await maker.onScreen(/over$/);
    const before = Number.parseFloat((await energy.textContent()) ?? "");
    // One line in ten minutes: 500 °C in the first hour, which no limit allows, then up to 868 °C and down.
    const kilnC = (minute: number): number =>
      minute <= 60
        ? 20 + 8 * minute
        : minute <= 300
          ? 500 + (368 * (minute - 60)) / 240
          : minute <= 420
            ? 868
            : 868 - (minute - 420);
    const rows = Array.from({ length: 60 }, (_, i) => {
      const minute = 10 * (i + 1);
      return `${new Date(startedMs + minute * 60_000).toISOString()},${kilnC(minute).toFixed(1)}`;
    });
    await page.getByLabel("File of a kiln logger (CSV)").setInputFiles({
      name: "kiln.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(`time,temp °C\n${rows.join("\n")}\n`),
    });
    await expect(page.getByText(/^60 readings of “temp °C”.*up to 868/)).toBeVisible();
    await tap(key("Add them to the run"));
    await expect(hottest).toHaveText(/^868\s°C$/);
    await expect.poll(async () => Number.parseFloat((await energy.textContent()) ?? "")).not.toBe(before);
    await expect(page.getByRole("heading", { name: /Too fast through a limit/ }).first()).toBeVisible();
    await expect(
      page
        .getByRole("list", { name: "Steps of the run" })
        .getByText(/^held /)
        .first(),
    ).toBeVisible();
    expect(await linesOf(page, "run-logged")).toHaveLength(1);
  });

  await test.step("the piece's page says the same hottest, and no more that it was fired too cool", async () => {
    await maker.openPiece("Heron");
    await expect(page.getByText(/Fired to 690\s°C for/)).toHaveCount(0);
    await expect(page.getByRole("heading", { name: "Heated or cooled too fast" }).first()).toBeVisible();
    // What was written stays as it was written; what is known now stands beside it.
    await expect((await maker.wholeLog()).filter({ hasText: /Fired to 690\s°C/ })).toContainText(
      /with later readings: 868\s°C, held (2\sh|1\d\d\smin)/,
    );
    await expect(next).toBeVisible();
  });

  await test.step("struck again, the hottest is what was read and written at the end", async () => {
    await page.goto(runAddress);
    await maker.onScreen(/over$/);
    const line = maker.logLines().filter({ hasText: "Kiln logged" });
    await tap(line.locator("summary"));
    await tap(line.getByRole("button", { name: "Delete (kept in history)" }));
    await tap(line.getByRole("button", { name: "Delete it" }));
    await expect(hottest).toHaveText(/^690\s°C$/);
  });
});
