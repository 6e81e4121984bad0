import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { readSettings } from "../../../storage/settings.ts";
import { TimelinePage } from "./TimelinePage.tsx";

afterEach(clearDesks);

const show = ({ shop }: Desk) => showAt(shop, "/timeline", { route: "/timeline", screen: TimelinePage });

/** A room read every two hours for two days: dry by day, 88 % at three at night; one piece hangs in it, just dipped. */
async function dampShed({ shop }: Desk): Promise<void> {
  const told = [];
  for (let h = 48; h >= 0; h -= 2) {
    const at = deskNow - h * hourMs;
    const wave = Math.cos(((new Date(at).getHours() - 15) / 24) * 2 * Math.PI);
    const body = { airC: 14 + 4 * wave, rh: 0.68 - 0.2 * wave, air: "still" } as const;
    told.push(await shop.log({ do: "log", stream: "room/first", type: "air-read", body, at }));
  }
  const plan = { name: "Otter", recipeId: "start-general" };
  const start = { plan, roomId: "first" };
  told.push(
    await shop.log({
      do: "log",
      stream: "piece/otter",
      type: "piece-started",
      body: start,
      at: deskNow - hourMs,
    }),
    await shop.log({
      do: "log",
      stream: "piece/otter",
      type: "coat-dipped",
      body: {
        number: 1,
        step: 0,
        kind: "prime",
        stuccoId: "80-120",
        bucketId: "first-prime",
        roomId: "first",
        prewet: false,
      },
      at: deskNow - hourMs / 2,
    }),
  );
  expect(told.every(({ ok }) => ok)).toBe(true);
}

test("a damp night is told with its hours and its humidity, in the room that has it", async () => {
  const desk = await demoDesk();
  await dampShed(desk);
  show(desk);
  const shed = page.getByRole("region", { name: "Drying room", exact: true });
  const damp = shed.getByRole("list", { name: "Damp ahead" }).getByRole("listitem");
  await expect.element(damp.first()).toHaveTextContent(/damp, up to 8\d%; too damp .*nothing dries then/);
  expect(damp.elements()).toHaveLength(2);
  await expect
    .element(shed.getByRole("link", { name: /Otter/ }))
    .toHaveTextContent(/coat 2 prime: (check from|dry )/);
  const demo = page.getByRole("region", { name: "Demo: drying room" });
  await expect.element(demo.getByText("No damp stretch ahead.")).toBeVisible();
});

test("the proposal says when to dip what, and the table has the same moments", async () => {
  const desk = await demoDesk();
  show(desk);
  const proposal = page.getByRole("region", { name: "Proposal" });
  await expect
    .element(proposal.getByRole("heading", { name: /^Dip these three at (17|5):\d\d/ }))
    .toBeVisible();
  await expect.element(proposal).toHaveTextContent(/backup from .*: .*carp water spout/);
  await expect.element(proposal).toHaveTextContent(/Without a recipe, so not planned: Demo: wren/);
  await page.getByText("As a table").click();
  const row = page.getByRole("row", { name: /carp water spout/ });
  await expect.element(row).toHaveTextContent(/dry since /);
});

test("hours at the bucket are a setting, and the proposal keeps to them", async () => {
  const desk = await demoDesk();
  show(desk);
  await page.getByText("Change the hours").click();
  await page.getByRole("button", { name: "Remove time slot 2" }).click();
  await expect
    .element(page.getByRole("heading", { name: /^At the bucket 0?8:00\D*10:00\D*$/ }))
    .toBeVisible();
  await expect
    .element(page.getByRole("heading", { name: /^Dip these three tomorrow at 0?8:00/ }))
    .toBeVisible();
  await page.getByLabelText("from").fill("06:30");
  await expect
    .element(page.getByRole("heading", { name: /^Dip these three tomorrow at 0?6:30/ }))
    .toBeVisible();
  expect((await readSettings(desk.db)).bucketHours).toEqual([{ fromMin: 390, toMin: 600 }]);
  await page.getByRole("button", { name: "Remove time slot 1" }).click();
  await expect.element(page.getByText("None set, so nothing can be proposed.")).toBeVisible();
  await expect.element(page.getByText(/No coat to propose/)).toBeVisible();
});
