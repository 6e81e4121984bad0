import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { shareField, sharePath, stashShared } from "../../../device/sharedFile.ts";
import { getPattern } from "../../../storage/patterns.ts";
import { StartPage } from "../../making/start/StartPage.tsx";
import { patternSession } from "./patternSession.ts";
import { PatternPage } from "./PatternPage.tsx";
import { PatternsPage } from "./PatternsPage.tsx";
import { readStudy } from "./readStudy.ts";
import { sumsVersion } from "./sumsVersion.ts";

afterEach(async () => {
  patternSession().clear();
  await clearDesks();
});

const list = { route: "/patterns", screen: PatternsPage };
const one = { route: "/patterns/:id", screen: PatternPage };
const press = (name: string | RegExp) => page.getByRole("button", { name }).first().click();
const text = (words: string | RegExp) => page.getByText(words).first();
const card = (name: string) => page.getByRole("region", { name });
const soon = { timeout: 15_000 };

/** A box of 10 × 10 × 10 as text, `left` of its twelve triangles left out. */
function boxFile(name: string, left = 0): File {
  const corner = (n: number): string => `${10 * (n & 1)} ${5 * (n & 2)} ${2.5 * (n & 4)}`;
  const faces = ["0 2 3", "0 3 1", "4 5 7", "4 7 6", "0 1 5", "0 5 4", "2 6 7", "2 7 3", "0 4 6", "0 6 2"];
  const facets = [...faces, "1 3 7", "1 7 5"].slice(left).map((face) => {
    const corners = face.split(" ").map((n) => `vertex ${corner(Number(n))}\n`);
    return `facet normal 0 0 0\nouter loop\n${corners.join("")}endloop\nendfacet\n`;
  });
  return new File([`solid box\n${facets.join("")}endsolid box\n`], name);
}

async function opened(desk: Desk, file?: File): Promise<string> {
  const { places } = showAt(desk.shop, "/patterns", list);
  if (file === undefined) await press("Try the sample");
  else await userEvent.upload(page.getByLabelText("3D file"), file);
  await expect.poll(() => places.at(-1), soon).toMatch(/^\/patterns\/[0-9a-f]{64}$/);
  return places.at(-1)!;
}
const studyAt = async ({ db }: Desk, path: string) =>
  readStudy((await getPattern(db, path.replace("/patterns/", "")))?.kept);

test("the sample, from its unit to a piece with its metal, surface, head and wall", async () => {
  const desk = await demoDesk();
  const path = await opened(desk);
  showAt(desk.shop, path, one);
  // Nothing in millimetres before its maker has said what the file is in.
  await expect.element(page.getByText(/longest side 12\d.*mm, most likely/)).toBeVisible();
  await expect
    .element(page.getByRole("button", { name: "Start a piece from it" }))
    .toHaveAttribute("aria-disabled");
  await page.getByRole("radio", { name: "Millimetres" }).click();
  await page.getByRole("combobox", { name: "Alloy" }).selectOptions("c87300");
  await page.getByRole("combobox", { name: "Recipe" }).selectOptions("start-small");
  await expect.element(card("The mesh").getByText(/^Watertight/)).toBeVisible();
  // Air: all of it stays until the tips are vented, then next to nothing.
  await expect.element(page.getByText(/^Air stays: /).first(), soon).toBeVisible();
  await page.getByRole("button", { name: /^Put vents at all/ }).click();
  await expect.element(page.getByText(/^(No air stays|Air stays: 0)/).first(), soon).toBeVisible();
  await expect.element(card("Metal").getByText(/kg/).first()).toBeVisible();
  await expect
    .element(
      card("Slurry and stucco")
        .getByText(/about .*kg/)
        .first(),
    )
    .toBeVisible();
  await expect.element(card("Shell this pattern needs").getByText(/decides/), soon).toBeVisible();
  await expect.element(card("Slow-drying hollows"), soon).toBeVisible();
  // Kept by itself, and there again at once, without the worker.
  await expect.poll(async () => (await studyAt(desk, path))?.shape?.thickness ?? null, soon).not.toBeNull();
  const kept = await studyAt(desk, path);
  expect(kept).toMatchObject({ unit: "mm", alloyId: "c87300" });
  expect(kept?.marks.length).toBeGreaterThan(1);

  await press("Start a piece from it");
  const { places } = showAt(desk.shop, "/piece/new", { route: "/piece/new", screen: StartPage });
  await expect
    .element(card("From its pattern").getByText(/metal .*L, head .*, wall part .*, area/))
    .toBeVisible();
  await press("Start it");
  await expect.poll(() => places.at(-1)).toBe("/");
  const [started] = await desk.logged("piece-started");
  const [measured] = await desk.logged("pattern-measured");
  expect(measured?.stream).toBe(started?.stream);
  expect(measured?.body).toMatchObject({
    mmPerUnit: 1,
    watertight: true,
    sumsVersion,
    fileName: "sample-pattern.stl",
  });
  expect(started?.body.plan).toMatchObject({
    name: "sample-pattern",
    alloyId: "c87300",
    recipeId: "start-small",
    patternId: measured?.body.patternId,
    metalLitre: Number((measured!.body.volumeMm3! / 1e6).toPrecision(4)),
  });
  expect(started?.body.plan.headM).toBeGreaterThan(0.1);
  expect(started?.body.plan.part).toBeDefined();
}, 60_000);

test("a file that is no mesh says what was found and what to do, and nothing is kept", async () => {
  const desk = await demoDesk();
  showAt(desk.shop, "/patterns", list);
  await userEvent.upload(page.getByLabelText("3D file"), new File(["a letter"], "letter.stl"));
  await expect.element(page.getByRole("alert"), soon).toHaveTextContent(/^Found .*, expected .*\. /);
  expect(await desk.db.patterns.count()).toBe(0);
});

test("a box without its lid: what its volume would be, then a litre count when the hole is closed", async () => {
  const desk = await demoDesk();
  const path = await opened(desk, boxFile("small_box.stl", 2));
  showAt(desk.shop, path, one);
  await page.getByRole("radio", { name: "Millimetres" }).click();
  await expect.element(text(/^Not watertight: it has open edges/)).toBeVisible();
  await expect.element(card("Metal").getByText(/^1.cm³, whichever way its holes are closed/)).toBeVisible();
  await press("Close the hole");
  await expect.element(text(/1 hole was closed as you said/), soon).toBeVisible();
  await expect
    .element(
      card("Metal")
        .getByText(/^1.cm³/)
        .first(),
    )
    .toBeVisible();
});

test("twice the size by length is eight times the metal; a kept file stays with it", async () => {
  const desk = await demoDesk();
  const path = await opened(desk, boxFile("block.stl"));
  showAt(desk.shop, path, one);
  await page.getByRole("radio", { name: "Millimetres" }).click();
  await page.getByRole("radio", { name: "To a length" }).click();
  await page.getByRole("textbox", { name: "Longest side becomes" }).fill("20");
  await expect
    .element(
      card("Metal")
        .getByText(/^8.cm³/)
        .first(),
    )
    .toBeVisible();
  await page.getByRole("checkbox", { name: /^Keep the file itself/ }).click();
  await expect
    .poll(async () => (await studyAt(desk, path))?.original?.size, soon)
    .toBe(boxFile("block.stl").size);
});

test("what the pattern tells goes into the plan of a piece that hangs already", async () => {
  const desk = await demoDesk();
  const path = await opened(desk, boxFile("block.stl"));
  const { places } = showAt(desk.shop, path, one);
  await page.getByRole("radio", { name: "Centimetres" }).click();
  await page.getByRole("combobox", { name: /^Or use it for a piece/ }).selectOptions("demo-wren");
  await press(/^Use it for /);
  await expect.poll(() => places.at(-1)).toBe("/piece/demo-wren");
  const [changed] = await desk.logged("piece-changed");
  expect(changed?.body.changes).toMatchObject({ metalLitre: 1, metalKg: null, areaM2: 0.06 });
  expect((await desk.logged("pattern-measured"))[0]?.stream).toBe("piece/demo-wren");
});

test("a file shared with the app opens by itself, and a pattern can be removed", async () => {
  const desk = await demoDesk();
  const body = new FormData();
  body.set(shareField, boxFile("from phone.stl"));
  const scope = new URL(import.meta.env.BASE_URL, location.origin).href;
  await stashShared(new Request(new URL(sharePath, scope), { method: "POST", body }), { scope });
  const { places } = showAt(desk.shop, "/patterns", list);
  await expect.poll(() => places.at(-1), soon).toMatch(/^\/patterns\/[0-9a-f]{64}$/);
  const { places: after } = showAt(desk.shop, places.at(-1)!, one);
  await expect.element(page.getByRole("heading", { name: "from phone" })).toBeVisible();
  await press("Remove the pattern…");
  await press("Remove the pattern");
  await expect.poll(() => after.at(-1)).toBe("/patterns");
  expect(await desk.db.patterns.count()).toBe(0);
});
