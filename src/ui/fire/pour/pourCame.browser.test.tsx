import { v7 } from "uuid";
import { cleanup } from "@testing-library/react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { streamOf, type EntryBodies, type EntryType } from "../../../logbook/entries/entry.ts";
import { stepsOf } from "../../../logbook/pour/pourSteps.ts";
import { PiecePage } from "../../making/piece/PiecePage.tsx";
import { LogPage } from "../../making/log/LogPage.tsx";
import { MeltPage } from "../metal/MeltPage.tsx";
import { makeShop, type ShopDoor } from "../../base/state/shop.tsx";
import { PourPage } from "./PourPage.tsx";

let desk: Desk;
let shop: ShopDoor;
let now = deskNow;

const wait = (minutes: number): void => {
  now += minutes * minuteMs;
  window.dispatchEvent(new Event("pageshow"));
};
const key = (name: string | RegExp) => page.getByRole("button", { name });
const pieces = ["demo-heron", "demo-carp"];
const logged = async <T extends EntryType>(stream: string, type: T, body: EntryBodies[T]) =>
  expect(await shop.log({ do: "log", stream, type, body } as never)).toMatchObject({ ok: true });
const openPour = () => showAt(shop, "/fire/pour/p", { route: "/fire/pour/:id", screen: PourPage });
const openPiece = (id: string) => showAt(shop, `/piece/${id}`, { route: "/piece/:id", screen: PiecePage });

/** Two hot shells of 2 kg each under one melt of 5 kg, the first with metal running into it. */
beforeEach(async () => {
  desk = await demoDesk();
  now = deskNow;
  shop = makeShop({ db: desk.db, clock: () => now, newId: () => v7(), opened: desk.shop.opened });
  for (const id of pieces) {
    const stream = streamOf("piece", id);
    await logged(stream, "piece-changed", { changes: { metalKg: 2, alloyId: "c90300" } });
    await logged(stream, "shell-fired", { peakC: 880, holdMin: 60 });
  }
  await logged("melt/m", "melt-planned", {
    furnaceId: null,
    alloyId: "c90300",
    pieceIds: [],
    items: [{ name: "ingot", massKg: 5, alloyId: "c90300" }],
    pourC: 1180,
    chargeKind: "clean-ingot",
    lossShare: 0.02,
  });
  await logged("melt/m", "melt-started", { hotFurnace: false, weighedKg: 5 });
  await logged("pour/p", "pour-planned", {
    pourAt: now + minuteMs,
    pieceIds: pieces,
    meltId: "m",
    bed: "air",
    shellC: 900,
    metalC: 1180,
    steps: stepsOf({ kilnMin: 40, sandMin: null, crucibleMin: 20, meltMin: 30 }),
  });
  await begin(0);
});
afterEach(clearDesks);

async function begin(which: number): Promise<void> {
  const stream = streamOf("piece", pieces[which] ?? "");
  await logged(stream, "shell-out-of-kiln", { shellC: 900, pourId: "p" });
  now += minuteMs;
  await logged(stream, "pour-begun", { metalC: 1180, pourId: "p" });
  now += minuteMs / 6;
}

test("four ways to end otherwise stand under Full, each a key for a glove", async () => {
  await page.viewport(390, 844);
  openPour();
  const group = page.getByRole("group", { name: "Not full" });
  await expect.element(group).toBeVisible();
  const keys = ["Short", "Leaked", "Frozen in the cup", "Stopped"].map((name) =>
    group.getByRole("button", { name }),
  );
  const boxes = keys.map((one) => one.element().getBoundingClientRect());
  const full = key(/^Full/).element().getBoundingClientRect();
  for (const box of boxes) {
    expect(box.height).toBeGreaterThanOrEqual(72);
    expect(box.width).toBeGreaterThanOrEqual(120);
    expect(box.top).toBeGreaterThan(full.bottom);
    expect(box.bottom).toBeLessThanOrEqual(844);
  }
});

test("a short one says what to do and how much metal is left, and is not called full", async () => {
  openPour();
  await key("Short").click();
  await expect.element(page.getByText(/^short at /)).toBeVisible();
  await expect.element(page.getByText(/^Stand clear and leave it\. Don't top it up/)).toBeVisible();
  // 5 kg less 2 % is 4.9; of the first shell's 2 kg nobody knows how much went in.
  await expect
    .element(
      page.getByText(
        /^Metal the other shells don.t need goes into .* about 2\.9\skg to 4\.9\skg left: the mould/,
      ),
    )
    .toBeVisible();
  const [line] = await desk.logged("metal-poured");
  expect(line?.body).toMatchObject({ came: "short", meltId: "m", pourId: "p", massKg: null });
  wait(1);
  await begin(1);
  cleanup();
  openPour();
  await key(/^Full/).click();
  await expect.element(page.getByRole("heading", { name: "Poured: 1 full, 1 short" })).toBeVisible();
  await expect.element(page.getByText("All shells are full")).not.toBeInTheDocument();
  const lines = await desk.logged("metal-poured");
  expect(lines.map(({ body }) => body.came)).toEqual(["short", undefined]);
});

test("taken back beside it, it is being poured again", async () => {
  openPour();
  await key("Leaked").click();
  await expect.element(page.getByText(/^Step back and let it run into the sand\. Never water/)).toBeVisible();
  await key(/^Take back: .* leaked$/).click();
  await expect.element(key("Frozen in the cup")).toBeVisible();
  await expect.element(page.getByText(/^leaked at /)).not.toBeInTheDocument();
});

test("a full shell that leaked afterwards is put right, with a line of note", async () => {
  openPour();
  await key(/^Full/).click();
  await key(/^Note, or change/).click();
  await page.getByRole("radio", { name: "Leaked" }).click();
  await page.getByLabelText("Note", { exact: true }).fill("at the foot, after a minute");
  await key("Save changes").click();
  await expect.element(page.getByText(/^leaked at /)).toBeVisible();
  await expect.element(page.getByText("at the foot, after a minute", { exact: true })).toBeVisible();
  const last = (await desk.logged("metal-poured")).at(-1)?.body;
  expect(last).toMatchObject({ came: "leaked", meltId: "m" });
  expect(last?.note).toMatch(/^at the foot, after a minute; shell heat at the metal estimated$/);
});

test("the piece says how its pour went and what melt it came from; the melt has its pieces; the outcome starts from it", async () => {
  openPour();
  await key("Frozen in the cup").click();
  await expect.element(page.getByText(/^frozen in the cup at /)).toBeVisible();
  cleanup();
  openPiece("demo-heron");
  await expect
    .element(page.getByRole("region", { name: "What is next" }))
    .toHaveTextContent(/froze in the cup at the pour.*Knock out.*froze in the cup at the pour .* ago/);
  await expect.element(page.getByText(/^Froze in the cup/).first()).toBeVisible();
  const from = page.getByRole("region", { name: "Metal from" });
  await expect.element(from).toHaveTextContent(/5 kg of C90300 tin bronze.*ingot, 5 kg/);
  cleanup();
  showAt(shop, "/fire/melt/m", { route: "/fire/melt/:id", screen: MeltPage });
  const fills = page.getByRole("region", { name: "Pieces from this melt" });
  await expect.element(fills).toHaveTextContent(/heron.*, froze in the cup at the pour/);
  await expect.element(fills).toHaveTextContent(/carp.*, to be poured/);
  cleanup();
  wait(120);
  await logged(streamOf("piece", "demo-heron"), "shell-knocked-out", {});
  const path = "/piece/demo-heron/log/outcome-told";
  showAt(shop, path, { route: "/piece/:id/log/:type", screen: LogPage });
  await expect.element(page.getByText(/^From the pour: froze in the cup at the pour\./)).toBeVisible();
  await expect.element(page.getByRole("radio", { name: "Scrap" })).toBeChecked();
  await expect.element(page.getByRole("checkbox", { name: /^Misrun/ })).toBeChecked();
});
