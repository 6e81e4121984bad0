import { openRequest } from "./swMessages.ts";

/** Calls back with the path of a pressed notification when this page was open already. Returns how to stop. */
export function onOpenRequest(listener: (path: string) => void): () => void {
  if (!("serviceWorker" in navigator)) return () => undefined;
  const container = navigator.serviceWorker;
  const hear = (event: MessageEvent<unknown>): void => {
    const request = openRequest(event.data);
    if (request) listener(request.path);
  };
  container.addEventListener("message", hear);
  return () => container.removeEventListener("message", hear);
}
