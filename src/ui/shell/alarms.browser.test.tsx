import { act, render } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { v7 } from "uuid";
import { clearDesks, demoDesk, deskNow } from "../../../tests/demoDesk.tsx";
import { useAlarmSources } from "../base/alarm/alarmSources.ts";
import { useFleeting } from "../base/state/fleeting.ts";
import { makeShop, ShopProvider } from "../base/state/shop.tsx";
import { RackPage } from "../making/rack/RackPage.tsx";
import { Alarms } from "./Alarms.tsx";

beforeEach(() => useFleeting.setState({ toasts: [] }));
afterEach(clearDesks);

test("a step of the pour day rings while the rack is on the screen", async () => {
  const { db, shop } = await demoDesk();
  const time = { now: deskNow };
  const running = makeShop({ db, clock: () => time.now, newId: () => v7(), opened: shop.opened });
  render(
    <ShopProvider shop={running}>
      <Alarms />
      <RackPage />
    </ShopProvider>,
  );
  const pour = () => useAlarmSources.getState().sources.get("pour/demo-pour");
  await vi.waitFor(() => expect(pour()?.dues.length).toBeGreaterThan(2), { timeout: 30_000 });
  await expect.element(page.getByRole("list", { name: "Pieces in work" })).toBeVisible();
  const next = pour()?.dues.find(({ dueMs }) => dueMs > time.now + 60_000);
  if (next === undefined) throw new Error("nothing is due at the pour");
  const said: string[] = [];
  const stop = useFleeting.subscribe(({ toasts }) => void said.push(toasts.at(-1)?.text ?? ""));
  const look = () => act(() => void document.dispatchEvent(new Event("visibilitychange")));
  time.now = next.dueMs - 1_000;
  look();
  expect(said).not.toContain(next.words);
  time.now = next.dueMs + 1_000;
  look();
  await vi.waitFor(() => expect(said).toContain(next.words), { timeout: 30_000 });
  stop();
});
