import { afterEach, beforeAll, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { keepInstallOffer } from "../../../device/install.ts";
import { readSettings } from "../../../storage/settings.ts";
import { RackPage } from "../../making/rack/RackPage.tsx";
import { InstallCard } from "./InstallCard.tsx";

beforeAll(keepInstallOffer);
afterEach(async () => {
  dispatchEvent(new Event("appinstalled"));
  await clearDesks();
});

/** What the browser sends once it finds that the app can be installed. */
function offer(outcome: "accepted" | "dismissed") {
  const prompt = vi.fn<() => Promise<void>>(async () => undefined);
  const event = Object.assign(new Event("beforeinstallprompt", { cancelable: true }), {
    prompt,
    userChoice: Promise.resolve({ outcome }),
  });
  dispatchEvent(event);
  return { prompt, event };
}

const rack = { route: "/", screen: RackPage };
const pieces = page.getByRole("list", { name: "Pieces in work" });
const hint = page.getByRole("region", { name: "Dipbook as an app" });
const dayOld = { askedToKeepAt: 1_000, keepAnswerSeenAt: 1_000 };

test("before the first day is over nobody is asked to install anything", async () => {
  offer("accepted");
  showAt((await demoDesk()).shop, "/", rack);
  await expect.element(pieces).toBeVisible();
  expect(hint.query()).toBeNull();
});

test("after it the rack has one key, which lets the browser ask, and does not come again", async () => {
  const { prompt, event } = offer("dismissed");
  expect(event.defaultPrevented).toBe(true);
  const { db, shop } = await demoDesk(dayOld);
  showAt(shop, "/", rack);
  await hint.getByRole("button", { name: "Install it" }).click();
  await expect.poll(() => prompt.mock.calls.length).toBe(1);
  await expect.element(hint).not.toBeInTheDocument();
  await expect.poll(async () => (await readSettings(db)).installHintSeenAt).toBeGreaterThan(0);
});

test("a no is kept too, and the way stays open in Settings", async () => {
  offer("accepted");
  const { shop } = await demoDesk(dayOld);
  showAt(shop, "/", rack);
  await hint.getByRole("button", { name: "Not now" }).click();
  await expect.element(hint).not.toBeInTheDocument();
  showAt(shop, "/settings", { route: "/settings", screen: InstallCard });
  await expect.element(page.getByRole("button", { name: "Install it" })).toBeVisible();
  await expect.element(page.getByText(/^Alarms:/)).toHaveTextContent(/A closed app still can't ring/);
});

test("on iOS, where no page can ask, a sentence says how, and that the log there is another one", async () => {
  Object.defineProperty(navigator, "standalone", { value: false, configurable: true });
  try {
    showAt((await demoDesk(dayOld)).shop, "/", rack);
    await expect.element(hint).toHaveTextContent(/Add to Home Screen/);
    await expect.element(hint).toHaveTextContent(/log of its own/);
    expect(hint.getByRole("button", { name: "Install it" }).query()).toBeNull();
    await hint.getByRole("button", { name: "Understood" }).click();
    await expect.element(hint).not.toBeInTheDocument();
  } finally {
    Reflect.deleteProperty(navigator, "standalone");
  }
});
