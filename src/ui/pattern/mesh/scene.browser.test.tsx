import { afterEach, expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { towers } from "../../../../tests/meshes/testShapes.ts";
import type { Mesh } from "../../../geometry/mesh.ts";
import { getPattern } from "../../../storage/patterns.ts";
import { getPhoto } from "../../../storage/photos.ts";
import { patternSession } from "./patternSession.ts";
import { PatternPage } from "./PatternPage.tsx";
import { PatternsPage } from "./PatternsPage.tsx";
import { readStudy } from "./readStudy.ts";

afterEach(async () => {
  vi.restoreAllMocks();
  patternSession().clear();
  await clearDesks();
});

const soon = { timeout: 20_000 };
const press = (name: string | RegExp) => page.getByRole("button", { name }).first().click();
const choose = (name: string) => page.getByRole("radio", { name, exact: true }).click({ force: true });
const stays = () => page.getByRole("status").filter({ hasText: /air stays/i });
const list = (name: string) => page.getByRole("list", { name });

function stlFile({ pos, idx }: Mesh): File {
  const view = new DataView(new ArrayBuffer(84 + (50 * idx.length) / 3));
  view.setUint32(80, idx.length / 3, true);
  for (let n = 0; n < idx.length; n++)
    for (let k = 0; k < 3; k++)
      view.setFloat32(96 + 50 * Math.floor(n / 3) + 12 * (n % 3) + 4 * k, pos[3 * idx[n]! + k]!, true);
  return new File([view.buffer], "towers.stl");
}

async function twoTowers(): Promise<{
  readonly desk: Desk;
  readonly study: () => Promise<ReturnType<typeof readStudy>>;
}> {
  const desk = await demoDesk();
  const { places } = showAt(desk.shop, "/patterns", { route: "/patterns", screen: PatternsPage });
  await userEvent.upload(page.getByLabelText("3D file"), stlFile(towers));
  await expect.poll(() => places.at(-1), soon).toMatch(/^\/patterns\/[0-9a-f]{64}$/);
  const path = places.at(-1)!;
  showAt(desk.shop, path, { route: "/patterns/:id", screen: PatternPage });
  await page.getByRole("radio", { name: /^Millimetres/ }).click({ force: true });
  await expect.element(stays(), soon).toHaveTextContent(/^Air stays: all 53\.\d.cm³, no vent yet/);
  const study = async () => readStudy((await getPattern(desk.db, path.replace("/patterns/", "")))?.kept);
  return { desk, study };
}

test("two towers, vented one by one from the list alone: 2.9 ml stay, then none; Undo brings them back", async () => {
  const { study } = await twoTowers();
  await expect
    .element(list("Places where air stays"))
    .toHaveTextContent(/V1.*50.mm up.*V2.*40.mm up.*2\.9.cm³/);
  await press("Put a vent here: V1");
  await expect.element(stays(), soon).toHaveTextContent(/^Air stays: 2\.9.cm³ in one place/);
  await press("Put a vent here: V2");
  await expect.element(stays(), soon).toHaveTextContent(/^No air stays/);
  await expect.element(list("Placed on the pattern")).toHaveTextContent(/V1Vent, 50.mm up.*V2Vent, 40.mm up/);
  await press("Undo");
  await expect.element(stays(), soon).toHaveTextContent(/^Air stays: 2\.9/);
  await expect.poll(async () => (await study())?.marks.length, soon).toBe(1);
}, 60_000);

test("a finger on the picture puts a gate where it meets the piece, and the metal rises from there", async () => {
  const { study } = await twoTowers();
  await press("Top");
  await choose("Gate");
  await page.getByRole("img", { name: /in 3D, 50.mm high/ }).click();
  await expect.element(list("Placed on the pattern"), soon).toHaveTextContent(/G1Gate, (20|50|40).mm up/);
  await expect.poll(async () => (await study())?.marks[0]?.normal, soon).toEqual([0, 0, 1]);
  const first = (await study())?.marks[0]?.point;
  // Moved by hand: its button, then a finger where it should stand.
  await choose("Look");
  await press("Move G1");
  await page.getByRole("img", { name: /in 3D/ }).click({ position: { x: 215, y: 130 } });
  await expect.poll(async () => (await study())?.marks[0]?.point, soon).not.toEqual(first);
  await choose("Fill");
  await expect
    .element(page.getByText(/^53\.\d.cm³ of metal, up to 50|cm³ of metal.*of air cut off/), soon)
    .toBeVisible();
}, 60_000);

test("turned by a quarter it hangs on its side; as in its file it stands again", async () => {
  const { study } = await twoTowers();
  await choose("Position");
  await press("Lean it right");
  await expect.element(page.getByRole("img", { name: /60.mm high as it hangs/ }), soon).toBeVisible();
  await expect.poll(async () => (await study())?.up, soon).toEqual([-1, 0, 0]);
  await press("As in its file");
  await expect.element(page.getByRole("img", { name: /50.mm high as it hangs/ }), soon).toBeVisible();
}, 60_000);

test("a starting tree adds its bars to the metal, and its head reaches the level in the cup", async () => {
  const { study } = await twoTowers();
  await choose("Gating");
  await press("Gate at the lowest place");
  await press("Draw a starting tree");
  const tree = page.getByRole("region", { name: "Gating tree" });
  await expect.element(tree).toHaveTextContent(/Level in the cup150.mm/);
  await expect
    .element(page.getByRole("region", { name: "Metal", exact: true }))
    .toHaveTextContent(/what is drawn on it/);
  await expect
    .poll(async () => (await study())?.bars.map(({ kind }) => kind), soon)
    .toEqual(["cup", "sprue", "gate"]);
  await expect
    .element(page.getByRole("region", { name: /plastic drains/ }))
    .toHaveTextContent(/G1.*Downhill all the way/);
}, 60_000);

test("the picture goes into the log of a piece as a photo", async () => {
  const { desk } = await twoTowers();
  await page.getByText("Save this picture").click();
  await page.getByRole("combobox", { name: "Into the log of" }).selectOptions("demo-wren");
  await press("Put it into the log");
  await expect.poll(async () => (await desk.logged("note-written")).length, soon).toBe(1);
  const [note] = await desk.logged("note-written");
  expect(note?.stream).toBe("piece/demo-wren");
  const photo = await getPhoto(desk.db, note?.body.photos?.[0] ?? "");
  expect(photo?.type).toBe("image/jpeg");
  // A drawn picture, not an empty canvas of one colour.
  expect(photo?.size).toBeGreaterThan(6_000);
}, 60_000);

test("where the browser draws nothing in the round it says so, and the lists still work", async () => {
  vi.spyOn(HTMLCanvasElement.prototype, "getContext").mockReturnValue(null);
  await twoTowers();
  await expect.element(page.getByText(/^This browser can’t show 3D pictures/)).toBeVisible();
  await press("Put vents at all 2");
  await expect.element(stays(), soon).toHaveTextContent(/^No air stays/);
}, 60_000);
