import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { paths } from "../../base/state/paths.ts";
import { PieceBesideRack } from "./PieceBesideRack.tsx";

afterEach(async () => {
  await page.viewport(414, 896);
  await clearDesks();
});

const at = { route: "/piece/:id", screen: PieceBesideRack };
const rack = () => page.getByRole("navigation", { name: "Rack" });

test("on a wide screen the rack stands beside the piece, and another piece is one click away", async () => {
  await page.viewport(1280, 800);
  const { shop } = await demoDesk();
  const { places } = showAt(shop, paths.piece("demo-carp"), at);
  await expect.element(page.getByRole("heading", { level: 1, name: "Demo: carp water spout" })).toBeVisible();
  const links = rack().getByRole("link");
  await expect.poll(() => links.elements().length).toBe(8);
  const left = rack().element().getBoundingClientRect();
  const piece = page.getByRole("heading", { level: 1 }).element().getBoundingClientRect();
  expect(left.right).toBeLessThanOrEqual(piece.left);
  expect(document.querySelectorAll("[aria-current=page]")).toHaveLength(1);
  await links.filter({ hasText: "heron" }).click();
  await expect.element(page.getByRole("heading", { level: 1, name: "Demo: heron, left wing" })).toBeVisible();
  expect(places.at(-1)).toBe(paths.piece("demo-heron"));
  await expect.element(links.filter({ hasText: "heron" })).toHaveAttribute("aria-current", "page");
});

test("on a phone there is only the piece", async () => {
  const { shop } = await demoDesk();
  showAt(shop, paths.piece("demo-carp"), at);
  await expect.element(page.getByRole("heading", { level: 1, name: "Demo: carp water spout" })).toBeVisible();
  await expect.element(rack()).not.toBeInTheDocument();
});
