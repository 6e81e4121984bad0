import { v7 } from "uuid";
import { cleanup } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { passEventMs } from "../../../../tests/eventClock.ts";
import { pressAway } from "../../../../tests/pressAway.ts";
import { streamOf, type EntryBodies, type EntryType } from "../../../logbook/entries/entry.ts";
import { goBound } from "../../../rules/pourGo.ts";
import { pourKnownAt } from "../../../rules/pourLog.ts";
import { readPourLog } from "../../../storage/pourLog.ts";
import { stepsOf } from "../../../logbook/pour/pourSteps.ts";
import { makeShop, type ShopDoor } from "../../base/state/shop.tsx";
import { PourPage, PourSheetPage } from "./PourPage.tsx";
import { PourPlanPage } from "./PourPlanPage.tsx";

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
const unfolded = (summary: RegExp) => page.getByText(summary).click();
const finger = { isPrimary: true, pointerId: 1, pointerType: "touch", button: 0 };
/** A finger that stays down; a key that wants a tap takes it for none. */
async function held(target: ReturnType<typeof key>): Promise<void> {
  await expect.element(target).toBeVisible();
  const element = target.element();
  const press = (type: string) => element.dispatchEvent(new PointerEvent(type, { ...finger, bubbles: true }));
  press("pointerdown");
  const isDown = () => element.isConnected && element.hasAttribute("data-held");
  await vi.waitFor(() => expect(isDown()).toBe(true));
  await vi.waitFor(() => expect(isDown()).toBe(false), 10_000);
  press("pointerup");
}

/** Two shells of the demo shop, fired and hot, each with 2 kg to take. */
async function twoHotShells(): Promise<void> {
  const rows = await desk.db.projections.toArray();
  pieces = rows
    .filter((row) => row.kind === "piece" && row.shelf === "work" && /heron|carp/.test(row.state.plan.name))
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
  for (const name of [/heron/i, /carp/i]) await page.getByRole("checkbox", { name }).click();
  await page.getByLabelText(/^Thinnest section of .*heron/i).fill("6");
  await page.getByLabelText(/^Thinnest section of .*carp/i).fill("3");
  await page.getByLabelText("Metal in the crucible").fill("5");
  await page.getByLabelText("Metal at the pour").fill("1180");
  await page.getByRole("radio", { name: "Hot sand" }).click();
  await expect.element(page.getByText("Metal and heat last.")).toBeVisible();
  await expect.element(page.getByText(/First to start:/)).toBeVisible();
  await key("Plan this pour").click();
  await expect.poll(() => places.at(-1)).toMatch(/^\/fire\/pour\/(?!new)./);
  const [entry] = await desk.logged("pour-planned");
  const body = entry!.body;
  const nameOf = async (id: string | undefined) =>
    (await desk.db.projections.toArray()).find((row) => row.stream === `piece/${id}`)?.state as {
      plan: { name: string };
    };
  expect((await nameOf(body.pieceIds[0])).plan.name).toMatch(/carp/i);
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
  await unfolded(/^The other tracks: /);
  wait(10);
  const card = (name: string) => page.getByRole("listitem", { name, exact: true });
  // The key that leads goes on to the next track, and takes nothing while its last press is still being written.
  const inCard = (name: string, text: string) => card(name).getByRole("button", { name: text });
  await pressAway(inCard("Metal", "Crucible is warming"));
  await pressAway(inCard("Sand", "Sand is on the heat"));
  await pressAway(inCard("Shell", "Kiln is on"));
  wait(12);
  await pressAway(inCard("Tools", "Laying out"));
  wait(28);
  // The same key takes a second tap at once for a slip.
  await expect.element(card("Shell").getByRole("button", { name: "Shell is soaked" })).toBeVisible();
  passEventMs(800);
  await card("Shell").getByRole("button", { name: "Kiln not read: set it" }).click();
  await card("Shell").getByRole("button", { name: "Kiln, read: same as planned" }).click();
  await card("Shell").getByRole("button", { name: "Kiln, read: more" }).click();
  await pressAway(inCard("Shell", "Shell is soaked"));
  await pressAway(inCard("Sand", "Sand is hot"));
  await pressAway(inCard("Metal", "Crucible is hot"));
  await expect.element(moment).toHaveTextContent(/22 min later than the plan.*the metal is late/);
  await expect
    .element(moment)
    .toHaveTextContent(/Shell soaked at .*, pour at .*: keep it in the kiln 32 min/);
  await key(/^Plan for .* from now on$/).click();
  await expect.element(moment).not.toHaveTextContent(/later than the plan/);
  const plans = await desk.logged("pour-planned");
  expect(plans.map(({ body }) => (body.pourAt - deskNow) / minuteMs)).toEqual([60, 82]);
  await expect.poll(async () => (await desk.logged("shell-preheated")).length).toBe(2);
  const heated = await desk.logged("shell-preheated");
  // What was read, not what was planned.
  expect(heated.map(({ body }) => body.shellC)).toEqual([660, 660]);
});

test("no go until every line is ticked, or passed with a written reason by name", async () => {
  await planned();
  showAt(shop, "/fire/pour/p/sheet", { route: "/fire/pour/:id/sheet", screen: PourSheetPage });
  await expect.element(page.getByText("5 kg planned, 4 kg wanted")).toBeVisible();
  await key("Path walked and clear: Not OK").click();
  await expect.element(page.getByLabelText(/^Reason to override “Path walked/)).toBeVisible();
  await page.getByLabelText("Name").fill("Ada");
  await key("No-go").click();
  await expect.element(page.getByText(/^No-go by Ada/).first()).toBeVisible();
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
  await unfolded(/^Pour early/);
  await expect.element(pour).toHaveTextContent("Shell 1 of 2");
  await expect.element(pour).toHaveTextContent("No go given yet");
  const big = key(/^Out of the kiln/);
  await expect.element(big).toBeVisible();
  expect(big.element().getBoundingClientRect().height).toBeGreaterThanOrEqual(120);
  await big.click();
  // Without a go nothing leaves the kiln by one tap.
  await expect.element(page.getByRole("group", { name: "No go given" })).toHaveTextContent(/out anyway\?/);
  expect(await desk.logged("shell-out-of-kiln")).toHaveLength(0);
  await key("Leave it in the kiln").click();
  await expect.element(big).toBeVisible();
  await big.click();
  await held(key(/^Hold to take it out/));
  await expect.element(key(/^Pour start/)).toBeVisible();
  await key("Take back the last tap").click();
  await expect.element(key(/^Out of the kiln/)).toBeVisible();
  wait(1);
  await key(/^Out of the kiln/).click();
  await held(key(/^Hold to take it out/));
  wait(1);
  await expect.element(page.getByRole("timer")).toHaveTextContent("1:00");
  await expect
    .element(page.getByRole("status", { name: "Stop rule" }))
    .toHaveTextContent(/^(Pour within|Late|Stop)/);
  await key("Metal not read: set it").click();
  await key("Metal, read: same as planned").click();
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
  await expect.element(page.getByRole("link", { name: "Log the knock-out" }).first()).toBeVisible();
});

describe("the go", () => {
  const logged = <T extends EntryType>(stream: string, type: T, body: EntryBodies[T]) =>
    shop.log({ do: "log", stream, type, body } as never);
  const pieceStream = () => streamOf("piece", pieces[0] ?? "");

  /** Bound as the sheet binds it, with whatever is not OK passed. */
  async function goGiven(): Promise<void> {
    const read = await readPourLog(desk.db, "p", now);
    const known = pourKnownAt(read, now);
    await logged("pour/p", "pour-decided", { go: true, name: "Ada", passed: [], bound: goBound(known!) });
  }

  test("opens an hour before the pour and says when; given, the page has key, clock and stop rule first", async () => {
    await page.viewport(390, 844);
    await planned({ pourAt: now + 120 * minuteMs });
    showAt(shop, "/fire/pour/p/sheet", { route: "/fire/pour/:id/sheet", screen: PourSheetPage });
    await expect.element(page.getByText(/^Go opens at 3:02/).first()).toBeVisible();
    await expect
      .element(page.getByRole("button", { name: "Go", exact: true }))
      .toHaveAttribute("aria-disabled", "true");
    cleanup();
    wait(70);
    await goGiven();
    showAt(shop, "/fire/pour/p", { route: "/fire/pour/:id", screen: PourPage });
    const pour = page.getByRole("region", { name: "The pour", exact: true });
    await expect.element(pour).toHaveTextContent(/Go given by Ada .*, holds until/);
    await expect
      .element(page.getByRole("status", { name: "Stop rule" }))
      .toHaveTextContent(/^(Pour within .* Stop|Stop: )/);
    for (const one of [
      key(/^Out of the kiln/),
      page.getByRole("status", { name: "Stop rule" }),
      pour.getByText(/^Pour \d/),
    ])
      expect(one.element().getBoundingClientRect().bottom).toBeLessThanOrEqual(844);
    await key(/^Out of the kiln/).click();
    await expect.element(key(/^Pour start/)).toBeVisible();
    expect(await desk.logged("shell-out-of-kiln")).toHaveLength(1);
  });

  test("lapses on the pour page in its largest type when a crack is logged, and stays in the history of the sheet", async () => {
    await planned();
    await goGiven();
    showAt(shop, "/fire/pour/p", { route: "/fire/pour/:id", screen: PourPage });
    await expect.element(page.getByText(/^Go given by Ada/).first()).toBeVisible();
    wait(3);
    await logged(pieceStream(), "crack-found", { kind: "open", stage: "other", where: "at the cup" });
    const alert = page.getByRole("alert").first();
    await expect.element(alert).toHaveTextContent(/^Go lapsed 2:05 PM\. .*: open crack.*\. Check again\.$/);
    const size = (element: Element) => parseFloat(getComputedStyle(element).fontSize);
    const largest = Math.max(
      ...[...document.querySelectorAll("p, h1, h2, h3, strong, button span")].map(size),
    );
    expect(size(alert.element())).toBe(largest);
    cleanup();
    showAt(shop, "/fire/pour/p/sheet", { route: "/fire/pour/:id/sheet", screen: PourSheetPage });
    await expect
      .element(page.getByRole("list", { name: "Decisions" }))
      .toHaveTextContent(/Go by Ada 2:02 PM, lapsed 2:05 PM: .*crack/);
  });

  test("before the preheat there is no key to tick its heat with", async () => {
    await planned();
    showAt(shop, "/fire/pour/p/sheet", { route: "/fire/pour/:id/sheet", screen: PourSheetPage });
    const line = page.getByRole("listitem", { name: "Shells are at temperature" });
    await expect.element(line).toHaveTextContent(/Planned.*planned: 650 °C at 3:02 PM/);
    await expect.element(key("Shells are at temperature: OK")).not.toBeInTheDocument();
  });
});
