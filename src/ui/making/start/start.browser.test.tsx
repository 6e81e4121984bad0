import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { PiecePage } from "../piece/PiecePage.tsx";
import { PlanPage } from "./PlanPage.tsx";
import { StartPage } from "./StartPage.tsx";

afterEach(clearDesks);

const field = (name: string) => page.getByRole("textbox", { name });
const press = (name: string) => page.getByRole("button", { name }).click();
const start = { route: "/piece/new", screen: StartPage };
const plan = { route: "/piece/:id/plan", screen: PlanPage };

test("a name and Enter start a piece and lead to the bucket", async () => {
  const { shop, logged } = await demoDesk();
  const { places } = showAt(shop, "/piece/new", start);
  await field("Name").fill("Heron, left wing");
  await userEvent.keyboard("{Enter}");
  await expect.poll(async () => (await logged("piece-started")).length).toBe(1);
  const [started] = await logged("piece-started");
  expect(started?.body).toEqual({ plan: { name: "Heron, left wing" }, roomId: "first" });
  await expect.poll(() => places.at(-1)).toBe("/dip");
});

test("a piece in work brings its coats, by the recipe but for the kinds put right by hand", async () => {
  const { shop, logged } = await demoDesk();
  const { places } = showAt(shop, "/piece/new", start);
  await field("Name").fill("Plaque");
  await page.getByRole("combobox", { name: "Recipe" }).selectOptions("start-general");
  await page.getByText("In work already").click();
  await field("Coats on it").fill("4");
  await press("Start it");
  await expect.element(page.getByText(/^Found no time for the last coat\./)).toBeVisible();
  expect(await logged("piece-started")).toEqual([]);
  await page.getByLabelText("Last coat went on").fill("2026-03-03T16:00");
  await page.getByText("2 prime, 1 intermediate, 1 backup").click();
  await page.getByRole("combobox", { name: "Coat 2" }).selectOptions("intermediate");
  await press("Start it");
  await expect.poll(() => places.at(-1)).toBe("/");
  const coats = (await logged("coat-dipped")).toSorted((a, b) => a.body.number - b.body.number);
  expect(coats.map(({ body }) => [body.kind, body.stuccoId, body.beforeLog])).toEqual([
    ["prime", "80-120", "undated"],
    ["intermediate", null, "undated"],
    ["intermediate", "30-80", "undated"],
    ["backup", "16-30", "dated"],
  ]);
  expect(coats.at(-1)?.at).toBe(new Date("2026-03-03T16:00").getTime());
});

test("a day in the past is when it was begun; one to come is refused", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/piece/new", start);
  await field("Name").fill("Plaque");
  await page.getByText("In work already").click();
  await page.getByLabelText("Begun").fill("2026-03-09T08:00");
  await press("Start it");
  await expect.element(page.getByRole("alert")).toBeVisible();
  await page.getByLabelText("Begun").fill("2026-02-23T08:00");
  await press("Start it");
  await expect
    .poll(async () => (await logged("piece-started"))[0]?.at)
    .toBe(new Date("2026-02-23T08:00").getTime());
});

test("what is missing for the shell check is asked on the piece, one question after the other", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/piece/demo-wren", { route: "/piece/:id", screen: PiecePage });
  const asked = page.getByRole("group", { name: /^Asked of/ });
  await asked.getByRole("combobox", { name: "Which alloy?" }).selectOptions("c87300");
  await asked.getByRole("button", { name: "Save in the plan" }).click();
  await asked.getByRole("textbox", { name: "How high is the head?" }).fill("300");
  await asked.getByRole("button", { name: "Save in the plan" }).click();
  await asked.getByRole("radio", { name: "A tube" }).click();
  await asked.getByRole("textbox", { name: "Its diameter" }).fill("40");
  await asked.getByRole("button", { name: "Save in the plan" }).click();
  await expect.element(asked).not.toBeInTheDocument();
  expect((await logged("piece-changed")).map(({ body }) => body.changes)).toEqual([
    { alloyId: "c87300" },
    { headM: 0.3 },
    { part: { kind: "round", diameterMm: 40 } },
  ]);
});

test("made again, a piece in the archive gives its plan to another name, and no coats", async () => {
  const { db, shop, logged } = await demoDesk();
  const row = (await db.projections.toArray()).find(
    (one) => one.kind === "piece" && one.state.plan.alloyId !== undefined,
  );
  const old = row?.kind === "piece" ? row.state : null;
  const stream = `piece/${old?.id ?? ""}`;
  await shop.log({ do: "log", stream, type: "piece-archived", body: { archived: true } });
  const { places } = showAt(shop, `/piece/${old?.id ?? ""}`, { route: "/piece/:id", screen: PiecePage });
  // Without the frame around the page its bar lies over the last keys.
  const again = page.getByRole("button", { name: "Make it again" });
  await expect.element(again).toBeVisible();
  (again.element() as HTMLElement).focus();
  await userEvent.keyboard("{Enter}");
  await expect.poll(() => places.at(-1)).toBe("/piece/new");
  showAt(shop, "/piece/new", start);
  await expect
    .element(page.getByRole("region", { name: `The plan of ${old?.plan.name ?? ""}` }))
    .toBeVisible();
  await press("Start it");
  await expect.element(page.getByText(/^Found no name\./)).toBeVisible();
  await field("Name").fill("Second one");
  await press("Start it");
  await expect.poll(async () => (await logged("piece-started")).length).toBe(1);
  const { note: _, ...plan } = old?.plan ?? { name: "" };
  expect((await logged("piece-started"))[0]?.body.plan).toEqual({ ...plan, name: "Second one" });
  expect(await logged("coat-dipped")).toEqual([]);
});

test("a recipe for another size than the metal is said beside it", async () => {
  const { shop } = await demoDesk();
  showAt(shop, "/piece/demo-wren/plan", plan);
  await page.getByRole("combobox", { name: "Recipe" }).selectOptions("start-small");
  await page.getByRole("combobox", { name: "Alloy" }).selectOptions("c87300");
  await field("Metal").fill("0.8");
  expect(page.getByText(/^This recipe is for/).query()).toBeNull();
  await field("Metal").fill("6");
  await expect
    .element(page.getByText(/^This recipe is for up to 1.kg of bronze\. .* as much room as 6.kg/))
    .toBeVisible();
});

test("without a name nothing is started, and it says why", async () => {
  const { shop, logged } = await demoDesk();
  showAt(shop, "/piece/new", start);
  await field("Name").fill("   ");
  await press("Start and dip");
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
