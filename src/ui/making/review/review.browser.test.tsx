import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { readSettings } from "../../../storage/settings.ts";
import type { ShopDoor } from "../../base/state/shop.tsx";
import { ReviewPage } from "./ReviewPage.tsx";

afterEach(clearDesks);

const open = (shop: ShopDoor, piece: string) =>
  showAt(shop, `/piece/${piece}/review`, { route: "/piece/:id/review", screen: ReviewPage });
const verdict = () => page.getByRole("region", { name: "Verdict" });
const press = (name: string) => page.getByRole("button", { name }).click();

test("a wall too thin for its head holds the piece, with the figures on the page", async () => {
  const { shop } = await demoDesk();
  open(shop, "demo-plaque");
  await expect.element(verdict()).toHaveTextContent("hold");
  await expect.element(page.getByText(/^Expected to break in this pour; \d more coats/)).toBeVisible();
  await expect.element(page.getByText(/^7\.2.mm \(6\.5.mm to 7\.9.mm\), by caliper/)).toBeVisible();
  await page.getByRole("button", { name: /^Coats: 9 of 9/ }).click();
  expect(page.getByRole("row").elements()).toHaveLength(10);
});

test("no verdict stands without saying what it is not", async () => {
  const { shop } = await demoDesk();
  open(shop, "demo-plaque");
  await expect.element(verdict()).toHaveTextContent(/No verdict here makes a shell or a pour safe/);
});

test("a hold is not passed without a written reason and a name", async () => {
  const { shop, logged } = await demoDesk();
  open(shop, "demo-plaque");
  await press("Override and sign");
  await expect.element(page.getByText(/^Found no reason\./)).toBeVisible();
  await expect.element(page.getByText(/^Found no name\./)).toBeVisible();
  await page.getByRole("textbox", { name: "Name" }).fill("Ada");
  await press("Override and sign");
  await expect.element(page.getByText(/^Found no reason\./)).toBeVisible();
  expect(await logged("review-signed")).toEqual([]);
  // The key leads to what is missing.
  expect(document.activeElement).toBe(page.getByRole("textbox", { name: /^Why go on/ }).element());
});

test("a hold passed in writing is signed with its reason, and the page then says check", async () => {
  const { db, shop, logged } = await demoDesk();
  open(shop, "demo-plaque");
  await page.getByRole("textbox", { name: /^Why go on/ }).fill("Poured lying flat in boxed sand");
  await page.getByRole("textbox", { name: "Name" }).fill("Ada");
  await press("Override and sign");
  await expect.element(page.getByRole("region", { name: "Signature" })).toHaveTextContent(/Signed by Ada/);
  await expect.element(verdict()).toHaveTextContent("check");
  const [signed] = await logged("review-signed");
  expect(signed?.body).toMatchObject({
    name: "Ada",
    verdict: "hold",
    passed: [{ rule: "wall-too-thin", reason: "Poured lying flat in boxed sand" }],
  });
  expect(signed?.body.safety).toBeCloseTo(0.97, 2);
  await expect.poll(async () => (await readSettings(db)).signName).toBe("Ada");
  // What is signed is not asked for again: the next step has come in its place.
  await expect.element(page.getByRole("status").getByText("Signed.")).toBeVisible();
  await expect.element(page.getByRole("link", { name: "Plan the dewax" })).toBeVisible();
  await expect.element(page.getByRole("textbox", { name: "Name" })).not.toBeInTheDocument();
  await expect.element(page.getByRole("button", { name: /sign/i })).not.toBeInTheDocument();
});

test("the name a shop signs with is there already", async () => {
  const { shop } = await demoDesk({ signName: "Grace" });
  open(shop, "demo-plaque");
  await expect.element(page.getByRole("textbox", { name: "Name" })).toHaveValue("Grace");
});

test("coats of the recipe that are not on are part of the review", async () => {
  const { shop } = await demoDesk();
  open(shop, "demo-handle");
  await expect.element(page.getByRole("heading", { name: "Coats: 4 of 8 in Small fine work" })).toBeVisible();
  await expect.element(page.getByText(/dry to the touch/)).not.toBeVisible();
  await page.getByRole("button", { name: /^Coats: 4 of 8/ }).click();
  await expect.element(page.getByText(/dry to the touch/)).toBeVisible();
});

test("past burnout there is nothing to sign, and it says so", async () => {
  const { shop } = await demoDesk();
  open(shop, "demo-dancer");
  await expect.element(page.getByText(/^A review is signed before burnout/)).toBeVisible();
});

test("a coat found wet and dried by the time it was covered is told as the page of the piece tells it", async () => {
  const { shop } = await demoDesk();
  open(shop, "demo-medals");
  await page.getByRole("button", { name: /^Coats: 11 of 9/ }).click();
  const row = page.getByRole("row").filter({ hasText: /wet by/ });
  await expect.element(row).toHaveTextContent(/estimated dry; wet by /);
});
