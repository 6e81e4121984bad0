import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, deskNow, freshDesk, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { PiecePage } from "../../making/piece/PiecePage.tsx";
import { RackPage } from "../../making/rack/RackPage.tsx";

afterEach(clearDesks);

const ways = () => page.getByRole("link", { name: "Log temperature and humidity" });
const assumed = () => page.getByText(/^No readings of this room: assumed 20.°C, 55.*still room\.$/).first();

async function dipped({ shop }: Pick<Desk, "shop">): Promise<void> {
  const stream = "piece/gull";
  const at = deskNow - hourMs;
  await shop.log({
    do: "log",
    stream,
    type: "piece-started",
    body: { plan: { name: "Gull" }, roomId: "first" },
    at,
  });
  const coat = { number: 1, step: null, kind: "backup", stuccoId: "16-30", prewet: false } as const;
  const body = { ...coat, bucketId: "first-backup", roomId: "first" };
  await shop.log({ do: "log", stream, type: "coat-dipped", body, at });
}

const screens = [
  ["its page", "/piece/gull", "/piece/:id", PiecePage],
  ["the rack", "/", "/", RackPage],
] as const;

test.each(screens)(
  "in a room nobody read %s has a time, says what is assumed and leads to the room",
  async (...of) => {
    const [, path, route, screen] = of;
    const desk = freshDesk();
    await dipped(desk);
    showAt(desk.shop, path, { route, screen });
    await expect.element(assumed()).toBeVisible();
    await expect.element(ways()).toHaveAttribute("href", "/rooms/first");
    expect(document.body.textContent).not.toMatch(/no time can be given|no drying time yet/i);
  },
);

test.each(screens)("with a reading %s assumes nothing", async (...of) => {
  const [, path, route, screen] = of;
  const desk = freshDesk();
  await dipped(desk);
  const body = { airC: 20, rh: 0.55, air: "still" } as const;
  await desk.shop.log({ do: "log", stream: "room/first", type: "air-read", body, at: deskNow - 2 * hourMs });
  showAt(desk.shop, path, { route, screen });
  await expect.element(page.getByText(/Gull/).first()).toBeVisible();
  await expect.element(ways()).not.toBeInTheDocument();
});
