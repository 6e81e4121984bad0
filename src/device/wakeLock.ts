/**
 * "held": the screen stays on. "paused": the page is out of sight, and asks again when it is back.
 * "denied": the browser said no (a flat battery, a saver mode). "missing": it has no wake lock.
 */
export type AwakeState = "held" | "paused" | "denied" | "missing";

export type Awake = { readonly stop: () => Promise<void> };

/**
 * Keeps the screen on until `stop`. Tells each change of state, the first one soon after the call.
 *
 * Browsers drop the lock whenever the page goes out of sight, so it is asked for again on each return.
 */
export function keepAwake(onState: (state: AwakeState) => void): Awake {
  if (!("wakeLock" in navigator)) {
    onState("missing");
    return { stop: async () => undefined };
  }
  const { wakeLock } = navigator;
  let wanted = true;
  let asking = false;
  let lock: WakeLockSentinel | null = null;
  let told: AwakeState | null = null;

  const tell = (state: AwakeState): void => {
    if (state === told || !wanted) return;
    told = state;
    onState(state);
  };

  const ask = async (): Promise<void> => {
    if (!wanted || asking || lock !== null) return;
    if (document.visibilityState !== "visible") {
      tell("paused");
      return;
    }
    asking = true;
    const got = await wakeLock.request("screen").catch(() => null);
    asking = false;
    if (!wanted) {
      await got?.release();
      return;
    }
    lock = got;
    got?.addEventListener("release", dropped);
    tell(got === null ? "denied" : "held");
  };
  const dropped = (): void => {
    lock = null;
    // Dropped in plain sight it was the battery or a saver mode, and asking again would be refused.
    tell(document.visibilityState === "visible" ? "denied" : "paused");
  };
  const look = (): void => void ask();

  document.addEventListener("visibilitychange", look);
  look();
  return {
    stop: async () => {
      wanted = false;
      document.removeEventListener("visibilitychange", look);
      await lock?.release();
    },
  };
}
