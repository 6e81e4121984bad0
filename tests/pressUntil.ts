import { expect } from "vitest";
import type { Locator } from "vitest/browser";
import { passEventMs } from "./eventClock.ts";

/** Presses a key, again where it was not taken, until the one that follows it stands there. */
export const pressUntil = (key: Locator, next: Locator): Promise<void> =>
  expect
    .poll(
      async () => {
        passEventMs(800);
        if (key.elements().length > 0) await key.click();
        return next.elements().length;
      },
      { interval: 1000 },
    )
    .toBe(1);
