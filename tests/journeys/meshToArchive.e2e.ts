import { expect, test, type Locator } from "@playwright/test";
import { hills } from "../meshes/testShapes.ts";
import { stlBinaryFile } from "../meshFiles.ts";
import { handsOn } from "./hands.ts";
import { makerAt, type Kind } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";

const name = "Boot scraper";
const recipe: readonly Kind[] = [
  "Prime",
  "Prime",
  "Intermediate",
  ...Array.from({ length: 4 }, () => "Backup" as const),
  "Seal",
];

/** A slab of 80 × 80 × 12 mm: 76.8 cm³ by its sides, and 166.4 cm² of skin. */
const slab = (): Buffer =>
  Buffer.from(
    stlBinaryFile(
      hills(
        Array.from({ length: 41 }, () => Array.from({ length: 41 }, () => 12)),
        2,
      ),
    ),
  );

/** What a part of the page says with spaces that break, as a person reads it. */
const words = async (where: Locator): Promise<string> =>
  ((await where.textContent()) ?? "").replaceAll("\u00a0", " ");

/** The figure that a part of the page says by a pattern, once it says one. */
async function said(where: Locator, figure: RegExp): Promise<string> {
  await expect.poll(() => words(where), { timeout: 60_000 }).toMatch(figure);
  return figure.exec(await words(where))?.[1] ?? "";
}

/** A part of the page comes to say words. */
const says = (where: Locator, text: string | RegExp): Promise<void> =>
  typeof text === "string"
    ? expect.poll(() => words(where), { timeout: 60_000 }).toContain(text)
    : expect.poll(() => words(where), { timeout: 60_000 }).toMatch(text);

test("a piece of the maker's own goes from its mesh to the archive, and every hand-over keeps its figures", async ({
  page,
}) => {
  test.setTimeout(400_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const soon = { timeout: 60_000 };
  const main = page.getByRole("main");
  const region = (title: string) => page.getByRole("region", { name: title, exact: true });
  const line = (title: string) => page.getByRole("listitem", { name: title, exact: true });
  const waitMinutes = (minutes: number) => page.clock.fastForward(Math.round(minutes * 60_000));
  const press = async (title: string | RegExp): Promise<void> => {
    await tap(key(title));
    await page.clock.fastForward(800);
  };
  const toFire = () =>
    tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: "Fire" }));
  const onPiece = async (link: string): Promise<void> => {
    await maker.openPiece(name);
    await tap(page.getByRole("link", { name: link, exact: true }).first());
  };
  const toPour = async (): Promise<void> => {
    await toFire();
    await tap(page.getByRole("link", { name: /^Pour of 1 shell/ }));
    await maker.onScreen(new RegExp(`^Pour: ${name}`));
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
  let metal = "";
  let head = "";
  let charge = "";
  let shell = "";

  await test.step("the mesh is measured as its sides say, gated, and gives metal, area and head", async () => {
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Patterns/ }).first());
    await page
      .getByLabel("3D file")
      .setInputFiles({ name: "boot scraper.stl", mimeType: "model/stl", buffer: slab() });
    await maker.onScreen("boot scraper");
    await tap(page.getByRole("radio", { name: /^Millimetres/ }));
    await expect(page.locator("canvas")).toBeVisible(soon);
    await page.getByLabel("Name", { exact: true }).fill(name);
    await page.getByRole("combobox", { name: "Alloy" }).selectOption({ label: "C87300 silicon bronze" });
    await maker.chooseRecipe("Small fine work (8 coats)");
    await tap(page.getByRole("radio", { name: "Gating", exact: true }));
    await tap(key("Gate at the lowest place"));
    await tap(key("Draw a starting tree"));
    await says(region("Metal"), "The piece 76.8 cm³");
    metal = await said(region("Gating tree"), /Gating and piece.*?, ([\d.]+ kg)/);
    expect(await said(region("Metal"), /([\d.]+ kg)/)).toBe(metal);
    head = await said(region("Gating tree"), /Head over the lowest place\s*([\d.]+ mm)/);
    await expect(region("Shell this pattern needs")).toContainText(/decides/, soon);
  });

  await test.step("begun from it, its plan, its log and its metal page say the same", async () => {
    await tap(key("Start a piece from it"));
    await says(region("From its pattern"), `head ${head}`);
    await tap(key("Start it"));
    await onPiece("Plan");
    await maker.onScreen("Plan");
    await expect(page.getByLabel("Head", { exact: true })).toHaveValue(head.replace(" mm", ""));
    expect(await said(region("The metal"), /That is about ([\d.]+ kg)/)).toBe(metal);
    await maker.choose("Made of", "Wax");
    await tap(key("Save the plan"));
    await maker.onScreen(name);
    await says(maker.logLines().filter({ hasText: "Pattern measured" }), "volume 76.8 cm³");
    await says(maker.logLines().filter({ hasText: "Piece started" }), `head ${head}`);
    await onPiece("Metal");
    charge = await said(region("The charge"), /([\d.]+ kg) to weigh in/);
  });

  await test.step("eight coats: rack, piece and due list wait for the same time", async () => {
    await maker.readAir({ tempC: 24, rh: 0.44, moves: "Fan on the rack" });
    for (const [i, kind] of recipe.entries()) {
      await maker.dipCoat(kind, name);
      if (i === 2) {
        const when = /(?:dry|minimum runs to) (\d\d:\d\d)/;
        const onRack = await said(page.getByRole("list", { name: "Pieces in work" }), when);
        await tap(page.getByRole("link", { name: /Due and alarms/ }).first());
        await maker.onScreen("Due");
        expect(await said(main, when)).toBe(onRack);
        await maker.openPiece(name);
        expect(await said(region("What is next"), when)).toBe(onRack);
      }
      await maker.waitHours(12);
    }
  });

  await test.step("the shell on the piece is the shell on the review, for the same head and metal", async () => {
    await maker.waitHours(30);
    await maker.readAir({ tempC: 24, rh: 0.44 });
    await maker.openPiece(name);
    shell = await said(main, /The shell is ([\d.]+ mm \([\d.]+ mm to [\d.]+ mm\))/);
    const needs = await said(main, /((?:handling|this pour) needs [\d.]+ mm)/);
    await onPiece("Review");
    await maker.onScreen("Review before burnout");
    await says(main, ` · ${metal} · head ${head} · `);
    expect(
      await said(region("Shell against the pour"), /Shell\s*([\d.]+ mm \([\d.]+ mm to [\d.]+ mm\))/),
    ).toBe(shell);
    expect(`handling needs ${await said(main, /Needed\s*([\d.]+ mm)/)}`).toBe(needs);
    await page.getByLabel("Name", { exact: true }).fill("Ada");
    await tap(key(/^Sign( with warnings)?$/));
    await expect(page.getByText("Signed by Ada")).toBeVisible();
    await maker.openPiece(name);
    await maker.logFor("Shell fired", { "Top temperature": "880", "Held for": "60" });
  });

  await test.step("the melt asks for the charge that the metal page gave", async () => {
    await onPiece("Metal");
    await says(region("The charge"), charge);
    await toFire();
    await tap(page.getByRole("link", { name: "Plan a melt" }).first());
    await maker.onScreen("Plan a melt");
    await page.getByRole("combobox", { name: "Alloy" }).selectOption({ label: "C87300 silicon bronze" });
    await page.getByRole("checkbox", { name: new RegExp(name) }).check();
    expect(await said(region("Alloy and pieces"), /Casting and gating\s*([\d.]+ kg)/)).toBe(metal);
    expect(await said(region("Alloy and pieces"), /To weigh in\s*([\d.]+ kg)/)).toBe(charge);
    await tap(key("Add ingot or returns"));
    await page.getByLabel("Weight").fill(charge.replace(" kg", ""));
    await says(region("Alloy and pieces"), `Enough is weighed in: ${charge}`);
    await tap(key("Plan this melt"));
    await maker.onScreen(/^Melt/);
  });

  await test.step("the pour takes shell, metal and charge from them", async () => {
    await toFire();
    await tap(page.getByRole("link", { name: "Plan a pour" }).first());
    await page.getByRole("checkbox", { name }).check();
    expect(await said(main, /Holds ([\d.]+ kg)/)).toBe(metal);
    await page.getByLabel("Melt", { exact: true }).selectOption({ index: 1 });
    await page.getByLabel("From cold kiln to soaked shell").fill("60");
    await page.getByLabel("To melt").fill("30");
    await tap(key("Plan this pour"));
    await maker.onScreen(new RegExp(`^Pour: ${name}`));
  });

  await test.step("kiln and melt run, the sheet counts what was weighed and read", async () => {
    await press("Kiln is on");
    await waitMinutes(30);
    await toFire();
    await tap(page.getByRole("link", { name: /kg of C87300/ }));
    await maker.onScreen(/^Melt/);
    await says(main, `Planned: ${charge}`);
    await page.getByLabel("Charge on the scale").fill(charge.replace(" kg", ""));
    await press("Furnace lit");
    await waitMinutes(30);
    await tap(key(/^It shows \d/));
    await press("Log this reading");
    await toPour();
    await tap(page.getByText(/^The other tracks: /));
    await tap(key("Kiln not read: set it"));
    await tap(key("Kiln, read: same as planned"));
    await press("Shell is soaked");
    await tap(page.getByRole("link", { name: "Pour sheet", exact: true }));
    await maker.onScreen("Pour sheet");
    await says(line("Enough metal"), `${metal} wanted`);
    await says(line("Enough metal"), "weighed, less loss");
    await settleLines();
    await tap(page.getByRole("button", { name: "Go", exact: true }));
    await expect(page.getByText(/^Go given by Ada/)).toBeVisible();
  });

  await test.step("poured, knocked out, its result recorded, and put in the archive", async () => {
    await toPour();
    await press(/^Out of the kiln/);
    await waitMinutes(1);
    await press(/^Pour start/);
    await waitMinutes(0.2);
    await press(/^Full/);
    await expect(page.getByRole("heading", { name: "All shells are full" })).toBeVisible();
    await tap(key("End the pour"));
    await waitMinutes(4 * 60);
    await maker.openPiece(name);
    await maker.logFor("Knocked out", {});
    await says(region("Metal from"), charge);
    await tap(page.getByText("The shell as it was"));
    await says(main, `The shell was ${shell}`);
    await tap(page.getByRole("link", { name: "Record the result" }).first());
    await maker.choose("The casting is", "Sound");
    await maker.logIt();
    await maker.logFor("Finishing", { "What was done": "cut off, brushed" });
    await maker.goTo("Rack");
    await tap(page.getByRole("link", { name: "Archive" }));
    await maker.onScreen("Archive");
    await tap(page.getByRole("link", { name: new RegExp(name) }));
    await maker.onScreen(name);
    await tap(page.getByText("The shell as it was"));
    await says(main, `The shell was ${shell}`);
    await says(region("Metal from"), charge);
  });
});
