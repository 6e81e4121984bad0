import { cleanup } from "@testing-library/react";
import { afterEach, describe, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt } from "../../../../tests/demoDesk.tsx";
import { hasDrafts } from "../../../storage/drafts.ts";
import type { ShopDoor } from "../../base/state/shop.tsx";
import { LogPage } from "./LogPage.tsx";

afterEach(clearDesks);

const open = (shop: ShopDoor, piece: string, type: string) =>
  showAt(shop, `/piece/${piece}/log/${type}`, { route: "/piece/:id/log/:type", screen: LogPage });
const field = (name: string) => page.getByRole("textbox", { name });
const press = (name: string) => page.getByRole("button", { name }).click();

describe("a log form", () => {
  test("a wall of 900 mm is refused at its field and nothing is logged, 7.4 mm is", async () => {
    const { shop, logged } = await demoDesk();
    const { places } = open(shop, "demo-handle", "wall-measured");
    await field("Shell thickness").fill("900");
    await press("Log it");
    await expect
      .element(page.getByText(/^Found 900.mm for the wall, expected 0\.1.mm to 60.mm\./))
      .toBeVisible();
    expect(await logged("wall-measured")).toEqual([]);
    await field("Shell thickness").fill("7.4");
    await expect.element(page.getByText(/^Found 900/)).not.toBeInTheDocument();
    await field("Where").fill("cup edge");
    await press("Log it");
    await expect.poll(() => places.at(-1)).toBe("/piece/demo-handle");
    expect((await logged("wall-measured")).map(({ body, at }) => ({ body, at }))).toEqual([
      { body: { wallMm: 7.4, where: "cup edge" }, at: deskNow },
    ]);
  });

  test("nothing filled in is told field by field: what is missing and what to do", async () => {
    const { shop, logged } = await demoDesk();
    open(shop, "demo-handle", "crack-found");
    await press("Log it");
    await expect.element(page.getByText("Nothing chosen for the kind of crack. Tap one.")).toBeVisible();
    await expect.element(page.getByText(/^Found no place\. Say where/)).toBeVisible();
    expect(await logged("crack-found")).toEqual([]);
  });

  test("a chip is logged as trimmed off only where that is ticked", async () => {
    for (const isTicked of [false, true]) {
      const { shop, logged } = await demoDesk();
      const { places } = open(shop, "demo-handle", "crack-found");
      await page.getByRole("radio", { name: /^Chip/ }).click({ force: true });
      await field("Where").fill("cup rim");
      if (isTicked) await page.getByText("It is trimmed off before the pour").click();
      await press("Log it");
      await expect.poll(() => places.at(-1)).toBe("/piece/demo-handle");
      const [crack] = await logged("crack-found");
      expect(crack?.body.trimmedOff).toBe(isTicked ? true : undefined);
      cleanup();
    }
  });

  test("a half-written note outlives the tab, and is gone once it is logged", async () => {
    const { db, shop, logged } = await demoDesk();
    open(shop, "demo-handle", "note-written");
    await field("Note").fill("prime looks thin at the hinge");
    await expect.poll(() => hasDrafts(db)).toBe(true);
    cleanup();
    open(shop, "demo-handle", "note-written");
    await expect.element(field("Note")).toHaveValue("prime looks thin at the hinge");
    await press("Log it");
    await expect.poll(async () => (await logged("note-written")).length).toBe(1);
    await expect.poll(() => hasDrafts(db)).toBe(false);
  });

  test("a person who reads inches types inches; the log keeps millimetres", async () => {
    const { shop, logged } = await demoDesk({ units: "us" });
    open(shop, "demo-handle", "wall-measured");
    await field("Shell thickness").fill("0.25");
    await press("Log it");
    await expect.poll(async () => (await logged("wall-measured"))[0]?.body.wallMm).toBeCloseTo(6.35, 9);
  });

  test("what the log refuses is told in a sentence and the form stays as it was", async () => {
    const { shop, logged } = await demoDesk();
    const { places } = open(shop, "demo-wren", "shell-knocked-out");
    await field("Note").fill("came off clean");
    await press("Log it");
    await expect.element(page.getByRole("alert")).toBeVisible();
    await expect.element(field("Note")).toHaveValue("came off clean");
    expect(places).toEqual(["/piece/demo-wren/log/shell-knocked-out"]);
    expect(await logged("shell-knocked-out")).toEqual([]);
  });

  test("a coat over one that is not dry says so before it is logged, and keeps what was accepted", async () => {
    const { shop, logged } = await demoDesk();
    open(shop, "demo-heron", "coat-dipped");
    await expect.element(page.getByText(/^Coat 2 is .*not dry/)).toBeVisible();
    await press("Coat done");
    await expect.poll(async () => (await logged("coat-dipped")).length).toBe(1);
    const [coat] = await logged("coat-dipped");
    expect(coat?.body).toMatchObject({ number: 3, step: 2, kind: "intermediate", stuccoId: "50-100" });
    expect(coat?.body.acceptedDamp?.leftShare).toBeGreaterThan(0);
  });
});

describe("cautions stand where the step is logged", () => {
  test.each([
    ["demo-plaque", "burnout-started", /Pattern smoke is poisonous/],
    ["demo-dancer", "metal-poured", /Water under molten metal throws it/],
    ["demo-bell", "shell-knocked-out", /silica/],
    ["demo-medals", "shell-fired", /Hot kiln and hot shell/],
  ])("%s: %s", async (piece, type, words) => {
    const { shop } = await demoDesk();
    open(shop, piece, type);
    await expect.element(page.getByRole("region", { name: "Cautions" })).toHaveTextContent(words);
    await expect.element(page.getByText(/Local codes.*come first/)).toBeVisible();
  });
});

test("a surface reading asks where it was taken only of a piece with more than one place", async () => {
  const { shop, logged } = await demoDesk();
  const open = () =>
    showAt(shop, "/piece/demo-handle/log/dryness-seen", { route: "/piece/:id/log/:type", screen: LogPage });
  const stream = "piece/demo-handle";
  const change = (pockets: readonly ("recess" | "blind")[]) =>
    shop.log({
      do: "log",
      stream,
      type: "piece-changed",
      body: { changes: { geometry: "open", pockets } },
    });
  await change([]);
  open();
  await page.getByRole("radio", { name: /^Surface temperature/ }).click();
  await expect.element(field("Surface temperature")).toBeVisible();
  await expect.element(page.getByText("Where was it measured?")).not.toBeInTheDocument();
  cleanup();
  await change(["recess"]);
  open();
  await page.getByRole("radio", { name: "Hollow or deep recess" }).click();
  await field("Surface temperature").fill("21.8");
  await field("A dry shell beside it").fill("22");
  await press("Log it");
  await expect
    .poll(async () => (await logged("dryness-seen")).map(({ body }) => body))
    .toMatchObject([{ method: "surface", surfaceC: 21.8, dryShellC: 22, place: "recess" }]);
});

test("every kind of entry has its form", async () => {
  const { shop } = await demoDesk();
  const types = [
    "coat-dipped",
    "coat-redipped",
    "coat-skipped",
    "dryness-seen",
    "wall-measured",
    "crack-found",
    "crack-patched",
    "patch-dried",
    "wire-wrapped",
    "dewaxed",
    "shell-inspected",
    "shell-rinsed",
    "burnout-started",
    "burnout-read",
    "burnout-ended",
    "shell-fired",
    "shell-preheated",
    "metal-poured",
    "shell-knocked-out",
    "piece-finished",
    "outcome-told",
    "piece-scrapped",
    "note-written",
    "piece-moved",
  ];
  for (const type of types) {
    open(shop, "demo-handle", type);
    await expect.element(page.getByRole("group", { name: "When" })).toBeVisible();
    cleanup();
  }
  open(shop, "demo-handle", "nothing-of-ours");
  await expect.element(page.getByText("No such entry")).toBeVisible();
});
