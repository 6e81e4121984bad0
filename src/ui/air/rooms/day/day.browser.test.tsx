import { millisecondsInDay as dayMs } from "date-fns/constants";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt } from "../../../../../tests/demoDesk.tsx";
import { streamOf } from "../../../../logbook/entries/entry.ts";
import type { ShopDoor } from "../../../base/state/shop.tsx";
import { DayPage } from "./DayPage.tsx";

beforeEach(() => {
  Object.defineProperty(navigator, "languages", { value: ["en-GB"], configurable: true });
});
afterEach(clearDesks);

const path = "/rooms/first/day";
const screen = { route: "/rooms/:id/day", screen: DayPage };
const midnight = Date.UTC(2026, 2, 4);

/** Hourly readings of a shed up to now: damp between ten at night and six, on the night to `dampDay` only. */
async function shed(shop: ShopDoor, days: number): Promise<void> {
  const commands = Array.from({ length: days }, (_, i) => {
    const from = midnight - (days - 1 - i) * dayMs;
    const hours = from === midnight ? 15 : 24;
    const afterS = Array.from({ length: hours }, (__, h) => h * 3600);
    return {
      do: "log",
      stream: streamOf("room", "first"),
      type: "air-logged",
      at: from,
      body: {
        source: "shed.csv",
        air: null,
        afterS,
        airC: afterS.map((s) => 15 + 5 * Math.sin((s / 86_400) * 2 * Math.PI - 2)),
        rh: afterS.map((s) => (from === midnight - dayMs && s > 0 && s <= 6 * 3600 ? 0.85 : 0.5)),
      },
    } as const;
  });
  expect(await shop.logAll(commands)).toMatchObject({ ok: true });
}

test("a damp night is told with its hours, and its numbers are read along the line", async () => {
  const { shop } = await demoDesk();
  await shed(shop, 12);
  showAt(shop, path, screen);
  await expect.element(page.getByRole("heading", { level: 1 })).toHaveTextContent("Drying room: today");
  await page.getByRole("button", { name: "The day before" }).click();
  await expect.element(page.getByText(/^Damp: over 70% from 00:\d0 to 06:\d0, at most 85%\.$/)).toBeVisible();
  const slider = page.getByRole("slider", { name: "Look at a time" });
  await slider.fill(String(midnight - dayMs + 3 * 3_600_000));
  await expect
    .element(slider)
    .toHaveAttribute("aria-valuetext", expect.stringMatching(/^yesterday 03:00: .*, 85%, dew point /));
  await page.getByText("As a table").click();
  await expect.element(page.getByRole("row", { name: /^Tue 03:00 .* 85%/ })).toBeVisible();
  await page.getByRole("button", { name: "The day before" }).click();
  await expect.element(page.getByText(/^Damp:/)).not.toBeInTheDocument();
});

test("the next 24 hours repeat yesterday, with how far that has been off", async () => {
  const { shop } = await demoDesk();
  await shed(shop, 12);
  showAt(shop, path, screen);
  await expect
    .element(
      page.getByText(
        /^The next 24 hours repeat .* off by a median of .*°C, \d+% humidity, .* dew point, .*g\/m³ \(\d+ days\)/,
      ),
    )
    .toBeVisible();
  const slider = page.getByRole("slider", { name: "Look at a time" });
  await slider.fill(String(Math.floor(deskNow / 600_000) * 600_000 + 6 * 3_600_000));
  await expect.element(slider).toHaveAttribute("aria-valuetext", expect.stringMatching(/\(forecast\)$/));
  await page.getByText("As a table").click();
  await expect.element(page.getByRole("row", { name: /^Thu 03:00 \(forecast\)/ })).toBeVisible();
});

test("a young log says that its forecast can't be judged yet, and one without a day holds the last reading", async () => {
  const { shop } = await demoDesk();
  await shed(shop, 2);
  showAt(shop, path, screen);
  await expect.element(page.getByText(/Its error is not known yet/)).toBeVisible();
  const other = await demoDesk();
  await shed(other.shop, 1);
  showAt(other.shop, path, screen);
  await expect.element(page.getByText(/so the last reading is held/)).toBeVisible();
});

test("a room without readings shows no picture but the way to one", async () => {
  const { shop } = await demoDesk();
  showAt(shop, path, screen);
  await expect.element(page.getByText("This room has no readings yet.")).toBeVisible();
  await expect.element(page.getByRole("slider")).not.toBeInTheDocument();
});

test("the line along the day moves by keys as well", async () => {
  const { shop } = await demoDesk();
  await shed(shop, 3);
  showAt(shop, path, screen);
  const slider = page.getByRole("slider", { name: "Look at a time" });
  await slider.fill(String(midnight + 4 * 3_600_000));
  (slider.element() as HTMLElement).focus();
  await userEvent.keyboard("{ArrowRight}");
  await expect.element(slider).toHaveAttribute("aria-valuetext", expect.stringMatching(/^today 04:10: /));
});
