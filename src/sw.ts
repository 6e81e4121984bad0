import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from "workbox-precaching";
import type { PrecacheEntry } from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";
import { sharePath, stashShared } from "./device/sharedFile.ts";
import { isSkipWaiting, noticePath } from "./device/swMessages.ts";
import type { OpenRequest } from "./device/swMessages.ts";

declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: (PrecacheEntry | string)[] };

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL("index.html")));

// The phone's share sheet posts a file; no server is there to take it, so the page finds it in a cache.
registerRoute(
  ({ url }) => url.href === new URL(sharePath, self.registration.scope).href,
  ({ request }) => stashShared(request, self.registration),
  "POST",
);

// The first visit's page was loaded from the network. Claiming it lets its later chunks come from the store.
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

// A new version waits until a person says so: taking over by itself would pull chunks from under open pages.
self.addEventListener("message", (event) => {
  if (isSkipWaiting(event.data)) event.waitUntil(self.skipWaiting());
});

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(openApp(noticePath(event.notification.data)));
});

async function openApp(path: string): Promise<void> {
  const { scope } = self.registration;
  const windows = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  // Uncontrolled windows may be another app on the same host.
  const ours = windows.filter((client) => client.url.startsWith(scope));
  const open = ours.find((client) => client.focused) ?? ours[0];
  if (open && (await focused(open))) {
    const request: OpenRequest = { type: "open", path };
    open.postMessage(request);
    return;
  }
  await self.clients.openWindow(new URL(path.slice(1), scope));
}

async function focused(client: WindowClient): Promise<boolean> {
  try {
    await client.focus();
    return true;
  } catch {
    return false;
  }
}
