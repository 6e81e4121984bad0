import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { BucketCardPage } from "./BucketCardPage.tsx";

afterEach(clearDesks);
const at = { route: "/buckets/:id/card", screen: BucketCardPage };

test("the card tells targets, health, the last ten readings and the mixing order", async () => {
  const { shop } = await demoDesk();
  showAt(shop, "/buckets/demo-prime/card", at);
  await expect.element(page.getByRole("heading", { name: "Demo: prime" })).toBeVisible();
  await expect.element(page.getByText("19 to 25 s in Demo: Zahn 4".replace(" s", "\u00a0s"))).toBeVisible();
  await expect.element(page.getByText(/^Binder 12\.45.kg into a clean bucket/)).toBeVisible();
  await expect.element(page.getByText(/ask the binder’s maker/)).toBeVisible();
  const readings = page.getByRole("table").first();
  expect(readings.getByRole("row").elements()).toHaveLength(11);
  // The lines for the hand are there on paper only.
  await expect.element(page.getByText("By hand")).not.toBeVisible();
});

test("a bucket nobody told of has a card all the same", async () => {
  const { shop } = await demoDesk();
  showAt(shop, "/buckets/first-backup/card", at);
  await expect.element(page.getByText("No targets are set.")).toBeVisible();
  await expect.element(page.getByText("Never checked.")).toBeVisible();
});
