import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { v7 } from "uuid";
import { navigate } from "wouter/use-browser-location";
import { onOpenRequest } from "./device/openRequests.ts";
import type { Wish } from "./device/takeover.ts";
import type { Updates } from "./device/update.ts";
import type { RescuePage } from "./rescue/rescuePage.ts";
import { NewerStoreError, problemOf } from "./rescue/startProblem.ts";
import type { OpeningWatch } from "./rescue/watchOpening.ts";
import { watchOpening } from "./rescue/watchOpening.ts";
import { sweepUnfinished } from "./storage/backup/journal.ts";
import { hasDrafts } from "./storage/drafts.ts";
import type { Settings } from "./storage/settings.ts";
import { changeSettings, ensureDevice, readSettings } from "./storage/settings.ts";
import type { ShopDb } from "./storage/rows.ts";
import { newerStore, openShopDb, storeVersion } from "./storage/shopDb.ts";
import { App } from "./ui/shell/App.tsx";
import { usualUnits } from "./ui/base/format/units.ts";
import { useFleeting } from "./ui/base/state/fleeting.ts";
import { makeShop } from "./ui/base/state/shop.tsx";
import "./ui/base/styles/base.css";

/** What the app does about updates once it runs. */
export type StartWatch = {
  readonly mayReload: (wish: Wish) => Promise<boolean>;
  readonly onWaiting: () => void;
  readonly onTookOver: () => void;
};

type Parts = {
  readonly root: HTMLElement;
  readonly base: string;
  readonly storeName: string;
  readonly rescue: RescuePage;
  readonly updates: Updates | null;
  readonly onStarted: (app: StartWatch) => void;
};

const newId = (): string => v7();
/** Between two tries to open a store that failed. A browser that was just killed may hold it for a moment longer. */
const retryMs = 2000;
const clock = (): number => Date.now();

/** Opens the store and draws the app; what goes wrong on the way is shown on the plain page. */
export async function start({ root, base, storeName, rescue, updates, onStarted }: Parts): Promise<void> {
  const { offerUpdate } = useFleeting.getState();
  const opening = watchOpening(rescue);
  const db = openShopDb(storeName, {
    onBlocked: opening.blocked,
    onUpgrade: opening.upgrading,
    onOutdated: () => offerUpdate(() => location.reload()),
    onGone: () => rescue.show({ kind: "store-gone" }),
  });
  onStarted({
    mayReload: async (wish) => wish === "here" || !(await hasDrafts(db)),
    onWaiting: () => offerUpdate(() => updates?.apply()),
    onTookOver: () => offerUpdate(() => updates?.reload()),
  });
  const opened = await openedSettings(db, opening);
  if (opened === null) return;
  const shop = makeShop({ db, clock, newId, opened });
  const drawing = createRoot(root, {
    onUncaughtError: (error) => rescue.show(problemOf(error, "app")),
  });
  drawing.render(
    <StrictMode>
      <App shop={shop} base={base} />
    </StrictMode>,
  );
  // A restore that was cut off left photos no entry speaks of; the next start sweeps again where this one fails.
  void sweepUnfinished(db).catch(() => undefined);
  onOpenRequest((path) => navigate(base + path));
}

/** The settings of the opened store. A failure that may pass is tried again until it has; null for one that stays. */
async function openedSettings(db: ShopDb, opening: OpeningWatch): Promise<Settings | null> {
  for (;;) {
    const tried = await triedSettings(db, opening);
    if (tried === null || typeof tried === "object") return tried;
    await new Promise((done) => setTimeout(done, retryMs));
  }
}

async function triedSettings(db: ShopDb, opening: OpeningWatch): Promise<Settings | "again" | null> {
  try {
    await db.open();
    const found = newerStore(db);
    if (found !== null) {
      db.close({ disableAutoOpen: true });
      throw new NewerStoreError({ found, known: storeVersion });
    }
    const isNew = (await readSettings(db)).deviceId === "";
    await ensureDevice(db, newId);
    if (isNew) await changeSettings(db, { units: usualUnits(navigator.language) });
    const kept = await readSettings(db);
    // A new shop has seen all that was due before it: nothing.
    const settings = kept.lastSeenDueAt === 0 ? await changeSettings(db, { lastSeenDueAt: clock() }) : kept;
    opening.opened();
    return settings;
  } catch (error) {
    opening.failed(error);
    return problemOf(error, "store").kind === "store-failed" ? "again" : null;
  }
}
