import { v7 } from "uuid";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../tests/demoDesk.tsx";
import { streamOf, type EntryBodies } from "../../logbook/entry.ts";
import { stepsOf } from "../../logbook/pourSteps.ts";
import { makeShop, type ShopDoor } from "../app/shop.tsx";
import { PourPage, PourSheetPage } from "./PourPage.tsx";
import { PourPlanPage } from "./PourPlanPage.tsx";

const minuteMs = 60_000;
let desk: Desk;
let shop: ShopDoor;
let now = deskNow;
let pieces: readonly string[] = [];

const wait = (minutes: number): void => {
  now += minutes * minuteMs;
  // The screen looks at the clock again when it is seen again.
  window.dispatchEvent(new Event("pageshow"));
};
const key = (name: string | RegExp) => page.getByRole("button", { name });

/** Two shells of the demo shop, fired and hot, each with 2 kg to take. */
async function twoHotShells(): Promise<void> {
  const rows = await desk.db.projections.toArray();
  pieces = rows
    .filter((row) => row.kind === "piece" && row.shelf === "work" && /heron|sailor/.test(row.state.plan.name))
    .map((row) => row.stream.replace("piece/", ""));
  expect(pieces).toHaveLength(2);
  for (const id of pieces) {
    const stream = streamOf("piece", id);
    await shop.log({
      do: "log",
      stream,
      type: "piece-changed",
      body: { changes: { metalKg: 2, alloyId: "c90300" } },
    });
    await shop.log({ do: "log", stream, type: "wall-measured", body: { wallMm: 9 } });
    await shop.log({ do: "log", stream, type: "shell-fired", body: { peakC: 880, holdMin: 60 } });
  }
}

async function planned(changes: Partial<EntryBodies["pour-planned"]> = {}): Promise<void> {
  const told = {
    family: "fused-silica" as const,
    people: 2,
    carryMin: 1.5,
    metalKg: 5,
    thinnestMm: [4, 6],
  };
  await shop.log({
    do: "log",
    stream: "pour/p",
    type: "pour-planned",
    body: {
      pourAt: now + 60 * minuteMs,
      pieceIds: pieces,
      bed: "hot-sand",
      sandC: 315,
      shellC: 650,
      metalC: 1180,
      steps: stepsOf({ kilnMin: 40, sandMin: 40, crucibleMin: 20, meltMin: 30 }),
      told,
      ...changes,
    },
  });
}

beforeEach(async () => {
  desk = await demoDesk();
  now = deskNow;
  shop = makeShop({ db: desk.db, clock: () => now, newId: () => v7(), opened: desk.shop.opened });
  await twoHotShells();
});
afterEach(clearDesks);

test("a pour day is planned backwards, in the best order, with what nobody had measured", async () => {
  const { places } = showAt(shop, "/fire/pour/new", { route: "/fire/pour/new", screen: PourPlanPage });
  for (const name of [/heron/i, /sailor/i]) await page.getByRole("checkbox", { name }).click();
  await page.getByLabelText(/^Thinnest section of .*heron/i).fill("6");
  await page.getByLabelText(/^Thinnest section of .*sailor/i).fill("3");
  await page.getByLabelText("Metal in the crucible").fill("5");
  await page.getByLabelText("Metal at the pour").fill("1180");
  await page.getByRole("radio", { name: "In hot sand" }).click();
  await expect.element(page.getByText("Metal and heat last.")).toBeVisible();
  await expect.element(page.getByText(/First to begin:/)).toBeVisible();
  await key("Plan this pour").click();
  await expect.poll(() => places.at(-1)).toMatch(/^\/fire\/pour\/./);
  const [entry] = await desk.logged("pour-planned");
  const body = entry!.body;
  const nameOf = async (id: string | undefined) =>
    (await desk.db.projections.toArray()).find((row) => row.stream === `piece/${id}`)?.state as {
      plan: { name: string };
    };
  expect((await nameOf(body.pieceIds[0])).plan.name).toMatch(/sailor/i);
  expect(body).toMatchObject({ bed: "hot-sand", sandC: 315 });
  expect(body.told).toMatchObject({ metalKg: 5, thinnestMm: [3, 6], people: 2 });
  expect(body).not.toHaveProperty("note");
  expect(body.pourAt).toBeGreaterThan(now);
});

test("late metal moves the pour, the shell is kept in the kiln, and the plan is put right", async () => {
  await planned();
  showAt(shop, "/fire/pour/p", { route: "/fire/pour/:id", screen: PourPage });
  const moment = page.getByRole("region", { name: "Pour time" });
  await expect.element(moment).toBeVisible();
  wait(10);
  const card = (name: string) => page.getByRole("listitem", { name, exact: true });
  await card("Metal").getByRole("button", { name: "Crucible is warming" }).click();
  await card("Sand").getByRole("button", { name: "Sand is on the heat" }).click();
  await card("Shell").getByRole("button", { name: "Kiln is on" }).click();
  wait(12);
  await card("Tools").getByRole("button", { name: "Laying out" }).click();
  wait(28);
  // The same key takes a second tap at once for a slip.
  await expect.element(card("Shell").getByRole("button", { name: "Shell is soaked" })).toBeVisible();
  await new Promise((go) => setTimeout(go, 800));
  await card("Shell").getByRole("button", { name: "Shell is soaked" }).click();
  await card("Sand").getByRole("button", { name: "Sand is hot" }).click();
  await card("Metal").getByRole("button", { name: "Crucible is hot" }).click();
  await expect.element(moment).toHaveTextContent(/22 min later than the plan.*the metal is late/);
  await expect.element(moment).toHaveTextContent(/Keep the shell in the kiln 32 min/);
  await key(/^Plan for .* from here on$/).click();
  await expect.element(moment).not.toHaveTextContent(/later than the plan/);
  const plans = await desk.logged("pour-planned");
  expect(plans.map(({ body }) => (body.pourAt - deskNow) / minuteMs)).toEqual([60, 82]);
  await expect.poll(async () => (await desk.logged("shell-preheated")).length).toBe(2);
  const heated = await desk.logged("shell-preheated");
  expect(heated.map(({ body }) => body.shellC)).toEqual([650, 650]);
});

test("no go until every line is ticked, or passed with a written reason by name", async () => {
  await planned();
  showAt(shop, "/fire/pour/p/sheet", { route: "/fire/pour/:id/sheet", screen: PourSheetPage });
  await expect.element(page.getByText("5 kg melted, 4 kg wanted")).toBeVisible();
  await key("The path was walked and is clear: blocked").click();
  await expect.element(page.getByLabelText(/^Reason to pass “The path was walked/)).toBeVisible();
  await page.getByLabelText("Name").fill("Ada");
  await key("No go").click();
  await expect.element(page.getByText(/^No go, said Ada/)).toBeVisible();
  const [check] = await desk.logged("pour-item-checked");
  expect(check?.body).toEqual({ item: "path-clear", ok: false });
  const [decided] = await desk.logged("pour-decided");
  expect(decided?.body).toMatchObject({ go: false, name: "Ada", passed: [] });
  await expect
    .element(page.getByRole("button", { name: "Go", exact: true }))
    .toHaveAttribute("aria-disabled", "true");
});

test("out of the kiln, pour start, full: shell by shell, a tap taken back, then the knockout", async () => {
  await planned();
  showAt(shop, "/fire/pour/p", { route: "/fire/pour/:id", screen: PourPage });
  const pour = page.getByRole("region", { name: "The pour", exact: true });
  await expect.element(pour).toHaveTextContent("Shell 1 of 2");
  await expect.element(pour).toHaveTextContent("No go has been given");
  const big = key(/^Out of the kiln/);
  await expect.element(big).toBeVisible();
  expect(big.element().getBoundingClientRect().height).toBeGreaterThanOrEqual(120);
  await big.click();
  await expect.element(key(/^Pour start/)).toBeVisible();
  await key("Take back the last tap").click();
  await expect.element(key(/^Out of the kiln/)).toBeVisible();
  wait(1);
  await key(/^Out of the kiln/).click();
  wait(1);
  await expect.element(page.getByRole("timer")).toHaveTextContent("1:00");
  await key("Metal not read: set it").click();
  await key("Metal, read: more").click();
  await key(/^Pour start/).click();
  wait(0.2);
  await key(/^Full/).click();
  await expect.element(pour).toHaveTextContent("Shell 2 of 2");
  const [full] = await desk.logged("metal-poured");
  expect(full?.body).toMatchObject({ metalC: 1190, massKg: null, outOfKilnMin: 1, pourId: "p" });
  expect(full?.body.shellC).toBeLessThan(650);
  await key(/^Out of the kiln/).click();
  wait(1);
  await key(/^Pour start/).click();
  wait(0.2);
  await key(/^Full/).click();
  await expect.element(page.getByText("All shells are full")).toBeVisible();
  await expect.element(page.getByText(/^Not out of the shell before/).first()).toBeVisible();
  await expect.element(page.getByText(/silica/).first()).toBeVisible();
  await key("End the pour").click();
  await expect.element(page.getByText(/^This pour ended/)).toBeVisible();
  wait(24 * 60);
  await expect.element(page.getByRole("link", { name: "Log the knockout" }).first()).toBeVisible();
});
