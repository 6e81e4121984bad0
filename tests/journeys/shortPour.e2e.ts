import { expect, test } from "@playwright/test";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

test("of two shells one is full and one is short: said on the pour page, the piece's page, its log and its end, and taken back once", async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.setViewportSize({ width: 390, height: 844 });
  await visitOnceThenOffline(page, "2026-05-09T09:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const waitMinutes = (minutes: number) => page.clock.fastForward(Math.round(minutes * 60_000));
  const atPour = page.getByRole("region", { name: "The pour", exact: true });
  const card = (name: string) => page.getByRole("region", { name, exact: true });
  const toFire = () =>
    tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
  /** The same key takes a second tap at once for a slip. */
  const press = async (name: string | RegExp): Promise<void> => {
    await tap(key(name));
    await page.clock.fastForward(800);
  };
  const holdDown = async (name: string | RegExp): Promise<void> => {
    const box = await key(name).boundingBox();
    if (box === null) throw new Error("nothing to hold down");
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await expect(key(name)).toHaveAttribute("data-held", "true");
    await page.clock.fastForward(1_300);
    await page.mouse.up();
    await page.clock.fastForward(800);
  };

  await test.step("two fired shells stand in the log, and a melt for both is planned from their metal", async () => {
    for (const name of ["Gate finial", "Lantern"])
      await maker.startPiece(name, { recipe: "General bronze (9 coats)" });
    await maker.dipCoat("Prime", "Gate finial", "Lantern");
    for (const [name, metalKg] of [
      ["Gate finial", 2],
      ["Lantern", 3],
    ] as const) {
      await maker.openPiece(name);
      await tap(page.getByRole("link", { name: "Plan", exact: true }));
      await maker.fillPlan({ material: "PLA", alloy: "C90300 tin bronze", metalKg });
      await maker.logFor("Caliper reading", { "Shell thickness": "9" });
      await maker.logFor("Shell fired", { "Top temperature": "880", "Held for": "60" });
    }
    await toFire();
    await tap(page.getByRole("link", { name: "Plan a melt" }));
    await maker.onScreen("Plan a melt");
    await page.getByLabel("Alloy", { exact: true }).selectOption({ label: "C90300 tin bronze" });
    for (const name of ["Gate finial", "Lantern"]) await page.getByRole("checkbox", { name }).check();
    // Guessed metal: 5 kg and a fifth, 1.5 % burns off.
    await expect(page.getByText("6.09 kg more to weigh in.")).toBeVisible();
    await tap(key("Add ingot or returns"));
    await page.getByLabel("Weight", { exact: true }).fill("6.1");
    await tap(key("Plan this melt"));
    await maker.onScreen("Melt: C90300 tin bronze");
    await expect(card("Pieces from this melt")).toContainText("Gate finial, to be poured");
  });

  await test.step("the plan's own values work, and a colder shell says first what would", async () => {
    await toFire();
    await tap(page.getByRole("link", { name: "Plan a pour" }));
    await maker.onScreen("Plan a pour");
    for (const name of ["Gate finial", "Lantern"]) await page.getByRole("checkbox", { name }).check();
    await page.getByLabel("Melt", { exact: true }).selectOption({ index: 1 });
    await expect(page.getByText("Metal and heat last.")).toBeVisible();
    await expect(card("Fix the plan")).toBeHidden();
    await page.getByLabel("Shell temperature out of the kiln").fill("500");
    await expect(card("Fix the plan")).toContainText(
      /Gate finial: shell too cold by \d+\s°C at the pour: raise the preheat to \d+\s°C/,
    );
    await page.getByLabel("Shell temperature out of the kiln").fill("");
    await expect(card("Fix the plan")).toBeHidden();
    await tap(key("Plan this pour"));
    await maker.onScreen("Pour of 2 shells");
  });

  const pourOne = async (): Promise<void> => {
    await waitMinutes(1);
    await press(/^Pour start/);
    await waitMinutes(0.1);
  };
  let first = "";
  let second = "";

  await test.step("the first is full, the second freezes in the cup by a slip, is taken back, and is short", async () => {
    await waitMinutes(60);
    await tap(page.getByText(/^Pour early/));
    await expect(atPour).toContainText(/Gate finial|Lantern/);
    first = ((await atPour.innerText()).match(/Gate finial|Lantern/) ?? [""])[0];
    second = first === "Lantern" ? "Gate finial" : "Lantern";
    await press(/^Out of the kiln/);
    await holdDown(/^Hold to take it out/);
    await pourOne();
    await expect(atPour.getByRole("group", { name: "Not full" }).getByRole("button")).toHaveText([
      "Short",
      "Leaked",
      "Frozen in the cup",
      "Stopped",
    ]);
    await press(/^Full/);
    await expect(atPour).toContainText(second);
    await press(/^Out of the kiln/);
    await pourOne();
    await press("Frozen in the cup");
    await expect(page.getByRole("alert").first()).toContainText(
      `${second}: frozen in the cup. Leave the cup alone`,
    );
    await press(`Take back: ${second} frozen in the cup`);
    await expect(key("Short")).toBeVisible();
    await press("Short");
    await expect(page.getByRole("alert").first()).toContainText(
      `${second}: short. Stand clear and leave it. Don't top it up`,
    );
    await expect(page.getByRole("heading", { name: "Poured: 1 full, 1 short" })).toBeVisible();
    await expect(page.getByText("All shells are full")).toBeHidden();
    await expect(
      page.getByText(/goes into the dry, hot ingot mould now\. There is about .* left/),
    ).toBeVisible();
  });

  await test.step("a line of note is added, and the pour ends", async () => {
    await tap(key(`Note, or change: ${second}`));
    await page.getByLabel("Note", { exact: true }).fill("stopped at the upper vent");
    await press("Save changes");
    await expect(card("Poured")).toContainText("stopped at the upper vent");
    await tap(key("End the pour"));
    await expect(page.getByText(/^This pour ended/)).toBeVisible();
    const poured = await linesOf(page, "metal-poured");
    expect(poured.map(({ body }) => body["came"] ?? "full")).toEqual(["full", "frozen", "short", "short"]);
    expect(poured.every(({ body }) => typeof body["meltId"] === "string")).toBe(true);
  });

  await test.step("the piece's page, its knockout and its log say that it is short, and which melt it came from", async () => {
    await maker.openPiece(second);
    await expect(card("What is next")).toContainText("poured short");
    await expect(page.getByText(/^Not out of the shell before/)).toBeVisible();
    await expect(page.getByText(/^Poured short/).first()).toBeVisible();
    await expect(card("Metal from")).toContainText(/6\.1\skg of C90300 tin bronze/);
    await tap(page.getByRole("link", { name: /6\.1\skg of C90300 tin bronze/ }));
    await expect(card("Pieces from this melt")).toContainText(new RegExp(`${first}, poured `));
    await expect(card("Pieces from this melt")).toContainText(new RegExp(`${second}, poured short `));
  });

  await test.step("the outcome starts from it, and the archive has both", async () => {
    await waitMinutes(6 * 60);
    await maker.openPiece(second);
    await maker.logFor("Knocked out", {});
    await tap(page.getByRole("link", { name: "Record the result" }));
    await expect(page.getByText("From the pour: poured short.")).toBeVisible();
    await expect(page.getByRole("radio", { name: "Flawed" })).toBeChecked();
    await expect(page.getByRole("checkbox", { name: /^Misrun/ })).toBeChecked();
    await maker.logIt();
    await maker.logFor("Finishing", { "What was done": "cut off" });
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Archive/ }));
    await expect(page.getByRole("list", { name: "Archived pieces" })).toContainText(
      "poured short, came out flawed",
    );
  });
});
