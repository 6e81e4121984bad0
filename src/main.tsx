import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { v7 } from "uuid";
import { navigate } from "wouter/use-browser-location";
import { onOpenRequest } from "./device/openRequests.ts";
import { watchUpdates } from "./device/update.ts";
import { hasDrafts } from "./storage/drafts.ts";
import { changeSettings, ensureDevice, readSettings } from "./storage/settings.ts";
import { openShopDb } from "./storage/shopDb.ts";
import { App } from "./ui/app/App.tsx";
import { useFleeting } from "./ui/app/fleeting.ts";
import { makeShop } from "./ui/app/shop.tsx";
import "./ui/styles/tokens.css";
import "./ui/styles/base.css";

const { offerUpdate, say } = useFleeting.getState();
const newId = (): string => v7();
const clock = (): number => Date.now();
const base = import.meta.env.BASE_URL.replace(/\/$/, "").replace(/^\.$/, "");

const db = openShopDb("dipbook", {
  onBlocked: () => say("Another tab holds an older Dipbook open. Close it, and this one goes on.", "refused"),
  onOutdated: () => offerUpdate(() => location.reload()),
});

async function start(root: HTMLElement): Promise<void> {
  await ensureDevice(db, newId);
  const kept = await readSettings(db);
  // A new shop has seen all that was due before it: nothing.
  const opened = kept.lastSeenDueAt === 0 ? await changeSettings(db, { lastSeenDueAt: clock() }) : kept;
  const shop = makeShop({ db, clock, newId, opened });
  createRoot(root).render(
    <StrictMode>
      <App shop={shop} base={base} />
    </StrictMode>,
  );
}

function stayCurrent(): void {
  const updates = watchUpdates({
    script: `${base}/sw.js`,
    mayReload: async (wish) => wish === "here" || !(await hasDrafts(db)),
    onWaiting: () => offerUpdate(updates.apply),
    onTookOver: () => offerUpdate(updates.reload),
  });
  onOpenRequest((path) => navigate(base + path));
}

const root = document.getElementById("root");
if (root === null) throw new Error("index.html has no element #root to draw in");
await start(root);
if (import.meta.env.PROD) stayCurrent();
