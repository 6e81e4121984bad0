import { afterEach, expect, test, vi } from "vitest";
import { keepAwake } from "./wakeLock.ts";
import type { AwakeState } from "./wakeLock.ts";

afterEach(() => vi.restoreAllMocks());

function pageIs(state: DocumentVisibilityState): void {
  vi.spyOn(document, "visibilityState", "get").mockReturnValue(state);
  document.dispatchEvent(new Event("visibilitychange"));
}

/** The locks the browser really gave, in order. */
function watchLocks(): readonly WakeLockSentinel[] {
  const locks: WakeLockSentinel[] = [];
  const request = navigator.wakeLock.request.bind(navigator.wakeLock);
  vi.spyOn(navigator.wakeLock, "request").mockImplementation(async (type) => {
    const lock = await request(type);
    locks.push(lock);
    return lock;
  });
  return locks;
}

test("the screen is held, dropped out of sight, held again on return, and let go at the end", async () => {
  const locks = watchLocks();
  const states: AwakeState[] = [];
  const awake = keepAwake((state) => states.push(state));
  await vi.waitFor(() => expect(states).toEqual(["held"]));

  pageIs("hidden");
  await locks[0]?.release();
  expect(states).toEqual(["held", "paused"]);

  pageIs("visible");
  await vi.waitFor(() => expect(states).toEqual(["held", "paused", "held"]));

  await awake.stop();
  expect(locks.map(({ released }) => released)).toEqual([true, true]);
  pageIs("visible");
  expect(locks).toHaveLength(2);
  expect(states).toEqual(["held", "paused", "held"]);
});

test("a refusal by the browser is told and not thrown", async () => {
  vi.spyOn(navigator.wakeLock, "request").mockRejectedValue(new DOMException("battery", "NotAllowedError"));
  const states: AwakeState[] = [];
  const awake = keepAwake((state) => states.push(state));
  await vi.waitFor(() => expect(states).toEqual(["denied"]));
  await awake.stop();
});

test("a lock the phone drops while the page is in sight is told as denied", async () => {
  const locks = watchLocks();
  const states: AwakeState[] = [];
  const awake = keepAwake((state) => states.push(state));
  await vi.waitFor(() => expect(states).toEqual(["held"]));
  await locks[0]?.release();
  expect(states).toEqual(["held", "denied"]);
  await awake.stop();
});

test("let go before the browser answered, the screen is not left on", async () => {
  const locks = watchLocks();
  const awake = keepAwake(() => undefined);
  await awake.stop();
  await vi.waitFor(() => expect(locks[0]?.released).toBe(true));
});
