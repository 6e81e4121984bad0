import { act } from "@testing-library/react";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt } from "../../../../tests/demoDesk.tsx";
import { Toasts } from "../../base/parts/Toasts.tsx";
import { RackPage } from "./RackPage.tsx";

const showRack = (shop: Parameters<typeof showAt>[0]) => showAt(shop, "/", { route: "/", screen: RackPage });
const names = (): readonly string[] =>
  [...document.querySelectorAll("ul[aria-label='Pieces in work'] strong")].map((name) => name.textContent);

afterEach(clearDesks);

test("every piece tells its name, its next action in words and its coats", async () => {
  const { shop } = await demoDesk({ lastSeenDueAt: deskNow });
  showRack(shop);
  await expect.poll(() => names().length).toBe(8);
  const carp = page.getByRole("link", { name: /carp water spout/ });
  await expect.element(carp).toHaveTextContent(/Dip coat 6: backup/);
  await expect.element(carp).toHaveTextContent("5/9 coats");
});

test("a filter and a search leave the pieces they speak of", async () => {
  const { shop } = await demoDesk();
  showRack(shop);
  await expect.poll(() => names().length).toBe(8);
  await page.getByRole("button", { name: /^In fire/ }).click();
  await expect.poll(names).toEqual(["Demo: dancer"]);
  await page.getByRole("button", { name: /^All/ }).click();
  await page.getByRole("searchbox").fill("WING heron");
  await expect.poll(names).toEqual(["Demo: heron, left wing"]);
  await page.getByRole("searchbox").fill("no such piece");
  await expect.element(page.getByText("No piece matches.")).toBeVisible();
});

test("what came to ready since the last look is told first, and is gone once seen", async () => {
  const { shop } = await demoDesk({ lastSeenDueAt: deskNow - 48 * hourMs });
  showRack(shop);
  const card = page.getByRole("region", { name: "Due since you last looked" });
  await expect.element(card.getByRole("link", { name: /door handle/ })).toBeVisible();
  await card.getByRole("button", { name: "Seen" }).click();
  await expect.element(card).not.toBeInTheDocument();
});

test("nothing is news that was ready before the last look", async () => {
  const { shop } = await demoDesk({ lastSeenDueAt: deskNow });
  showRack(shop);
  await expect.poll(() => names().length).toBe(8);
  await expect.element(page.getByText("Due since you last looked")).not.toBeInTheDocument();
});

test("rows stay under the finger for two seconds after a touch, then come into their order", async () => {
  const { db, shop } = await demoDesk({ lastSeenDueAt: deskNow });
  showRack(shop);
  await expect.poll(() => names()[0]).toBe("Demo: carp water spout");
  document.body.dispatchEvent(new PointerEvent("pointerdown", { bubbles: true }));
  const row = (await db.projections.toArray()).find(
    (one) => one.kind === "piece" && /carp/.test(one.state.plan.name),
  );
  const coatId = row?.kind === "piece" ? (row.state.coats.at(-1)?.id ?? "") : "";
  const body = { method: "touch", verdict: "wet", coatId } as const;
  await act(() => shop.log({ do: "log", stream: row?.stream ?? "", type: "dryness-seen", body }));
  await expect
    .element(page.getByRole("link", { name: /carp water spout/ }))
    .toHaveTextContent(/Hold: no further coat yet/);
  expect(names()[0]).toBe("Demo: carp water spout");
  await expect.poll(() => names()[0], { timeout: 4000 }).not.toBe("Demo: carp water spout");
});

test("a slip on a card's keys is taken back from the message, and the keys stand apart", async () => {
  const desk = await demoDesk({ lastSeenDueAt: deskNow });
  showAt(desk.shop, "/", {
    route: "/",
    screen: () => (
      <>
        <RackPage />
        <Toasts />
      </>
    ),
  });
  const wet = page.getByRole("button", { name: /^Still wet: coat/ }).first();
  const dry = page.getByRole("button", { name: /^Dry: coat/ }).first();
  await expect.element(dry).toBeVisible();
  const [left, right] = [wet.element().getBoundingClientRect(), dry.element().getBoundingClientRect()];
  for (const { width, height } of [left, right]) {
    expect(width).toBeGreaterThanOrEqual(48);
    expect(height).toBeGreaterThanOrEqual(48);
  }
  expect(right.left - left.right).toBeGreaterThanOrEqual(16);
  const before = (await desk.logged("dryness-seen")).length;
  await dry.click();
  await expect.poll(async () => (await desk.logged("dryness-seen")).length).toBe(before + 1);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(async () => (await desk.logged("entry-struck")).length).toBe(1);
  await expect.element(page.getByText("Taken back.")).toBeVisible();
});
