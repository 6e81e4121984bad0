import { Workbox } from "workbox-window";
import { makeTakeover } from "./takeover.ts";
import type { Wish } from "./takeover.ts";

export type Registered =
  | { readonly ok: true }
  | { readonly ok: false; readonly why: "missing" | "failed"; readonly detail?: string | undefined };

export type Updates = {
  /** Whether the app could be stored for use with no network, and if not why. */
  readonly registered: Promise<Registered>;
  /** Let the waiting version take over; this page reloads once it has, if `mayReload` agrees. */
  readonly apply: () => void;
  /** Reload now, for a page that was held on the old version. */
  readonly reload: () => void;
  /** Ask the host for a newer version. Browsers do it on a visit; an app left open for days has to ask. */
  readonly check: () => Promise<UpdateState>;
};

/** "waiting": a newer version is stored and can be applied. "no-answer": the host could not be asked. */
export type UpdateState = "waiting" | "none" | "no-answer";

/**
 * Stores the app for offline use and tells of new versions.
 *
 * `onWaiting`: a new version is stored and waits for `apply`. `onTookOver`: it was let in at another page while
 * `mayReload` said no here, so this page runs the old version until `reload`; its parts not yet loaded may be gone.
 * `onStored`: the first version is stored, the app now opens with no network.
 */
export function watchUpdates({
  script,
  mayReload,
  onWaiting,
  onTookOver,
  onStored,
  reload = () => location.reload(),
}: {
  readonly script: string;
  readonly mayReload: (wish: Wish) => boolean | Promise<boolean>;
  readonly onWaiting: () => void;
  readonly onTookOver: () => void;
  readonly onStored?: (() => void) | undefined;
  readonly reload?: (() => void) | undefined;
}): Updates {
  if (!("serviceWorker" in navigator)) return withoutWorker(reload);
  const container = navigator.serviceWorker;
  const workbox = new Workbox(script);
  const takeover = makeTakeover({
    controlled: container.controller !== null,
    mayReload,
    reload,
    onHeld: onTookOver,
  });
  workbox.addEventListener("waiting", onWaiting);
  workbox.addEventListener("activated", (event) => {
    if (event.isUpdate !== true && event.isExternal !== true) onStored?.();
  });
  container.addEventListener("controllerchange", () => void takeover.controllerChanged());
  return {
    registered: register(workbox),
    apply: () => {
      takeover.asked();
      // Another page let it in already: there is no one left waiting to take over.
      if (takeover.isStale()) reload();
      else workbox.messageSkipWaiting();
    },
    reload,
    check: () => checkNow(container),
  };
}

async function checkNow(container: ServiceWorkerContainer): Promise<UpdateState> {
  try {
    const registration = await container.getRegistration();
    if (registration === undefined) return "no-answer";
    await registration.update();
    if (registration.installing !== null) await untilInstalled(registration.installing);
    return registration.waiting === null ? "none" : "waiting";
  } catch {
    return "no-answer";
  }
}

const untilInstalled = (worker: ServiceWorker): Promise<void> =>
  new Promise((done) => {
    const look = (): void => {
      if (worker.state !== "installing") done();
    };
    worker.addEventListener("statechange", look);
    look();
  });

async function register(workbox: Workbox): Promise<Registered> {
  try {
    await workbox.register({ immediate: true });
    return { ok: true };
  } catch (error) {
    return { ok: false, why: "failed", detail: error instanceof Error ? error.message : String(error) };
  }
}

function withoutWorker(reload: () => void): Updates {
  const registered: Promise<Registered> = Promise.resolve({ ok: false, why: "missing" });
  return { registered, apply: reload, reload, check: async () => "no-answer" };
}
