import { expect, test } from "@playwright/test";
import { hills } from "../meshes/testShapes.ts";
import { stlBinaryFile } from "../meshFiles.ts";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

/** A slab of 80 × 80 × 12 mm: 76.8 cm³, and 0.01664 m² of skin. */
const slab = (): Buffer =>
  Buffer.from(stlBinaryFile(hills(Array.from({ length: 41 }, () => Array.from({ length: 41 }, () => 12)), 2)));

test("one piece from its mesh to the archive, each figure the same on every screen that shows it", async ({ page }) => {
  test.setTimeout(300_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const soon = { timeout: 60_000 };
  const region = (name: string) => page.getByRole("region", { name, exact: true });
  const dump = async (title: string) => console.log(`== ${title}\n${(await page.getByRole("main").innerText()).replaceAll(/\n+/g, "\n").slice(0, 6000)}`);

  await test.step("mesh", async () => {
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Patterns/ }).first());
    await page.getByLabel("Mesh file").setInputFiles({ name: "slab.stl", mimeType: "model/stl", buffer: slab() });
    await maker.onScreen("slab");
    await tap(page.getByRole("radio", { name: /^Millimetres/ }));
    await expect(page.locator("canvas")).toBeVisible(soon);
    await tap(page.getByRole("radio", { name: "Hang", exact: true }));
    await page.getByLabel("Alloy").selectOption({ label: "C87300 silicon bronze" });
    await tap(page.getByRole("radio", { name: "Gating", exact: true }));
    await tap(key("Gate at the lowest place"));
    await tap(key("Draw a starting tree"));
    await expect(region("The tree")).toContainText("Bars and piece");
    await dump("pattern");
  });

  await test.step("begun", async () => {
    await tap(key("Start a piece from it"));
    await dump("new piece");
    await tap(key("Start and plan it"));
    await maker.onScreen("Plan");
    await dump("plan");
    await page.getByLabel("Recipe").selectOption({ label: "Small fine work (8 coats)" });
    await maker.choose("Made of", "Wax");
    await tap(key("Save the plan"));
    await dump("piece");
    await tap(page.getByRole("link", { name: "Metal", exact: true }));
    await expect(page.getByText("to weigh in").first()).toBeVisible();
    await dump("metal");
    await tap(page.getByRole("link", { name: "Gating and feeding" }));
    await expect(page.getByText("From the pattern").first()).toBeVisible();
    await dump("gating");
    await tap(key("Take from the pattern"));
    await dump("gating taken");
  });
  await test.step("coats", async () => {
    await maker.readAir({ tempC: 24, rh: 0.44, moves: "Fan on the rack" });
    for (const kind of ["Prime", "Prime", "Intermediate", "Backup", "Backup", "Backup", "Backup", "Seal"] as const) {
      await maker.dipCoat(kind, "slab");
      if (kind === "Intermediate") {
        await dump("rack wet");
        await maker.openPiece("slab");
        await dump("piece wet");
        await maker.goTo("Rack");
        await tap(page.getByRole("link", { name: /What is due/ }).first());
        await expect(page.getByText("slab").first()).toBeVisible();
        await dump("due");
      }
      await maker.waitHours(12);
    }
    await maker.waitHours(30);
    await maker.readAir({ tempC: 24, rh: 0.44 });
    await maker.openPiece("slab");
    await dump("piece coated");
    await tap(page.getByRole("link", { name: "Review", exact: true }));
    await dump("review");
  });

  await test.step("signed", async () => {
    await page.getByLabel("Name", { exact: true }).fill("Ada");
    await tap(key(/^Sign as (clear|watch)/));
    await expect(page.getByText("Signed by Ada")).toBeVisible();
    await maker.openPiece("slab");
    await maker.logFor("Shell fired", { "Top temperature": "880", "Held for": "60" });
    await dump("piece fired");
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
    await dump("fire");
    await tap(page.getByRole("link", { name: "Plan a melt" }).first());
    await maker.onScreen(/melt/i);
    await dump("melt plan");
  });
});
