import { expect } from "vitest";
import type { Locator } from "vitest/browser";
import { passEventMs } from "./eventClock.ts";

/** Presses a key, again where the press was not taken, until it has made way for another. */
export const pressAway = async (key: Locator): Promise<void> => {
  await expect.element(key).toBeVisible();
  await expect
    .poll(
      async () => {
        passEventMs(800);
        // Taken meanwhile, it may be gone before this press reaches it.
        if (key.elements().length > 0) await key.click({ timeout: 1000 }).catch(() => undefined);
        return key.elements().length;
      },
      { interval: 1000 },
    )
    .toBe(0);
};
