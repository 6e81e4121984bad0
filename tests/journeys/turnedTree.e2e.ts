import { expect, test } from "@playwright/test";
import { stlBinaryFile } from "../meshFiles.ts";
import { ball, towers } from "../meshes/testShapes.ts";
import { together, turnedInsideOut } from "../meshes/testSolids.ts";
import type { Mesh } from "../../src/geometry/mesh.ts";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

const soon = { timeout: 60_000 };
const fileOf = (name: string, mesh: Mesh) => ({
  name,
  mimeType: "model/stl",
  buffer: Buffer.from(stlBinaryFile(mesh)),
});
/** The first figure of such a unit among some words. */
const figure = (words: string, unit: string): string =>
  new RegExp(`([\\d.,]+\\s${unit})(?![\\w²³])`).exec(words)?.[1] ?? `no ${unit} in: ${words}`;

test("a piece with a tree is turned: the tree no longer fits until it is drawn anew, and plan, metal and gating have the new figures", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const card = (name: string | RegExp) => page.getByRole("region", { name, exact: typeof name === "string" });
  const look = (name: string) => tap(page.getByRole("radio", { name, exact: true }));
  const misfit = card("The tree no longer fits");
  const wordsOf = async (name: string): Promise<string> => (await card(name).textContent()) ?? "";

  await test.step("a mesh with two towers, its vents, a gate and a starting tree", async () => {
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Patterns/ }).first());
    await page.getByLabel("3D file").setInputFiles(fileOf("towers.stl", towers));
    await maker.onScreen("towers");
    await tap(page.getByRole("radio", { name: /^Millimetres/ }));
    await page.getByRole("combobox", { name: "Alloy" }).selectOption({ label: "C87300 silicon bronze" });
    await look("Gating");
    await tap(key("Gate at the lowest place"));
    await look("Air");
    await tap(key(/^Put vents at all 2/));
    await look("Gating");
    await tap(key("Draw a starting tree"));
    await expect(card("Gating tree")).toContainText(/Level in the cup.*150.mm/);
    await expect(card("Metal")).toContainText(/what is drawn on it/);
  });

  await test.step("a vent taken away takes its rod along, and Undo brings both back", async () => {
    const rods = card("Gating parts").getByText("Vent", { exact: true });
    await expect(rods).toHaveCount(2);
    await look("Air");
    await tap(key("Take the vent away: V2"));
    await look("Gating");
    await expect(rods).toHaveCount(1);
    await tap(card("Gating tree").getByRole("button", { name: "Undo" }));
    await expect(rods).toHaveCount(2);
    await expect(misfit).toHaveCount(0);
  });

  await test.step("leaned over, it is said not to fit, and nothing that rests on it is shown or used", async () => {
    await look("Position");
    await tap(key("Lean it right"));
    await expect(misfit).toContainText("pour position changed after the tree was drawn", soon);
    await expect(card("Metal")).toContainText("no longer fits and is not counted");
    await expect(card("Slurry and stucco")).toContainText("no longer fits and is not counted");
    await look("Gating");
    await expect(card("Gating tree")).not.toContainText("Level in the cup");
    await expect(card(/plastic drains/)).toHaveCount(0);
    await expect(key("Start a piece from it")).toHaveAttribute("aria-disabled", "true");
  });

  await test.step("as in its file it fits again; leaned once more, one key draws it anew", async () => {
    await look("Position");
    await tap(key("As in its file"));
    await expect(misfit).toHaveCount(0);
    await tap(key("Lean it right"));
    await expect(misfit).toBeVisible(soon);
    await tap(key("Redraw the tree"));
    await expect(misfit).toHaveCount(0);
    await look("Gating");
    // 60 mm high as it lies, and the cup 100 mm above.
    await expect(card("Gating tree")).toContainText(/Level in the cup.*160.mm/, soon);
    await expect(card("Gating tree")).toContainText(/Head over the lowest place.*160.mm/);
  });

  const metal = await wordsOf("Metal");
  const kg = figure(metal, "kg");
  const area = figure(await wordsOf("Slurry and stucco"), "m²");
  const bars = /Bars[\d.,]+\s(?:cm³|L), ([\d.,]+\skg)/.exec(await wordsOf("Gating tree"))?.[1] ?? "no bars";

  await test.step("the plan of a piece begun from it has metal and surface of piece and tree", async () => {
    await tap(key("Start a piece from it"));
    await expect(card("From its pattern")).toContainText(area);
    await tap(key("Start it"));
    await maker.onScreen("Rack");
    const [started] = await linesOf(page, "piece-started");
    const [measured] = await linesOf(page, "pattern-measured");
    expect(measured?.body).toMatchObject({ vents: 2, headM: 0.16 });
    expect(Number(measured?.body["gatingAreaMm2"])).toBeGreaterThan(10_000);
    const plan = started?.body["plan"] as { readonly metalLitre: number };
    expect(plan.metalLitre * 1e6).toBeCloseTo(
      Number(measured?.body["volumeMm3"]) + Number(measured?.body["gatingMm3"]),
      -2,
    );
  });

  await test.step("the metal page has the same kilos by the mesh", async () => {
    await tap(page.getByRole("link", { name: /towers/ }).first());
    await maker.onScreen("towers");
    await tap(page.getByRole("link", { name: "Metal", exact: true }).first());
    await maker.onScreen("Metal");
    await tap(page.getByRole("radio", { name: "From the 3D file" }));
    await expect(card("Save to the plan")).toContainText(kg);
    await expect(card("The charge")).toContainText(`Gating${bars}`);
  });

  await test.step("the gating page takes chain, metal, gate and lengths; no sum waits for a figure", async () => {
    await tap(page.getByRole("link", { name: "Gating and feeding" }).first());
    await maker.onScreen("Gating and feeding");
    await expect(card("From the pattern")).toContainText(`metal ${kg}`);
    await tap(key("Take from the pattern"));
    await expect(card("From the pattern")).toContainText("All of it is shown below");
    const field = page.getByRole("textbox", { name: "Metal through the sprue" });
    expect(Number(await field.inputValue())).toBeCloseTo(Number.parseFloat(kg), 1);
    await expect(card("Fill time and choke")).toContainText("choke at the sprue's foot");
    await expect(card("Fill time and choke")).toContainText(/Through these gates the metal comes in at/);
    await expect(page.getByRole("region", { name: "Riser checks" })).toContainText(
      /Has enough metal: [\d.]+.cm³/,
    );
  });

  await test.step("turned again after that, the gating page says that nothing can be taken from it", async () => {
    await tap(card("From the pattern").getByRole("link", { name: "towers" }));
    await look("Position");
    await tap(key("Z down"));
    await expect(misfit).toBeVisible(soon);
    await page.goBack();
    await maker.onScreen("Gating and feeding");
    await expect(card("From the pattern")).toContainText("The tree no longer fits", soon);
  });

  await test.step("drawn anew once more and used for the piece that hangs, its plan has the figures of today", async () => {
    await tap(card("From the pattern").getByRole("link", { name: "towers" }));
    await tap(key("Redraw the tree"));
    await expect(misfit).toHaveCount(0);
    const today = figure(await wordsOf("Metal"), "kg");
    expect(today).not.toBe(kg);
    await tap(key(/^Use it for towers/));
    await maker.onScreen("towers");
    await tap(page.getByRole("link", { name: "Metal", exact: true }).first());
    await expect(card("Save to the plan")).toContainText(today);
  });
});

test("a ball with a closed void: asked first whether it is metal or core, and metal and surface follow", async ({
  page,
}) => {
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const card = (name: string) => page.getByRole("region", { name, exact: true });
  const hollow = together(ball(60, 48), turnedInsideOut(ball(55, 48)));

  await maker.goTo("Shop");
  await tap(page.getByRole("link", { name: /^Patterns/ }).first());
  await page.getByLabel("3D file").setInputFiles(fileOf("float.stl", hollow));
  await maker.onScreen("float");
  await tap(page.getByRole("radio", { name: /^Millimetres/ }));
  await expect(card("Closed void")).toContainText("Is it metal (cast solid) or core and shell (open it)?");
  await expect(card("Closed void")).toContainText(/the metal of the piece is between 0\.21.L and 0\.90?.L/);
  await expect(card("Metal")).toContainText(/^MetalBetween 0\.21.L and 0\.90?.L/);
  await expect(key("Start a piece from it")).toHaveAttribute("aria-disabled", "true");

  await tap(page.getByRole("radio", { name: "Metal: cast solid" }));
  await expect(card("Metal")).toContainText(/^Metal0\.90?.L/);
  await expect(card("Slurry and stucco")).toContainText(/0\.045.m² to be coated/);
  // The places of the ball cast solid, not those of the wall that were listed before the answer.
  const places = page.getByRole("status").filter({ hasText: /air stays/i });
  await expect(places).toHaveAttribute("aria-busy", "false", soon);
  await tap(key("Put a vent here: V1"));
  await expect(places).toHaveAttribute("aria-busy", "false", soon);
  await tap(page.getByRole("radio", { name: "Fill", exact: true }));
  await tap(key("Gate at the lowest place"));
  // 0.90 L by cells, not the 0.21 L of the wall alone.
  await expect(page.getByText(/^0\.(8[89]|9[0-2]?).L of metal, up to/)).toBeVisible(soon);

  await tap(page.getByRole("radio", { name: "Core and shell: open it" }));
  await expect(card("Metal")).toContainText(/^Metal0\.21.L/);
  await expect(card("Closed void")).toContainText("Open it before the first dip");
  await expect(card("Slurry and stucco")).toContainText(/0\.083.m² to be coated/);
});
