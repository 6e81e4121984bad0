/** "installed": it runs as an app of its own. "offered": the browser can ask now. "by-hand": iOS, where the person adds it. */
export type Installing = "installed" | "offered" | "by-hand" | "none";

type Prompt = Event & {
  readonly prompt: () => Promise<void>;
  readonly userChoice: Promise<{ readonly outcome: "accepted" | "dismissed" }>;
};

let kept: Prompt | null = null;
const listeners = new Set<() => void>();
const tell = (): void => listeners.forEach((listener) => listener());

const isPrompt = (event: Event): event is Prompt => "prompt" in event && typeof event.prompt === "function";

/** Keeps the browser's offer for a key of our own; call it as the page starts, for the offer comes once and early. */
export function keepInstallOffer(): void {
  addEventListener("beforeinstallprompt", (event) => {
    if (!isPrompt(event)) return;
    event.preventDefault();
    kept = event;
    tell();
  });
  addEventListener("appinstalled", () => {
    kept = null;
    tell();
  });
}

export function watchInstall(changed: () => void): () => void {
  listeners.add(changed);
  return () => void listeners.delete(changed);
}

/** How the app can be put on this device now. */
export function installing(): Installing {
  const isOwnApp =
    matchMedia("(display-mode: standalone)").matches || Reflect.get(navigator, "standalone") === true;
  if (isOwnApp) return "installed";
  if (kept !== null) return "offered";
  // Only Safari on iOS has this flag, true or false; there a page can't ask.
  return Reflect.has(navigator, "standalone") ? "by-hand" : "none";
}

/** Has the browser ask; true once the person has said yes. An offer is good for one question. */
export async function install(): Promise<boolean> {
  const offer = kept;
  if (offer === null) return false;
  kept = null;
  await offer.prompt();
  const { outcome } = await offer.userChoice;
  tell();
  return outcome === "accepted";
}
