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

test("wax out by flash fire and on a tray; residue holds piece and pour sheet until a clean firing", async ({
  page,
}) => {
  test.setTimeout(300_000);
  await visitOnceThenOffline(page, "2026-05-04T07:00:00+02:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const next = page.getByRole("region", { name: "What is next" });
  const findings = page.getByRole("region", { name: "Findings" });
  const atKiln = page.getByRole("region", { name: "Next at the kiln" });
  const sheetLine = page.getByRole("listitem").filter({ hasText: "Shells are empty, clean and dry inside" });

  await test.step("two wax pieces coated, dried and reviewed", async () => {
    await maker.readAir({ tempC: 21, rh: 0.45, moves: "Fan on the room" });
    for (const name of ["Lantern bracket", "Oak leaf"]) {
      await maker.startPiece(name, { recipe: "General bronze (9 coats)" });
      await maker.openPiece(name);
      await tap(page.getByRole("link", { name: "Plan", exact: true }));
      await maker.fillPlan({
        material: "Wax",
        flatMm: [40, 80],
        headMm: 250,
        alloy: "C87300 silicon bronze",
        metalKg: 1.2,
      });
    }
    for (const kind of recipe) {
      await maker.dipCoat(kind, "Lantern bracket", "Oak leaf");
      await maker.waitHours(12);
      await maker.readAir({ tempC: 21, rh: 0.45 });
    }
    await maker.waitHours(36);
    await maker.readAir({ tempC: 21, rh: 0.45 });
    for (const name of ["Lantern bracket", "Oak leaf"]) {
      await maker.openPiece(name);
      await tap(next.getByRole("link", { name: "Review before burnout" }));
      await expect(page.getByRole("region", { name: "Cautions" })).toContainText("water on burning wax");
      const signer = page.getByLabel("Name", { exact: true });
      if ((await signer.inputValue()) === "") await signer.fill("Ada");
      await tap(key(/^Sign( with warnings)?$/));
      await expect(page.getByText("Signed by Ada")).toBeVisible();
      await tap(page.getByRole("link", { name: "Back" }));
      await maker.onScreen(name);
    }
  });

  await test.step("the first is flash fired; its wax is weighed back", async () => {
    await maker.openPiece("Lantern bracket");
    await expect(next).toContainText("Dewax");
    await tap(next.getByRole("link", { name: "Log the dewax" }));
    await expect(page.getByRole("radio", { name: "Flash fire" })).toBeChecked();
    const cautions = page.getByRole("region", { name: "Cautions" });
    await expect(cautions).toContainText("Flames come out of the door");
    await maker.choose("Method", "Hot water");
    await expect(cautions).toContainText("Scalds");
    await maker.choose("Method", "Flash fire");
    await maker.logIt({ Time: "18", "Wax weighed back": "140" });
    await expect(maker.logLines().first()).toContainText("Dewaxed: flash fire");
    await expect(maker.logLines().first()).toContainText(/wax weighed back 140.g/);
    await expect(next).toContainText("Burn out");
    const [dewaxed] = await linesOf(page, "dewaxed");
    expect(dewaxed?.body).toEqual({ way: "flash", minutes: 18, waxBackG: 140 });
  });

  await test.step("the plan for what is left burns a film: no tray, no pan", async () => {
    await tap(next.getByRole("link", { name: "Plan the burnout" }));
    await maker.onScreen("Plan a kiln run");
    await expect(page.getByText("the wax film that stays", { exact: false })).toBeVisible();
    await maker.choose("The shell is", "Dry");
    const steps = page.getByRole("list", { name: "Steps of the plan" });
    await expect(steps).toContainText("Open the kiln’s vents");
    await expect(steps).not.toContainText("tray");
    await maker.openPiece("Lantern bracket");
  });

  await test.step("residue at its end holds the piece", async () => {
    await tap(next.getByRole("link", { name: "Start burnout" }));
    await maker.logIt();
    await maker.waitHours(5);
    await tap(next.getByRole("link", { name: "End burnout" }));
    await maker.choose("The inside is", "Residue");
    await maker.logIt();
    await expect(findings.getByRole("heading", { name: "Carbon or ash inside the shell" })).toBeVisible();
    await expect(next).toContainText("Fire the shell");
    await expect(next).toContainText("residue inside");
  });

  await test.step("and its pour sheet", async () => {
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
    await tap(page.getByRole("link", { name: "Plan a pour" }));
    await maker.onScreen("Plan a pour");
    for (const name of ["Lantern bracket", "Oak leaf"]) await page.getByRole("checkbox", { name }).check();
    await page.getByLabel("Metal in the crucible").fill("4");
    await tap(key("Plan this pour"));
    await maker.onScreen(/^Pour of/);
    await tap(page.getByRole("link", { name: "Pour sheet", exact: true }));
    await maker.onScreen("Pour sheet");
    await expect(sheetLine).toContainText("Lantern bracket: carbon or ash inside");
    await expect(sheetLine).toContainText("Oak leaf: pattern still inside");
    await expect(sheetLine).toContainText("Not OK");
  });

  await test.step("a second firing, looked into and clean, takes it away", async () => {
    await maker.openPiece("Lantern bracket");
    await tap(next.getByRole("link", { name: "Log the firing" }));
    await maker.waitHours(3);
    await maker.choose("The inside is", "Clean");
    await maker.logIt({ "Top temperature": "870", "Held for": "60" });
    await expect(findings.getByRole("heading", { name: "Carbon or ash inside the shell" })).toBeHidden();
    await expect(next).toContainText("Preheat for the pour");
  });

  await test.step("the other is melted out in the kiln: the tray comes out, kiln off, before it goes on", async () => {
    await maker.openPiece("Oak leaf");
    await tap(next.getByRole("link", { name: "Plan the dewax" }));
    await maker.onScreen("Plan a kiln run");
    await page.getByLabel("Mass of all patterns").fill("0.08");
    await maker.choose("The shell is", "Dry");
    const steps = page.getByRole("list", { name: "Steps of the plan" });
    await expect(steps).toContainText("Open the hole in the floor, pan outside under it");
    await maker.choose("Method", "Staged");
    await expect(steps).toContainText("Put the tray under the cup");
    await expect(steps).toContainText("Kiln off. Take the tray out. Shut the door.");
    await expect(page.getByRole("region", { name: "Cautions" })).toContainText("Wax fumes");
    await tap(key("Save this plan"));
    await maker.onScreen(/^Burnout/);
    await tap(key(/^Same as planned: /));
    await tap(key("Start the run"));
    for (const what of [
      "Extraction on",
      "Check that cup",
      "Place the shell cup down",
      "Put the tray under",
    ]) {
      await expect(atKiln).toContainText(what);
      await tap(atKiln.getByRole("button", { name: "Done" }));
      // The next thing lies under the same key, which takes a second tap at once for a slip.
      await page.clock.fastForward(600);
    }
    await maker.waitHours(0.6);
    await expect(atKiln).toContainText(/he plan has \d+\s°C now/);
    const planned = /he plan has (\d+)\s°C now/.exec((await atKiln.textContent()) ?? "")?.[1] ?? "";
    await tap(page.getByText(/^More: type it/));
    await page.getByLabel("Kiln, typed").fill(planned);
    await tap(key(/^Log \d+\s°C$/));
    await expect(atKiln).toContainText("Watch it run out");
    await tap(atKiln.getByRole("button", { name: "Done" }));
    await page.clock.fastForward(600);
    await maker.waitHours(0.6);
    await expect(atKiln).toContainText("Kiln off. Take the tray out. Shut the door.");
    await tap(atKiln.getByRole("button", { name: "Done" }));
    await tap(page.getByRole("link", { name: "Log the dewax" }));
    await expect(page.getByRole("radio", { name: "Staged" })).toBeChecked();
    await maker.logIt({ Time: "30", "Wax weighed back": "72" });
    await expect(next).toContainText("In burnout");
    const wax = await linesOf(page, "dewaxed");
    const [run] = await linesOf(page, "run-planned");
    expect(`run/${String(wax.at(-1)?.body["runId"])}`).toBe(run?.stream);
    expect(run?.body["basis"]).toMatchObject({ route: "staged", waxLeaves: "tray" });
  });

  await test.step("on the sheet nothing but the wax film of the second is left", async () => {
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
    await tap(page.getByRole("link", { name: /Pour of|2 shells|2 pieces/ }).first());
    await tap(page.getByRole("link", { name: "Pour sheet", exact: true }));
    await expect(sheetLine).toContainText("Oak leaf: wax film not burnt off");
    await expect(sheetLine).not.toContainText("Lantern bracket");
  });
});
