import { render } from "@testing-library/react";
import { v7 } from "uuid";
import { afterEach, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, freshDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { makeShop, ShopProvider } from "../../base/state/shop.tsx";
import { RackPage } from "../../making/rack/RackPage.tsx";
import { Alarms } from "../Alarms.tsx";
import { BoardPage } from "./BoardPage.tsx";

const minuteMs = 60_000;

afterEach(async () => {
  await page.viewport(414, 896);
  await clearDesks();
});

function showBoard({ db, shop }: Pick<Desk, "db" | "shop">, at = deskNow) {
  const time = { now: at };
  const running = makeShop({ db, clock: () => time.now, newId: () => v7(), opened: shop.opened });
  render(
    <ShopProvider shop={running}>
      <Alarms />
      <BoardPage />
    </ShopProvider>,
  );
  return { running, time, look: () => document.dispatchEvent(new Event("visibilitychange")) };
}

const section = (name: string) => page.getByRole("region", { name });
const text = (selector: string): string => document.querySelector(selector)?.textContent ?? "";
const now = (): string => text("section[aria-label='To do now']");

test("the board says what the rack says: the same pieces, in its order and its words", async () => {
  await page.viewport(1280, 800);
  const desk = await demoDesk();
  showAt(desk.shop, "/", { route: "/", screen: RackPage });
  await page.getByRole("button", { name: /^To do/ }).click();
  const cards = () =>
    [...document.querySelectorAll("ul[aria-label='Pieces in work'] a strong")].map(
      (name) => name.textContent,
    );
  await expect.poll(() => cards().length).toBeGreaterThan(2);
  const onRack = cards();
  await clearDesks();

  showBoard(await demoDesk());
  const first = onRack[0] ?? "";
  await expect.element(section("To do now").getByText(first)).toBeVisible();
  const onBoard = [...document.querySelectorAll("section[aria-label='To do now'] strong")];
  const names = onBoard.map((name) => name.textContent);
  expect(names.filter((name) => onRack.includes(name))).toEqual(onRack);
  expect(now()).toMatch(/Demo: carp water spout\s*Dip coat 6: backup/);
});

test("next, pour day, air and slurry are those of their own screens", async () => {
  await page.viewport(1280, 800);
  showBoard(await demoDesk());
  await expect
    .poll(() => text("section[aria-label='Next']"))
    .toMatch(/\d\d:\d\d.*heron.*check if coat 2 is dry/);
  // What is too much for one turn comes in the next.
  const turns = new Set<string>();
  const shop = () => [...turns.add(text("ul[aria-label='Pour, air and slurry']"))].join("\n");
  await expect.poll(shop).toMatch(/Pour of 1 shell/);
  await expect.poll(shop).toMatch(/Demo: drying room [\d.]+\s°C \d+%/);
  await expect
    .poll(shop, { timeout: 60_000 })
    .toMatch(/Demo: backup (OK to dip|Check|Hold: do not dip|Not checked today)/);
});

test("a coat logged elsewhere is on the board by itself, and what is too much for it comes in turns", async () => {
  await page.viewport(1280, 800);
  const desk = freshDesk();
  const { running } = showBoard(desk);
  await expect.element(page.getByText("No piece on the rack.")).toBeVisible();
  const names = ["Heron", "Otter", "Fox", "Plaque", "Bell", "Cleat"];
  for (const name of names)
    await running.log({
      do: "log",
      stream: streamOf("piece", v7()),
      type: "piece-started",
      body: { plan: { name }, roomId: "first" },
    });
  await expect
    .poll(() => document.querySelector("section[aria-label='To do now'] h2")?.textContent)
    .toMatch(/of 6$/);
  const seen = new Set<string>();
  await vi.waitFor(
    () => {
      for (const item of document.querySelectorAll("section[aria-label='To do now'] li:not([data-over])"))
        seen.add(item.querySelector("strong")?.textContent ?? "");
      expect([...seen].toSorted()).toEqual(names.toSorted());
    },
    { timeout: 60_000, interval: 500 },
  );
}, 90_000);

test("it is dark from ten in the evening, and bright again at six", async () => {
  await page.viewport(1280, 800);
  const evening = new Date(2026, 2, 4, 21, 59).getTime();
  const { time, look } = showBoard(freshDesk(), evening);
  const board = () => document.querySelector("[data-board]");
  await expect.poll(board).not.toBeNull();
  expect(board()?.hasAttribute("data-night")).toBe(false);
  time.now = evening + 2 * minuteMs;
  look();
  await expect.poll(() => board()?.hasAttribute("data-night")).toBe(true);
  time.now = new Date(2026, 2, 5, 6, 0).getTime();
  look();
  await expect.poll(() => board()?.hasAttribute("data-night")).toBe(false);
});

test("the one key is gone once it has rung, and it switches on a tone that was off", async () => {
  await page.viewport(1280, 800);
  const { running } = showBoard(await demoDesk({ tone: false }));
  await page.getByRole("button", { name: "Sound on" }).click();
  await expect.element(page.getByRole("button", { name: "Sound on" })).not.toBeInTheDocument();
  expect(document.querySelectorAll("[data-board] button")).toHaveLength(0);
  await expect.poll(async () => (await running.db.settings.get("own"))?.value).toMatchObject({ tone: true });
});

test.each([
  [1920, 1080],
  [1280, 800],
  [820, 1180],
])(
  "no text at %i by %i is under 16 minutes of arc from three metres on a 24-inch screen",
  async (width, height) => {
    await page.viewport(width, height);
    showBoard(await demoDesk());
    await expect.element(section("To do now").getByText(/carp water spout/)).toBeVisible();
    await expect.poll(() => text("section[aria-label='Next']")).toMatch(/heron/);
    // A capital as this browser draws it, beside the share of the font that the size was worked out with.
    const brush = document.createElement("canvas").getContext("2d");
    if (brush === null) throw new Error("this browser draws no text");
    await document.fonts.load("400 200px 'Inter Variable'");
    brush.font = "400 200px 'Inter Variable'";
    const capital = brush.measureText("H").actualBoundingBoxAscent / 200;
    // The board at the size of that screen: its shorter side is 299 mm.
    const mmPerPx = (24 * 25.4 * 9) / Math.hypot(16, 9) / Math.min(width, height);
    const walker = document.createTreeWalker(
      document.querySelector("[data-board]") ?? document,
      NodeFilter.SHOW_TEXT,
    );
    const small: string[] = [];
    let looked = 0;
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const holder = node.parentElement;
      if (holder === null || (node.textContent ?? "").trim() === "" || holder.closest(".visually-hidden"))
        continue;
      looked += 1;
      const tallMm = Number.parseFloat(getComputedStyle(holder).fontSize) * capital * mmPerPx;
      const arcMin = (2 * Math.atan(tallMm / 2 / 3000) * 180 * 60) / Math.PI;
      if (arcMin < 15.9) small.push(`${node.textContent ?? ""}: ${arcMin.toFixed(1)}′`);
    }
    expect(looked).toBeGreaterThan(10);
    expect(small).toEqual([]);
  },
);
