import type { CDPSession, Locator, Page } from "@playwright/test";

/** As long as a quick tap of a finger lasts; what is much shorter the app takes for a drop of water. */
const contactMs = 60;

export type Hands = {
  /** One touch of one finger in the middle of the target, once it is in view, still and not covered. */
  readonly tap: (target: Locator) => Promise<void>;
  /** Touches so far. */
  readonly taps: () => number;
};

/** A finger on the glass: real touch events, with the time between down and up that a finger needs. */
export function handsOn(page: Page): Hands {
  let count = 0;
  let opened: Promise<CDPSession> | null = null;
  const glass = (): Promise<CDPSession> => (opened ??= page.context().newCDPSession(page));
  return {
    taps: () => count,
    tap: async (target) => {
      const session = await glass();
      const touch = async (): Promise<boolean> => {
        await target.click({ trial: true, timeout: 30_000 });
        const landed = await watchedFor(target);
        const box = await target.boundingBox();
        if (box === null) throw new Error(`${target.toString()} has no place on the screen to be touched at`);
        const point = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
        await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [point] });
        await new Promise((done) => setTimeout(done, contactMs));
        await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
        return landed();
      };
      // An answer that comes in just then moves the page: whoever sees that the finger came down beside it taps again.
      if (!(await touch()) && !(await touch()))
        throw new Error(`${target.toString()} moved away under the finger twice`);
      count += 1;
    },
  };
}

/** Says afterwards whether the next touch came down on the target. A touch that took the page away has landed. */
async function watchedFor(target: Locator): Promise<() => Promise<boolean>> {
  const seen = await target.evaluateHandle((element) => {
    const first: { wasHit: boolean | null } = { wasHit: null };
    const labels = element instanceof HTMLInputElement ? [...(element.labels ?? [])] : [];
    document.addEventListener(
      "pointerdown",
      ({ target: touched }) => {
        first.wasHit = touched instanceof Node && [element, ...labels].some((part) => part.contains(touched));
      },
      { capture: true, once: true },
    );
    return first;
  });
  return async () => {
    try {
      return (await seen.evaluate(({ wasHit }) => wasHit)) !== false;
    } catch {
      return true;
    }
  };
}
