import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { PlanPage } from "./PlanPage.tsx";
import { StartPage } from "./StartPage.tsx";

afterEach(clearDesks);

const field = (name: string) => page.getByRole("textbox", { name });
const press = (name: string) => page.getByRole("button", { name }).click();
const start = { route: "/piece/new", screen: StartPage };
const plan = { route: "/piece/:id/plan", screen: PlanPage };

test("a name and Enter start a piece and lead back to the rack", async () => {
  const { shop, logged } = await demoDesk();
  const { places } = showAt(shop, "/piece/new", start);
  await field("Name").fill("Heron, left wing");
  await userEvent.keyboard("{Enter}");
  await expect.poll(async () => (await logged("piece-started")).length).toBe(1);
  const [started] = await logged("piece-started");
  expect(started?.body).toEqual({ plan: { name: "Heron, left wing" }, roomId: "first" });
  await expect.poll(() => places.at(-1)).toBe("/");
});

test("without a name nothing is started, and it says why", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/piece/new", start);
  await field("Name").fill("   ");
  await press("Start and plan it");
  await expect.element(page.getByText(/^Found no name\./)).toBeVisible();
  expect(await logged("piece-started")).toEqual([]);
});

test("a plan saves only what was changed, and a move to a room is an entry of its own", async () => {
  const { shop, logged } = await demoDesk();
  const { places } = showAt(shop, "/piece/demo-wren/plan", plan);
  await field("Head").fill("320");
  await page.getByRole("radio", { name: "A tube" }).click();
  await field("Diameter of the tube").fill("45");
  await page.getByRole("combobox", { name: "Room" }).selectOptions("Drying room");
  await press("Save the plan");
  await expect.poll(() => places.at(-1)).toBe("/piece/demo-wren");
  expect((await logged("piece-changed")).map(({ body }) => body)).toEqual([
    { changes: { headM: 0.32, part: { kind: "round", diameterMm: 45 } } },
  ]);
  expect((await logged("piece-moved")).map(({ body }) => body)).toEqual([{ roomId: "first" }]);
});

test("half a flat is told at the side that is missing", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/piece/demo-wren/plan", plan);
  await page.getByRole("radio", { name: "A flat" }).click();
  await field("Width of the flat").fill("120");
  await press("Save the plan");
  await expect.element(page.getByText(/^Enter both sides of the flat/)).toBeVisible();
  expect(await logged("piece-changed")).toEqual([]);
});

test("the surface is calculated from a box and put in its field", async () => {
  const { shop } = await demoDesk();
  showAt(shop, "/piece/demo-wren/plan", plan);
  await page.getByText("Work out the surface area").click();
  await field("Length").first().fill("100");
  await field("Width").first().fill("100");
  await field("Height").fill("100");
  await page.getByRole("radio", { name: "Smooth" }).click();
  await expect.element(page.getByText(/^About 0\.06.m², an estimate\./)).toBeVisible();
  await press("Use it");
  await expect.element(field("Surface area, with gating")).toHaveValue("0.06");
});
