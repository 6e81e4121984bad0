import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/** Flags that keep a headless Chromium quiet, alone and off the network. */
export const chromiumArgs = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
] as const;

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome"];
const usualPlaces = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** The Chromium or Chrome of this machine: CHROME_PATH, then PATH, then the usual places. */
export function findChromium(): string | null {
  const asked = process.env["CHROME_PATH"];
  if (asked !== undefined && asked !== "") return asked;
  const folders = (process.env["PATH"] ?? "").split(delimiter);
  const onPath = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...usualPlaces].find((place) => existsSync(place)) ?? null;
}

export function chromiumPath(): string {
  const found = findChromium();
  if (found === null)
    throw new Error(
      "No Chromium or Chrome found. Install one, or name it in CHROME_PATH; `npm test` as root on Debian installs it.",
    );
  return found;
}
