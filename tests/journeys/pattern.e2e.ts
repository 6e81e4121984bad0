import { expect, test } from "@playwright/test";
import { hills } from "../meshes/testShapes.ts";
import { stlBinaryFile } from "../meshFiles.ts";
import { handsOn } from "./hands.ts";
import { makerAt } from "./maker.ts";
import { visitOnceThenOffline } from "./offline.ts";
import { linesOf } from "./store.ts";

const across = 275;
const cellMm = 0.4;

/** A block with three knolls of different heights, about 110 mm wide: 300 thousand triangles and more. */
function knolls(): Buffer {
  const knoll = (
    x: number,
    y: number,
    [cx, cy, tall, wide]: readonly [number, number, number, number],
  ): number => tall * Math.exp(-((x - cx) ** 2 + (y - cy) ** 2) / wide ** 2);
  const heights = Array.from({ length: across }, (_, j) =>
    Array.from({ length: across }, (_, i) => {
      const [x, y] = [i * cellMm, j * cellMm];
      return (
        18 + knoll(x, y, [30, 30, 42, 12]) + knoll(x, y, [80, 35, 30, 11]) + knoll(x, y, [50, 82, 24, 10])
      );
    }),
  );
  return Buffer.from(stlBinaryFile(hills(heights, cellMm)));
}

test("from a mesh file, offline on the phone: turned, vented until no air stays, its metal read, a piece begun", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await visitOnceThenOffline(page, "2026-03-02T08:00:00+01:00");
  const maker = makerAt(page, handsOn(page));
  const { tap, key } = maker;
  const picture = page.locator("canvas");
  const stays = page.getByRole("status").filter({ hasText: /air stays/i });
  const metal = page.getByRole("region", { name: "Metal", exact: true });
  const soon = { timeout: 60_000 };

  await test.step("a file of 300,000 triangles is read from the phone and says how large it is", async () => {
    const file = knolls();
    expect(file.readUInt32LE(80)).toBeGreaterThan(300_000);
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Patterns/ }).first());
    await page
      .getByLabel("3D file")
      .setInputFiles({ name: "knolls.stl", mimeType: "model/stl", buffer: file });
    await maker.onScreen("knolls");
    await expect(page.getByText(/Watertight/).first()).toBeVisible(soon);
    await tap(page.getByRole("radio", { name: /^Millimetres/ }));
    await expect(picture).toBeVisible(soon);
  });

  await test.step("the three knolls are the places where air stays, each with its height and amount", async () => {
    const places = page.getByRole("list", { name: "Places where air stays" });
    await expect(places.getByRole("listitem")).toHaveCount(3, soon);
    await expect(places).toContainText("The highest place, 60 mm up");
    await expect(stays).toContainText("no vent yet", soon);
  });

  await test.step("leaned over, other places are the tops", async () => {
    await tap(page.getByRole("radio", { name: "Position", exact: true }));
    await tap(page.getByRole("radio", { name: "15°" }));
    await tap(key("Lean it right"));
    await tap(page.getByRole("radio", { name: "Air", exact: true }));
    await expect(page.getByText(/The highest place, (?!60 mm)/).first()).toBeVisible(soon);
  });

  await test.step("vents go where the list says, until no air stays", async () => {
    const put = page.getByRole("button", { name: /^Put a vent here/ });
    while ((await put.count()) > 0) {
      await expect(stays).toHaveAttribute("aria-busy", "false", soon);
      const before = await put.count();
      await tap(put.first());
      await expect(put).toHaveCount(before - 1);
    }
    await expect(stays).toContainText("No air stays", soon);
  });

  await test.step("one taken away brings the air back at once, and Undo lets it out again", async () => {
    await tap(page.getByRole("button", { name: "Take the vent away: V1" }));
    await expect(stays).toContainText(/Air stays: \d/, soon);
    await tap(key("Undo"));
    await expect(stays).toContainText("No air stays", soon);
  });

  await test.step("a finger on the picture puts a gate, and the metal rises from it", async () => {
    await tap(page.getByRole("radio", { name: "Gate", exact: true }));
    await tap(picture);
    await expect(page.getByRole("list", { name: "Placed on the pattern" })).toContainText("Gate");
    await tap(page.getByRole("radio", { name: "Fill", exact: true }));
    await page.getByLabel("Fill level").fill("100", soon);
    await expect(page.getByText(/(cm³|L) of metal, up to \d/)).toBeVisible();
  });

  await test.step("the metal is told by weight once the alloy is known", async () => {
    await page.getByRole("combobox", { name: "Alloy" }).selectOption({ label: "C87300 silicon bronze" });
    await expect(metal).toContainText(/\d.kg/);
  });

  await test.step("a piece is begun from it and carries its metal and what was measured", async () => {
    await tap(key("Start a piece from it"));
    await tap(key("Start it"));
    await maker.onScreen("Rack");
    const [started] = await linesOf(page, "piece-started");
    const [measured] = await linesOf(page, "pattern-measured");
    expect(started?.body["plan"]).toMatchObject({ name: "knolls", alloyId: "c87300" });
    expect(measured?.body).toMatchObject({ fileName: "knolls.stl", watertight: true, mmPerUnit: 1 });
    expect(Number(measured?.body["vents"])).toBeGreaterThanOrEqual(2);
  });

  await test.step("opened again it is there at once, vents and all", async () => {
    await maker.goTo("Shop");
    await tap(page.getByRole("link", { name: /^Patterns/ }).first());
    await tap(page.getByRole("link", { name: /knolls/ }));
    await expect(picture).toBeVisible();
    await expect(stays).toContainText("No air stays", soon);
  });
});
