import { scratchSink } from "./device/fileSink.ts";
import { handOver } from "./device/share.ts";
import { keepInstallOffer } from "./device/install.ts";
import type { Updates } from "./device/update.ts";
import { watchUpdates } from "./device/update.ts";
import { makeRescuePage } from "./rescue/rescuePage.ts";
import { problemOf } from "./rescue/startProblem.ts";
import type { StartWatch } from "./start.tsx";
import "./ui/base/styles/tokens.css";
import "./rescue/rescue.css";

const base = import.meta.env.BASE_URL.replace(/\/$/, "").replace(/^\.$/, "");
const storeName = "dipbook";

/** What the started app wants to know of updates; until it has started there is no form to lose. */
let app: StartWatch | null = null;
const startedApp = (): StartWatch | null => app;

// Before anything else, so that a version that mends a start can be taken on the page that says the start failed.
const updates: Updates | null = import.meta.env.PROD
  ? watchUpdates({
      script: `${base}/sw.js`,
      mayReload: (wish) => startedApp()?.mayReload(wish) ?? true,
      onWaiting: () => {
        rescue.offerVersion(() => updates?.apply());
        startedApp()?.onWaiting();
      },
      onTookOver: () => startedApp()?.onTookOver(),
    })
  : null;

const rescue = makeRescuePage(document.body, {
  "try-again": async () => {
    location.reload();
    return null;
  },
  "save-backup": async () => {
    const { makeBackup } = await import("./storage/backup/makeBackup.ts");
    const now = Date.now();
    const choice = { photos: true, since: null };
    const app = String(import.meta.env["VITE_DIPBOOK_VERSION"] ?? "");
    const made = await makeBackup(storeName, await scratchSink(), { choice, now, app, device: "" });
    if (made.checked === null) return "The backup was made, but could not be read back. Try again.";
    const gone = await handOver({
      blob: made.file,
      name: `dipbook-${new Date(now).toISOString().slice(0, 10)}.zip`,
    });
    const { entries, photos } = made.checked;
    const count = `${entries.found} ${entries.found === 1 ? "entry" : "entries"}, ${photos.found} ${photos.found === 1 ? "photo" : "photos"}`;
    if (gone === "shared" || gone === "saved")
      return `Backup made and checked: ${count}. See that it arrived.`;
    return gone === "dismissed" ? "Not saved: the sheet was closed." : "The browser refused the file.";
  },
  "remake-summaries": async () => {
    const { remakeSummaries } = await import("./storage/remakeSummaries.ts");
    await remakeSummaries(storeName);
    location.reload();
    return null;
  },
  "look-for-update": async () => {
    if (updates === null) return "Updates come with the built app.";
    const found = await updates.check();
    if (found === "waiting") {
      updates.apply();
      return null;
    }
    return found === "none" ? "This is the newest version." : "No connection to the host. Try again later.";
  },
});

// The browser makes its offer once, perhaps before the app is drawn.
keepInstallOffer();

const root = document.getElementById("root");
if (root === null) throw new Error("index.html has no element #root to draw in");
try {
  const { start } = await import("./start.tsx");
  await start({ root, base, storeName, rescue, updates, onStarted: (started) => (app = started) });
} catch (error) {
  rescue.show(problemOf(error, "app"));
}
