import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import type { ShopDoor } from "../../base/state/shop.tsx";
import { RecipePage } from "./RecipePage.tsx";

afterEach(clearDesks);

const open = (shop: ShopDoor, id: string) =>
  showAt(shop, `/recipes/${id}`, { route: "/recipes/:id", screen: RecipePage });
const press = (name: string | RegExp) => page.getByRole("button", { name }).click();

test("a copy with one more coat leaves the starting recipe as it was", async () => {
  const { shop, logged } = await demoDesk();
  open(shop, "start-general");
  await press(/^8 backup/);
  await press("Another like coat 8");
  await press("Save as a copy");
  await expect.poll(async () => (await logged("recipe-set")).length).toBe(1);
  const [copy] = await logged("recipe-set");
  expect(copy?.stream).not.toBe("recipe/start-general");
  expect(copy?.body).toMatchObject({ name: "General bronze copy", copiedFrom: "start-general" });
  expect(copy?.body.coats.map(({ kind }) => kind)).toEqual([
    "prime",
    "prime",
    "intermediate",
    ...Array<string>(6).fill("backup"),
    "seal",
  ]);
});

test("a recipe others hang on says how many before it is changed", async () => {
  const { shop } = await demoDesk();
  open(shop, "start-general");
  await expect.element(page.getByText(/pieces in work follow this recipe/)).toBeVisible();
});

test("coats move and go, and a recipe without any is not saved", async () => {
  const { shop, logged } = await demoDesk();
  open(shop, "new");
  await page.getByRole("textbox", { name: "Name" }).fill("Thin");
  await press(/^1 prime/);
  await press("Take out coat 1");
  await press("Save the recipe");
  await expect.element(page.getByText("Found no coats, expected at least one. Add a coat.")).toBeVisible();
  expect(await logged("recipe-set")).toEqual([]);
  await press("Add a coat");
  await press("Save the recipe");
  await expect.poll(async () => (await logged("recipe-set"))[0]?.body.name).toBe("Thin");
});

test("polymer in the binder is asked, written, and read again", async () => {
  const { shop, logged } = await demoDesk();
  open(shop, "start-small");
  await expect.element(page.getByRole("radio", { name: "No" })).toBeChecked();
  await page.getByRole("radio", { name: "Yes" }).click();
  await press("Save the recipe");
  await expect.poll(async () => (await logged("recipe-set"))[0]?.body.polymer).toBe(true);
  open(shop, "start-small");
  await expect.element(page.getByRole("radio", { name: "Yes" })).toBeChecked();
});
