import type { NoticeData } from "./swMessages.ts";

export type NotifyPermission = "granted" | "denied" | "not-asked" | "missing";

export type Notice = {
  /** One notification a tag: a later one takes the place of an earlier one. */
  readonly tag: string;
  readonly title: string;
  readonly body: string;
  /** Where pressing it leads, a path of the app such as "/piece/…". */
  readonly path: string;
  readonly iconUrl?: string | undefined;
};

/** "no-worker": the app is not stored yet (first visit, or no https), and phones show nothing without it. */
export type NoticeResult =
  | { readonly shown: true }
  | {
      readonly shown: false;
      readonly why: "missing" | "denied" | "not-asked" | "no-worker" | "failed";
      readonly detail?: string | undefined;
    };

export function notifyPermission(): NotifyPermission {
  if (!("Notification" in globalThis)) return "missing";
  return Notification.permission === "default" ? "not-asked" : Notification.permission;
}

/** Asks the person, once, after a touch. The answer can take as long as they do. */
export async function askToNotify(): Promise<NotifyPermission> {
  if (notifyPermission() !== "not-asked") return notifyPermission();
  await Notification.requestPermission().catch(() => undefined);
  return notifyPermission();
}

/** Shows a notification now. It cannot be set for later: a closed app has no way to show one at a given time. */
export async function showNotice({ tag, title, body, path, iconUrl }: Notice): Promise<NoticeResult> {
  const permission = notifyPermission();
  if (permission !== "granted") return { shown: false, why: permission };
  const worker = await activeWorker();
  if (worker === null) return { shown: false, why: "no-worker" };
  const data: NoticeData = { path };
  // `renotify` is in the standard and not yet in TypeScript's DOM types: without it a repeated tag stays silent.
  const options: NotificationOptions & { readonly renotify: boolean } = { tag, body, data, renotify: true };
  if (iconUrl !== undefined) options.icon = iconUrl;
  try {
    await worker.showNotification(title, options);
    return { shown: true };
  } catch (error) {
    return { shown: false, why: "failed", detail: error instanceof Error ? error.message : String(error) };
  }
}

/** Not `serviceWorker.ready`, which waits for ever where the app is not stored. */
async function activeWorker(): Promise<ServiceWorkerRegistration | null> {
  if (!("serviceWorker" in navigator)) return null;
  const registration = await navigator.serviceWorker.getRegistration().catch(() => undefined);
  return registration?.active ? registration : null;
}
