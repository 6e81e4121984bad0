/** Who wanted the new version: a person at this page, or one at another page of the app. */
export type Wish = "here" | "elsewhere";

export type Takeover = {
  /** Tell that a person asked for the new version at this page. */
  readonly asked: () => void;
  /** Tell that the page is now served by another service worker. */
  readonly controllerChanged: () => Promise<void>;
  /** Whether a new version has taken over and this page still runs the old one. */
  readonly isStale: () => boolean;
};

/**
 * What a page does when a new version takes over: reload once, unless `mayReload` says a draft would suffer.
 *
 * The first controller of a page that had none is not an update, and changes nothing. A `mayReload` that fails
 * counts as no, as losing a half-written form is worse than running the old version a little longer.
 */
export function makeTakeover({
  controlled,
  mayReload,
  reload,
  onHeld,
}: {
  readonly controlled: boolean;
  readonly mayReload: (wish: Wish) => boolean | Promise<boolean>;
  readonly reload: () => void;
  readonly onHeld: () => void;
}): Takeover {
  let served = controlled;
  let wish: Wish = "elsewhere";
  let stale = false;
  return {
    asked: () => {
      wish = "here";
    },
    isStale: () => stale,
    controllerChanged: async () => {
      const isUpdate = served && !stale;
      served = true;
      if (!isUpdate) return;
      stale = true;
      if (await agrees(mayReload, wish)) reload();
      else onHeld();
    },
  };
}

async function agrees(mayReload: (wish: Wish) => boolean | Promise<boolean>, wish: Wish): Promise<boolean> {
  try {
    return await mayReload(wish);
  } catch {
    return false;
  }
}
