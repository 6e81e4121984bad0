import { afterEach, beforeEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { CoatPage } from "./CoatPage.tsx";

let desk: Desk;

async function outerOf(name: RegExp): Promise<{ readonly id: string; readonly coatId: string }> {
  const row = (await desk.db.projections.toArray()).find(
    (one) => one.kind === "piece" && name.test(one.state.plan.name),
  );
  const coatId = row?.kind === "piece" ? (row.state.coats.at(-1)?.id ?? "") : "";
  return { id: row?.stream.replace("piece/", "") ?? "", coatId };
}

beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(clearDesks);

test("the picture tells any moment along it, by keys as by finger, and each check with its pull", async () => {
  const { id, coatId } = await outerOf(/heron/);
  const body = { method: "touch", verdict: "damp", coatId } as const;
  await desk.shop.log({ do: "log", stream: `piece/${id}`, type: "dryness-seen", body, at: deskNow });
  showAt(desk.shop, `/piece/${id}/coat/${coatId}`, { route: "/piece/:id/coat/:coatId", screen: CoatPage });
  const along = page.getByRole("slider", { name: /Along the drying of coat 2/ });
  await expect.element(along).toBeVisible();
  const told = (): string => along.element().getAttribute("aria-valuetext") ?? "";
  along.element().focus();
  await userEvent.keyboard("{Home}");
  await expect.poll(told).toMatch(/100% of its water left;/);
  await userEvent.keyboard("{ArrowRight}");
  await expect.poll(told).not.toMatch(/100% of its water left/);
  await userEvent.keyboard("{End}");
  await expect.poll(told).toMatch(/air forecast|\bhumidity/);
  await expect.element(page.getByText(/felt damp: not dry yet/)).toBeVisible();
  await page.getByText("How each check changes the answer").click();
  await expect.element(page.getByRole("row", { name: /Calculation alone/ })).toBeVisible();
  await page.getByText("As a table").click();
  await expect.element(page.getByRole("columnheader", { name: "Eight in ten" })).toBeVisible();
});

test("a coat that is not there is said to be missing", async () => {
  const { id } = await outerOf(/heron/);
  showAt(desk.shop, `/piece/${id}/coat/none`, { route: "/piece/:id/coat/:coatId", screen: CoatPage });
  await expect.element(page.getByText("No such coat")).toBeVisible();
});
