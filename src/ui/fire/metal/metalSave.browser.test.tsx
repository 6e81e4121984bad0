import { cleanup } from "@testing-library/react";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { streamOf, type EntryBodies } from "../../../logbook/entries/entry.ts";
import { GatingPage } from "./GatingPage.tsx";
import { MeltPlanPage } from "./MeltPlanPage.tsx";
import { PieceMetalPage } from "./PieceMetalPage.tsx";

afterEach(clearDesks);

const field = (name: string) => page.getByRole("textbox", { name, exact: true });
const press = (name: string | RegExp) => page.getByRole("button", { name }).click();
const openMetal = ({ shop }: Desk) =>
  showAt(shop, "/piece/demo-wren/metal", { route: "/piece/:id/metal", screen: PieceMetalPage });

const mesh: EntryBodies["pattern-measured"] = {
  patternId: "p",
  fileName: "gate finial.stl",
  sumsVersion: 1,
  triangles: 12,
  watertight: true,
  mmPerUnit: 1,
  volumeMm3: 160_000,
  areaMm2: 21_000,
  boxMm: [40, 50, 80],
  up: [0, 0, 1],
  headM: 0.2,
  tips: 0,
  vents: 0,
  drains: 0,
  trappedMl: null,
  gatingMm3: 230_000,
  thinnestMm: 4,
  thickestMm: 40,
};

/** A piece begun from a mesh with a tree: 0.39 l with it, 0.16 l without. */
async function fromMesh(): Promise<Desk> {
  const desk = await demoDesk();
  const stream = streamOf("piece", "demo-wren");
  const changes = { alloyId: "c87300", metalKg: null, metalLitre: 0.39 };
  await desk.shop.log({ do: "log", stream, type: "piece-changed", body: { changes } });
  await desk.shop.log({ do: "log", stream, type: "pattern-measured", body: mesh });
  return desk;
}

test("the tree of the mesh is in the charge by itself, and the melt plan weighs in as much", async () => {
  const desk = await fromMesh();
  openMetal(desk);
  await expect.element(page.getByRole("radio", { name: "From the 3D file" })).toBeChecked();
  // 0.39 l at 8360 kg/m³, 0.2 kg of margin, the 2 % of loss this shop has seen: 3.53 kg.
  await expect
    .element(page.getByRole("region", { name: "The charge" }))
    .toHaveTextContent(/3\.53 kg to weigh in/);
  await expect
    .element(page.getByRole("region", { name: "Save to the plan" }))
    .toHaveTextContent(/3\.26 kg casting and gating/);
  await press("Save to the plan");
  await expect.element(page.getByText("Already in the plan.")).toBeVisible();
  expect((await desk.logged("piece-changed")).at(-1)?.body.changes).toEqual({
    metalKg: 3.26,
    metalLitre: 0.39,
    metalKnown: "measured",
  });
  cleanup();
  showAt(desk.shop, "/fire/melt/new", { route: "/fire/melt/new", screen: MeltPlanPage });
  await page.getByLabelText("Alloy", { exact: true }).selectOptions("C87300 silicon bronze");
  await page.getByRole("checkbox", { name: /wren/ }).click();
  await expect.element(page.getByText("3.53 kg more to weigh in.")).toBeVisible();
});

test("a save that lowers the metal says from what to what, and asks", async () => {
  const desk = await fromMesh();
  const saved = async () =>
    (await desk.logged("piece-changed")).map(({ body }) => body.changes.metalKg ?? null);
  openMetal(desk);
  await page.getByRole("radio", { name: "In metal" }).click();
  await press("Save to the plan");
  const asks = page.getByRole("group", { name: "Less metal than the plan has" });
  await expect.element(asks).toHaveTextContent(/from 3\.26 kg \(0\.39 L\) to 1\.34 kg \(0\.16 L\)/);
  const before = await saved();
  await asks.getByRole("button", { name: /^Keep / }).click();
  await expect.element(asks).not.toBeInTheDocument();
  expect(await saved()).toEqual(before);
  // Another figure is asked about anew.
  await press("Save to the plan");
  await field("Gating").fill("0.2");
  await expect.element(asks).not.toBeInTheDocument();
  await press("Save to the plan");
  await asks.getByRole("button", { name: /^Lower it to 1\.54/ }).click();
  await expect.poll(saved).toEqual([...before, 1.538]);
});

test("more than the plan has is saved without a question", async () => {
  const desk = await fromMesh();
  openMetal(desk);
  await page.getByRole("radio", { name: "In metal" }).click();
  await field("Gating").fill("2.5");
  await press("Save to the plan");
  await expect.element(page.getByText("Already in the plan.")).toBeVisible();
});

test("the gating page starts from the thickest place: its first knockout is not that of 4 mm", async () => {
  const { shop } = await fromMesh();
  showAt(shop, "/piece/demo-wren/gating", { route: "/piece/:id/gating", screen: GatingPage });
  const card = page.getByRole("region", { name: "Knock-out" });
  // A plate of 40 mm in a hot shell: some 20 minutes to freeze, ten times that before it comes out.
  await expect.element(card).toHaveTextContent(/thickest section is frozen after about \d\d min/);
  await expect.element(card).toHaveTextContent(/Not out of the shell before \d(\.\d)? h/);
  await expect.element(page.getByText(/Casting, thickest place/).first()).toBeVisible();
});

test("hazards beside a scrap melt are those of the mix, and without its make the worse of mix and alloy", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/fire/melt/new", { route: "/fire/melt/new", screen: MeltPlanPage });
  await page.getByLabelText("Alloy", { exact: true }).selectOptions("C90300 tin bronze");
  await press("Add ingot or returns");
  await field("Weight").fill("8");
  const cautions = page.getByRole("region", { name: "Cautions" });
  await expect.element(cautions).toHaveTextContent(/Up to 4\.93% zinc/);
  await expect.element(cautions).not.toHaveTextContent(/lead/);
  await press("Add scrap");
  await field("Weight").fill("2");
  await page.getByRole("radio", { name: "No", exact: true }).click();
  // 8 kg with up to 0.3 % and 2 kg with up to 15 %: some 3.3 %.
  await expect.element(cautions).toHaveTextContent(/Up to 3\.\d+% lead/);
  await expect.element(page.getByRole("radio", { name: "Mixed returns" })).toBeChecked();
  await press("Plan this melt");
  await expect.poll(async () => (await logged("melt-planned")).at(-1)?.body.chargeKind).toBe("mixed-returns");
});
