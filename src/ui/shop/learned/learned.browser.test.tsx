import { afterEach, beforeEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { readRack } from "../../../storage/reads.ts";
import { LearnedPage } from "./LearnedPage.tsx";

let desk: Desk;
const show = () => showAt(desk.shop, "/shop/learned", { route: "/shop/learned", screen: LearnedPage });

beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(clearDesks);

async function heron(): Promise<{
  readonly stream: `piece/${string}`;
  readonly coatId: string;
  readonly dippedAt: number;
}> {
  const row = (await desk.db.projections.toArray()).find(
    (one) => one.kind === "piece" && /heron/.test(one.state.plan.name),
  );
  const coat = row?.kind === "piece" ? row.state.coats.at(-1) : undefined;
  return { stream: row?.stream as `piece/${string}`, coatId: coat?.id ?? "", dippedAt: coat?.dippedAt ?? 0 };
}

/** A coat found dry by the air in its bag, and covered: only then does it teach. */
async function bagged(): Promise<void> {
  const { stream, coatId } = await heron();
  const minutesAgo = (minutes: number): number => deskNow - minutes * 60_000;
  const body = { method: "bag", rh: 0.5, roomRh: 0.5, minutes: 30, coatId } as const;
  await desk.shop.log({ do: "log", stream, type: "dryness-seen", body, at: minutesAgo(5) });
  const row = await desk.db.projections.get(stream);
  const last = row?.kind === "piece" ? row.state.coats.at(-1) : undefined;
  const { number = 1, roomId = "first", bucketId = "first-backup" } = last ?? {};
  const coat = { number: number + 1, step: null, kind: "backup", stuccoId: "16-30", prewet: false } as const;
  await desk.shop.log({
    do: "log",
    stream,
    type: "coat-dipped",
    body: { ...coat, roomId, bucketId },
    at: minutesAgo(1),
  });
}

test("a coat found dry teaches the factor; left out with a reason it teaches nothing, and can be taken in again", async () => {
  await bagged();
  show();
  const row = page.getByRole("listitem").filter({ hasText: "heron" });
  await expect.element(row.first()).toHaveTextContent(/calculated; dry by .* by the bag/);
  expect((await readRack(desk.db, deskNow)).learned?.shop.pairs).toBeGreaterThan(0);
  const before = (await readRack(desk.db, deskNow)).learned?.shop.pairs ?? 0;
  await row
    .first()
    .getByRole("button", { name: /^Leave out/ })
    .click();
  await row.first().getByRole("button", { name: "Leave it out" }).click();
  await expect.element(row.first().getByText("Enter why, in a word or two.")).toBeVisible();
  await row.first().getByRole("textbox").fill("the door stood open");
  await row.first().getByRole("button", { name: "Leave it out" }).click();
  await expect.element(row.first()).toHaveTextContent("Left out: the door stood open");
  await expect.poll(async () => (await readRack(desk.db, deskNow)).learned?.shop.pairs).toBe(before - 1);
  await row.first().getByRole("button", { name: "Use again" }).click();
  await expect.poll(async () => (await readRack(desk.db, deskNow)).learned?.shop.pairs).toBe(before);
});

test("the water of a weighed coat stands beside its starting value", async () => {
  show();
  const backup = page.getByRole("table", { name: /^Slurry per coat/ }).getByRole("row", { name: /^backup/ });
  await expect.element(backup).toHaveTextContent(/water 200.g\/m².*from \d+.*water \d+.g\/m²/);
});

test("a caliper teaches the build, and it is used once a person says so", async () => {
  show();
  await expect.element(page.getByText("Thickness per coat")).toBeVisible();
  const { stream } = await heron();
  await desk.shop.log({ do: "log", stream, type: "wall-measured", body: { wallMm: 1.4 } });
  const use = page.getByRole("button", { name: /^Use .* for .*: Thickness per coat/ });
  await use.first().click();
  await expect.poll(async () => (await desk.logged("shop-figures-set")).length).toBe(1);
  await expect
    .element(page.getByRole("button", { name: /^Back to the starting value/ }).first())
    .toBeVisible();
});
