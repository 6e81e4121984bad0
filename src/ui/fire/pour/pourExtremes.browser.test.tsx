import { cleanup } from "@testing-library/react";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { v7 } from "uuid";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { passEventMs } from "../../../../tests/eventClock.ts";
import { streamOf, type EntryBodies } from "../../../logbook/entries/entry.ts";
import { stepsOf } from "../../../logbook/pour/pourSteps.ts";
import { DuePage } from "../../making/due/DuePage.tsx";
import { PiecePage } from "../../making/piece/PiecePage.tsx";
import { makeShop, type ShopDoor } from "../../base/state/shop.tsx";
import { PourPage, PourSheetPage } from "./PourPage.tsx";

type Plan = EntryBodies["pour-planned"];

const steps = stepsOf({ kilnMin: 40, sandMin: 40, crucibleMin: 20, meltMin: 30 });
let desk: Desk;
let shop: ShopDoor;
let now = deskNow;
let shells: readonly string[] = [];

beforeEach(async () => {
  desk = await demoDesk();
  now = deskNow;
  shop = makeShop({ db: desk.db, clock: () => now, newId: () => v7(), opened: desk.shop.opened });
  const rows = await desk.db.projections.toArray();
  shells = rows
    .filter((row) => row.kind === "piece" && row.shelf === "work")
    .filter((row) => row.kind === "piece" && ["coating", "reviewed", "fired"].includes(row.state.phase))
    .map((row) => row.stream.replace("piece/", ""))
    .slice(0, 3);
});
afterEach(clearDesks);

async function holding(metalKg: number): Promise<void> {
  for (const id of shells)
    await shop.log({
      do: "log",
      stream: streamOf("piece", id),
      type: "piece-changed",
      body: { changes: { metalKg, alloyId: "c90300" } },
    });
}

async function planned(changes: Partial<Plan>): Promise<void> {
  const told = { family: "fused-silica" as const, people: 2, carryMin: 1.5, metalKg: 5, thinnestMm: [4] };
  const base: Plan = {
    pourAt: now + 60 * minuteMs,
    pieceIds: shells.slice(0, 1),
    bed: "hot-sand",
    sandC: 315,
    shellC: 650,
    metalC: 1180,
    steps,
    told,
  };
  const body = { ...base, ...changes };
  const done = await shop.log({ do: "log", stream: "pour/p", type: "pour-planned", body });
  expect(done.ok).toBe(true);
}

const text = (): string => document.body.innerText;
const showPour = () => showAt(shop, "/fire/pour/p", { route: "/fire/pour/:id", screen: PourPage });
const showSheet = () =>
  showAt(shop, "/fire/pour/p/sheet", { route: "/fire/pour/:id/sheet", screen: PourSheetPage });

/** Its details are opened, so that what is written there is read too. */
function saysNoNonsense(): void {
  for (const details of document.querySelectorAll("details")) details.open = true;
  expect(text()).not.toMatch(/NaN|undefined|Infinity|∞|\bnull\b|\[object/);
  for (const path of document.querySelectorAll("svg *"))
    for (const { value } of path.attributes) expect(value).not.toMatch(/NaN|undefined|Infinity/);
}

const told = { family: "fused-silica", people: 1, carryMin: 60, metalKg: 0.001, thinnestMm: [0.1] } as const;
const strange: readonly (readonly [string, () => Partial<Plan>])[] = [
  ["no shells at all", () => ({ pieceIds: [] })],
  ["shells that are not on this device", () => ({ pieceIds: ["gone", "gone-too"] })],
  ["nothing told, no metal named", () => ({ told: undefined })],
  ["no steps", () => ({ steps: [] })],
  ["steps that take no time", () => ({ steps: steps.map((step) => ({ ...step, minutes: 0, keepsMin: 0 })) })],
  ["a moment three days ago", () => ({ pourAt: now - 72 * 60 * minuteMs })],
  ["a moment at the log's beginning", () => ({ pourAt: 0 })],
  ["metal below where it is all melted", () => ({ metalC: 700 })],
  ["metal hotter than any shell bears", () => ({ metalC: 2200 })],
  ["a crumb of metal at the highest heat, carried for an hour", () => ({ metalC: 2200, told })],
  ["a cold shell in hot sand", () => ({ shellC: -30, sandC: 800 })],
  ["a shell above what melts in it", () => ({ shellC: 1400 })],
  ["a run and a melt that are not there", () => ({ runId: "gone", meltId: "gone" })],
];

describe.each([0, 2])("a pour of shells that hold %d kg each", (metalKg) => {
  beforeEach(() => (metalKg === 0 ? undefined : holding(metalKg)));
  test.each(strange)("says something sensible with %s", async (_, changes) => {
    await planned(changes());
    showPour();
    await expect.element(page.getByRole("region", { name: "Pour time" })).toBeVisible();
    saysNoNonsense();
    cleanup();
    showSheet();
    await expect.element(page.getByText("From the log").first()).toBeVisible();
    saysNoNonsense();
  });
});

describe("a pour day gone wrong", () => {
  const wait = (minutes: number): void => {
    now += minutes * minuteMs;
    window.dispatchEvent(new Event("pageshow"));
  };
  const key = (name: string | RegExp) => page.getByRole("button", { name });
  const track = (name: string) => page.getByRole("listitem", { name, exact: true });
  /** The same key takes a second tap at once for a slip. */
  const slipPast = () => passEventMs(800);
  const moment = page.getByRole("region", { name: "Pour time" });

  test("three shells and metal for two: the third is said to go without", async () => {
    await holding(2);
    await planned({ pieceIds: shells });
    showPour();
    await page.getByText(/^Pour early/).click();
    await expect.element(page.getByText("There is less metal than the shells hold.")).toBeVisible();
    await expect.element(page.getByText("Not enough metal left.")).toBeVisible();
    saysNoNonsense();
  });

  test("a melt three hours late is said in hours, and marks taken back leave the day as it was planned", async () => {
    await planned({});
    showPour();
    await page.getByText(/^The other tracks: /).click();
    await track("Metal").getByRole("button", { name: "Crucible is warming" }).click();
    await expect.element(track("Metal").getByRole("button", { name: "Crucible is hot" })).toBeVisible();
    slipPast();
    wait(240);
    await track("Metal").getByRole("button", { name: "Crucible is hot" }).click();
    await expect.element(track("Metal").getByRole("button", { name: "Melting" })).toBeVisible();
    await expect.element(moment).toHaveTextContent(/3 h \d+ min later than the plan/);
    saysNoNonsense();
    for (const _ of ["done", "started"]) {
      await key("Metal: undo the last mark").click();
      slipPast();
    }
    await expect.element(track("Metal").getByRole("button", { name: "Crucible is warming" })).toBeVisible();
    saysNoNonsense();
  });

  test("the metal runs cold into a shell with no wall and no mass known, and it is still told when to break it out", async () => {
    await planned({ metalC: 700, told: undefined });
    showPour();
    await page.getByText(/^Pour early/).click();
    await key(/^Out of the kiln/).click();
    (key(/^Hold to take it out/).element() as HTMLElement).click();
    await expect.element(key(/^Pour start/)).toBeVisible();
    wait(600);
    await key(/^Pour start/).click();
    await key(/^Full/).click();
    await expect.element(page.getByText(/^Not out of the shell before/)).toBeVisible();
    saysNoNonsense();
  });

  test("a full shell waits on the Due page and on its own until it may be broken out", async () => {
    await planned({});
    await holding(2);
    const [id = ""] = shells;
    const stream = streamOf("piece", id);
    const body = { metalC: 1180, shellC: 600, massKg: null, outOfKilnMin: 1, pourId: "p" };
    await shop.log({ do: "log", stream, type: "metal-poured", body });
    const waits = page.getByRole("region", { name: "To knock out" });
    showAt(shop, "/due", { route: "/due", screen: DuePage });
    await expect.element(waits).toHaveTextContent(/Not out of the shell before/);
    saysNoNonsense();
    cleanup();
    showAt(shop, `/piece/${id}`, { route: "/piece/:id", screen: PiecePage });
    await expect.element(waits).toHaveTextContent(/Not out of the shell before.*silica/);
    wait(24 * 60);
    await expect.element(waits).toHaveTextContent(/Ready to knock out since/);
    saysNoNonsense();
    await shop.log({ do: "log", stream, type: "shell-knocked-out", body: {} });
    await expect.element(waits).not.toBeInTheDocument();
  });

  test("a plan that comes to nothing is put away, and can be taken out again", async () => {
    await planned({ pieceIds: [] });
    showPour();
    await page.getByText(/^Pour early/).click();
    await key("Cancel plan").click();
    await expect
      .element(page.getByText(/^This plan was cancelled .*; no shell was poured for it/))
      .toBeVisible();
    expect((await desk.logged("pour-ended")).map(({ body }) => body)).toEqual([{ dropped: true }]);
    await key("Restore the plan").click();
    await page.getByText(/^Pour early/).click();
    await expect.element(key("Cancel plan")).toBeVisible();
  });
});
