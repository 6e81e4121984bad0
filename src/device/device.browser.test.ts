import { expect, test } from "vitest";
import { setBadge } from "./badge.ts";
import { notifyPermission, showNotice } from "./notify.ts";
import { keeping, space } from "./persistence.ts";
import { say } from "./speech.ts";
import { watchUpdates } from "./update.ts";
import { vibrate } from "./vibrate.ts";

test("a notification nobody allowed says why it was not shown", async () => {
  const permission = notifyPermission();
  expect(permission).not.toBe("granted");
  const result = await showNotice({
    tag: "heron",
    title: "Heron",
    body: "Coat 3 is dry",
    path: "/piece/heron",
  });
  expect(result).toEqual({ shown: false, why: permission });
});

test("where the app cannot be stored for offline use, the reason is a value", async () => {
  const updates = watchUpdates({
    script: "/no-such-worker.js",
    mayReload: () => true,
    onWaiting: () => undefined,
    onTookOver: () => undefined,
    reload: () => undefined,
  });
  const registered = await updates.registered;
  expect(registered).toMatchObject({ ok: false, why: "failed" });
  await updates.check();
});

test("the browser says what room there is and whether the log is kept", async () => {
  expect(["kept", "may-be-cleared"]).toContain(await keeping());
  const room = await space();
  expect(room?.quotaBytes).toBeGreaterThan(1e6);
});

test("a phone with no voice, or a stuck one, gives an answer in time", async () => {
  const result = await say({ text: "Drained", lang: "en-GB", waitMs: 300 });
  expect(["speaking", "no-answer", "failed"]).toContain(result);
});

test("badge and vibration say what became of them", async () => {
  expect(["set", "missing", "failed"]).toContain(await setBadge(2));
  expect(["set", "missing", "failed"]).toContain(await setBadge(0));
  expect(["asked", "refused"]).toContain(vibrate([200, 100, 200]));
});
