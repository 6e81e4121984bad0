/** What a page says to the service worker. The name of the type is the one workbox-window sends. */
export type ToWorker = { readonly type: "SKIP_WAITING" };

/** What the service worker says to a page: show this path of the app, because its notification was pressed. */
export type OpenRequest = { readonly type: "open"; readonly path: string };

/** What a notification carries, so that pressing it leads to the piece it speaks of. */
export type NoticeData = { readonly path: string };

/** The path a notification leads to: the app's start where it carries none, or one that could leave the app. */
export function noticePath(data: unknown): string {
  const path = isRecord(data) ? data["path"] : undefined;
  return typeof path === "string" && isAppPath(path) ? path : "/";
}

/** The request in a message from the service worker, or null for any other message. */
export function openRequest(data: unknown): OpenRequest | null {
  if (!isRecord(data) || data["type"] !== "open") return null;
  const path = data["path"];
  return typeof path === "string" && isAppPath(path) ? { type: "open", path } : null;
}

export function isSkipWaiting(data: unknown): data is ToWorker {
  return isRecord(data) && data["type"] === "SKIP_WAITING";
}

/** "//host/x" and "/\host/x" are other sites to a browser, however much they look like paths. */
function isAppPath(path: string): boolean {
  return /^\/(?![/\\])/.test(path);
}

function isRecord(data: unknown): data is Readonly<Record<string, unknown>> {
  return typeof data === "object" && data !== null;
}
