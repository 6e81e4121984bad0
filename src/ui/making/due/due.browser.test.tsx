import { act, cleanup, render } from "@testing-library/react";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { clearDesk, now, rack } from "../../../../tests/dipRack.tsx";
import { readSettings } from "../../../storage/settings.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { ShopProvider, type ShopDoor } from "../../base/state/shop.tsx";
import { Ringer } from "../../base/alarm/Ringer.tsx";
import { RackDues } from "./RackDues.tsx";
import { DuePage } from "./DuePage.tsx";
import { RingTestPage } from "./RingTestPage.tsx";
import { layerWords } from "../../base/alarm/ringLabel.ts";

beforeEach(() => useFleeting.setState({ toasts: [] }));
afterEach(async () => {
  cleanup();
  await clearDesk();
});

const open = (shop: ShopDoor) =>
  render(
    <ShopProvider shop={shop}>
      <RackDues />
      <Ringer />
      <DuePage />
    </ShopProvider>,
  );
/** Looks at the clock as a page does that comes back into sight. */
const look = () => act(() => void document.dispatchEvent(new Event("visibilitychange")));
const toasts = () => useFleeting.getState().toasts.map(({ text }) => text);

test("a coat that comes due while the app is open is told once, and is not listed as missed", async () => {
  const { db, shop, time } = await rack([{ name: "Hand", coats: 3, lastH: 1 }]);
  open(shop);
  await expect.element(page.getByText(/^Coat 3: (check from|dry) /)).toBeVisible();
  // Every ten minutes, as an open page looks, past any time it could be due.
  for (let minutes = 10; minutes <= 8 * 60 && toasts().length === 0; minutes += 1) {
    time.now = now + minutes * 60_000;
    look();
  }
  expect(toasts()).toEqual(["Hand: coat 3 is dry – ready for the next coat"]);
  await vi.waitFor(async () => expect((await readSettings(db)).lastSeenDueAt).toBe(time.now));
  await expect.element(page.getByText("Now dry")).toBeVisible();
  time.now += hourMs;
  look();
  expect(toasts()).toHaveLength(1);
});

test("what came due while the app was closed is told on return and listed first until it was seen", async () => {
  const { db, shop, time } = await rack([
    { name: "Heron", coats: 3, lastH: 60 },
    { name: "Hand", coats: 3, lastH: 1 },
  ]);
  const first = open(shop);
  await expect.element(page.getByText("Now dry")).toBeVisible();
  await vi.waitFor(async () => expect((await readSettings(db)).lastSeenDueAt).toBe(now));
  first.unmount();
  time.now = now + 20 * hourMs;
  open(shop);
  const came = page.getByRole("region", { name: "Came due since you last looked" });
  await expect.element(came).toHaveTextContent("Hand");
  // Said once: the list stands on this page, so no message comes as well.
  expect(toasts()).toEqual([]);
  await page.getByRole("button", { name: "Seen" }).click();
  await expect.element(page.getByText("Came due since you last looked")).not.toBeInTheDocument();
});

test("a due time says that it will not ring, until it is in the calendar", async () => {
  const { db, shop } = await rack([{ name: "Hand", coats: 3, lastH: 1 }]);
  open(shop);
  await expect.element(page.getByText(layerWords.none)).toBeVisible();
  const clicks: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
    clicks.push(this.download);
  });
  await page.getByRole("button", { name: "Put Hand, coat 3, in the calendar" }).click();
  await expect.element(page.getByText(layerWords.calendar).first()).toBeVisible();
  await expect.element(page.getByText(layerWords.none)).not.toBeInTheDocument();
  expect(clicks).toEqual(["hand-coat-3.ics"]);
  expect((await readSettings(db)).calendarSequence).toBe(1);
  vi.restoreAllMocks();
});

test("the answer to a ring test is kept for this device", async () => {
  const { db, shop } = await rack([]);
  render(
    <ShopProvider shop={shop}>
      <RingTestPage />
    </ShopProvider>,
  );
  await page.getByRole("button", { name: "Ring now" }).click();
  await page.getByRole("button", { name: "Tone, right now: it did not ring" }).click();
  await expect.element(page.getByText(/it did NOT ring/)).toBeVisible();
  expect((await readSettings(db)).ringTested["tone"]).toEqual({ at: now, rang: false });
});
