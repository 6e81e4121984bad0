import { afterEach, beforeEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import type { PlanChanges } from "../../../logbook/entries/pieceBodies.ts";
import { PiecePage } from "../piece/PiecePage.tsx";
import { ReviewPage } from "../review/ReviewPage.tsx";
import { PlanPage } from "../start/PlanPage.tsx";
import { FinalDryPage } from "./FinalDryPage.tsx";

let desk: Desk;
beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(clearDesks);

const show = (id: string) =>
  showAt(desk.shop, `/piece/${id}/final-dry`, { route: "/piece/:id/final-dry", screen: FinalDryPage });
const change = (changes: PlanChanges) =>
  desk.shop.log({ do: "log", stream: "piece/demo-plaque", type: "piece-changed", body: { changes } });

test("an open shell that hung for days is through, and says by what", async () => {
  show("demo-plaque");
  await expect.element(page.getByText(/^Over since /)).toBeVisible();
  await expect.element(page.getByText(/The final dry of an open shell takes (12|24).h/)).toBeVisible();
  await expect.element(page.getByText(/g\/m² in 9 coats/)).toBeVisible();
  await expect.element(page.getByText(/Local codes come first/)).toBeVisible();
});

test("a blind core in the plan is the slowest place, and the wait is its own", async () => {
  await change({ pockets: ["corner", "blind"] });
  show("demo-plaque");
  await expect.element(page.getByText(/^Review not before /)).toBeVisible();
  await expect.element(page.getByText(/Slowest: blind core/)).toBeVisible();
  await page.getByText("As a table").click();
  const places = page
    .getByRole("rowheader")
    .elements()
    .map((cell) => cell.textContent);
  expect(places).toEqual(["blind core", "corners and undercuts", "open all round", "usual minimum hours"]);
});

test("the piece and its review tell it too", async () => {
  await change({ pockets: ["blind"] });
  showAt(desk.shop, "/piece/demo-plaque", { route: "/piece/:id", screen: PiecePage });
  await expect.element(page.getByRole("heading", { name: /^Final dry: review not before / })).toBeVisible();
  await expect.element(page.getByText("Final dry", { exact: true })).toBeVisible();
  await clearDesks();
  desk = await demoDesk();
  await change({ pockets: ["blind"] });
  showAt(desk.shop, "/piece/demo-plaque/review", { route: "/piece/:id/review", screen: ReviewPage });
  const section = page.getByRole("region", { name: "Final dry" });
  await expect.element(section).toHaveTextContent(/Slowest: blind core. Review not before /);
});

test("further slow places are ticked in the plan", async () => {
  showAt(desk.shop, "/piece/demo-plaque/plan", { route: "/piece/:id/plan", screen: PlanPage });
  const further = page.getByRole("group", { name: /^Other slow places/ });
  await further.getByRole("checkbox", { name: /Hollow or deep recess/ }).click();
  await further.getByRole("checkbox", { name: /Blind core/ }).click();
  await page.getByRole("button", { name: "Save the plan" }).click();
  await expect
    .poll(async () => (await desk.logged("piece-changed"))[0]?.body.changes)
    .toEqual({
      pockets: ["recess", "blind"],
    });
});

test("with coats to come there is nothing to reckon yet", async () => {
  show("demo-heron");
  await expect.element(page.getByRole("heading", { name: "More coats to come" })).toBeVisible();
});
